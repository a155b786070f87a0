package org.wattwright.installation;

import static org.wattwright.units.WorkshopUnits.MILLIVOLT;
import static org.wattwright.units.WorkshopUnits.VOLT;

import java.io.Serializable;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricPotential;
import org.jspecify.annotations.Nullable;
import org.wattwright.internal.Require;
import org.wattwright.units.Kind;

/** A type of cell-measuring unit, main or remote. Immutable and thread-safe. */
public final class MonitorUnitType implements Serializable {
  private static final long serialVersionUID = 1L;

  private final Fields fields;

  private record Fields(
      int channels, int temperatureInputs, double errorV, @Nullable Double withstandV)
      implements Serializable {}

  private MonitorUnitType(Fields fields) {
    this.fields = fields;
  }

  /**
   * A unit by its inputs.
   *
   * @param channels cells that it measures, 1 to 1000
   * @param temperatureInputs 0 to 1000
   * @param measuringError of a cell's voltage, either way, &gt; 0 mV
   * @return a unit that bears no more than its cells between neighbouring taps, as far as is known
   * @throws org.wattwright.units.InvalidInputException if a value is outside its range
   */
  public static MonitorUnitType of(
      int channels, int temperatureInputs, Quantity<ElectricPotential> measuringError) {
    return new MonitorUnitType(
        new Fields(
            Require.count("MonitorUnitType.channels", channels, 1, 1000),
            Require.count("MonitorUnitType.temperatureInputs", temperatureInputs, 0, 1000),
            Require.quantity("MonitorUnitType.measuringError", measuringError, MILLIVOLT)
                .positive(),
            null));
  }

  /**
   * Voltage that it bears between neighbouring taps, of either sign.
   *
   * @param value &gt; 0 V
   * @return a new type
   * @throws org.wattwright.units.InvalidInputException if not positive
   */
  public MonitorUnitType withstands(Quantity<ElectricPotential> value) {
    double volts = Require.quantity("MonitorUnitType.withstand", value, VOLT).positive();
    return new MonitorUnitType(
        new Fields(fields.channels, fields.temperatureInputs, fields.errorV, volts));
  }

  /**
   * Cells that it measures.
   *
   * @return 1 to 1000
   */
  public int channels() {
    return fields.channels;
  }

  /**
   * Temperature sensors that it reads.
   *
   * @return 0 to 1000
   */
  public int temperatureInputs() {
    return fields.temperatureInputs;
  }

  /**
   * Voltage that it bears between neighbouring taps.
   *
   * @return in V; empty if not told
   */
  public Optional<Quantity<ElectricPotential>> withstand() {
    return Optional.ofNullable(fields.withstandV).map(Kind.VOLTAGE::ofSi);
  }

  double errorV() {
    return fields.errorV;
  }

  boolean bears(double packV) {
    return fields.withstandV != null && fields.withstandV >= packV;
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof MonitorUnitType that && fields.equals(that.fields);
  }

  @Override
  public int hashCode() {
    return fields.hashCode();
  }

  /**
   * Channels and temperature inputs.
   *
   * @return for example {@code 16 cells, 4 temperatures}
   */
  @Override
  public String toString() {
    return fields.channels + " cells, " + fields.temperatureInputs + " temperatures";
  }
}
