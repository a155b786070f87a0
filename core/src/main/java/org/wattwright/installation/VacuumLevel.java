package org.wattwright.installation;

import static org.wattwright.units.WorkshopUnits.KILOPASCAL;

import java.io.Serializable;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Pressure;
import org.wattwright.internal.Require;
import org.wattwright.units.Kind;
import org.wattwright.units.Measure;

/**
 * Level at which a vacuum switch or sensor acts, as it reads it: absolute pressure, or vacuum below
 * the air around it. The two differ with height. Immutable and thread-safe.
 *
 * @param reading how the switch reads
 * @param value absolute pressure, or vacuum as a positive number; ≥ 0 kPa
 */
public record VacuumLevel(Reading reading, Quantity<Pressure> value) implements Serializable {
  /** What a vacuum switch compares with. */
  public enum Reading {
    /** With no pressure at all. */
    ABSOLUTE,
    /** With the air around it. */
    GAUGE
  }

  /**
   * Checks the range.
   *
   * @param reading how the switch reads
   * @param value ≥ 0 kPa
   * @throws org.wattwright.units.InvalidInputException if negative
   */
  public VacuumLevel {
    Objects.requireNonNull(reading, "reading");
    Require.quantity("VacuumLevel.value", value, KILOPASCAL).nonNegative();
    value = Measure.from(value, Kind.PRESSURE);
  }

  /**
   * A switch that reads absolute pressure.
   *
   * @param pressure ≥ 0 kPa
   * @return the level
   * @throws org.wattwright.units.InvalidInputException if negative
   */
  public static VacuumLevel absolute(Quantity<Pressure> pressure) {
    return new VacuumLevel(Reading.ABSOLUTE, pressure);
  }

  /**
   * A switch that reads vacuum below the air around it.
   *
   * @param vacuum as a positive number, ≥ 0 kPa
   * @return the level
   * @throws org.wattwright.units.InvalidInputException if negative
   */
  public static VacuumLevel gauge(Quantity<Pressure> vacuum) {
    return new VacuumLevel(Reading.GAUGE, vacuum);
  }

  /**
   * The level as absolute pressure.
   *
   * @param ambient absolute pressure of the air, &gt; 0 kPa
   * @return in kPa; negative if a gauge setting asks for more vacuum than there is air
   * @throws org.wattwright.units.InvalidInputException if the ambient pressure is not positive
   */
  public Quantity<Pressure> absoluteAt(Quantity<Pressure> ambient) {
    double ambientPa = Require.quantity("VacuumLevel.ambient", ambient, KILOPASCAL).positive();
    return KILOPASCAL.of(absolutePa(ambientPa) / 1000);
  }

  double absolutePa(double ambientPa) {
    double valuePa = Kind.PRESSURE.siValueOf(value);
    return reading == Reading.ABSOLUTE ? valuePa : ambientPa - valuePa;
  }

  /**
   * Value and reading.
   *
   * @return for example {@code 30 kPa absolute} or {@code 70 kPa below ambient}
   */
  @Override
  public String toString() {
    return value + (reading == Reading.ABSOLUTE ? " absolute" : " below ambient");
  }
}
