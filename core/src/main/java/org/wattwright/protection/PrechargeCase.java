package org.wattwright.protection;

import org.wattwright.units.Kind;

/** A pre-charge resistor that suits a circuit and its contactor. */
record PrechargeCase(PrechargeResult result) {
  CircuitPart asPart() {
    PrechargeResistor resistor = result.resistor();
    return new CircuitPart(
        CircuitPart.Type.PRECHARGE_RESISTOR,
        resistor.name(),
        resistor.mass().map(Kind.MASS::siValueOf).orElse(null),
        resistor.price().orElse(null));
  }
}
