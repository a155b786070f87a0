package org.wattwright.charging;

import static org.wattwright.units.WorkshopUnits.AMPERE;
import static org.wattwright.units.WorkshopUnits.KILOWATT;
import static org.wattwright.units.WorkshopUnits.VOLT;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.Power;
import org.jspecify.annotations.Nullable;
import org.wattwright.battery.CellProperty;
import org.wattwright.battery.Direction;
import org.wattwright.battery.Pack;
import org.wattwright.battery.PackState;
import org.wattwright.check.Check;
import org.wattwright.check.CheckBuilder;
import org.wattwright.check.Figure;
import org.wattwright.check.Source;
import org.wattwright.internal.Require;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;
import org.wattwright.units.Measure;
import org.wattwright.voltage.VoltageRange;

/**
 * A source of direct current outside the vehicle, straight onto the pack: a DC charging station or
 * a bench supply.
 *
 * <pre>{@code
 * DcStation station = DcStation.of("station", VoltageRange.between(volts(200), volts(500)),
 *     amperes(125), kilowatts(50));
 * station.checks(pack, PackState.of(percentCharge(5), celsius(0)), PackState.of(percentCharge(100), celsius(25)));
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 */
public final class DcStation implements Serializable {
  private static final long serialVersionUID = 1L;

  private final String name;
  private final VoltageRange voltages;
  private final Quantity<ElectricCurrent> maximumCurrent;
  private final Quantity<Power> maximumPower;
  private final @Nullable Double efficiency;

  private DcStation(
      String name,
      VoltageRange voltages,
      Quantity<ElectricCurrent> maximumCurrent,
      Quantity<Power> maximumPower,
      @Nullable Double efficiency) {
    this.name = name;
    this.voltages = voltages;
    this.maximumCurrent = maximumCurrent;
    this.maximumPower = maximumPower;
    this.efficiency = efficiency;
  }

  /**
   * A station by its plate.
   *
   * @param name as reports print it
   * @param voltages output voltages
   * @param maximumCurrent largest output current, ≥ 0 A
   * @param maximumPower largest output power, ≥ 0 kW
   * @return the station
   * @throws InvalidInputException if the name is blank or a value negative
   */
  public static DcStation of(
      String name,
      VoltageRange voltages,
      Quantity<ElectricCurrent> maximumCurrent,
      Quantity<Power> maximumPower) {
    Require.quantity("DcStation.maximumCurrent", maximumCurrent, AMPERE).nonNegative();
    Require.quantity("DcStation.maximumPower", maximumPower, KILOWATT).nonNegative();
    return new DcStation(
        Require.text("DcStation.name", name),
        Objects.requireNonNull(voltages, "voltages"),
        Measure.from(maximumCurrent, Kind.CURRENT),
        Measure.from(maximumPower, Kind.POWER),
        null);
  }

  /**
   * This station with its efficiency, so that energy from the mains is known too.
   *
   * @param value output over input power, &gt; 0 and ≤ 1
   * @return a new station
   * @throws InvalidInputException if outside its range
   */
  public DcStation withEfficiency(double value) {
    if (!(value > 0 && value <= 1)) {
      throw InvalidInputException.of("DcStation.efficiency", "> 0 and ≤ 1", Double.toString(value));
    }
    return new DcStation(name, voltages, maximumCurrent, maximumPower, value);
  }

  /**
   * Name as reports print it.
   *
   * @return the name
   */
  public String name() {
    return name;
  }

  /**
   * Output voltages.
   *
   * @return the range
   */
  public VoltageRange voltages() {
    return voltages;
  }

  /**
   * Largest output current.
   *
   * @return ≥ 0 A
   */
  public Quantity<ElectricCurrent> maximumCurrent() {
    return maximumCurrent;
  }

  /**
   * Largest output power.
   *
   * @return ≥ 0 kW
   */
  public Quantity<Power> maximumPower() {
    return maximumPower;
  }

  Optional<Double> efficiency() {
    return Optional.ofNullable(efficiency);
  }

  /**
   * Whether a pack suits the station.
   *
   * <p>Codes {@code charging.station-start} (the emptiest pack's rest voltage reaches the lowest
   * output), {@code charging.station-end} (the highest output reaches the end of charge) and {@code
   * charging.station-current} (whether the cells take all that the station can give; a caution if
   * not, because the vehicle must then ask for less).
   *
   * @param pack the pack
   * @param emptiest emptiest state in which it is connected, as cold as it gets
   * @return the checks
   */
  public List<Check> checks(Pack pack, PackState emptiest) {
    Source plate = Source.dataSheet(name);
    List<Check> checks = new ArrayList<>();
    checks.add(
        voltageCheck(pack, "charging.station-start", "empty at rest against the lowest output")
            .source(plate)
            .atLeast(
                Figure.of(pack.openCircuitVoltage(emptiest), VOLT),
                Figure.of(voltages.lowest(), VOLT)));
    checks.add(
        voltageCheck(pack, "charging.station-end", "end of charge against the highest output")
            .source(plate)
            .atMost(Figure.of(pack.maximumVoltage(), VOLT), Figure.of(voltages.highest(), VOLT)));
    PackModel.Bound takes = PackModel.of(pack).at(emptiest);
    checks.add(
        Check.named("charging.station-current", name + " at its largest against what cells take")
            .source(plate)
            .basis(pack.basis(CellProperty.CURRENT))
            .note(
                Figure.ofSi(takes.currentA(), AMPERE)
                    + " taken at "
                    + emptiest
                    + ", "
                    + Direction.CHARGE)
            .recommends(Kind.CURRENT.siValueOf(maximumCurrent) <= takes.currentA()));
    return List.copyOf(checks);
  }

  private CheckBuilder voltageCheck(Pack pack, String code, String what) {
    return Check.named(code, what + " of " + name)
        .basis(pack.basis(CellProperty.VOLTAGE))
        .cautionBand(org.wattwright.check.CautionBand.NONE);
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof DcStation that
        && name.equals(that.name)
        && voltages.equals(that.voltages)
        && maximumCurrent.equals(that.maximumCurrent)
        && maximumPower.equals(that.maximumPower)
        && Objects.equals(efficiency, that.efficiency);
  }

  @Override
  public int hashCode() {
    return Objects.hash(name, voltages, maximumCurrent, maximumPower, efficiency);
  }

  /**
   * Name, power, current and voltages.
   *
   * @return for example {@code station (50 kW, 125 A, 200 V … 500 V)}
   */
  @Override
  public String toString() {
    return name + " (" + maximumPower + ", " + maximumCurrent + ", " + voltages + ")";
  }
}
