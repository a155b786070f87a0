package org.wattwright.internal;

import java.io.Serializable;
import java.util.Arrays;
import org.jspecify.annotations.Nullable;
import org.wattwright.units.InvalidInputException;

/**
 * Falling or rising curve of a positive variable, straight between points on log-log paper, such as
 * the time-current curve of a fuse: ln y = ln y₁ + (ln y₂ − ln y₁)·ln(x/x₁)/ln(x₂/x₁).
 *
 * <p>Never extrapolates: ask {@link #covers} first. Immutable; the arrays are copied in.
 */
public final class LogLogTable implements Serializable {
  private static final long serialVersionUID = 1L;

  private final double[] xs;
  private final double[] ys;
  private final double[] logXs;
  private final double[] logYs;

  private LogLogTable(double[] xs, double[] ys) {
    this.xs = xs;
    this.ys = ys;
    this.logXs = Arrays.stream(xs).map(Math::log).toArray();
    this.logYs = Arrays.stream(ys).map(Math::log).toArray();
  }

  /** From at least two points, all positive, x strictly increasing, y strictly monotone. */
  public static LogLogTable of(String field, double[] xs, double[] ys) {
    LinearTable.requireIncreasing(field + ".x", xs);
    LinearTable.requireAsMany(field, xs, ys);
    if (xs.length < 2) {
      throw InvalidInputException.of(field, "at least two points", "one");
    }
    Require.positive(field + ".x[0]", xs[0]);
    boolean rising = ys[1] > ys[0];
    for (int i = 0; i < ys.length; i++) {
      String each = field + ".y[" + i + "]";
      Require.positive(each, ys[i]);
      if (i > 0 && !(rising ? ys[i] > ys[i - 1] : ys[i] < ys[i - 1])) {
        String bound = (rising ? "> " : "< ") + ys[i - 1];
        throw InvalidInputException.of(each, bound + " (strictly monotone)", "" + ys[i]);
      }
    }
    return new LogLogTable(xs.clone(), ys.clone());
  }

  /** Whether x lies within the curve, ends included. */
  public boolean covers(double x) {
    return x >= xs[0] && x <= xs[xs.length - 1];
  }

  /** Whether y lies within the curve, ends included. */
  public boolean coversInverse(double y) {
    return y >= Math.min(ys[0], lastY()) && y <= Math.max(ys[0], lastY());
  }

  private double lastY() {
    return ys[ys.length - 1];
  }

  /** Value at x within the curve. */
  public double at(double x) {
    if (!covers(x)) {
      throw outside("x", xs[0], xs[xs.length - 1], x);
    }
    int i = LinearTable.segment(xs, x);
    return x == xs[i] ? ys[i] : x == xs[i + 1] ? ys[i + 1] : between(i, x);
  }

  private double between(int i, double x) {
    double share = (Math.log(x) - logXs[i]) / (logXs[i + 1] - logXs[i]);
    return Math.exp(logYs[i] + share * (logYs[i + 1] - logYs[i]));
  }

  /** The x at which the curve has the value y, within the curve. */
  public double inverseAt(double y) {
    if (!coversInverse(y)) {
      throw outside("y", Math.min(ys[0], lastY()), Math.max(ys[0], lastY()), y);
    }
    int i = 0;
    while (i < ys.length - 2 && (ys[i + 1] - y) * (lastY() - ys[0]) < 0) {
      i++;
    }
    return y == ys[i] ? xs[i] : y == ys[i + 1] ? xs[i + 1] : inverseBetween(i, y);
  }

  private double inverseBetween(int i, double y) {
    double share = (Math.log(y) - logYs[i]) / (logYs[i + 1] - logYs[i]);
    return Math.exp(logXs[i] + share * (logXs[i + 1] - logXs[i]));
  }

  private static InvalidInputException outside(String axis, double low, double high, double value) {
    String bound = "within the curve, from " + low + " to " + high;
    return InvalidInputException.of("LogLogTable." + axis, bound, "" + value);
  }

  /** Number of points. */
  public int size() {
    return xs.length;
  }

  /** The x of point i. */
  public double x(int i) {
    return xs[i];
  }

  /** The y of point i. */
  public double y(int i) {
    return ys[i];
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof LogLogTable that
        && Arrays.equals(xs, that.xs)
        && Arrays.equals(ys, that.ys);
  }

  @Override
  public int hashCode() {
    return 31 * Arrays.hashCode(xs) + Arrays.hashCode(ys);
  }
}
