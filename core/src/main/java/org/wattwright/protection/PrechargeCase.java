package org.wattwright.protection;

/** A pre-charge resistor that suits a circuit and its contactor. */
record PrechargeCase(CircuitPart asPart) {}
