package org.wattwright.battery;

import java.util.NavigableSet;
import java.util.Set;
import java.util.TreeSet;
import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegrator;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegratorFactory;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.jspecify.annotations.Nullable;
import org.wattwright.check.Recorder;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.StateOfCharge;

/**
 * Integrates a discharge over the state of charge, piece by piece between the points of the tables,
 * so that every piece is smooth. The error bound is the difference to a rule of half the order.
 */
final class EnergySolver {
  private static final int POINTS = 16;
  private static final int CHECK_POINTS = 8;

  /** Looks into each piece for a limit that is met and left again. */
  private static final int PROBES_PER_PIECE = 8;

  private static final double ROOT_TOLERANCE = 1e-13;
  private static final int MOST_EVALUATIONS = 200;

  private final Pack pack;
  private final double temperatureK;
  private final GaussIntegratorFactory rules = new GaussIntegratorFactory();

  EnergySolver(Pack pack, double temperatureK) {
    this.pack = pack;
    this.temperatureK = temperatureK;
  }

  /** What has come out so far. */
  record Sum(double energyJ, double heatJ, double timeS, double errorJ) {
    static final Sum NOTHING = new Sum(0, 0, 0, 0);

    Sum plus(Sum other) {
      return new Sum(
          energyJ + other.energyJ, heatJ + other.heatJ, timeS + other.timeS, errorJ + other.errorJ);
    }
  }

  /** A discharge: the current at a state of charge, and how far the limit is away. */
  private interface Discharge {
    double currentA(PackSolver solver);

    /** Positive while the limit is kept. */
    double reserve(PackSolver.Bound bound);
  }

  EnergyResult atPower(double powerW, StateOfCharge from, StateOfCharge to) {
    return run(
        new Discharge() {
          @Override
          public double currentA(PackSolver solver) {
            return solver.currentA(powerW, Double.POSITIVE_INFINITY);
          }

          @Override
          public double reserve(PackSolver.Bound bound) {
            return bound.powerW() / powerW - 1;
          }
        },
        from.fraction(),
        to.fraction());
  }

  EnergyResult atCurrent(double currentA, StateOfCharge from, StateOfCharge to) {
    return run(
        new Discharge() {
          @Override
          public double currentA(PackSolver solver) {
            return currentA;
          }

          @Override
          public double reserve(PackSolver.Bound bound) {
            return bound.currentA() / currentA - 1;
          }
        },
        from.fraction(),
        to.fraction());
  }

  private EnergyResult run(Discharge discharge, double from, double to) {
    if (!(to < from)) {
      throw InvalidInputException.of(
          "to", "< from " + StateOfCharge.of(from), StateOfCharge.of(to).toString());
    }
    Sum sum = Sum.NOTHING;
    double upper = from;
    for (double lower : breakpoints(from, to).descendingSet()) {
      if (lower == from) {
        continue;
      }
      double end = feasibleDownTo(discharge, upper, lower);
      sum = sum.plus(piece(discharge, upper, end));
      if (end > lower) {
        return new EnergyResult(sum, end, limitAt(end));
      }
      upper = lower;
    }
    return new EnergyResult(sum, to, null);
  }

  /** Points of all tables, and evenly spaced probes between them. */
  private NavigableSet<Double> breakpoints(double from, double to) {
    TreeSet<Double> points = new TreeSet<>();
    points.add(from);
    points.add(to);
    for (SeriesString string : pack.strings()) {
      for (SeriesString.Group group : string.groups()) {
        Cell cell = group.module().cell();
        addInside(points, cell.openCircuit().table().rowAxis(), from, to);
        addInside(points, cell.resistance(Direction.DISCHARGE).table().rowAxis(), from, to);
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

  private static void addInside(Set<Double> points, double[] axis, double from, double to) {
    for (double soc : axis) {
      if (soc > to && soc < from) {
        points.add(soc);
      }
    }
  }

  /** The lowest state of charge of a piece down to which the limit is kept. */
  private double feasibleDownTo(Discharge discharge, double upper, double lower) {
    if (reserveAt(discharge, upper) < 0) {
      return upper;
    }
    if (reserveAt(discharge, lower) >= 0) {
      return lower;
    }
    return new BrentSolver(ROOT_TOLERANCE)
        .solve(MOST_EVALUATIONS, soc -> reserveAt(discharge, soc), lower, upper);
  }

  private double reserveAt(Discharge discharge, double soc) {
    return discharge.reserve(boundAt(soc));
  }

  private @Nullable Limit limitAt(double soc) {
    return boundAt(soc).limit();
  }

  private PackSolver.Bound boundAt(double soc) {
    return new PackSolver(pack, soc, temperatureK)
        .bound(Load.continuous(Direction.DISCHARGE), Recorder.OFF);
  }

  /** dt = Q·ds/I, dE = U·I·dt, heat = (OCV − U)·I·dt. */
  private Sum piece(Discharge discharge, double upper, double lower) {
    if (!(upper > lower)) {
      return Sum.NOTHING;
    }
    double capacityC = pack.capacityC();
    UnivariateFunction timePerSoc =
        soc -> capacityC / discharge.currentA(new PackSolver(pack, soc, temperatureK));
    UnivariateFunction voltage =
        soc -> {
          PackSolver solver = new PackSolver(pack, soc, temperatureK);
          return solver.terminalV(discharge.currentA(solver), Double.POSITIVE_INFINITY);
        };
    UnivariateFunction openCircuit = soc -> new PackSolver(pack, soc, temperatureK).openCircuitV();
    GaussIntegrator fine = rules.legendre(POINTS, lower, upper);
    double energyJ = capacityC * fine.integrate(voltage);
    double coarseJ = capacityC * rules.legendre(CHECK_POINTS, lower, upper).integrate(voltage);
    double openCircuitJ = capacityC * fine.integrate(openCircuit);
    return new Sum(
        energyJ, openCircuitJ - energyJ, fine.integrate(timePerSoc), Math.abs(energyJ - coarseJ));
  }
}
