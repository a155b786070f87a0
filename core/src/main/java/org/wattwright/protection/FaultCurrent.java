package org.wattwright.protection;

import static org.wattwright.units.WorkshopUnits.AMPERE;
import static org.wattwright.units.WorkshopUnits.AMPERE_SQUARED_SECOND;
import static org.wattwright.units.WorkshopUnits.HENRY;
import static org.wattwright.units.WorkshopUnits.OHM;
import static org.wattwright.units.WorkshopUnits.SECOND;
import static org.wattwright.units.WorkshopUnits.VOLT;

import java.io.Serializable;
import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.ElectricInductance;
import javax.measure.quantity.ElectricPotential;
import javax.measure.quantity.ElectricResistance;
import javax.measure.quantity.Energy;
import javax.measure.quantity.Time;
import org.jspecify.annotations.Nullable;
import org.wattwright.check.Basis;
import org.wattwright.internal.Require;
import org.wattwright.units.JouleIntegral;
import org.wattwright.units.Kind;
import org.wattwright.units.Measures;

/**
 * Short-circuit current of a battery against time: it rises through the loop's inductance to the
 * prospective current.
 *
 * <p>I∞ = U/R; τ = L/R; i = I∞·(1 − e^(−t/τ)); ∫i²dt = I∞²·[t − 2τ(1 − e^(−t/τ)) + (τ/2)(1 −
 * e^(−2t/τ))]. Voltage and resistance are held: the battery does not sag further while the fault
 * lasts. L may be 0. Source: circuit theory.
 *
 * <p>Immutable and thread-safe.
 */
public final class FaultCurrent implements Serializable {
  private static final long serialVersionUID = 1L;

  private final double voltageV;
  private final double resistanceOhm;
  private final double inductanceH;
  private final Basis basis;
  private final List<String> estimates;

  FaultCurrent(Loop loop, Basis basis, List<String> estimates) {
    this.voltageV = loop.voltageV();
    this.resistanceOhm = loop.resistanceOhm();
    this.inductanceH = loop.inductanceH();
    this.basis = basis;
    this.estimates = List.copyOf(estimates);
  }

  /** The three numbers that make a fault. */
  record Loop(double voltageV, double resistanceOhm, double inductanceH) {}

  /**
   * From the three numbers of the loop; {@link FaultLoop} finds them part by part.
   *
   * @param drivingVoltage open-circuit voltage less arc voltage, &gt; 0 V
   * @param resistance of the whole loop, &gt; 0 Ω
   * @param inductance of the whole loop, ≥ 0 H
   * @return the current
   * @throws org.wattwright.units.InvalidInputException if an argument is outside its range
   */
  public static FaultCurrent of(
      Quantity<ElectricPotential> drivingVoltage,
      Quantity<ElectricResistance> resistance,
      Quantity<ElectricInductance> inductance) {
    Loop loop =
        new Loop(
            Require.quantity("FaultCurrent.drivingVoltage", drivingVoltage, VOLT).positive(),
            Require.quantity("FaultCurrent.resistance", resistance, OHM).positive(),
            Require.quantity("FaultCurrent.inductance", inductance, HENRY).nonNegative());
    return new FaultCurrent(loop, Basis.DATA_SHEET, List.of());
  }

  /**
   * The current after a long time, that of a loop without inductance.
   *
   * @return I∞ in A
   */
  public Quantity<ElectricCurrent> prospective() {
    return Kind.CURRENT.ofSi(prospectiveA());
  }

  /**
   * Time constant of the rise.
   *
   * @return τ = L/R in s; 0 s without inductance
   */
  public Quantity<Time> timeConstant() {
    return Kind.TIME.ofSi(timeConstantS());
  }

  /**
   * What drives the current.
   *
   * @return open-circuit voltage less arc voltage, in V
   */
  public Quantity<ElectricPotential> drivingVoltage() {
    return Kind.VOLTAGE.ofSi(voltageV);
  }

  /**
   * Resistance of the loop.
   *
   * @return in Ω
   */
  public Quantity<ElectricResistance> resistance() {
    return Kind.RESISTANCE.ofSi(resistanceOhm);
  }

  /**
   * Inductance of the loop.
   *
   * @return in H
   */
  public Quantity<ElectricInductance> inductance() {
    return Kind.INDUCTANCE.ofSi(inductanceH);
  }

  /**
   * Current some time after the fault began; it never falls, so that this is also the peak up to
   * then.
   *
   * @param time since the fault began, ≥ 0 s
   * @return i(t) in A
   * @throws org.wattwright.units.InvalidInputException if negative
   */
  public Quantity<ElectricCurrent> at(Quantity<Time> time) {
    return Kind.CURRENT.ofSi(currentA(timeS(time)));
  }

  /**
   * Joule integral from the beginning of the fault.
   *
   * @param time since the fault began, ≥ 0 s
   * @return ∫i²dt in A²s
   * @throws org.wattwright.units.InvalidInputException if negative
   */
  public Quantity<JouleIntegral> jouleIntegralUntil(Quantity<Time> time) {
    return Kind.JOULE_INTEGRAL.ofSi(jouleIntegralA2S(timeS(time)));
  }

  /**
   * Time at which a joule integral is reached, such as the one that melts a fuse.
   *
   * @param integral ≥ 0 A²s
   * @return in s; longer than I²t/I∞² by up to 1.5 τ
   * @throws org.wattwright.units.InvalidInputException if negative
   */
  public Quantity<Time> timeToReach(Quantity<JouleIntegral> integral) {
    return Kind.TIME.ofSi(
        timeToReachS(
            Require.quantity("FaultCurrent.jouleIntegral", integral, AMPERE_SQUARED_SECOND)
                .nonNegative()));
  }

  /**
   * Energy in the loop's magnetic field at the prospective current, which the arc must absorb.
   *
   * @return ½·L·I∞² in J
   */
  public Quantity<Energy> magneticEnergy() {
    return org.wattwright.units.WorkshopUnits.JOULE.of(
        inductanceH * prospectiveA() * prospectiveA() / 2);
  }

  /**
   * What the current rests on.
   *
   * @return the weakest basis of the loop's parts
   */
  public Basis basis() {
    return basis;
  }

  /**
   * The parts of the loop that are estimated.
   *
   * @return their names, as checks print them; empty if there is none
   */
  public List<String> estimates() {
    return estimates;
  }

  private static double timeS(Quantity<Time> time) {
    return Require.quantity("FaultCurrent.time", time, SECOND).nonNegative();
  }

  /** The same fault through more resistance, so that only this much flows in the end. */
  FaultCurrent limitedTo(double currentA) {
    Loop loop = new Loop(voltageV, voltageV / currentA, inductanceH);
    return new FaultCurrent(loop, basis, estimates);
  }

  double prospectiveA() {
    return voltageV / resistanceOhm;
  }

  double timeConstantS() {
    return inductanceH / resistanceOhm;
  }

  double currentA(double timeS) {
    return InductiveRise.currentA(prospectiveA(), timeConstantS(), timeS);
  }

  double jouleIntegralA2S(double timeS) {
    return InductiveRise.jouleIntegralA2S(prospectiveA(), timeConstantS(), timeS);
  }

  double timeToReachS(double integralA2S) {
    return InductiveRise.timeS(prospectiveA(), timeConstantS(), integralA2S);
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof FaultCurrent that
        && voltageV == that.voltageV
        && resistanceOhm == that.resistanceOhm
        && inductanceH == that.inductanceH
        && basis == that.basis
        && estimates.equals(that.estimates);
  }

  @Override
  public int hashCode() {
    return Objects.hash(voltageV, resistanceOhm, inductanceH, basis);
  }

  /**
   * Prospective current and time constant.
   *
   * @return for example {@code 6290 A, τ = 312 µs}
   */
  @Override
  public String toString() {
    String mark = basis == Basis.ESTIMATED ? ", estimated" : "";
    return Measures.format(AMPERE.of(prospectiveA()), Kind.CURRENT)
        + ", τ = "
        + Measures.format(timeConstant(), Kind.TIME)
        + mark;
  }
}
