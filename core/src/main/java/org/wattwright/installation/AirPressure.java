package org.wattwright.installation;

import static org.wattwright.units.WorkshopUnits.KILOPASCAL;
import static org.wattwright.units.WorkshopUnits.METRE;

import javax.measure.Quantity;
import javax.measure.quantity.Length;
import javax.measure.quantity.Pressure;
import org.wattwright.internal.Require;

/**
 * Pressure of the air around the vehicle.
 *
 * <p>p = 101.325 kPa·(1 − 2.25577·10⁻⁵·h)^5.25588, h in m. Source: ISO 2533, standard atmosphere.
 */
public final class AirPressure {
  /** At sea level, ISO 2533. */
  static final double SEA_LEVEL_PA = 101_325;

  private static final double LAPSE_PER_M = 2.25577e-5;
  private static final double EXPONENT = 5.25588;

  private AirPressure() {}

  /**
   * In the standard atmosphere.
   *
   * @param altitude −1000 m to 11 000 m
   * @return absolute, in kPa
   * @throws org.wattwright.units.InvalidInputException if the altitude is outside its range
   */
  public static Quantity<Pressure> atAltitude(Quantity<Length> altitude) {
    double altitudeM =
        Require.quantity("AirPressure.altitude", altitude, METRE).between(-1000, 11_000);
    double pressurePa = SEA_LEVEL_PA * Math.pow(1 - LAPSE_PER_M * altitudeM, EXPONENT);
    return KILOPASCAL.of(pressurePa / 1000);
  }
}
