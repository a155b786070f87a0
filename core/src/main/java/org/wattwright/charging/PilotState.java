package org.wattwright.charging;

import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricPotential;
import org.wattwright.units.Kind;
import org.wattwright.units.Measures;
import org.wattwright.voltage.VoltageRange;

/**
 * State of the control pilot, told by its positive peak voltage.
 *
 * <p>Source: IEC 61851-1 Annex A, SAE J1772. The tolerance of 1 V about the nominal voltage is from
 * memory; the windows of states B, C and D are those attributed to SAE J1772.
 */
public enum PilotState {
  /** No vehicle. */
  A("no vehicle", 12, Double.NaN, Double.NaN),
  /** Vehicle connected, not ready. */
  B("connected", 9, 8.36, 9.56),
  /** Vehicle ready: charging. */
  C("charging", 6, 5.48, 6.49),
  /** Vehicle ready, and asks for ventilation. */
  D("charging, ventilation", 3, 2.62, 3.25),
  /** Error: the pilot is short-circuited or without power. */
  E("error", 0, Double.NaN, Double.NaN),
  /** The supply is not available. */
  F("supply not available", -12, Double.NaN, Double.NaN);

  /** How far a voltage may lie from the nominal one; from memory of IEC 61851-1. */
  private static final double TOLERANCE_V = 1;

  private final String label;
  private final double nominalV;
  private final double lowV;
  private final double highV;

  PilotState(String label, double nominalV, double lowV, double highV) {
    this.label = label;
    this.nominalV = nominalV;
    this.lowV = lowV;
    this.highV = highV;
  }

  /**
   * The state of a voltage within 1 V of the nominal one.
   *
   * @param voltage positive peak of the pilot; the steady voltage in states E and F
   * @return empty between the states
   */
  public static Optional<PilotState> of(Quantity<ElectricPotential> voltage) {
    double voltageV = Kind.VOLTAGE.siValueOf(voltage);
    for (PilotState state : values()) {
      if (Math.abs(voltageV - state.nominalV) <= TOLERANCE_V) {
        return Optional.of(state);
      }
    }
    return Optional.empty();
  }

  /**
   * Nominal voltage.
   *
   * @return in V
   */
  public Quantity<ElectricPotential> nominalVoltage() {
    return Measures.volts(nominalV);
  }

  /**
   * The voltages SAE J1772 allows.
   *
   * @return empty for states A, E and F
   */
  public Optional<VoltageRange> window() {
    return Double.isNaN(lowV)
        ? Optional.empty()
        : Optional.of(VoltageRange.between(Measures.volts(lowV), Measures.volts(highV)));
  }

  /**
   * Whether the vehicle is ready to be charged.
   *
   * @return true in states C and D
   */
  public boolean isReady() {
    return this == C || this == D;
  }

  /**
   * The state in words.
   *
   * @return for example {@code C (charging)}
   */
  @Override
  public String toString() {
    return name() + " (" + label + ")";
  }
}
