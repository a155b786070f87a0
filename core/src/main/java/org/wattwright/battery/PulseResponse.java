package org.wattwright.battery;

import java.io.Serializable;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricCharge;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.ElectricPotential;
import javax.measure.quantity.Energy;
import javax.measure.quantity.Time;
import org.jspecify.annotations.Nullable;
import org.wattwright.internal.Require;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;
import org.wattwright.units.Measure;
import org.wattwright.units.Measures;
import org.wattwright.units.WorkshopUnits;

/**
 * A rested cell, module or pack under a current pulse, and how it recovers.
 *
 * <p>During the pulse U = OCV − I·R₀ − I·R₁·(1 − e^(−t/τ)); after it U = OCV − U₁·e^(−t/τ), with U₁
 * the voltage on the RC pair at its end. Without an RC pair R₁ is 0. The open-circuit voltage is
 * held: meant for pulses that move little charge, see {@link #chargeMoved()}.
 *
 * <p>Source: first-order equivalent circuit, for example G. L. Plett, Battery Management Systems,
 * vol. I (2015). Immutable and thread-safe.
 */
public final class PulseResponse implements Serializable {
  private static final long serialVersionUID = 1L;

  private final Circuit circuit;
  private final double currentA;
  private final double durationS;

  private PulseResponse(Circuit circuit, double currentA, double durationS) {
    this.circuit = circuit;
    this.currentA = currentA;
    this.durationS = durationS;
  }

  /** Source, series resistances by direction, and the RC pair; tauS is infinite without a pair. */
  record Circuit(
      double openCircuitV, double dischargeOhm, double chargeOhm, double pairOhm, double tauS)
      implements Serializable {
    /** A node whose cells stand as so many in series to one side by side. */
    static Circuit of(Node node, Cell cell, double cellsInSeriesPerParallel) {
      RcPair pair = cell.rcPair().orElse(null);
      return new Circuit(
          node.voltageAt(0),
          node.resistanceOhm(Direction.DISCHARGE),
          node.resistanceOhm(Direction.CHARGE),
          pair == null
              ? 0
              : Kind.RESISTANCE.siValueOf(pair.resistance()) * cellsInSeriesPerParallel,
          pair == null ? Double.POSITIVE_INFINITY : Kind.TIME.siValueOf(pair.timeConstant()));
    }

    double seriesOhm(double currentA) {
      return currentA >= 0 ? dischargeOhm : chargeOhm;
    }

    /** Share of its final voltage that the pair has reached. */
    double risen(double timeS) {
      return -Math.expm1(-timeS / tauS);
    }
  }

  static PulseResponse of(
      Circuit circuit, Quantity<ElectricCurrent> current, Quantity<Time> duration) {
    return new PulseResponse(
        circuit,
        Kind.CURRENT.siValueOf(current),
        Require.quantity("PulseResponse.duration", duration, WorkshopUnits.SECOND).positive());
  }

  /**
   * Voltage during the pulse.
   *
   * @param sinceStart from 0 s, just after the current began, to the duration of the pulse
   * @return in V
   * @throws InvalidInputException if the time is outside the pulse
   */
  public Quantity<ElectricPotential> voltageDuring(Quantity<Time> sinceStart) {
    double timeS =
        Require.quantity("PulseResponse.sinceStart", sinceStart, WorkshopUnits.SECOND)
            .nonNegative();
    if (!(timeS <= durationS)) {
      throw InvalidInputException.of(
          "PulseResponse.sinceStart",
          "≤ the duration " + duration(),
          Measure.from(sinceStart, Kind.TIME).toString());
    }
    return Kind.VOLTAGE.ofSi(
        circuit.openCircuitV() - currentA * circuit.seriesOhm(currentA) - pairV(timeS));
  }

  /**
   * Voltage after the pulse.
   *
   * @param sinceEnd from 0 s, just after the current stopped
   * @return in V
   * @throws InvalidInputException if the time is negative
   */
  public Quantity<ElectricPotential> voltageAfter(Quantity<Time> sinceEnd) {
    double timeS =
        Require.quantity("PulseResponse.sinceEnd", sinceEnd, WorkshopUnits.SECOND).nonNegative();
    return Kind.VOLTAGE.ofSi(
        circuit.openCircuitV() - pairV(durationS) * Math.exp(-timeS / circuit.tauS()));
  }

  /**
   * Voltage at the end of the pulse, current still flowing.
   *
   * @return in V
   */
  public Quantity<ElectricPotential> voltageAtEnd() {
    return voltageDuring(duration());
  }

  private double pairV(double timeS) {
    return currentA * circuit.pairOhm() * circuit.risen(timeS);
  }

  /**
   * Duration of the pulse.
   *
   * @return in s
   */
  public Quantity<Time> duration() {
    return Kind.TIME.ofSi(durationS);
  }

  /**
   * Heat in the series resistance: I²·R₀·t.
   *
   * @return in kW·h
   */
  public Quantity<Energy> seriesHeat() {
    return Kind.ENERGY.ofSi(currentA * currentA * circuit.seriesOhm(currentA) * durationS);
  }

  /**
   * Heat in the RC pair during the pulse: I²·R₁·(t − 2·τ·(1 − e^(−t/τ)) + (τ/2)·(1 − e^(−2t/τ))).
   *
   * @return in kW·h; what is still stored turns to heat later, see {@link #heatAfter()}
   */
  public Quantity<Energy> polarisationHeat() {
    if (circuit.pairOhm() == 0) {
      return Kind.ENERGY.ofSi(0);
    }
    double tauS = circuit.tauS();
    double effectiveS =
        durationS - 2 * tauS * circuit.risen(durationS) + tauS / 2 * circuit.risen(2 * durationS);
    return Kind.ENERGY.ofSi(currentA * currentA * circuit.pairOhm() * effectiveS);
  }

  /**
   * Heat in the RC pair after the pulse: what its capacitance has stored, C₁·U₁²/2.
   *
   * @return in kW·h
   */
  public Quantity<Energy> heatAfter() {
    if (circuit.pairOhm() == 0) {
      return Kind.ENERGY.ofSi(0);
    }
    double voltageV = pairV(durationS);
    return Kind.ENERGY.ofSi(circuit.tauS() / circuit.pairOhm() * voltageV * voltageV / 2);
  }

  /**
   * Charge that the pulse moves; small against the capacity if the held voltage is to be true.
   *
   * @return positive on discharge, in A·h
   */
  public Quantity<ElectricCharge> chargeMoved() {
    return Kind.CHARGE.ofSi(currentA * durationS);
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof PulseResponse that
        && circuit.equals(that.circuit)
        && currentA == that.currentA
        && durationS == that.durationS;
  }

  @Override
  public int hashCode() {
    return Objects.hash(circuit, currentA, durationS);
  }

  /**
   * Current, duration and the voltages at start and end.
   *
   * @return for example {@code 27.62 A for 60 s: 3.486 V falling to 3.448 V}
   */
  @Override
  public String toString() {
    return Measures.format(Kind.CURRENT.ofSi(currentA), Kind.CURRENT)
        + " for "
        + Measures.format(duration(), Kind.TIME)
        + ": "
        + Measures.format(voltageDuring(Kind.TIME.ofSi(0)), Kind.VOLTAGE)
        + (currentA >= 0 ? " falling to " : " rising to ")
        + Measures.format(voltageAtEnd(), Kind.VOLTAGE);
  }
}
