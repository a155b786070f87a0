package org.wattwright.layout;

/**
 * Loads as whole numbers of 10⁻⁹ kg: sums are exact, so that neither the order of bays nor that of
 * additions can matter. 9·10⁹ kg fit; a vehicle needs 10⁴.
 */
final class Micrograms {
  private static final double PER_KG = 1e9;

  /** Stands for no bound; far enough from the end that sums do not overflow. */
  static final long UNBOUNDED = Long.MAX_VALUE / 4;

  private Micrograms() {}

  static long of(double massKg) {
    return Math.round(massKg * PER_KG);
  }

  /** The largest that is not above. */
  static long floor(double massKg) {
    long nearest = of(massKg);
    return toKg(nearest) > massKg ? nearest - 1 : nearest;
  }

  /** The smallest that is not below. */
  static long ceiling(double massKg) {
    return -floor(-massKg);
  }

  static double toKg(long micrograms) {
    return micrograms / PER_KG;
  }
}
