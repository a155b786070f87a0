package org.wattwright.protection;

import static org.wattwright.units.WorkshopUnits.OHM;

import java.math.BigDecimal;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricResistance;
import org.wattwright.internal.Require;
import org.wattwright.units.Measures;

/**
 * Series of preferred resistor values, IEC 60063: the values per decade that are for sale.
 *
 * <p>Range: 1 mΩ to 10 MΩ.
 */
public enum PreferredValues {
  /** Twelve values a decade, for a tolerance of 10 %. */
  E12(10, 12, 15, 18, 22, 27, 33, 39, 47, 56, 68, 82),
  /** Twenty-four values a decade, for a tolerance of 5 %. */
  E24(
      10, 11, 12, 13, 15, 16, 18, 20, 22, 24, 27, 30, 33, 36, 39, 43, 47, 51, 56, 62, 68, 75, 82,
      91);

  private static final double LOWEST_OHM = 1e-3;
  private static final double HIGHEST_OHM = 1e7;

  @SuppressWarnings("ImmutableEnumChecker") // never handed out, never written
  private final int[] mantissas;

  PreferredValues(int... mantissas) {
    this.mantissas = mantissas;
  }

  /**
   * The smallest value of the series that is not below the given one.
   *
   * @param resistance 1 mΩ to 10 MΩ
   * @return the value
   * @throws org.wattwright.units.InvalidInputException if outside the range
   */
  public Quantity<ElectricResistance> atLeast(Quantity<ElectricResistance> resistance) {
    double leastOhm = read(resistance);
    int decade = (int) Math.floor(Math.log10(leastOhm)) - 2;
    while (true) {
      for (int mantissa : mantissas) {
        double valueOhm = value(mantissa, decade);
        if (valueOhm >= leastOhm) {
          return Measures.ohms(valueOhm);
        }
      }
      decade++;
    }
  }

  /**
   * The largest value of the series that is not above the given one.
   *
   * @param resistance 1 mΩ to 10 MΩ
   * @return the value
   * @throws org.wattwright.units.InvalidInputException if outside the range
   */
  public Quantity<ElectricResistance> atMost(Quantity<ElectricResistance> resistance) {
    double mostOhm = read(resistance);
    int decade = (int) Math.floor(Math.log10(mostOhm)) + 1;
    while (true) {
      for (int i = mantissas.length - 1; i >= 0; i--) {
        double valueOhm = value(mantissas[i], decade);
        if (valueOhm <= mostOhm) {
          return Measures.ohms(valueOhm);
        }
      }
      decade--;
    }
  }

  private static double read(Quantity<ElectricResistance> resistance) {
    return Require.quantity("PreferredValues.resistance", resistance, OHM)
        .between(LOWEST_OHM, HIGHEST_OHM);
  }

  /** The double nearest the decimal value, so that a printed value finds itself. */
  private static double value(int mantissa, int decade) {
    return BigDecimal.valueOf(mantissa).scaleByPowerOfTen(decade).doubleValue();
  }
}
