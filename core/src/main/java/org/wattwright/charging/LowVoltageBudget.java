package org.wattwright.charging;

import static org.wattwright.units.WorkshopUnits.HOUR;
import static org.wattwright.units.WorkshopUnits.VOLT;
import static org.wattwright.units.WorkshopUnits.WATT;

import java.io.Serializable;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.ElectricPotential;
import javax.measure.quantity.Power;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import org.jspecify.annotations.Nullable;
import org.wattwright.check.Basis;
import org.wattwright.check.Check;
import org.wattwright.check.Figure;
import org.wattwright.check.Worksheet;
import org.wattwright.internal.Require;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;
import org.wattwright.units.Measure;

/**
 * What the low-voltage system takes: on the road on average, with everything on, at the peak, with
 * the key off; and how far the battery carries it when the converter stops.
 *
 * <p>Currents turn into powers, and powers into currents, at the voltage the converter holds.
 *
 * <pre>{@code
 * LowVoltageBudget budget = LowVoltageBudget.of(loads, battery, volts(13.8)).recharge(hours(2));
 * budget.requiredPower();
 * budget.checks(converter, celsius(50), new LowVoltageTargets(minutes(30), days(21)));
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 */
public final class LowVoltageBudget implements Serializable {
  private static final long serialVersionUID = 1L;

  private final List<LowVoltageLoad> loads;
  private final LowVoltageBattery battery;
  private final Quantity<ElectricPotential> voltage;
  private final @Nullable Quantity<Time> recharge;

  private LowVoltageBudget(
      List<LowVoltageLoad> loads,
      LowVoltageBattery battery,
      Quantity<ElectricPotential> voltage,
      @Nullable Quantity<Time> recharge) {
    this.loads = loads;
    this.battery = battery;
    this.voltage = voltage;
    this.recharge = recharge;
  }

  /**
   * A budget.
   *
   * @param loads at least one
   * @param battery the low-voltage battery
   * @param voltage that the converter holds, &gt; 0 V
   * @return the budget
   * @throws InvalidInputException if there is no load or the voltage is not positive
   */
  public static LowVoltageBudget of(
      List<LowVoltageLoad> loads, LowVoltageBattery battery, Quantity<ElectricPotential> voltage) {
    Require.quantity("LowVoltageBudget.voltage", voltage, VOLT).positive();
    return new LowVoltageBudget(
        Require.nonEmpty("LowVoltageBudget.loads", loads),
        Objects.requireNonNull(battery, "battery"),
        Measure.from(voltage, Kind.VOLTAGE),
        null);
  }

  /**
   * This budget with the battery's usable charge put back in a time, on the road.
   *
   * @param time &gt; 0 h
   * @return a new budget
   * @throws InvalidInputException if not positive
   */
  public LowVoltageBudget recharge(Quantity<Time> time) {
    Require.quantity("LowVoltageBudget.recharge", time, HOUR).positive();
    return new LowVoltageBudget(loads, battery, voltage, Measure.from(time, Kind.TIME));
  }

  /**
   * The loads.
   *
   * @return an immutable list
   */
  public List<LowVoltageLoad> loads() {
    return loads;
  }

  /**
   * The battery.
   *
   * @return the low-voltage battery
   */
  public LowVoltageBattery battery() {
    return battery;
  }

  /**
   * Voltage the converter holds.
   *
   * @return &gt; 0 V
   */
  public Quantity<ElectricPotential> voltage() {
    return voltage;
  }

  /**
   * Power of what is on all the time: Σ U·I with a duty of 1.
   *
   * @return in kW
   */
  public Quantity<Power> continuousPower() {
    double currentA =
        loads.stream()
            .filter(load -> load.duty() == 1)
            .mapToDouble(load -> load.onA(voltageV()))
            .sum();
    return Kind.POWER.ofSi(currentA * voltageV());
  }

  /**
   * Average power on the road: Σ duty·U·I.
   *
   * @return in kW
   */
  public Quantity<Power> meanPower() {
    return Kind.POWER.ofSi(meanA() * voltageV());
  }

  /**
   * Power with everything on: Σ U·I.
   *
   * @return in kW
   */
  public Quantity<Power> allOnPower() {
    return Kind.POWER.ofSi(allOnA() * voltageV());
  }

  /**
   * Power at the peak: everything on, and the load with the largest surge at its peak.
   *
   * @return in kW
   */
  public Quantity<Power> peakPower() {
    return Kind.POWER.ofSi(peakA() * voltageV());
  }

  /**
   * Power that a converter must give for as long as the vehicle drives: the average, and what puts
   * the battery's usable charge back in the time stated.
   *
   * @return in kW
   */
  public Quantity<Power> requiredPower() {
    return Kind.POWER.ofSi((meanA() + rechargeA()) * voltageV());
  }

  /**
   * The converter of least rated power that gives what is required.
   *
   * @param candidates any order, at least one
   * @param temperature by which they derate
   * @return empty if none does
   * @throws InvalidInputException if there is no candidate
   */
  public Optional<DcDcConverter> smallestOf(
      List<DcDcConverter> candidates, Quantity<Temperature> temperature) {
    double requiredW = Kind.POWER.siValueOf(requiredPower());
    return Require.nonEmpty("LowVoltageBudget.candidates", candidates).stream()
        .filter(c -> Kind.POWER.siValueOf(c.outputPowerAt(temperature)) >= requiredW)
        .min(Comparator.comparingDouble(c -> Kind.POWER.siValueOf(c.maximumOutputPower())));
  }

  /**
   * Current with the key off and everything asleep.
   *
   * @return ≥ 0 A
   */
  public Quantity<ElectricCurrent> keyOffCurrent() {
    return Kind.CURRENT.ofSi(keyOffA());
  }

  /**
   * Time parked until the usable charge of the battery is gone: what is drawn before everything
   * sleeps is taken off first. Self-discharge is not counted.
   *
   * @return 0 s if it is gone before; empty if nothing is drawn asleep
   */
  public Optional<Quantity<Time>> parkedUntilFlat() {
    double leftC = battery.usableC() - awakeC();
    if (leftC <= 0) {
      return Optional.of(Kind.TIME.ofSi(0));
    }
    return keyOffA() > 0 ? Optional.of(Kind.TIME.ofSi(leftC / keyOffA())) : Optional.empty();
  }

  /**
   * Current of the essential loads, their duty counted.
   *
   * @return ≥ 0 A
   */
  public Quantity<ElectricCurrent> essentialCurrent() {
    return Kind.CURRENT.ofSi(essentialA());
  }

  /**
   * Time the battery alone carries the essential loads when the converter has stopped.
   *
   * @return empty if no load is marked essential
   */
  public Optional<Quantity<Time>> holdUp() {
    return essentialA() > 0 ? Optional.of(battery.holds(essentialCurrent())) : Optional.empty();
  }

  /**
   * Whether a converter and the battery serve.
   *
   * <p>Codes {@code charging.converter-power}, {@code charging.converter-peak} (what the battery
   * must add at the peak), {@code charging.converter-voltage} (the loads stand what it holds),
   * {@code charging.hold-up} (safety: light until the vehicle is off the road), {@code
   * charging.parked} (days until the usable charge is gone).
   *
   * @param converter the converter
   * @param temperature by which it derates
   * @param targets what is asked for
   * @return the checks
   */
  public List<Check> checks(
      DcDcConverter converter, Quantity<Temperature> temperature, LowVoltageTargets targets) {
    return new LowVoltageChecks(this, converter, temperature, targets).all();
  }

  /**
   * The working of the budget.
   *
   * @return the steps as computed
   */
  public Worksheet worksheet() {
    return LowVoltageSheet.of(this);
  }

  double voltageV() {
    return Kind.VOLTAGE.siValueOf(voltage);
  }

  double meanA() {
    return loads.stream().mapToDouble(load -> load.duty() * load.onA(voltageV())).sum();
  }

  double allOnA() {
    return loads.stream().mapToDouble(load -> load.onA(voltageV())).sum();
  }

  double peakA() {
    double surgeA =
        loads.stream()
            .mapToDouble(load -> load.peakA(voltageV()) - load.onA(voltageV()))
            .max()
            .orElseThrow();
    return allOnA() + surgeA;
  }

  double rechargeA() {
    return recharge == null ? 0 : battery.usableC() / Kind.TIME.siValueOf(recharge);
  }

  Optional<Quantity<Time>> rechargeTime() {
    return Optional.ofNullable(recharge);
  }

  double keyOffA() {
    return loads.stream().mapToDouble(LowVoltageLoad::asleepA).sum();
  }

  double awakeC() {
    return loads.stream().mapToDouble(LowVoltageLoad::awakeC).sum();
  }

  double essentialA() {
    return loads.stream()
        .filter(LowVoltageLoad::isEssential)
        .mapToDouble(load -> load.duty() * load.onA(voltageV()))
        .sum();
  }

  Basis basis() {
    return loads.stream().map(LowVoltageLoad::basis).reduce(Basis.MEASURED, Basis::and);
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof LowVoltageBudget that
        && loads.equals(that.loads)
        && battery.equals(that.battery)
        && voltage.equals(that.voltage)
        && Objects.equals(recharge, that.recharge);
  }

  @Override
  public int hashCode() {
    return Objects.hash(loads, battery, voltage, recharge);
  }

  /**
   * Average, everything on, peak.
   *
   * @return for example {@code 182 W on average, 410 W all on, 560 W at the peak}
   */
  @Override
  public String toString() {
    return Figure.of(meanPower(), WATT)
        + " on average, "
        + Figure.of(allOnPower(), WATT)
        + " all on, "
        + Figure.of(peakPower(), WATT)
        + " at the peak";
  }
}
