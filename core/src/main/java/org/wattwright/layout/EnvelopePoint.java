package org.wattwright.layout;

import javax.measure.Quantity;
import javax.measure.quantity.ElectricPotential;
import org.wattwright.voltage.VoltageEnvelope;

/** A point of the voltage envelope that a device's window limits. */
enum EnvelopePoint {
  END_OF_CHARGE("end of charge", "U_end"),
  FULL_UNDER_CHARGE("full under charge", "U_full"),
  EMPTY_AT_REST("empty at rest", "U_empty"),
  EMPTY_UNDER_LOAD("empty, cold, loaded", "U_min");

  private final String label;
  private final String symbol;

  EnvelopePoint(String label, String symbol) {
    this.label = label;
    this.symbol = symbol;
  }

  String symbol() {
    return symbol;
  }

  Quantity<ElectricPotential> of(VoltageEnvelope envelope) {
    return switch (this) {
      case END_OF_CHARGE -> envelope.endOfCharge();
      case FULL_UNDER_CHARGE -> envelope.fullUnderCharge();
      case EMPTY_AT_REST -> envelope.emptyAtRest();
      case EMPTY_UNDER_LOAD -> envelope.emptyUnderLoad();
    };
  }

  @Override
  public String toString() {
    return label;
  }
}
