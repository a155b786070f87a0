package org.wattwright.charging;

import java.io.Serializable;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricCurrent;
import org.wattwright.check.Figure;
import org.wattwright.check.Source;
import org.wattwright.internal.Require;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;
import org.wattwright.units.WorkshopUnits;

/**
 * Share of a circuit's rating that a load of many hours may take.
 *
 * <p>Data, not law: it holds where the rule it comes from holds, and the caller says so. Immutable
 * and thread-safe.
 *
 * @param share of the rating, &gt; 0 and ≤ 1
 * @param source where it comes from
 */
public record ContinuousLoadRule(double share, Source source) implements Serializable {
  /** No rule: the whole rating. */
  public static final ContinuousLoadRule NONE = new ContinuousLoadRule(1, Source.AS_GIVEN);

  /**
   * Charging counts as a continuous load, and a circuit is rated 125 % of it: 80 % of the rating.
   * Source: NEC 2023, 625.41 and 625.42 with 210.20(A); where that code is in force.
   */
  public static final ContinuousLoadRule NEC_2023 =
      new ContinuousLoadRule(0.8, Source.standard("NEC 2023", "625.41, 625.42, 210.20(A)"));

  /** What a decimal such as 0.8 may be off by when it is multiplied and divided again. */
  private static final double ROUNDING = 1e-12;

  /**
   * Checks the share.
   *
   * @param share of the rating, &gt; 0 and ≤ 1
   * @param source where it comes from
   * @throws InvalidInputException if the share is outside its range
   */
  public ContinuousLoadRule {
    Objects.requireNonNull(source, "source");
    if (!(share > 0 && share <= 1)) {
      throw InvalidInputException.of(
          "ContinuousLoadRule.share", "> 0 and ≤ 1", Double.toString(share));
    }
  }

  /**
   * Least rating of an overcurrent device for a load of many hours: I/share.
   *
   * @param load ≥ 0 A
   * @return in A
   * @throws InvalidInputException if the load is negative
   */
  public Quantity<ElectricCurrent> leastRating(Quantity<ElectricCurrent> load) {
    return Kind.CURRENT.ofSi(loadA(load) / share);
  }

  /**
   * Smallest of some sizes that carries a load of many hours.
   *
   * @param load ≥ 0 A
   * @param sizes ratings on offer, any order, at least one
   * @return empty if none of them does
   * @throws InvalidInputException if the load is negative or there is no size
   */
  public Optional<Quantity<ElectricCurrent>> smallestDevice(
      Quantity<ElectricCurrent> load, List<Quantity<ElectricCurrent>> sizes) {
    double leastA = loadA(load) / share * (1 - ROUNDING);
    return Require.nonEmpty("ContinuousLoadRule.sizes", sizes).stream()
        .filter(size -> Kind.CURRENT.siValueOf(size) >= leastA)
        .min(Comparator.comparingDouble(Kind.CURRENT::siValueOf));
  }

  private static double loadA(Quantity<ElectricCurrent> load) {
    return Require.quantity("ContinuousLoadRule.load", load, WorkshopUnits.AMPERE).nonNegative();
  }

  /**
   * Share and source.
   *
   * @return for example {@code 80 % for continuous loads (NEC 2023, 625.41, …)}
   */
  @Override
  public String toString() {
    return Figure.share(share) + " for continuous loads (" + source + ")";
  }
}
