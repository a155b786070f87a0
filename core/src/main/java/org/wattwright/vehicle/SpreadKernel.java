package org.wattwright.vehicle;

import java.util.List;

/**
 * Adds up m·c over all items, with the intervals of mass m and coefficient c.
 *
 * <p>Worst case: the exact interval of each product, since m and c of one item are independent.
 * Root-sum-square: √Σ((c·Δm)² + (m·Δc)²).
 */
final class SpreadKernel {
  private double lowestKg;
  private double nominalKg;
  private double highestKg;
  private double squares;

  /** Starts with readings of the scales, each with the same tolerance. */
  SpreadKernel(double nominalKg, int readings, double toleranceKg) {
    this.nominalKg = nominalKg;
    this.lowestKg = nominalKg - readings * toleranceKg;
    this.highestKg = nominalKg + readings * toleranceKg;
    this.squares = readings * toleranceKg * toleranceKg;
  }

  /** Coefficient of an item with its half-width, kg per kg. */
  record Coefficient(double value, double tolerance) {}

  /** Reads the coefficient of an item. */
  interface Coefficients {
    Coefficient of(MassItem item);
  }

  SpreadKernel addAll(List<SignedItem> items, Coefficients coefficients) {
    for (SignedItem signed : items) {
      add(signed, coefficients.of(signed.item()));
    }
    return this;
  }

  private void add(SignedItem signed, Coefficient c) {
    double massKg = signed.item().massKg();
    double toleranceKg = signed.item().massToleranceKg();
    double lightKg = Math.max(0, massKg - toleranceKg);
    double heavyKg = massKg + toleranceKg;
    double low = Math.min(lightKg * lowest(c), heavyKg * lowest(c));
    double high = Math.max(lightKg * highest(c), heavyKg * highest(c));
    boolean added = signed.sign() > 0;
    nominalKg += signed.sign() * massKg * c.value();
    lowestKg += added ? low : -high;
    highestKg += added ? high : -low;
    squares += square(c.value() * toleranceKg) + square(massKg * c.tolerance());
  }

  private static double lowest(Coefficient c) {
    return c.value() - c.tolerance();
  }

  private static double highest(Coefficient c) {
    return c.value() + c.tolerance();
  }

  private static double square(double x) {
    return x * x;
  }

  MassSpread toSpread() {
    return new MassSpread(
        Si.mass(lowestKg), Si.mass(nominalKg), Si.mass(highestKg), Si.mass(Math.sqrt(squares)));
  }
}
