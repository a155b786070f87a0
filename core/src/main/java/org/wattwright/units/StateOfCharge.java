package org.wattwright.units;

import java.io.Serializable;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;

/**
 * State of charge of a battery: the share of its present capacity that is still in it, 0 to 1.
 *
 * <p>Immutable and thread-safe.
 *
 * @param fraction 0 (empty) to 1 (full)
 */
public record StateOfCharge(double fraction) implements Comparable<StateOfCharge>, Serializable {
  /** Nothing left. */
  public static final StateOfCharge EMPTY = new StateOfCharge(0);

  /** Fully charged. */
  public static final StateOfCharge FULL = new StateOfCharge(1);

  /**
   * Checks the range.
   *
   * @param fraction 0 (empty) to 1 (full)
   * @throws InvalidInputException if the fraction is outside 0 … 1 or NaN
   */
  public StateOfCharge {
    if (!(fraction >= 0 && fraction <= 1)) {
      String hint =
          fraction > 1 && fraction <= 100 ? "per cent: use percentCharge(…)" : "a fraction";
      throw InvalidInputException.of("StateOfCharge", "from 0 to 1", Double.toString(fraction))
          .withHint(hint);
    }
    fraction += 0.0; // −0 becomes 0
  }

  /**
   * From a fraction.
   *
   * @param fraction 0 to 1
   * @return the state of charge
   * @throws InvalidInputException if outside 0 … 1
   */
  public static StateOfCharge of(double fraction) {
    return new StateOfCharge(fraction);
  }

  /**
   * From per cent.
   *
   * @param percent 0 to 100
   * @return the state of charge
   * @throws InvalidInputException if outside 0 … 100
   */
  public static StateOfCharge ofPercent(double percent) {
    if (!(percent >= 0 && percent <= 100)) {
      throw InvalidInputException.of("StateOfCharge", "from 0 % to 100 %", percent + " %");
    }
    return new StateOfCharge(WorkshopUnits.PERCENT.toSi(percent));
  }

  /**
   * Reads {@code 20 %} or {@code 0.2}.
   *
   * @param text per cent with its sign, or a fraction without
   * @return the state of charge
   * @throws InvalidInputException if the text is neither, or out of range
   */
  public static StateOfCharge parse(String text) {
    Quantity<Dimensionless> parsed = Kind.DIMENSIONLESS.parse(text);
    double fraction = Kind.DIMENSIONLESS.siValueOf(parsed);
    if (!(fraction >= 0 && fraction <= 1)) {
      throw InvalidInputException.of("StateOfCharge", "from 0 % to 100 %", parsed.toString());
    }
    return new StateOfCharge(fraction);
  }

  /**
   * In per cent.
   *
   * @return 0 to 100
   */
  public double percent() {
    return WorkshopUnits.PERCENT.fromSi(fraction);
  }

  @Override
  public int compareTo(StateOfCharge other) {
    return Double.compare(fraction, other.fraction);
  }

  /**
   * Per cent, such as {@code 20 %}; parses back to an equal state of charge.
   *
   * @return per cent where that is exact, else the fraction
   */
  @Override
  public String toString() {
    double percent = percent();
    return WorkshopUnits.PERCENT.toSi(percent) == fraction
        ? WorkshopUnits.PERCENT.after(Decimal.shortest(percent))
        : Decimal.shortest(fraction);
  }
}
