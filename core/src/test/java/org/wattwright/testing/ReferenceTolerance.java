package org.wattwright.testing;

import java.math.BigDecimal;
import java.math.MathContext;

/**
 * How far our number may lie from a published one, as its row says: {@code exact}, {@code rel x},
 * {@code abs x} or {@code text}.
 */
public record ReferenceTolerance(Type type, BigDecimal bound) {
  /** The four ways to compare. */
  public enum Type {
    /** As printed; a computed double may be off by its rounding. */
    EXACT,
    /** Relative to the published value. */
    RELATIVE,
    /** In the unit of the row. */
    ABSOLUTE,
    /** Compared as text. */
    TEXT
  }

  /** What our own algebra in doubles is allowed, relative. */
  private static final BigDecimal ROUNDING = new BigDecimal("1e-12");

  static ReferenceTolerance parse(String text) {
    String[] words = text.strip().split("\\s+");
    return switch (words[0]) {
      case "exact" -> new ReferenceTolerance(Type.EXACT, ROUNDING);
      case "rel" -> new ReferenceTolerance(Type.RELATIVE, new BigDecimal(words[1]));
      case "abs" -> new ReferenceTolerance(Type.ABSOLUTE, new BigDecimal(words[1]));
      case "text" -> new ReferenceTolerance(Type.TEXT, BigDecimal.ZERO);
      default -> throw new IllegalArgumentException("not a tolerance: " + text);
    };
  }

  /** Compared in decimals, so that 3.70 is within 0.05 of 3.65. */
  boolean admits(BigDecimal published, double ours) {
    if (type == Type.TEXT) {
      throw new IllegalStateException("a text is not compared as a number");
    }
    if (!Double.isFinite(ours)) {
      return false;
    }
    BigDecimal difference = published.subtract(BigDecimal.valueOf(ours)).abs();
    BigDecimal allowed = type == Type.ABSOLUTE ? bound : bound.multiply(published.abs());
    return difference.compareTo(allowed) <= 0;
  }

  /** Distance of ours from the published value, in the way this tolerance counts. */
  String deviation(double published, double ours) {
    double difference = ours - published;
    if (difference == 0) {
      return "0";
    }
    boolean relative = type != Type.ABSOLUTE && published != 0;
    return relative ? "rel " + rounded(difference / published) : "abs " + rounded(difference);
  }

  private static String rounded(double value) {
    return new BigDecimal(value).round(new MathContext(2)).toString();
  }

  @Override
  public String toString() {
    return switch (type) {
      case EXACT -> "exact";
      case RELATIVE -> "rel " + bound;
      case ABSOLUTE -> "abs " + bound;
      case TEXT -> "text";
    };
  }
}
