package org.wattwright.protection;

import static org.wattwright.units.WorkshopUnits.AMPERE;
import static org.wattwright.units.WorkshopUnits.SECOND;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.Time;
import org.jspecify.annotations.Nullable;
import org.wattwright.internal.LogLogTable;
import org.wattwright.internal.Require;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;
import org.wattwright.units.Measures;

/**
 * Time against current of a fuse on log-log paper, from a few points read off its data sheet.
 *
 * <p>Straight between points: ln t linear in ln I. A printed curve is a mean: links of one type
 * scatter in current, and reading the points off adds an error, so that there are a fastest and a
 * slowest curve, the printed one with its currents divided and multiplied by (1 + tolerance)·(1 +
 * reading error). Never extrapolated: outside its points the answer is empty.
 *
 * <pre>{@code
 * TimeCurrentCurve curve = TimeCurrentCurve.ofPoints()
 *     .point(amperes(400), seconds(100))
 *     .point(amperes(800), seconds(2))
 *     .point(amperes(2500), milliseconds(20))
 *     .build();
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 */
public final class TimeCurrentCurve implements Serializable {
  private static final long serialVersionUID = 1L;

  /** Scatter of fuse links in current: ±10 %; IEC 60269-1, from memory. */
  static final double USUAL_TOLERANCE = 0.10;

  /** Error in current of a point read off a printed log-log sheet; common practice. */
  static final double USUAL_READING_ERROR = 0.05;

  private static final double LARGEST_SHARE = 0.5;

  private final LogLogTable table;
  private final double tolerance;
  private final double readingError;

  private TimeCurrentCurve(LogLogTable table, double tolerance, double readingError) {
    this.table = table;
    this.tolerance = tolerance;
    this.readingError = readingError;
  }

  /**
   * Starts a curve.
   *
   * @return a builder that wants at least two points
   */
  public static Builder ofPoints() {
    return new Builder();
  }

  /** Collects the points of a {@link TimeCurrentCurve}. */
  public static final class Builder {
    private final List<double[]> points = new ArrayList<>();
    private double tolerance = USUAL_TOLERANCE;
    private double readingError = USUAL_READING_ERROR;

    private Builder() {}

    /**
     * The next point: more current, less time.
     *
     * @param current &gt; 0 A, above that of the point before
     * @param time &gt; 0 s, below that of the point before
     * @return this builder
     * @throws InvalidInputException if outside its range
     */
    public Builder point(Quantity<ElectricCurrent> current, Quantity<Time> time) {
      String field = "TimeCurrentCurve[" + points.size() + "]";
      double currentA = Require.quantity(field + ".current", current, AMPERE).positive();
      double timeS = Require.quantity(field + ".time", time, SECOND).positive();
      if (!points.isEmpty()) {
        double[] last = points.get(points.size() - 1);
        if (!(currentA > last[0])) {
          throw InvalidInputException.of(
              field + ".current", "> " + AMPERE.of(last[0]), current.toString());
        }
        if (!(timeS < last[1])) {
          throw InvalidInputException.of(
              field + ".time",
              "< " + SECOND.of(last[1]) + " (it falls as current rises)",
              time + "");
        }
      }
      points.add(new double[] {currentA, timeS});
      return this;
    }

    /**
     * How far links of this type scatter in current.
     *
     * @param share 0 to 0.5, such as 0.1 for ±10 %, which is usual
     * @return this builder
     * @throws InvalidInputException if outside its range
     */
    public Builder tolerance(double share) {
      tolerance = Require.between("TimeCurrentCurve.tolerance", share, 0, LARGEST_SHARE);
      return this;
    }

    /**
     * How far the points may be off in current because they were read off a printed curve.
     *
     * @param share 0 to 0.5; 0.05 unless told, 0 for tabulated points
     * @return this builder
     * @throws InvalidInputException if outside its range
     */
    public Builder readingError(double share) {
      readingError = Require.between("TimeCurrentCurve.readingError", share, 0, LARGEST_SHARE);
      return this;
    }

    /**
     * The curve.
     *
     * @return the curve
     * @throws InvalidInputException if there are fewer than two points
     */
    public TimeCurrentCurve build() {
      if (points.size() < 2) {
        throw InvalidInputException.of(
            "TimeCurrentCurve.points", "at least two", Integer.toString(points.size()));
      }
      double[] currents = points.stream().mapToDouble(p -> p[0]).toArray();
      double[] times = points.stream().mapToDouble(p -> p[1]).toArray();
      LogLogTable table = LogLogTable.of("TimeCurrentCurve", currents, times);
      return new TimeCurrentCurve(table, tolerance, readingError);
    }

    /**
     * Number of points so far.
     *
     * @return for example {@code 3 points so far}
     */
    @Override
    public String toString() {
      return points.size() + " points so far";
    }
  }

  /**
   * Time of the printed curve.
   *
   * @param current &gt; 0 A
   * @return in s; empty outside the curve
   */
  public Optional<Quantity<Time>> timeAt(Quantity<ElectricCurrent> current) {
    return time(currentA(current));
  }

  /**
   * Shortest time within the band: the fastest link, read off too high.
   *
   * @param current &gt; 0 A
   * @return in s; empty outside the fastest curve
   */
  public Optional<Quantity<Time>> fastestTimeAt(Quantity<ElectricCurrent> current) {
    return time(currentA(current) * band());
  }

  /**
   * Longest time within the band: the slowest link, read off too low.
   *
   * @param current &gt; 0 A
   * @return in s; empty outside the slowest curve
   */
  public Optional<Quantity<Time>> slowestTimeAt(Quantity<ElectricCurrent> current) {
    return time(currentA(current) / band());
  }

  private static double currentA(Quantity<ElectricCurrent> current) {
    return Require.quantity("TimeCurrentCurve.current", current, AMPERE).positive();
  }

  private Optional<Quantity<Time>> time(double currentA) {
    return table.covers(currentA)
        ? Optional.of(Kind.TIME.ofSi(table.at(currentA)))
        : Optional.empty();
  }

  /**
   * Current at which the printed curve has a time.
   *
   * @param time &gt; 0 s
   * @return in A; empty outside the curve
   */
  public Optional<Quantity<ElectricCurrent>> currentAt(Quantity<Time> time) {
    double timeS = Require.quantity("TimeCurrentCurve.time", time, SECOND).positive();
    return table.coversInverse(timeS)
        ? Optional.of(Kind.CURRENT.ofSi(table.inverseAt(timeS)))
        : Optional.empty();
  }

  /**
   * Current of the first point.
   *
   * @return in A
   */
  public Quantity<ElectricCurrent> lowestCurrent() {
    return Kind.CURRENT.ofSi(firstA());
  }

  /**
   * Current of the last point.
   *
   * @return in A
   */
  public Quantity<ElectricCurrent> highestCurrent() {
    return Kind.CURRENT.ofSi(lastA());
  }

  /**
   * Scatter of the links.
   *
   * @return share of the current
   */
  public double tolerance() {
    return tolerance;
  }

  /**
   * Error of the points.
   *
   * @return share of the current
   */
  public double readingError() {
    return readingError;
  }

  /** Factor in current between the printed and the slowest curve. */
  double band() {
    return (1 + tolerance) * (1 + readingError);
  }

  double firstA() {
    return table.x(0);
  }

  double lastA() {
    return table.x(table.size() - 1);
  }

  double lastTimeS() {
    return table.y(table.size() - 1);
  }

  LogLogTable table() {
    return table;
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof TimeCurrentCurve that
        && table.equals(that.table)
        && tolerance == that.tolerance
        && readingError == that.readingError;
  }

  @Override
  public int hashCode() {
    return Objects.hash(table, tolerance, readingError);
  }

  /**
   * Number of points and ends.
   *
   * @return for example {@code 5 points, 150 A 1000 s … 2 kA 8 ms}
   */
  @Override
  public String toString() {
    return table.size() + " points, " + point(0) + " … " + point(table.size() - 1);
  }

  private String point(int i) {
    return Measures.format(Kind.CURRENT.ofSi(table.x(i)), Kind.CURRENT)
        + " "
        + Measures.format(Kind.TIME.ofSi(table.y(i)), Kind.TIME);
  }
}
