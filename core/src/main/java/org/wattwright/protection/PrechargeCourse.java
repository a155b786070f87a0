package org.wattwright.protection;

import static org.wattwright.units.WorkshopUnits.JOULE;
import static org.wattwright.units.WorkshopUnits.SECOND;
import static org.wattwright.units.WorkshopUnits.VOLT;

import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.ElectricPotential;
import javax.measure.quantity.Energy;
import javax.measure.quantity.Power;
import javax.measure.quantity.Time;
import org.wattwright.internal.Require;
import org.wattwright.profile.Profile;
import org.wattwright.units.JouleIntegral;
import org.wattwright.units.Kind;
import org.wattwright.units.Measures;

/**
 * One pre-charge from an empty bus with exact values: voltage, current and energy against time.
 *
 * <p>u = U∞·(1 − e^(−t/τ)); without loads U∞ = U and τ = R·C. Source: circuit theory. Immutable and
 * thread-safe.
 */
public final class PrechargeCourse {
  private static final int PLOT_STEPS = 200;

  private final PrechargeKernel kernel;
  private final double targetV;

  PrechargeCourse(PrechargeKernel kernel, double targetV) {
    this.kernel = kernel;
    this.targetV = targetV;
  }

  /**
   * Whether the bus reaches the voltage at which the contactor may close.
   *
   * @return false if a load keeps it below
   */
  public boolean completes() {
    return kernel.timeToS(targetV) < Double.POSITIVE_INFINITY;
  }

  /**
   * Time until the contactor may close.
   *
   * @return in s; empty if it never completes
   */
  public Optional<Quantity<Time>> timeToTarget() {
    return timeTo(VOLT.of(targetV));
  }

  /**
   * Time until the bus has a voltage.
   *
   * @param voltage ≥ 0 V
   * @return in s; empty if it never has
   * @throws org.wattwright.units.InvalidInputException if negative
   */
  public Optional<Quantity<Time>> timeTo(Quantity<ElectricPotential> voltage) {
    double busV = Require.quantity("PrechargeCourse.voltage", voltage, VOLT).nonNegative();
    double timeS = kernel.timeToS(busV);
    return timeS < Double.POSITIVE_INFINITY ? Optional.of(SECOND.of(timeS)) : Optional.empty();
  }

  /**
   * Voltage that the bus tends to.
   *
   * @return U∞ in V
   */
  public Quantity<ElectricPotential> finalVoltage() {
    return Kind.VOLTAGE.ofSi(kernel.finalV());
  }

  /**
   * Time constant.
   *
   * @return τ in s
   */
  public Quantity<Time> timeConstant() {
    return Kind.TIME.ofSi(kernel.timeConstantS());
  }

  /**
   * Voltage of the bus after a time.
   *
   * @param time ≥ 0 s
   * @return in V
   * @throws org.wattwright.units.InvalidInputException if negative
   */
  public Quantity<ElectricPotential> voltageAt(Quantity<Time> time) {
    return Kind.VOLTAGE.ofSi(kernel.voltageAtV(seconds(time)));
  }

  private static double seconds(Quantity<Time> time) {
    return Require.quantity("PrechargeCourse.time", time, SECOND).nonNegative();
  }

  /**
   * Current at the start, the highest: U/R.
   *
   * @return in A
   */
  public Quantity<ElectricCurrent> peakCurrent() {
    return Kind.CURRENT.ofSi(kernel.sourceV() / kernel.totalOhm());
  }

  /**
   * Power in the resistor at the start, the highest; it stays if the bus is shorted.
   *
   * @return in kW
   */
  public Quantity<Power> peakPower() {
    return Kind.POWER.ofSi(peakPowerW());
  }

  double peakPowerW() {
    double currentA = kernel.sourceV() / kernel.totalOhm();
    return currentA * currentA * kernel.resistorOhm();
  }

  double energyToTargetJ() {
    return kernel.resistorEnergyJ(kernel.timeToS(targetV));
  }

  double energyJ(double timeS) {
    return kernel.resistorEnergyJ(timeS);
  }

  double timeToTargetS() {
    return kernel.timeToS(targetV);
  }

  /**
   * Energy in the resistor from the start to a time; without loads it tends to ½·C·U².
   *
   * @param time ≥ 0 s
   * @return in J
   * @throws org.wattwright.units.InvalidInputException if negative
   */
  public Quantity<Energy> resistorEnergy(Quantity<Time> time) {
    return JOULE.of(kernel.resistorEnergyJ(seconds(time)));
  }

  /**
   * Energy that the pack gives from the start to a time.
   *
   * @param time ≥ 0 s
   * @return in J
   * @throws org.wattwright.units.InvalidInputException if negative
   */
  public Quantity<Energy> packEnergy(Quantity<Time> time) {
    return JOULE.of(kernel.sourceEnergyJ(seconds(time)));
  }

  /**
   * Joule integral from the start to a time, for the fuse of the pre-charge branch.
   *
   * @param time ≥ 0 s
   * @return in A²s
   * @throws org.wattwright.units.InvalidInputException if negative
   */
  public Quantity<JouleIntegral> jouleIntegral(Quantity<Time> time) {
    return Kind.JOULE_INTEGRAL.ofSi(kernel.jouleIntegralA2S(seconds(time)));
  }

  /**
   * Voltage of the bus against time, for a plot.
   *
   * @param duration &gt; 0 s
   * @return 200 straight pieces
   * @throws org.wattwright.units.InvalidInputException if not positive
   */
  public Profile<ElectricPotential> voltage(Quantity<Time> duration) {
    return Profile.sampled(Kind.VOLTAGE, duration, PLOT_STEPS, this::voltageAt);
  }

  /**
   * Time to the target, or the voltage at which it stays.
   *
   * @return for example {@code closes after 0.12 s} or {@code never closes: stays at 370 V}
   */
  @Override
  public String toString() {
    return timeToTarget()
        .map(time -> "closes after " + Measures.format(time, Kind.TIME))
        .orElseGet(() -> "never closes: stays at " + Measures.format(finalVoltage(), Kind.VOLTAGE));
  }
}
