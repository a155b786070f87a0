package org.wattwright.units;

import javax.measure.Quantity;

/** Quantities as text for people. */
final class MeasureFormat {
  private static final int SENSIBLE_DIGITS = 4;
  private static final int MOST_DECIMALS = 15;

  private MeasureFormat() {}

  static <Q extends Quantity<Q>> String sensible(Measure<Q> measure) {
    NamedUnit<Q> unit = handyUnit(measure);
    return Decimal.significant(unit.valueOf(measure), SENSIBLE_DIGITS) + " " + unit.symbol();
  }

  static String fixed(double value, NamedUnit<?> unit, int decimals) {
    if (decimals < 0 || decimals > MOST_DECIMALS) {
      throw InvalidInputException.of("decimals", "from 0 to 15", Integer.toString(decimals));
    }
    return Decimal.fixed(value, decimals) + " " + unit.symbol();
  }

  /** The largest unit of the family in which the number is at least 1; else the smallest. */
  private static <Q extends Quantity<Q>> NamedUnit<Q> handyUnit(Measure<Q> measure) {
    NamedUnit<Q> best = measure.namedUnit();
    if (best.family().isEmpty() || measure.siValue() == 0) {
      return best;
    }
    boolean found = false;
    for (NamedUnit<Q> unit : measure.kind().units()) {
      if (unit.family().equals(best.family())
          && (!found || Math.abs(unit.fromSi(measure.siValue())) >= 1)) {
        best = unit;
        found = true;
      }
    }
    return best;
  }
}
