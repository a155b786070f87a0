package org.wattwright.battery;

import java.io.Serializable;
import java.util.NavigableSet;
import java.util.Set;
import java.util.TreeSet;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegrator;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegratorFactory;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.wattwright.check.Recorder;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.StateOfCharge;

/**
 * Integrates a discharge over the state of charge, piece by piece between the points of the tables,
 * so that every piece is smooth. The error bound is the difference to a rule of half the order.
 */
final class EnergySolver {
  private static final int POINTS = 8;
  private static final int CHECK_POINTS = 4;

  /** Looks into each piece for a limit that is met and left again. */
  private static final int PROBES_PER_PIECE = 8;

  private static final double ROOT_TOLERANCE = 1e-13;
  private static final int MOST_EVALUATIONS = 200;

  /** Rounding must not refuse the very load that the limit itself names. */
  private static final double ROUNDING = 1e-12;

  private final Pack pack;
  private final double temperatureK;
  private final Discharge discharge;
  private final GaussIntegratorFactory rules = new GaussIntegratorFactory();

  private EnergySolver(Pack pack, double temperatureK, Discharge discharge) {
    this.pack = pack;
    this.temperatureK = temperatureK;
    this.discharge = discharge;
  }

  static EnergySolver atPower(Pack pack, double temperatureK, double powerW) {
    return new EnergySolver(pack, temperatureK, new AtPower(powerW));
  }

  static EnergySolver atCurrent(Pack pack, double temperatureK, double currentA) {
    return new EnergySolver(pack, temperatureK, new AtCurrent(currentA));
  }

  /** A discharge: the current in a state, and how far the limit is away. */
  private interface Discharge {
    double currentA(PackSolver solver);

    /** Positive while the limit is kept. */
    double reserve(PackSolver.Bound bound);
  }

  private record AtPower(double powerW) implements Discharge {
    @Override
    public double currentA(PackSolver solver) {
      return solver.strings().currentAtPower(powerW);
    }

    @Override
    public double reserve(PackSolver.Bound bound) {
      return bound.powerW() / powerW - 1 + ROUNDING;
    }
  }

  private record AtCurrent(double currentA) implements Discharge {
    @Override
    public double currentA(PackSolver solver) {
      return currentA;
    }

    @Override
    public double reserve(PackSolver.Bound bound) {
      return bound.currentA() / currentA - 1 + ROUNDING;
    }
  }

  /** What has come out so far. */
  record Sum(double openCircuitJ, double energyJ, double timeS, double errorJ)
      implements Serializable {
    static final Sum NOTHING = new Sum(0, 0, 0, 0);

    Sum plus(Sum other) {
      return new Sum(
          openCircuitJ + other.openCircuitJ,
          energyJ + other.energyJ,
          timeS + other.timeS,
          errorJ + other.errorJ);
    }

    double heatJ() {
      return openCircuitJ - energyJ;
    }
  }

  EnergyResult between(StateOfCharge from, StateOfCharge to, Recorder recorder) {
    if (!(to.fraction() < from.fraction())) {
      throw InvalidInputException.of("to", "< from " + from, to.toString());
    }
    EnergyResult result = run(from.fraction(), to.fraction());
    if (recorder.isOn()) {
      EnergySteps.record(pack, from, result, recorder);
    }
    return result;
  }

  private EnergyResult run(double from, double to) {
    Sum sum = Sum.NOTHING;
    double upper = from;
    for (double lower : probes(from, to).descendingSet().tailSet(from, false)) {
      double end = feasibleDownTo(upper, lower);
      sum = sum.plus(piece(upper, end));
      if (end > lower) {
        return new EnergyResult(sum, end, boundAt(end).limit());
      }
      upper = lower;
    }
    return new EnergyResult(sum, to, null);
  }

  /** Points of all tables, and evenly spaced probes between them. */
  private NavigableSet<Double> probes(double from, double to) {
    TreeSet<Double> points = new TreeSet<>(Set.of(from, to));
    for (StateOfCharge point : pack.tablePoints()) {
      if (point.fraction() > to && point.fraction() < from) {
        points.add(point.fraction());
      }
    }
    TreeSet<Double> probed = new TreeSet<>(points);
    double previous = points.first();
    for (double point : points) {
      for (int i = 1; i < PROBES_PER_PIECE; i++) {
        probed.add(previous + (point - previous) * i / PROBES_PER_PIECE);
      }
      previous = point;
    }
    return probed;
  }

  /** The lowest state of charge of a piece down to which the limit is kept. */
  private double feasibleDownTo(double upper, double lower) {
    if (!(reserveAt(upper) >= 0)) {
      return upper;
    }
    if (reserveAt(lower) >= 0) {
      return lower;
    }
    return new BrentSolver(ROOT_TOLERANCE).solve(MOST_EVALUATIONS, this::reserveAt, lower, upper);
  }

  private double reserveAt(double soc) {
    return discharge.reserve(boundAt(soc));
  }

  private PackSolver.Bound boundAt(double soc) {
    return solverAt(soc).bound(Direction.DISCHARGE, Recorder.OFF);
  }

  private PackSolver solverAt(double soc) {
    return new PackSolver(pack, new StringModel.State(soc, temperatureK), Double.POSITIVE_INFINITY);
  }

  /** dt = Q·ds/I, dE = U·Q·ds, heat = (OCV − U)·Q·ds. */
  private Sum piece(double upper, double lower) {
    if (!(upper > lower)) {
      return Sum.NOTHING;
    }
    Sum fine = integral(rules.legendre(POINTS, lower, upper));
    Sum coarse = integral(rules.legendre(CHECK_POINTS, lower, upper));
    double errorJ = Math.abs(fine.energyJ() - coarse.energyJ());
    return new Sum(fine.openCircuitJ(), fine.energyJ(), fine.timeS(), errorJ);
  }

  private Sum integral(GaussIntegrator rule) {
    Sum sum = Sum.NOTHING;
    for (int i = 0; i < rule.getNumberOfPoints(); i++) {
      PackSolver solver = solverAt(rule.getPoint(i));
      double chargeC = pack.capacityC() * rule.getWeight(i);
      double currentA = discharge.currentA(solver);
      sum =
          sum.plus(
              new Sum(
                  solver.openCircuitV() * chargeC,
                  solver.strings().terminalAt(currentA) * chargeC,
                  chargeC / currentA,
                  0));
    }
    return sum;
  }
}
