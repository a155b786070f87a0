package org.wattwright.layout;

import java.util.Objects;
import java.util.function.Function;
import javax.measure.Quantity;
import org.wattwright.units.NamedUnit;

/**
 * What candidates are ranked by, and which way is better.
 *
 * <p>Immutable; thread-safe if your own function is.
 */
public final class Criterion {
  /** Mass of modules and enclosures, least first. */
  public static final Criterion MASS = least("pack mass", spec -> SumProperties.mass());

  /** Usable energy, most first; needs conditions. */
  public static final Criterion USABLE_ENERGY = most("usable energy", SearchSpec::energy);

  /**
   * Peak discharge power, most first: the least over all states stated by {@code peakPowerAtLeast},
   * else that at the emptiest state, coldest temperature and peak duration of the conditions.
   */
  public static final Criterion PEAK_POWER = most("peak power", SearchSpec::peakPower);

  /** Volume of the modules' outer boxes, least first. */
  public static final Criterion VOLUME = least("pack volume", spec -> SumProperties.volume());

  /** Price of modules and enclosures, least first; all in one currency. */
  public static final Criterion PRICE = least("pack price", SearchSpec::price);

  /** Number of modules, least first. */
  public static final Criterion MODULE_COUNT =
      least("module count", spec -> SumProperties.moduleCount());

  private final String name;
  private final boolean leastFirst;
  private final Function<SearchSpec, Property> property;

  private Criterion(String name, boolean leastFirst, Function<SearchSpec, Property> property) {
    this.name = name;
    this.leastFirst = leastFirst;
    this.property = property;
  }

  private static Criterion least(String name, Function<SearchSpec, Property> property) {
    return new Criterion(name, true, property);
  }

  private static Criterion most(String name, Function<SearchSpec, Property> property) {
    return new Criterion(name, false, property);
  }

  /**
   * A criterion of your own, the smallest value first. The function is asked for every candidate
   * that meets all requirements and must give the same value each time.
   *
   * @param <Q> the quantity type
   * @param name what the quantity is, in words
   * @param shownIn the unit of reports
   * @param value the quantity of a candidate
   * @return the criterion
   * @throws org.wattwright.units.InvalidInputException if the name is blank
   */
  public static <Q extends Quantity<Q>> Criterion smallest(
      String name, NamedUnit<Q> shownIn, Function<? super Candidate, ? extends Quantity<Q>> value) {
    OwnValue<Q> own = OwnValue.of("Criterion.name", name, shownIn, value);
    return least(own.name(), spec -> new OwnProperty(own, spec));
  }

  /**
   * A criterion of your own, the largest value first.
   *
   * @param <Q> the quantity type
   * @param name what the quantity is, in words
   * @param shownIn the unit of reports
   * @param value the quantity of a candidate
   * @return the criterion
   * @throws org.wattwright.units.InvalidInputException if the name is blank
   */
  public static <Q extends Quantity<Q>> Criterion largest(
      String name, NamedUnit<Q> shownIn, Function<? super Candidate, ? extends Quantity<Q>> value) {
    OwnValue<Q> own = OwnValue.of("Criterion.name", name, shownIn, value);
    return most(own.name(), spec -> new OwnProperty(own, spec));
  }

  /**
   * What is compared.
   *
   * @return in words
   */
  public String name() {
    return name;
  }

  /**
   * Which way is better.
   *
   * @return true if the smallest value comes first
   */
  public boolean isSmallestFirst() {
    return leastFirst;
  }

  Property property(SearchSpec spec) {
    return Objects.requireNonNull(property.apply(spec), name);
  }

  /** A value turned so that less is better. */
  double cost(double valueSi) {
    return leastFirst ? valueSi : -valueSi;
  }

  /**
   * Name and direction.
   *
   * @return for example {@code least pack mass}
   */
  @Override
  public String toString() {
    return (leastFirst ? "least " : "most ") + name;
  }
}
