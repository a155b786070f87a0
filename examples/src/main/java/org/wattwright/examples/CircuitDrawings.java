package org.wattwright.examples;

import static org.wattwright.units.Measures.format;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import org.wattwright.conversion.Drawing;
import org.wattwright.examples.plot.LineSeriesPlot;
import org.wattwright.examples.plot.Point;
import org.wattwright.examples.plot.Series;
import org.wattwright.protection.CoverBand;
import org.wattwright.protection.CoverCurve;
import org.wattwright.protection.CoverMark;
import org.wattwright.protection.DesignedCircuit;
import org.wattwright.protection.PrechargeCourse;
import org.wattwright.protection.PrechargeResult;
import org.wattwright.units.Kind;
import org.wattwright.units.WorkshopUnits;

/** Drawings of a circuit: time against current of its protection, and its pre-charge. */
final class CircuitDrawings {
  private static final double SHORTEST_S = 1e-3;
  private static final double LONGEST_S = 1e4;
  private static final int STEPS = 60;

  private CircuitDrawings() {}

  /** What clears a fault, and what cable and contactor bear, on log–log paper. */
  static Drawing cover(DesignedCircuit each) {
    LineSeriesPlot plot = LineSeriesPlot.logarithmic("current [A]", "time [s]");
    double leastA = Double.POSITIVE_INFINITY;
    for (CoverMark mark : each.marks()) {
      leastA = Math.min(leastA, WorkshopUnits.AMPERE.valueOf(mark.current()));
    }
    for (CoverCurve curve : each.curves()) {
      List<Point> points = clipped(curve, leastA / 2);
      if (points.size() > 1) {
        plot = plot.series(Series.of(curve.label(), points));
      }
    }
    for (CoverMark mark : each.marks()) {
      plot =
          plot.verticalLimit(
              mark.label() + " " + format(mark.current(), Kind.CURRENT),
              WorkshopUnits.AMPERE.valueOf(mark.current()));
    }
    for (CoverBand gap : each.cover().gaps()) {
      plot =
          plot.gap(
              "nothing clears it",
              WorkshopUnits.AMPERE.valueOf(gap.from()),
              WorkshopUnits.AMPERE.valueOf(gap.to()));
    }
    String name = each.circuit().name();
    return new Drawing(
        plot.svg("cover-" + id(name)),
        "Time against current of " + name,
        "The fuse, slow end of its curve, stays below what cable and contactor bear wherever it"
            + " alone clears. "
            + (each.cover().isComplete() ? "No current is left open." : "Shaded: left open."));
  }

  static String id(String name) {
    String plain = name.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-");
    return plain.replaceAll("^-+|-+$", "");
  }

  /** The part of a curve inside the paper, cut where it leaves it. */
  private static List<Point> clipped(CoverCurve curve, double leastA) {
    List<Point> points = new ArrayList<>();
    List<Point> all =
        curve.points().stream()
            .map(
                p ->
                    new Point(
                        WorkshopUnits.AMPERE.valueOf(p.current()),
                        WorkshopUnits.SECOND.valueOf(p.time())))
            .filter(p -> p.x() > 0 && p.y() > 0)
            .toList();
    for (int i = 0; i < all.size(); i++) {
      Point point = all.get(i);
      if (i > 0) {
        addCut(points, all.get(i - 1), point);
      }
      if (isInside(point) && point.x() >= leastA) {
        points.add(point);
      }
    }
    points.removeIf(p -> p.x() < leastA);
    return points;
  }

  private static boolean isInside(Point point) {
    return point.y() >= SHORTEST_S && point.y() <= LONGEST_S;
  }

  /** Where a falling stretch crosses the edges of the paper. */
  private static void addCut(List<Point> points, Point from, Point to) {
    for (double edge : new double[] {LONGEST_S, SHORTEST_S}) {
      if (from.y() > edge && to.y() < edge) {
        double share = Math.log(from.y() / edge) / Math.log(from.y() / to.y());
        points.add(new Point(from.x() * Math.pow(to.x() / from.x(), share), edge));
      }
    }
  }

  /** Voltage of the bus, and below it the current, against time. */
  static List<Drawing> precharge(DesignedCircuit each) {
    PrechargeResult result = each.precharge().orElseThrow();
    PrechargeCourse slowest = result.slowest();
    double endS =
        slowest.timeToTarget().map(WorkshopUnits.SECOND::valueOf).orElse(5 * tauS(slowest)) * 1.5;
    LineSeriesPlot voltage = LineSeriesPlot.of("time [s]", "voltage of the bus [V]");
    LineSeriesPlot current = LineSeriesPlot.of("time [s]", "current of the resistor [A]");
    for (Course course :
        List.of(
            new Course("nominal", result.nominal()),
            new Course("slowest within tolerances", slowest),
            new Course("quickest within tolerances", result.quickest()))) {
      voltage = voltage.series(Series.of(course.name(), course.voltages(endS)));
      current = current.series(Series.of(course.name(), course.currents(endS)));
    }
    if (slowest.timeToTarget().isPresent()) {
      double atS = WorkshopUnits.SECOND.valueOf(slowest.timeToTarget().get());
      double volts = WorkshopUnits.VOLT.valueOf(slowest.voltageAt(slowest.timeToTarget().get()));
      voltage =
          voltage
              .horizontalLimit("contactor may close", volts)
              .mark(
                  "slowest, " + format(slowest.timeToTarget().get(), Kind.TIME),
                  new Point(atS, volts));
    }
    String of = " of " + each.circuit().name() + " through " + result.resistor().name();
    return List.of(
        new Drawing(
            voltage.svg("precharge-voltage"),
            "Pre-charge" + of + ", voltage",
            "The main contactor closes when what is missing drives no more than it may make."),
        new Drawing(
            current.svg("precharge-current"),
            "Pre-charge" + of + ", current",
            "Highest at the start, all of the pack's voltage across the resistor."));
  }

  private static double tauS(PrechargeCourse course) {
    return WorkshopUnits.SECOND.valueOf(course.timeConstant());
  }

  private record Course(String name, PrechargeCourse course) {
    List<Point> voltages(double endS) {
      return sampled(endS)
          .mapToObj(
              s ->
                  new Point(
                      s, WorkshopUnits.VOLT.valueOf(course.voltageAt(WorkshopUnits.SECOND.of(s)))))
          .toList();
    }

    /** Falls with the voltage that is missing, from the peak at the start. */
    List<Point> currents(double endS) {
      double peakA = WorkshopUnits.AMPERE.valueOf(course.peakCurrent());
      double finalV = WorkshopUnits.VOLT.valueOf(course.finalVoltage());
      return voltages(endS).stream()
          .map(p -> new Point(p.x(), peakA * (1 - p.y() / finalV)))
          .toList();
    }

    private static java.util.stream.DoubleStream sampled(double endS) {
      return IntStream.rangeClosed(0, STEPS).mapToDouble(i -> endS * i / STEPS);
    }
  }
}
