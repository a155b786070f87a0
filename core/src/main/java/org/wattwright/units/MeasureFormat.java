package org.wattwright.units;

import javax.measure.Quantity;

/** Quantities as text for people. */
final class MeasureFormat {
  private static final int SENSIBLE_DIGITS = 4;
  private static final int MOST_DECIMALS = 15;

  /** From here on a number shows as 1 in four digits, so that 999.97 mV becomes 1 V. */
  private static final double ROUNDS_TO_ONE = 0.99995;

  private MeasureFormat() {}

  static <Q extends Quantity<Q>> String sensible(Measure<Q> measure) {
    NamedUnit<Q> unit = handyUnit(measure);
    return unit.after(Decimal.significant(unit.valueOf(measure), SENSIBLE_DIGITS));
  }

  static String fixed(double value, NamedUnit<?> unit, int decimals) {
    if (decimals < 0 || decimals > MOST_DECIMALS) {
      throw InvalidInputException.of("decimals", "from 0 to 15", Integer.toString(decimals));
    }
    return unit.after(Decimal.fixed(value, decimals));
  }

  /** The largest unit of the family in which the number shows as at least 1; else the smallest. */
  private static <Q extends Quantity<Q>> NamedUnit<Q> handyUnit(Measure<Q> measure) {
    NamedUnit<Q> best = measure.namedUnit();
    if (best.family().isEmpty() || measure.siValue() == 0) {
      return best;
    }
    boolean found = false;
    for (NamedUnit<Q> unit : measure.kind().units()) {
      if (unit.family().equals(best.family())
          && (!found || Math.abs(unit.fromSi(measure.siValue())) >= ROUNDS_TO_ONE)) {
        best = unit;
        found = true;
      }
    }
    return best;
  }
}
