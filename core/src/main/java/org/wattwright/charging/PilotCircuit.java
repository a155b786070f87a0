package org.wattwright.charging;

import java.io.Serializable;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricPotential;
import javax.measure.quantity.ElectricResistance;
import org.wattwright.internal.Require;
import org.wattwright.units.Kind;
import org.wattwright.units.Measure;
import org.wattwright.units.Measures;
import org.wattwright.units.WorkshopUnits;

/**
 * What a vehicle hangs on the control pilot: a resistance behind a diode, fed with 12 V through 1
 * kΩ.
 *
 * <p>U = U_d + (12 V − U_d)·R/(R + 1 kΩ). Source: IEC 61851-1 Annex A, SAE J1772 (12 V and 1 kΩ);
 * the divider is a law of physics. Immutable and thread-safe.
 *
 * @param resistance between diode and earth, ≥ 0 Ω
 * @param diodeDrop forward voltage of the diode, 0 V to 12 V
 */
public record PilotCircuit(
    Quantity<ElectricResistance> resistance, Quantity<ElectricPotential> diodeDrop)
    implements Serializable {
  private static final double SOURCE_V = 12;
  private static final double SOURCE_OHM = 1000;

  /** Usual forward voltage of a silicon diode; common practice. */
  private static final Quantity<ElectricPotential> SILICON = Measures.volts(0.7);

  /**
   * Checks the ranges.
   *
   * @param resistance ≥ 0 Ω
   * @param diodeDrop 0 V to 12 V
   * @throws org.wattwright.units.InvalidInputException if a value is outside its range
   */
  public PilotCircuit {
    Require.quantity("PilotCircuit.resistance", resistance, WorkshopUnits.OHM).nonNegative();
    Require.quantity("PilotCircuit.diodeDrop", diodeDrop, WorkshopUnits.VOLT).between(0, SOURCE_V);
    resistance = Measure.from(resistance, Kind.RESISTANCE);
    diodeDrop = Measure.from(diodeDrop, Kind.VOLTAGE);
  }

  /**
   * A resistance behind a silicon diode that drops 0.7 V.
   *
   * @param resistance ≥ 0 Ω, such as 2.74 kΩ for state B
   * @return the circuit
   * @throws org.wattwright.units.InvalidInputException if negative
   */
  public static PilotCircuit of(Quantity<ElectricResistance> resistance) {
    return new PilotCircuit(resistance, SILICON);
  }

  /**
   * This circuit with a second resistance switched in parallel: R·R₂/(R + R₂).
   *
   * @param other &gt; 0 Ω, such as 1.3 kΩ to change from state B to C
   * @return a new circuit
   * @throws org.wattwright.units.InvalidInputException if not positive
   */
  public PilotCircuit inParallelWith(Quantity<ElectricResistance> other) {
    double otherOhm =
        Require.quantity("PilotCircuit.parallel", other, WorkshopUnits.OHM).positive();
    double ohm = Kind.RESISTANCE.siValueOf(resistance);
    return new PilotCircuit(Measures.ohms(ohm * otherOhm / (ohm + otherOhm)), diodeDrop);
  }

  /**
   * Positive peak voltage of the pilot.
   *
   * @return in V
   */
  public Quantity<ElectricPotential> voltage() {
    double ohm = Kind.RESISTANCE.siValueOf(resistance);
    double dropV = Kind.VOLTAGE.siValueOf(diodeDrop);
    return Kind.VOLTAGE.ofSi(dropV + (SOURCE_V - dropV) * ohm / (ohm + SOURCE_OHM));
  }

  /**
   * The state a charging point reads.
   *
   * @return empty between the states
   */
  public Optional<PilotState> state() {
    return PilotState.of(voltage());
  }

  /**
   * Resistance, voltage and state.
   *
   * @return for example {@code 2.74 kΩ: 8.979 V, B (connected)}
   */
  @Override
  public String toString() {
    String read = state().map(PilotState::toString).orElse("between the states");
    return Measures.format(resistance, Kind.RESISTANCE)
        + ": "
        + Measures.format(voltage(), Kind.VOLTAGE)
        + ", "
        + read;
  }
}
