package org.wattwright.voltage;

import org.wattwright.units.Kind;
import org.wattwright.units.StateOfCharge;

/** A voltage of the pack that one end of a device's window must cover. */
enum EnvelopePoint {
  END_OF_CHARGE {
    @Override
    double inV(VoltageEnvelope envelope) {
      return Kind.VOLTAGE.siValueOf(envelope.endOfCharge());
    }

    @Override
    double atV(EnvelopeSolver solver, StateOfCharge stateOfCharge) {
      return solver.endOfChargeV(stateOfCharge);
    }
  },
  UNDER_CHARGE {
    @Override
    double inV(VoltageEnvelope envelope) {
      return Kind.VOLTAGE.siValueOf(envelope.fullUnderCharge());
    }

    @Override
    double atV(EnvelopeSolver solver, StateOfCharge stateOfCharge) {
      return Math.max(solver.endOfChargeV(stateOfCharge), solver.regeneratingV(stateOfCharge));
    }
  },
  EMPTY_AT_REST {
    @Override
    double inV(VoltageEnvelope envelope) {
      return Kind.VOLTAGE.siValueOf(envelope.emptyAtRest());
    }

    @Override
    double atV(EnvelopeSolver solver, StateOfCharge stateOfCharge) {
      return solver.coldAtRestV(stateOfCharge);
    }
  },
  UNDER_LOAD {
    @Override
    double inV(VoltageEnvelope envelope) {
      return Kind.VOLTAGE.siValueOf(envelope.emptyUnderLoad());
    }

    @Override
    double atV(EnvelopeSolver solver, StateOfCharge stateOfCharge) {
      return solver.peakLoad(stateOfCharge).voltageV();
    }
  };

  /** This point of an envelope. */
  abstract double inV(VoltageEnvelope envelope);

  /** This point with one state of charge in place of the fullest or the emptiest. */
  abstract double atV(EnvelopeSolver solver, StateOfCharge stateOfCharge);
}
