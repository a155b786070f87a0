package org.wattwright.protection;

import java.util.Objects;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;
import org.wattwright.internal.Require;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Price;

/**
 * What the smallest parts are: a sum over all parts, and a second one that settles ties.
 *
 * <p>A part of which the figure is unknown ranks after all of which it is known. Sums are in whole
 * micrograms and millionths of a unit of money, so that ties are true ties. Immutable.
 */
public final class CircuitObjective {
  private static final double PER_UNIT = 1e6;
  private static final double MICROGRAMS = 1e9;

  private final String name;
  private final boolean isPriceFirst;
  private final ToDoubleFunction<CircuitPart> own;
  private final boolean isOwn;

  private CircuitObjective(
      String name, boolean isPriceFirst, boolean isOwn, ToDoubleFunction<CircuitPart> own) {
    this.name = name;
    this.isPriceFirst = isPriceFirst;
    this.isOwn = isOwn;
    this.own = own;
  }

  /**
   * Least mass; of equal mass the lowest price.
   *
   * @return the objective used unless told otherwise
   */
  public static CircuitObjective massThenPrice() {
    return new CircuitObjective("mass, then price", false, false, part -> 0);
  }

  /**
   * Lowest price; of equal price the least mass.
   *
   * @return the objective
   */
  public static CircuitObjective priceThenMass() {
    return new CircuitObjective("price, then mass", true, false, part -> 0);
  }

  /**
   * A figure of one's own for each part, ties settled by mass.
   *
   * @param name as reports print it
   * @param figure a number ≥ 0 and below 10⁹ for a part, resolved to a millionth; less is better
   * @return the objective
   */
  public static CircuitObjective own(String name, ToDoubleFunction<CircuitPart> figure) {
    String text = Require.text("CircuitObjective.name", name);
    return new CircuitObjective(text, false, true, Objects.requireNonNull(figure, "figure"));
  }

  PartCost cost(CircuitPart part) {
    long[] mass = amount(part.massKg(), MICROGRAMS);
    if (isOwn) {
      double figure = Require.between("CircuitObjective " + name, own.applyAsDouble(part), 0, 1e9);
      return new PartCost(0, 0, Math.round(figure * PER_UNIT), mass[0], mass[1]);
    }
    Price price = part.priceOrNull();
    long[] money = amount(price == null ? null : price.amount().doubleValue(), PER_UNIT);
    return isPriceFirst
        ? new PartCost(0, money[0], money[1], mass[0], mass[1])
        : new PartCost(0, mass[0], mass[1], money[0], money[1]);
  }

  private static long[] amount(@Nullable Double value, double scale) {
    return value == null ? new long[] {1, 0} : new long[] {0, Math.round(value * scale)};
  }

  /** Rejects parts in several currencies, whose prices cannot be compared. */
  static void requireOneCurrency(Iterable<CircuitPart> parts) {
    Price first = null;
    for (CircuitPart part : parts) {
      Price price = part.priceOrNull();
      if (price != null && first != null && !price.currency().equals(first.currency())) {
        throw InvalidInputException.of(
            "price of " + part.name(), "in " + first.currency() + " as the others", "" + price);
      }
      first = first == null ? price : first;
    }
  }

  /**
   * What it counts.
   *
   * @return for example {@code mass, then price}
   */
  @Override
  public String toString() {
    return name;
  }
}
