package org.wattwright.units;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * Numbers as text, without a locale: a point, no grouping, no needless zeros.
 *
 * <p>{@link Double#toString} is not used: before Java 19 it prints more digits than are needed for
 * some numbers, so that texts would differ between Java versions.
 */
final class Decimal {
  /** A decimal of so many digits always survives the way into a double and back. */
  static final int SAFE_DIGITS = 15;

  /** A double always survives the way into a decimal of so many digits and back. */
  private static final int ENOUGH_DIGITS = 17;

  private static final int LARGEST_PLAIN_EXPONENT = 14;
  private static final int SMALLEST_PLAIN_EXPONENT = -6;

  private static final double LOG10_OF_2 = 0.30102999566398120;

  /** Powers of ten that a double holds exactly. */
  private static final double[] POWERS_OF_TEN = new double[23];

  static {
    for (int i = 0; i < POWERS_OF_TEN.length; i++) {
      POWERS_OF_TEN[i] = Double.parseDouble("1e" + i);
    }
  }

  private Decimal() {}

  /** The shortest text that reads back as the same double. */
  static String shortest(double value) {
    return text(decimal(value));
  }

  /** Rounded to significant digits, half up, without dropping digits before the point. */
  static String significant(double value, int digits) {
    BigDecimal decimal = decimal(value);
    BigDecimal rounded = decimal.round(new MathContext(digits, RoundingMode.HALF_UP));
    int exponent = exponent(rounded);
    boolean wouldDropIntegerDigits = exponent >= digits && exponent <= LARGEST_PLAIN_EXPONENT;
    return text(wouldDropIntegerDigits ? decimal.setScale(0, RoundingMode.HALF_UP) : rounded);
  }

  /** Rounded to decimals, half up, keeping trailing zeros. */
  static String fixed(double value, int decimals) {
    BigDecimal rounded = decimal(value).setScale(decimals, RoundingMode.HALF_UP);
    return rounded.signum() == 0 ? rounded.abs().toPlainString() : rounded.toPlainString();
  }

  /** The decimal with the fewest digits that reads back as the same double. */
  static BigDecimal decimal(double value) {
    BigDecimal exact = new BigDecimal(value);
    for (int digits = SAFE_DIGITS; digits < ENOUGH_DIGITS; digits++) {
      BigDecimal rounded = exact.round(new MathContext(digits, RoundingMode.HALF_EVEN));
      if (rounded.doubleValue() == value) {
        return rounded;
      }
    }
    return exact.round(new MathContext(ENOUGH_DIGITS, RoundingMode.HALF_EVEN));
  }

  /** What a double lacks to the decimal that it was written as. */
  static double roundingOf(double value) {
    return decimal(value).subtract(new BigDecimal(value)).doubleValue();
  }

  /** Rounded to the decimal place to which a number of the given size has so many digits. */
  static double rounded(double value, int digits, double size) {
    if (size >= 1e-7 && size < 1e15) {
      int decimals = digits - 1 - exponent(size);
      return decimals >= 0
          ? Math.rint(value * POWERS_OF_TEN[decimals]) / POWERS_OF_TEN[decimals]
          : Math.rint(value / POWERS_OF_TEN[-decimals]) * POWERS_OF_TEN[-decimals];
    }
    return Double.isFinite(value) ? rounded(value, digits) : value;
  }

  /** The power of ten of a size from 1e-7 to 1e15; faster than a logarithm. */
  private static int exponent(double size) {
    int atLeast = (int) Math.floor(Math.getExponent(size) * LOG10_OF_2);
    int next = atLeast + 1;
    boolean reachesNext =
        next >= 0 ? size >= POWERS_OF_TEN[next] : size * POWERS_OF_TEN[-next] >= 1;
    return reachesNext ? next : atLeast;
  }

  private static double rounded(double value, int digits) {
    return new BigDecimal(value)
        .round(new MathContext(digits, RoundingMode.HALF_EVEN))
        .doubleValue();
  }

  private static String text(BigDecimal number) {
    if (number.signum() == 0) {
      return "0";
    }
    BigDecimal stripped = number.stripTrailingZeros();
    int exponent = exponent(stripped);
    if (exponent >= SMALLEST_PLAIN_EXPONENT && exponent <= LARGEST_PLAIN_EXPONENT) {
      return stripped.toPlainString();
    }
    return stripped.movePointLeft(exponent).toPlainString() + "E" + exponent;
  }

  private static int exponent(BigDecimal number) {
    return number.precision() - number.scale() - 1;
  }
}
