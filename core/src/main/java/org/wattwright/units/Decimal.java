package org.wattwright.units;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** Numbers as text, without a locale: a point, no grouping, no needless zeros. */
final class Decimal {
  private static final double LARGEST_PLAIN = 1e15;
  private static final double SMALLEST_PLAIN = 1e-6;

  private Decimal() {}

  /** The shortest text that reads back as the same double. */
  static String shortest(double value) {
    if (value == 0) {
      return "0";
    }
    double size = Math.abs(value);
    if (size >= LARGEST_PLAIN || size < SMALLEST_PLAIN) {
      return Double.toString(value).replace(".0E", "E");
    }
    return plain(new BigDecimal(Double.toString(value)));
  }

  /** Rounded to significant digits, half up, without dropping digits before the point. */
  static String significant(double value, int digits) {
    if (value == 0) {
      return "0";
    }
    double size = Math.abs(value);
    BigDecimal exact = new BigDecimal(Double.toString(value));
    BigDecimal rounded = exact.round(new MathContext(digits, RoundingMode.HALF_UP));
    if (size >= LARGEST_PLAIN || size < SMALLEST_PLAIN) {
      return Double.toString(rounded.doubleValue()).replace(".0E", "E");
    }
    return rounded.scale() < 0 || rounded.precision() - rounded.scale() >= digits
        ? exact.setScale(0, RoundingMode.HALF_UP).toPlainString()
        : plain(rounded);
  }

  /** Rounded to decimals, half up, keeping trailing zeros. */
  static String fixed(double value, int decimals) {
    BigDecimal rounded =
        new BigDecimal(Double.toString(value)).setScale(decimals, RoundingMode.HALF_UP);
    return rounded.signum() == 0 ? rounded.abs().toPlainString() : rounded.toPlainString();
  }

  private static String plain(BigDecimal value) {
    BigDecimal stripped = value.stripTrailingZeros();
    return (stripped.scale() < 0 ? stripped.setScale(0) : stripped).toPlainString();
  }
}
