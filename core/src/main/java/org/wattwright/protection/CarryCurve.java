package org.wattwright.protection;

import static org.wattwright.units.WorkshopUnits.AMPERE;
import static org.wattwright.units.WorkshopUnits.SECOND;

import java.io.Serializable;
import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.Time;
import org.jspecify.annotations.Nullable;
import org.wattwright.internal.LogLogTable;
import org.wattwright.internal.Require;
import org.wattwright.units.InvalidInputException;

/**
 * How long a closed contactor carries more than its continuous current.
 *
 * <p>Either a curve, straight between its points on log–log paper, or steps: a step table promises
 * nothing between its rows, so a current counts as the next higher row. Beyond the highest current
 * nothing is promised. Immutable and thread-safe.
 */
public final class CarryCurve implements Serializable {
  private static final long serialVersionUID = 1L;

  private final LogLogTable timeByCurrent;
  private final boolean stepped;

  private CarryCurve(LogLogTable timeByCurrent, boolean stepped) {
    this.timeByCurrent = timeByCurrent;
    this.stepped = stepped;
  }

  /**
   * A current and how long it may flow.
   *
   * @param current &gt; 0 A
   * @param duration &gt; 0 s
   */
  public record Point(Quantity<ElectricCurrent> current, Quantity<Time> duration)
      implements Serializable {
    /**
     * Checks the fields.
     *
     * @param current &gt; 0 A
     * @param duration &gt; 0 s
     * @throws InvalidInputException if a field is not positive
     */
    public Point {
      Require.quantity("CarryCurve.current", current, AMPERE).positive();
      Require.quantity("CarryCurve.duration", duration, SECOND).positive();
    }
  }

  /**
   * A point of the curve.
   *
   * @param current &gt; 0 A
   * @param duration &gt; 0 s
   * @return the point
   * @throws InvalidInputException if an argument is not positive
   */
  public static Point point(Quantity<ElectricCurrent> current, Quantity<Time> duration) {
    return new Point(current, duration);
  }

  /**
   * A curve read off log–log paper.
   *
   * @param points at least two, current rising, duration falling
   * @return the curve
   * @throws InvalidInputException if there are too few or out of order
   */
  public static CarryCurve through(Point... points) {
    return new CarryCurve(table(points), false);
  }

  /**
   * A table of currents and durations with nothing promised between.
   *
   * @param points at least two, current rising, duration falling
   * @return the curve
   * @throws InvalidInputException if there are too few or out of order
   */
  public static CarryCurve steps(Point... points) {
    return new CarryCurve(table(points), true);
  }

  private static LogLogTable table(Point... points) {
    List<Point> list = List.of(points);
    LogLogTable table =
        LogLogTable.of(
            "CarryCurve",
            list.stream().mapToDouble(p -> AMPERE.valueOf(p.current())).toArray(),
            list.stream().mapToDouble(p -> SECOND.valueOf(p.duration())).toArray());
    if (!(table.y(1) < table.y(0))) {
      throw InvalidInputException.of("CarryCurve.duration", "falling as current rises", "rising");
    }
    return table;
  }

  double highestA() {
    return timeByCurrent.x(timeByCurrent.size() - 1);
  }

  int size() {
    return timeByCurrent.size();
  }

  double currentA(int i) {
    return timeByCurrent.x(i);
  }

  double durationS(int i) {
    return timeByCurrent.y(i);
  }

  /**
   * How long a current may flow; empty above the highest, the longest duration below the lowest.
   */
  OptionalDouble durationS(double currentA) {
    if (!(currentA <= highestA())) {
      return OptionalDouble.empty();
    }
    if (currentA <= currentA(0)) {
      return OptionalDouble.of(durationS(0));
    }
    return OptionalDouble.of(stepped ? stepS(currentA) : timeByCurrent.at(currentA));
  }

  private double stepS(double currentA) {
    int i = 0;
    while (currentA(i) < currentA) {
      i++;
    }
    return durationS(i);
  }

  /** The current that may flow for a time; 0 if that is longer than any duration of the curve. */
  double currentForA(double durationS) {
    if (durationS > durationS(0)) {
      return 0;
    }
    if (durationS <= durationS(size() - 1)) {
      return highestA();
    }
    if (!stepped) {
      return timeByCurrent.inverseAt(durationS);
    }
    int i = 0;
    while (durationS(i + 1) >= durationS) {
      i++;
    }
    return currentA(i);
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof CarryCurve that
        && stepped == that.stepped
        && timeByCurrent.equals(that.timeByCurrent);
  }

  @Override
  public int hashCode() {
    return Objects.hash(stepped, timeByCurrent);
  }

  /**
   * Number of points and the ends.
   *
   * @return for example {@code 300 A for 600 s … 1000 A for 5 s (4 steps)}
   */
  @Override
  public String toString() {
    int last = size() - 1;
    return text(0) + " … " + text(last) + " (" + size() + (stepped ? " steps)" : " points)");
  }

  private String text(int i) {
    return AMPERE.of(currentA(i)) + " for " + SECOND.of(durationS(i));
  }
}
