package org.wattwright.voltage;

import javax.measure.Quantity;
import javax.measure.quantity.Time;
import org.wattwright.battery.Pack;
import org.wattwright.battery.PackState;
import org.wattwright.battery.PowerLimit;
import org.wattwright.battery.PowerResult;
import org.wattwright.units.Kind;

/**
 * The power at which what the device takes at the sagging voltage meets what is drawn.
 *
 * <p>The voltage falls as power rises, and so does what the device takes at it on the lower slope
 * of its window, so the difference changes sign once; bisection finds it.
 */
final class AvailablePower {
  private static final double RELATIVE_TOLERANCE = 1e-9;

  private final Pack pack;
  private final Device device;
  private final Quantity<Time> duration;
  private final double ratedW;
  private final double ratedA;

  AvailablePower(Pack pack, Device device, Quantity<Time> duration) {
    this.pack = pack;
    this.device = device;
    this.duration = duration;
    this.ratedW = device.maximumPower().map(Kind.POWER::siValueOf).orElse(Double.POSITIVE_INFINITY);
    this.ratedA =
        device.maximumCurrent().map(Kind.CURRENT::siValueOf).orElse(Double.POSITIVE_INFINITY);
  }

  PowerPoint at(PackState state) {
    PowerLimit limit = pack.maximumDischargePower(state, duration);
    double mostW = Kind.POWER.siValueOf(limit.power());
    if (takenW(state, mostW) >= mostW) {
      return point(state, mostW, limit.governing().toString());
    }
    double lowW = 0;
    double highW = mostW;
    while (highW - lowW > RELATIVE_TOLERANCE * mostW) {
      double middleW = (lowW + highW) / 2;
      if (takenW(state, middleW) >= middleW) {
        lowW = middleW;
      } else {
        highW = middleW;
      }
    }
    return point(state, lowW, reason(voltageV(state, lowW)));
  }

  /** What the device would take at the voltage left while a power is drawn. */
  private double takenW(PackState state, double drawnW) {
    double voltageV = voltageV(state, drawnW);
    double derating = device.window().deratingAtV(voltageV);
    double byPowerW = derating == 0 ? 0 : ratedW * derating;
    return Math.min(byPowerW, derating == 0 ? 0 : ratedA * voltageV);
  }

  private double voltageV(PackState state, double powerW) {
    PowerResult result = pack.currentAtPower(state, Kind.POWER.ofSi(powerW), duration);
    return Kind.VOLTAGE.siValueOf(result.orElseThrow().voltage());
  }

  private String reason(double voltageV) {
    double derating = device.window().deratingAtV(voltageV);
    if (derating < 1) {
      return "voltage window of " + device.name();
    }
    return ratedA * voltageV < ratedW ? "current of " + device.name() : "power of " + device.name();
  }

  private PowerPoint point(PackState state, double powerW, String limitedBy) {
    return new PowerPoint(
        state, Kind.POWER.ofSi(powerW), Kind.VOLTAGE.ofSi(voltageV(state, powerW)), limitedBy);
  }
}
