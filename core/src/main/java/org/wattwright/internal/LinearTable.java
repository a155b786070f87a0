package org.wattwright.internal;

import java.io.Serializable;
import java.util.Arrays;
import org.jspecify.annotations.Nullable;
import org.wattwright.units.InvalidInputException;

/**
 * Piecewise linear function of one variable; beyond its ends the end value is held.
 *
 * <p>Immutable; the arrays are copied in.
 */
public final class LinearTable implements Serializable {
  private static final long serialVersionUID = 1L;

  private final double[] xs;
  private final double[] ys;

  /** Integral of the function from the first x to each x. */
  private final double[] integrals;

  private LinearTable(double[] xs, double[] ys) {
    this.xs = xs;
    this.ys = ys;
    this.integrals = new double[xs.length];
    for (int i = 1; i < xs.length; i++) {
      integrals[i] = integrals[i - 1] + (xs[i] - xs[i - 1]) * (ys[i] + ys[i - 1]) / 2;
    }
  }

  /** From points with strictly increasing x; all finite, at least one point. */
  public static LinearTable of(String field, double[] xs, double[] ys) {
    requireIncreasing(field, xs);
    requireAsMany(field, xs, ys);
    for (int i = 0; i < ys.length; i++) {
      Require.finite(field + "[" + i + "]", ys[i]);
    }
    return new LinearTable(xs.clone(), ys.clone());
  }

  static void requireAsMany(String field, double[] xs, double[] ys) {
    if (ys.length != xs.length) {
      throw InvalidInputException.of(field, "as many y as x (" + xs.length + ")", "" + ys.length);
    }
  }

  static void requireIncreasing(String field, double[] xs) {
    if (xs.length == 0) {
      throw InvalidInputException.of(field, "at least one point", "none");
    }
    for (int i = 0; i < xs.length; i++) {
      Require.finite(field + "[" + i + "]", xs[i]);
      if (i > 0 && !(xs[i] > xs[i - 1])) {
        throw InvalidInputException.of(
            field + "[" + i + "]", "> " + xs[i - 1] + " (strictly increasing)", "" + xs[i]);
      }
    }
  }

  /** Index of the segment that holds x, 0 … n − 2, for n ≥ 2. */
  static int segment(double[] xs, double x) {
    int found = Arrays.binarySearch(xs, x);
    int index = found >= 0 ? found : -found - 2;
    return Math.max(0, Math.min(index, xs.length - 2));
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

  /** First x. */
  public double firstX() {
    return xs[0];
  }

  /** Last x. */
  public double lastX() {
    return xs[xs.length - 1];
  }

  /** Value at x, held at the ends. */
  public double at(double x) {
    int last = xs.length - 1;
    if (x <= xs[0]) {
      return ys[0];
    }
    if (x >= xs[last]) {
      return ys[last];
    }
    int i = segment(xs, x);
    double share = (x - xs[i]) / (xs[i + 1] - xs[i]);
    return ys[i] + share * (ys[i + 1] - ys[i]);
  }

  /** Slope of the segment to the right of x; 0 beyond the ends. */
  public double slopeAt(double x) {
    if (xs.length == 1 || x < xs[0] || x >= lastX()) {
      return 0;
    }
    int i = segment(xs, x);
    return (ys[i + 1] - ys[i]) / (xs[i + 1] - xs[i]);
  }

  /** Integral from a to b, with the end values held outside; negative if b lies below a. */
  public double integral(double a, double b) {
    return integralFromFirst(b) - integralFromFirst(a);
  }

  private double integralFromFirst(double x) {
    int last = xs.length - 1;
    if (x <= xs[0]) {
      return ys[0] * (x - xs[0]);
    }
    if (x >= xs[last]) {
      return integrals[last] + ys[last] * (x - xs[last]);
    }
    int i = segment(xs, x);
    return integrals[i] + (x - xs[i]) * (ys[i] + at(x)) / 2;
  }

  /** Smallest x at which a non-decreasing table reaches y; held at the ends. */
  public double inverseAt(double y) {
    int last = ys.length - 1;
    if (y <= ys[0]) {
      return xs[0];
    }
    if (!(y <= ys[last])) {
      return xs[last];
    }
    int low = 0;
    int high = last;
    while (high - low > 1) {
      int middle = (low + high) >>> 1;
      if (ys[middle] < y) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return xs[low] + (y - ys[low]) / (ys[high] - ys[low]) * (xs[high] - xs[low]);
  }

  /** The same table with every y multiplied by a factor. */
  public LinearTable scaled(double factor) {
    double[] scaled = ys.clone();
    for (int i = 0; i < scaled.length; i++) {
      scaled[i] *= factor;
    }
    return new LinearTable(xs, scaled);
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof LinearTable that
        && Arrays.equals(xs, that.xs)
        && Arrays.equals(ys, that.ys);
  }

  @Override
  public int hashCode() {
    return 31 * Arrays.hashCode(xs) + Arrays.hashCode(ys);
  }
}
