package org.wattwright.charging;

import javax.measure.Quantity;
import javax.measure.quantity.Time;
import org.wattwright.battery.Direction;
import org.wattwright.battery.Limit;
import org.wattwright.battery.Pack;
import org.wattwright.battery.PackState;
import org.wattwright.battery.PowerLimit;
import org.wattwright.units.Kind;
import org.wattwright.units.Measures;
import org.wattwright.units.StateOfCharge;

/**
 * A pack under a charge that has flowed for long, as one source with one resistance: U = E + I·R.
 * Exact for strings that are alike; strings that differ are taken as all being charged.
 */
record PackModel(Pack pack, double capacityC) {
  /** Long against every polarisation and every pulse rating. */
  private static final Quantity<Time> LONG = Measures.days(365);

  static PackModel of(Pack pack) {
    return new PackModel(pack, Kind.CHARGE.siValueOf(pack.capacity()));
  }

  /**
   * A state.
   *
   * @param openCircuitV source voltage
   * @param ohm resistance, polarisation included
   * @param currentA largest charge current of the cells
   * @param limit what limits it
   */
  record Bound(double openCircuitV, double ohm, double currentA, Limit limit) {
    double voltageAt(double chargeA) {
      return openCircuitV + chargeA * ohm;
    }
  }

  Bound at(double soc, double temperatureK) {
    return at(PackState.of(StateOfCharge.of(soc), Kind.TEMPERATURE.ofSi(temperatureK)));
  }

  Bound at(PackState state) {
    PowerLimit limit = pack.maximumChargePower(state, LONG);
    double ohm = Kind.RESISTANCE.siValueOf(pack.resistance(state, Direction.CHARGE, LONG));
    double currentA = Kind.CURRENT.siValueOf(limit.current());
    double openCircuitV = Kind.VOLTAGE.siValueOf(limit.voltage()) - currentA * ohm;
    return new Bound(openCircuitV, ohm, currentA, limit.governing());
  }

  /** Heat of the reversible reaction, where known; negative where it cools. */
  double reversibleW(double soc, double temperatureK, double chargeA) {
    PackState state = PackState.of(StateOfCharge.of(soc), Kind.TEMPERATURE.ofSi(temperatureK));
    return pack.heat(state, Kind.CURRENT.ofSi(-chargeA))
        .reversible()
        .map(Kind.POWER::siValueOf)
        .orElse(0.0);
  }
}
