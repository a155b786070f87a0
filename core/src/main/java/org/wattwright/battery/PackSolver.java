package org.wattwright.battery;

import java.util.Collections;
import org.wattwright.check.Recorder;
import org.wattwright.units.Kind;

/**
 * A pack in one state some time after a current began, on plain doubles in SI: voltage, current,
 * power, limits. Reads its tables once.
 */
final class PackSolver {
  private final Pack pack;
  private final StringModel.State state;
  private final double durationS;
  private final Node node;

  PackSolver(Pack pack, StringModel.State state, double durationS) {
    this.pack = pack;
    this.state = state;
    this.durationS = durationS;
    this.node =
        Node.of(
            pack.models(),
            Collections.nCopies(pack.models().size(), state),
            durationS,
            Kind.RESISTANCE.siValueOf(pack.leadResistance()));
  }

  static PackSolver of(Pack pack, PackState state, double durationS) {
    return new PackSolver(pack, StringModel.State.of(state), durationS);
  }

  Load load(Direction direction) {
    return new Load(direction, durationS);
  }

  Pack pack() {
    return pack;
  }

  StringModel.State state() {
    return state;
  }

  Node strings() {
    return node;
  }

  double openCircuitV() {
    return node.voltageAt(0);
  }

  /** A limiting operating point; power and current as magnitudes. */
  record Bound(double powerW, double currentA, double voltageV, Limit limit) {}

  /** The largest power in one direction. */
  Bound bound(Direction direction, Recorder recorder) {
    boolean discharge = direction == Direction.DISCHARGE;
    StringBound tightest = tightestString(direction);
    double boundA = Math.max(0, tightest.packCurrentA());
    double usedA = discharge ? node.currentOfLargestPower(boundA) : boundA;
    double voltageV = node.terminalAt(discharge ? usedA : -usedA);
    Limit limit = usedA < boundA ? Limit.POWER_TRANSFER : tightest.limit();
    Bound found = new Bound(usedA * voltageV, usedA, voltageV, limit);
    if (recorder.isOn()) {
      PowerSteps.record(this, direction, found, recorder);
    }
    return found;
  }

  /** The limit of one string, and the current of the whole pack when that string is at it. */
  record StringBound(double packCurrentA, Limit limit) {}

  /**
   * Every string pins the node to one side of a voltage; the one that pins it hardest decides, and
   * that is the one at whose limit the pack carries least.
   */
  private StringBound tightestString(Direction direction) {
    double sign = direction == Direction.DISCHARGE ? 1 : -1;
    StringBound tightest = new StringBound(Double.POSITIVE_INFINITY, Limit.CURRENT);
    for (int k = 0; k < node.count(); k++) {
      if (k > 0 && pack.models().get(k) == pack.models().get(k - 1)) {
        continue;
      }
      StringModel.CurrentBound bound = stringBound(k, direction);
      double dropV = sign * bound.currentA() * node.resistanceOhm(k, direction);
      double packA = sign * node.currentAtDrop(k, dropV);
      if (packA < tightest.packCurrentA()) {
        tightest = new StringBound(packA, bound.limit());
      }
    }
    return tightest;
  }

  StringModel.CurrentBound stringBound(int k, Direction direction) {
    return pack.models().get(k).bound(state, load(direction));
  }
}
