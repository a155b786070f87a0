package org.wattwright.protection;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.Time;
import org.wattwright.units.Kind;

/**
 * A curve of time against current for a plot on log–log paper, straight between its points.
 *
 * @param label such as {@code fuse F-200 clears}
 * @param points current rising, time never rising
 */
public record CoverCurve(String label, List<Point> points) implements Serializable {
  /**
   * Copies the list.
   *
   * @param label such as {@code fuse F-200 clears}
   * @param points current rising, time never rising
   */
  public CoverCurve {
    points = List.copyOf(points);
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
