package org.wattwright.voltage;

import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Time;
import org.wattwright.battery.Pack;
import org.wattwright.battery.PackState;
import org.wattwright.battery.PowerLimit;
import org.wattwright.units.Kind;

/**
 * The power at which what is drawn first meets what the device takes at the voltage that is left.
 *
 * <p>Current rises from 0 while terminal voltage falls along straight pieces (one piece if all
 * strings are alike); on each piece {@link DeratedTake} solves the meeting in closed form.
 */
final class AvailablePower {
  /** Far above rounding, far below any bend that matters. */
  private static final double STRAIGHT = 1e-12;

  private final Pack pack;
  private final Device device;
  private final Quantity<Time> duration;
  private final DeratedTake take;
  private final double ratedA;

  AvailablePower(Pack pack, Device device, Quantity<Time> duration) {
    this.pack = pack;
    this.device = device;
    this.duration = duration;
    this.take =
        new DeratedTake(
            device.window(),
            device.maximumPower().map(Kind.POWER::siValueOf).orElse(Double.POSITIVE_INFINITY));
    this.ratedA =
        device.maximumCurrent().map(Kind.CURRENT::siValueOf).orElse(Double.POSITIVE_INFINITY);
  }

  PowerPoint at(PackState state) {
    PowerLimit limit = pack.maximumDischargePower(state, duration);
    double packA = Kind.CURRENT.siValueOf(limit.current());
    double mostA = Math.min(packA, ratedA);
    Optional<DeratedTake.Stop> stop =
        firstStop(state, new Line(0, voltageV(state, 0), mostA, voltageV(state, mostA)), mostA);
    double currentA = stop.map(DeratedTake.Stop::currentA).orElse(mostA);
    double voltageV = voltageV(state, currentA);
    // The pack's own figure, so that rounding never promises more.
    double powerW = Math.min(currentA * voltageV, Kind.POWER.siValueOf(limit.power()));
    return new PowerPoint(
        state, Kind.POWER.ofSi(powerW), Kind.VOLTAGE.ofSi(voltageV), reason(stop, limit));
  }

  private String reason(Optional<DeratedTake.Stop> stop, PowerLimit limit) {
    if (stop.isPresent()) {
      String what = stop.get().byWindow() ? "voltage window of " : "power of ";
      return what + device.name();
    }
    return Kind.CURRENT.siValueOf(limit.current()) <= ratedA
        ? limit.governing().toString()
        : "current of " + device.name();
  }

  /** Halves the range until the voltage is straight over it; the lower half comes first. */
  private Optional<DeratedTake.Stop> firstStop(PackState state, Line line, double mostA) {
    double middleA = (line.fromA() + line.toA()) / 2;
    double middleV = voltageV(state, middleA);
    double bendV = Math.abs(middleV - (line.fromV() + line.toV()) / 2);
    boolean tiny = line.toA() - line.fromA() <= STRAIGHT * mostA;
    if (tiny || bendV <= STRAIGHT * Math.abs(line.fromV())) {
      return take.firstStop(line);
    }
    Optional<DeratedTake.Stop> lower =
        firstStop(state, new Line(line.fromA(), line.fromV(), middleA, middleV), mostA);
    return lower.isPresent()
        ? lower
        : firstStop(state, new Line(middleA, middleV, line.toA(), line.toV()), mostA);
  }

  private double voltageV(PackState state, double currentA) {
    return Kind.VOLTAGE.siValueOf(
        pack.terminalVoltage(state, Kind.CURRENT.ofSi(currentA), duration));
  }

  /** Terminal voltage over a range of current, straight. */
  record Line(double fromA, double fromV, double toA, double toV) {
    double resistanceOhm() {
      return toA > fromA ? (fromV - toV) / (toA - fromA) : 0;
    }

    /** Current at a voltage, on the line drawn on in both directions. */
    double currentAtA(double voltageV) {
      return fromA + (fromV - voltageV) / resistanceOhm();
    }
  }
}
