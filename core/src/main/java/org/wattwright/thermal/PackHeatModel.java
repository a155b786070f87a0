package org.wattwright.thermal;

import java.io.Serializable;
import javax.measure.Quantity;
import javax.measure.quantity.Power;
import org.wattwright.battery.Heat;
import org.wattwright.battery.Pack;
import org.wattwright.battery.PackState;
import org.wattwright.units.Kind;
import org.wattwright.units.StateOfCharge;

/**
 * A pack as one lump in SI doubles: heat capacity, conductance to surroundings and to a stream.
 *
 * @param capacityJPerK heat capacity
 * @param airWPerK conductance to the surroundings
 * @param airK temperature of the surroundings
 * @param streamWPerK conductance to the stream's inlet; 0 without a stream
 * @param streamK inlet temperature of the stream
 */
record PackHeatModel(
    Pack pack,
    double capacityJPerK,
    double airWPerK,
    double airK,
    double streamWPerK,
    double streamK)
    implements Serializable {

  PackHeatModel withCapacity(double otherJPerK) {
    return new PackHeatModel(pack, otherJPerK, airWPerK, airK, streamWPerK, streamK);
  }

  PackHeatModel withPack(Pack other) {
    return new PackHeatModel(other, capacityJPerK, airWPerK, airK, streamWPerK, streamK);
  }

  double conductanceWPerK() {
    return airWPerK + streamWPerK;
  }

  double decayPerS() {
    return conductanceWPerK() / capacityJPerK;
  }

  /** What leaves the pack at a temperature. */
  double lossW(double temperatureK) {
    return airWPerK * (temperatureK - airK) + streamWPerK * (temperatureK - streamK);
  }

  /** The temperature at which nothing leaves; that of the surroundings if nothing can. */
  double sinkK() {
    return conductanceWPerK() > 0
        ? airK + streamWPerK / conductanceWPerK() * (streamK - airK)
        : airK;
  }

  double rateKPerS(double heatW, double temperatureK) {
    return (heatW - lossW(temperatureK)) / capacityJPerK;
  }

  Heat heat(double soc, double temperatureK, double currentA) {
    StateOfCharge charge = StateOfCharge.of(Math.max(0, Math.min(soc, 1)));
    PackState state = PackState.of(charge, Kind.TEMPERATURE.ofSi(temperatureK));
    return pack.heat(state, Kind.CURRENT.ofSi(currentA));
  }

  double heatW(double soc, double temperatureK, double currentA) {
    return Kind.POWER.siValueOf(heat(soc, temperatureK, currentA).total());
  }

  static double reversibleW(Heat heat) {
    Quantity<Power> none = Kind.POWER.ofSi(0);
    return Kind.POWER.siValueOf(heat.reversible().orElse(none));
  }

  double chargeC() {
    return Kind.CHARGE.siValueOf(pack.capacity());
  }
}
