package org.wattwright.protection;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.Time;
import org.wattwright.internal.Require;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;

/**
 * A curve of time against current for a plot on log–log paper, straight between its points.
 *
 * @param label such as {@code fuse F-200 clears}
 * @param points current rising, time never rising
 */
public record CoverCurve(String label, List<Point> points) implements Serializable {
  /** Of a time that comes through its logarithm. */
  private static final double ROUNDING = 1e-12;

  /**
   * Checks the order.
   *
   * @param label such as {@code fuse F-200 clears}
   * @param points current rising, time never rising
   * @throws InvalidInputException if the label is blank or the points are out of order
   */
  public CoverCurve {
    label = Require.text("CoverCurve.label", label);
    points = List.copyOf(points);
    for (int i = 1; i < points.size(); i++) {
      requireOrder(points.get(i - 1), points.get(i));
    }
  }

  private static void requireOrder(Point one, Point next) {
    double oneA = Kind.CURRENT.siValueOf(one.current());
    double nextA = Kind.CURRENT.siValueOf(next.current());
    if (!(nextA >= oneA)) {
      throw InvalidInputException.of(
          "CoverCurve.current", "≥ " + one.current(), next.current().toString());
    }
    double oneS = Kind.TIME.siValueOf(one.time());
    if (!(Kind.TIME.siValueOf(next.time()) <= oneS * (1 + ROUNDING))) {
      throw InvalidInputException.of(
          "CoverCurve.time", "≤ " + one.time() + " at the current before", next.time().toString());
    }
  }

  /**
   * A point of the curve.
   *
   * @param current in A
   * @param time in s
   */
  public record Point(Quantity<ElectricCurrent> current, Quantity<Time> time)
      implements Serializable {}

  static CoverCurve of(String label, TimeCurve curve, double toA) {
    List<Point> points = new ArrayList<>();
    for (int i = 0; i < curve.size() && curve.currentA(i) <= toA; i++) {
      points.add(point(curve.currentA(i), curve.timeS(i)));
    }
    if (curve.lowestA() <= toA && toA < curve.highestA()) {
      points.add(point(toA, curve.at(toA)));
    }
    return new CoverCurve(label, points);
  }

  private static Point point(double currentA, double timeS) {
    return new Point(Kind.CURRENT.ofSi(currentA), Kind.TIME.ofSi(timeS));
  }
}
