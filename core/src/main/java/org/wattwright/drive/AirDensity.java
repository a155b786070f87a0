package org.wattwright.drive;

import static org.wattwright.units.WorkshopUnits.KILOGRAM_PER_CUBIC_METRE;
import static org.wattwright.units.WorkshopUnits.KILOPASCAL;
import static org.wattwright.units.WorkshopUnits.METRE;

import javax.measure.Quantity;
import javax.measure.quantity.Length;
import javax.measure.quantity.Pressure;
import javax.measure.quantity.Temperature;
import org.wattwright.internal.Require;
import org.wattwright.units.Density;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;

/** Density of dry air, for the drag of a vehicle. */
public final class AirDensity {
  /** Specific gas constant of dry air, ISO 2533. */
  private static final double GAS_CONSTANT_J_PER_KG_K = 287.05;

  /** 20 °C and 100 kPa: UN GTR No. 15, paragraph 3.2.11. */
  static final double WLTP_KG_PER_M3 = 1.189;

  private AirDensity() {}

  /**
   * By the ideal gas law: p/(287.05 J/(kg·K)·T).
   *
   * @param temperature absolute, above 0 K
   * @param pressure absolute, &gt; 0 kPa
   * @return in kg/m³
   * @throws InvalidInputException if an argument is not positive
   */
  public static Quantity<Density> at(
      Quantity<Temperature> temperature, Quantity<Pressure> pressure) {
    double kelvin =
        Require.positive("AirDensity.temperature", Kind.TEMPERATURE.siValueOf(temperature));
    double pascal = Require.quantity("AirDensity.pressure", pressure, KILOPASCAL).positive();
    return KILOGRAM_PER_CUBIC_METRE.of(pascal / (GAS_CONSTANT_J_PER_KG_K * kelvin));
  }

  /**
   * In the standard atmosphere: 1.225·(1 − 0.0065·H/288.15)^4.25588. Source: ISO 2533.
   *
   * @param altitude −1000 m to 11 000 m
   * @return in kg/m³
   * @throws InvalidInputException if the altitude is outside its range
   */
  public static Quantity<Density> atAltitude(Quantity<Length> altitude) {
    double altitudeM =
        Require.quantity("AirDensity.altitude", altitude, METRE).between(-1000, 11_000);
    return KILOGRAM_PER_CUBIC_METRE.of(1.225 * Math.pow(1 - 0.0065 * altitudeM / 288.15, 4.25588));
  }

  /**
   * The reference of the WLTP, 1.189 kg/m³ at 20 °C and 100 kPa. Source: UN GTR No. 15, paragraph
   * 3.2.11.
   *
   * @return in kg/m³
   */
  public static Quantity<Density> wltp() {
    return KILOGRAM_PER_CUBIC_METRE.of(WLTP_KG_PER_M3);
  }
}
