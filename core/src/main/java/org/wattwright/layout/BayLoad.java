package org.wattwright.layout;

import org.wattwright.units.Kind;
import org.wattwright.vehicle.Axle;
import org.wattwright.vehicle.LoadState;
import org.wattwright.vehicle.Side;
import org.wattwright.vehicle.WheelLoads;

/**
 * What something puts on the vehicle: mass, axle loads, wheel loads, and the moment of its height.
 * NaN where not known. Wheels in the order front left, front right, rear left, rear right.
 */
final class BayLoad {
  private final double massKg;
  private final double frontKg;
  private final double[] wheelKg;
  private final double heightKgM;

  /** Takes the array over. */
  BayLoad(double massKg, double frontKg, double[] wheelKg, double heightKgM) {
    this.massKg = massKg;
    this.frontKg = frontKg;
    this.wheelKg = wheelKg;
    this.heightKgM = heightKgM;
  }

  double massKg() {
    return massKg;
  }

  double frontKg() {
    return frontKg;
  }

  double wheelKg(int wheel) {
    return wheelKg[wheel];
  }

  /** Moment about the ground. */
  double heightKgM() {
    return heightKgM;
  }

  /** The vehicle before any module is in. */
  static BayLoad of(LoadState state) {
    double[] wheels = {Double.NaN, Double.NaN, Double.NaN, Double.NaN};
    if (state.wheels().isPresent()) {
      WheelLoads loads = state.wheels().get();
      for (int i = 0; i < 4; i++) {
        wheels[i] = Kind.MASS.siValueOf(loads.on(axle(i), side(i)));
      }
    }
    return new BayLoad(
        Kind.MASS.siValueOf(state.total()),
        Kind.MASS.siValueOf(state.axles().front()),
        wheels,
        Double.NaN);
  }

  static Axle axle(int wheel) {
    return wheel < 2 ? Axle.FRONT : Axle.REAR;
  }

  static Side side(int wheel) {
    return wheel % 2 == 0 ? Side.LEFT : Side.RIGHT;
  }

  double rearKg() {
    return massKg - frontKg;
  }

  double leftMinusRightKg() {
    return wheelKg[0] - wheelKg[1] + wheelKg[2] - wheelKg[3];
  }
}
