package org.wattwright.charging;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wattwright.units.StateOfCharge;

/**
 * Integrates a charge over the state of charge: dt/ds = Q/I, dT/ds = (dT/dt)·Q/I, energies
 * likewise.
 *
 * <p>Explicit Runge–Kutta steps of order 5 with an embedded order 4 (J. Dormand, P. Prince, J.
 * Comput. Appl. Math. 6 (1980) 19). A step counts only if one limit governs in all its stages; else
 * it is halved, until the change of limit is enclosed in a step of 10⁻¹² of the capacity. So no
 * step crosses an event, and no limit is overshot. The target is met by the last step, the time
 * allowed to 10⁻⁹ of it.
 */
final class ChargeRun {
  private static final double EVENT_WIDTH = 1e-12;
  private static final double LARGEST_STEP = 0.01;
  private static final double TOLERANCE = 1e-10;
  private static final double TEMPERATURE_TOLERANCE_K = 1e-7;
  private static final double TIME_TOLERANCE = 1e-9;
  private static final double SAFETY = 0.9;
  private static final double LEAST_FACTOR = 0.2;
  private static final double MOST_FACTOR = 5;
  private static final double ORDER = 5;

  /** Nodes and weights of the method, row by row. */
  private static final double[][] STAGES = {
    {1.0 / 5},
    {3.0 / 40, 9.0 / 40},
    {44.0 / 45, -56.0 / 15, 32.0 / 9},
    {19372.0 / 6561, -25360.0 / 2187, 64448.0 / 6561, -212.0 / 729},
    {9017.0 / 3168, -355.0 / 33, 46732.0 / 5247, 49.0 / 176, -5103.0 / 18656},
    {35.0 / 384, 0, 500.0 / 1113, 125.0 / 192, -2187.0 / 6784, 11.0 / 84}
  };

  private static final double[] NODES = {1.0 / 5, 3.0 / 10, 4.0 / 5, 8.0 / 9, 1, 1};

  /** Difference of the two orders. */
  private static final double[] ERROR = {
    71.0 / 57600, 0, -71.0 / 16695, 71.0 / 1920, -17253.0 / 339200, 22.0 / 525, -1.0 / 40
  };

  /** Time, temperature, energy from the mains, at the terminals, lost in the pack. */
  private static final int SIZE = 5;

  private static final int TERMINAL = 3;

  private final ChargeKernel kernel;
  private final double targetSoc;
  private final double longestS;
  private final double capacityC;

  /** Points of the pack's tables; no step crosses one. */
  private final double[] knots;

  private final List<State> states = new ArrayList<>();

  /** Where a charge has come to; energies in J since its start. */
  static final class State {
    private final double soc;
    private final double[] sums;
    private final ChargeKernel.Moment moment;

    State(double soc, double[] sums, ChargeKernel.Moment moment) {
      this.soc = soc;
      this.sums = sums;
      this.moment = moment;
    }

    double soc() {
      return soc;
    }

    ChargeKernel.Moment moment() {
      return moment;
    }

    double timeS() {
      return sums[0];
    }

    double temperatureK() {
      return sums[1];
    }

    double wallJ() {
      return sums[2];
    }

    double terminalJ() {
      return sums[3];
    }

    double heatJ() {
      return sums[4];
    }
  }

  /** The states from first to last, and why it ended. */
  record Course(List<State> states, ChargeEnd end) {
    State first() {
      return states.get(0);
    }

    State last() {
      return states.get(states.size() - 1);
    }
  }

  /** The state a step leads to, and its error as a multiple of what is tolerated. */
  private record Attempt(State state, double error) {}

  ChargeRun(ChargeKernel kernel, double targetSoc, double longestS) {
    this.kernel = kernel;
    this.targetSoc = targetSoc;
    this.longestS = longestS;
    this.capacityC = kernel.pack().capacityC();
    this.knots =
        kernel.pack().pack().tablePoints().stream().mapToDouble(StateOfCharge::fraction).toArray();
  }

  Course run(double fromSoc, double temperatureK) {
    double[] sums = new double[SIZE];
    sums[1] = temperatureK;
    State state = new State(fromSoc, sums, kernel.at(fromSoc, temperatureK));
    states.add(state);
    double step = LARGEST_STEP;
    ChargeEnd end = endOf(state);
    while (end == null) {
      step = Math.min(Math.min(step, LARGEST_STEP), stopAfter(state.soc()) - state.soc());
      Attempt attempt = attempt(state, step);
      if (attempt == null) {
        if (step > EVENT_WIDTH) {
          step /= 2;
          continue;
        }
        state = jump(state, step);
        step = LARGEST_STEP;
      } else if (attempt.state().timeS() > longestS * (1 + TIME_TOLERANCE)) {
        step *= shareOfTime(state, attempt);
        continue;
      } else if (attempt.error() > 1 && step > EVENT_WIDTH) {
        step *= factor(attempt.error());
        continue;
      } else {
        state = attempt.state();
        step *= factor(attempt.error());
      }
      states.add(state);
      end = endOf(state);
    }
    return new Course(List.copyOf(states), end);
  }

  private double socAfter(State state, double step) {
    double stopSoc = stopAfter(state.soc());
    double next = state.soc() + step;
    return step >= stopSoc - state.soc() || next > stopSoc ? stopSoc : next;
  }

  /** The next point of a table, or the target. */
  private double stopAfter(double soc) {
    for (double knot : knots) {
      if (knot > soc) {
        return Math.min(knot, targetSoc);
      }
    }
    return targetSoc;
  }

  private double shareOfTime(State state, Attempt attempt) {
    return (longestS - state.timeS()) / (attempt.state().timeS() - state.timeS());
  }

  private static double factor(double error) {
    double wanted = error == 0 ? MOST_FACTOR : SAFETY * Math.pow(error, -1 / ORDER);
    return Math.max(LEAST_FACTOR, Math.min(MOST_FACTOR, wanted));
  }

  private @Nullable ChargeEnd endOf(State state) {
    if (state.soc() >= targetSoc) {
      return ChargeEnd.TARGET;
    }
    if (state.moment().ended()) {
      return ChargeEnd.END_CURRENT;
    }
    if (state.moment().isBlocked()) {
      return ChargeEnd.BLOCKED;
    }
    return state.timeS() >= longestS * (1 - TIME_TOLERANCE) ? ChargeEnd.TIME : null;
  }

  /** Across an event, with the slopes before it. */
  private State jump(State state, double step) {
    double[] slopes = slopes(state.soc(), state.temperatureK(), state.moment());
    double[] sums = state.sums.clone();
    for (int i = 0; i < SIZE; i++) {
      sums[i] += step * slopes[i];
    }
    double soc = socAfter(state, step);
    return new State(soc, sums, kernel.at(soc, sums[1]));
  }

  /** A step, or null if another limit governs in one of its stages. */
  private @Nullable Attempt attempt(State state, double step) {
    double[][] slopes = new double[NODES.length + 1][];
    slopes[0] = slopes(state.soc(), state.temperatureK(), state.moment());
    double[] sums = state.sums;
    ChargeKernel.Moment moment = state.moment();
    for (int stage = 0; stage < NODES.length; stage++) {
      sums = sumsAt(state, step, slopes, STAGES[stage]);
      double soc = NODES[stage] == 1 ? socAfter(state, step) : state.soc() + NODES[stage] * step;
      moment = kernel.at(soc, sums[1]);
      if (!moment.isLike(state.moment())) {
        return null;
      }
      slopes[stage + 1] = slopes(soc, sums[1], moment);
    }
    State next = new State(socAfter(state, step), sums, moment);
    return new Attempt(next, errorOf(sums, step, slopes));
  }

  private static double[] sumsAt(State state, double step, double[][] slopes, double[] weights) {
    double[] sums = state.sums.clone();
    for (int i = 0; i < SIZE; i++) {
      double mean = 0;
      for (int k = 0; k < weights.length; k++) {
        mean += weights[k] * slopes[k][i];
      }
      sums[i] += step * mean;
    }
    return sums;
  }

  /** The largest error of time, temperature and energies, as a multiple of what is tolerated. */
  private static double errorOf(double[] sums, double step, double[][] slopes) {
    double energyJ = TOLERANCE * Math.max(sums[TERMINAL], step * slopes[0][TERMINAL]);
    double timeS = TOLERANCE * Math.max(sums[0], step * slopes[0][0]);
    double[] tolerable = {timeS, TEMPERATURE_TOLERANCE_K, energyJ, energyJ, energyJ};
    double largest = 0;
    for (int i = 0; i < SIZE; i++) {
      double error = 0;
      for (int k = 0; k < ERROR.length; k++) {
        error += step * ERROR[k] * slopes[k][i];
      }
      double multiple = Math.abs(error) / tolerable[i];
      largest = multiple > largest ? multiple : largest; // passes over an unknown draw, NaN
    }
    return largest;
  }

  private double[] slopes(double soc, double temperatureK, ChargeKernel.Moment moment) {
    double timeS = capacityC / moment.currentA();
    return new double[] {
      timeS,
      timeS * kernel.warmingKPerS(soc, temperatureK, moment),
      timeS * moment.wallW(),
      timeS * moment.terminalW(),
      timeS * moment.heatW()
    };
  }
}
