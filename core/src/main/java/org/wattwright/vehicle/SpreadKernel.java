package org.wattwright.vehicle;

import static org.wattwright.units.WorkshopUnits.KILOGRAM;

import java.util.List;
import java.util.Locale;
import org.wattwright.check.Basis;
import org.wattwright.check.Figure;
import org.wattwright.check.Recorder;
import org.wattwright.check.StepBuilder;

/**
 * Adds up m·c over all items, with the intervals of mass m and coefficient c.
 *
 * <p>Worst case: the exact interval of each product, since m and c of one item are independent.
 * Root-sum-square: √Σ((c·Δm)² + (m·Δc)²).
 */
final class SpreadKernel {
  private static final String ENDS = " (n readings ± t; S: the items, each at its worst)";

  private final double weighedKg;
  private final int readings;
  private final double toleranceKg;
  private double lowestKg;
  private double nominalKg;
  private double highestKg;
  private double squares;

  /** Starts with readings of the scales, each with the same tolerance. */
  SpreadKernel(double weighedKg, int readings, double toleranceKg) {
    this.weighedKg = weighedKg;
    this.readings = readings;
    this.toleranceKg = toleranceKg;
  }

  /**
   * Coefficient of an item, kg per kg, with its interval and its likely half-width.
   *
   * @param value at the stated place
   * @param lowest within the tolerance of the place
   * @param highest within the tolerance of the place
   * @param likely half-width, both directions independent
   */
  record Coefficient(double value, double lowest, double highest, double likely) {
    static final Coefficient ONE = new Coefficient(1, 1, 1, 0);

    /** A coefficient that is linear in each of two places, so that corners hold its extremes. */
    static Coefficient of(MassItem item, Influence influence) {
      double d = item.position().behindM();
      double y = item.position().leftM();
      double t = item.positionToleranceM();
      double value = influence.at(d, y);
      if (t == 0) {
        return new Coefficient(value, value, value, 0);
      }
      double a = influence.at(d - t, y - t);
      double b = influence.at(d - t, y + t);
      double c = influence.at(d + t, y - t);
      double e = influence.at(d + t, y + t);
      double along = (influence.at(d + t, y) - influence.at(d - t, y)) / 2;
      double across = (influence.at(d, y + t) - influence.at(d, y - t)) / 2;
      return new Coefficient(
          value,
          Math.min(Math.min(a, b), Math.min(c, e)),
          Math.max(Math.max(a, b), Math.max(c, e)),
          Math.hypot(along, across));
    }
  }

  /** Load per load at a place, both distances in m. */
  interface Influence {
    double at(double behindM, double leftM);
  }

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
    double massToleranceKg = signed.item().massToleranceKg();
    double lightKg = Math.max(0, massKg - massToleranceKg);
    double heavyKg = massKg + massToleranceKg;
    double low = Math.min(lightKg * c.lowest(), heavyKg * c.lowest());
    double high = Math.max(lightKg * c.highest(), heavyKg * c.highest());
    boolean added = signed.sign() > 0;
    nominalKg += signed.sign() * massKg * c.value();
    lowestKg += added ? low : -high;
    highestKg += added ? high : -low;
    squares += square(c.value() * massToleranceKg) + square(massKg * c.likely());
  }

  private static double square(double x) {
    return x * x;
  }

  Spread.Ends toSpread() {
    double bandKg = readings * toleranceKg;
    return new Spread.Ends(
        weighedKg - bandKg + lowestKg,
        weighedKg + nominalKg,
        weighedKg + bandKg + highestKg,
        Math.sqrt(readings * square(toleranceKg) + squares));
  }

  /**
   * How a worksheet calls a figure.
   *
   * @param symbol such as {@code m_f}
   * @param meaning in words
   * @param basis of all that goes into it
   */
  record Label(String symbol, String meaning, Basis basis) {
    /** A step about the lowest, the highest or the likely value. */
    StepBuilder step(Recorder recorder, String pattern, String more) {
      String name = String.format(Locale.ROOT, pattern, symbol);
      return recorder.step(name, meaning + ", " + more).basis(basis);
    }
  }

  /** The spread with its working: lowest, highest, likely half-width. */
  Spread.Ends toSpread(Label label, Recorder recorder) {
    Spread.Ends spread = toSpread();
    if (recorder.isOn()) {
      end(label.step(recorder, "%s_min", "lowest" + ENDS), "-", lowestKg)
          .gives(spread.lowest(), KILOGRAM);
      end(label.step(recorder, "%s_max", "highest" + ENDS), "+", highestKg)
          .gives(spread.highest(), KILOGRAM);
      label
          .step(recorder, "σ(%s)", "root-sum-square of all tolerances (Q: the items)")
          .formula("√(n·t² + Q²), Q² = Σ((c·Δm)² + (m·Δc)²)")
          .with("n", Figure.count(readings))
          .with("t", toleranceKg, KILOGRAM)
          .with("Q", Math.sqrt(squares), KILOGRAM)
          .gives(spread.likely(), KILOGRAM);
    }
    return spread;
  }

  private StepBuilder end(StepBuilder step, String sign, double itemsKg) {
    return step.formula("m_0 " + sign + " n·t + S")
        .with("m_0", weighedKg, KILOGRAM)
        .with("n", Figure.count(readings))
        .with("t", toleranceKg, KILOGRAM)
        .with("S", itemsKg, KILOGRAM);
  }
}
