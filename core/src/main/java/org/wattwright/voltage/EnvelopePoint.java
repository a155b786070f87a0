package org.wattwright.voltage;

import javax.measure.Quantity;
import javax.measure.quantity.ElectricPotential;
import org.wattwright.units.Kind;
import org.wattwright.units.StateOfCharge;

/** A voltage of the pack that one end of a device's window must cover. */
public enum EnvelopePoint {
  /** Every cell at its end-of-charge voltage, at rest. */
  END_OF_CHARGE("end of charge", "U_end") {
    @Override
    public Quantity<ElectricPotential> of(VoltageEnvelope envelope) {
      return envelope.endOfCharge();
    }

    @Override
    double atV(EnvelopeSolver solver, StateOfCharge stateOfCharge) {
      return solver.endOfChargeV(stateOfCharge);
    }
  },

  /** The highest: end of charge, or regeneration into the full pack if that is more. */
  UNDER_CHARGE("full under charge", "U_max") {
    @Override
    public Quantity<ElectricPotential> of(VoltageEnvelope envelope) {
      return envelope.fullUnderCharge();
    }

    @Override
    double atV(EnvelopeSolver solver, StateOfCharge stateOfCharge) {
      return Math.max(solver.endOfChargeV(stateOfCharge), solver.regeneratingV(stateOfCharge));
    }
  },

  /** Emptiest and coldest, without load. */
  EMPTY_AT_REST("empty at rest", "U_empty") {
    @Override
    public Quantity<ElectricPotential> of(VoltageEnvelope envelope) {
      return envelope.emptyAtRest();
    }

    @Override
    double atV(EnvelopeSolver solver, StateOfCharge stateOfCharge) {
      return solver.coldAtRestV(stateOfCharge);
    }
  },

  /** The lowest: emptiest and coldest under the peak load. */
  UNDER_LOAD("empty, cold, loaded", "U_min") {
    @Override
    public Quantity<ElectricPotential> of(VoltageEnvelope envelope) {
      return envelope.emptyUnderLoad();
    }

    @Override
    double atV(EnvelopeSolver solver, StateOfCharge stateOfCharge) {
      return solver.peakLoad(stateOfCharge).voltageV();
    }
  };

  private final String label;
  private final String symbol;

  EnvelopePoint(String label, String symbol) {
    this.label = label;
    this.symbol = symbol;
  }

  /**
   * Symbol in worksheets.
   *
   * @return for example {@code U_min}
   */
  public String symbol() {
    return symbol;
  }

  /**
   * This point of an envelope.
   *
   * @param envelope of a pack
   * @return its voltage
   */
  public abstract Quantity<ElectricPotential> of(VoltageEnvelope envelope);

  double inV(VoltageEnvelope envelope) {
    return Kind.VOLTAGE.siValueOf(of(envelope));
  }

  /** This point with one state of charge in place of the fullest or the emptiest. */
  abstract double atV(EnvelopeSolver solver, StateOfCharge stateOfCharge);

  /**
   * The point in words.
   *
   * @return for example {@code empty, cold, loaded}
   */
  @Override
  public String toString() {
    return label;
  }
}
