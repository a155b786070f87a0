package org.wattwright.installation;

import static org.wattwright.units.WorkshopUnits.MEGAPASCAL;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Pressure;
import org.wattwright.check.Source;
import org.wattwright.units.InvalidInputException;

/**
 * Property class of a steel bolt: what the mark on its head promises.
 *
 * <p>The mark gives the nominal strength (10.9: 1000 MPa tensile, 900 MPa yield); the minimum of
 * ISO 898-1 may be higher. Design by EN 1993-1-8 takes the nominal. A head without a mark is no
 * proof of any class.
 */
public enum PropertyClass {
  /** 4.6: low-carbon steel. */
  CLASS_4_6("4.6", 400, 240, 0.6),
  /** 5.6; its minima are recalled. */
  CLASS_5_6("5.6", 500, 300, 0.6),
  /** 8.8: quenched and tempered; stronger above M16. */
  CLASS_8_8("8.8", 800, 640, 0.6),
  /** 10.9. */
  CLASS_10_9("10.9", 1000, 900, 0.5),
  /** 12.9. */
  CLASS_12_9("12.9", 1200, 1080, 0.5);

  /** Where the strengths stand; the proof strength of 8.8 up to M16 and class 5.6 are recalled. */
  public static final Source SOURCE =
      Source.standard("ISO 898-1", "mechanical properties of bolts and screws");

  private static final double LARGEST_SMALL_M = 0.0161;

  /** Lowest strengths of ISO 898-1. */
  private record Minima(double proofMpa, double tensileMpa, double yieldMpa) {}

  private final String mark;
  private final double nominalTensileMpa;
  private final double nominalYieldMpa;
  private final double threadShearFactor;

  PropertyClass(
      String mark, double nominalTensileMpa, double nominalYieldMpa, double threadShearFactor) {
    this.mark = mark;
    this.nominalTensileMpa = nominalTensileMpa;
    this.nominalYieldMpa = nominalYieldMpa;
    this.threadShearFactor = threadShearFactor;
  }

  /**
   * The class of a mark.
   *
   * @param mark for example {@code 8.8}
   * @return the class
   * @throws org.wattwright.units.InvalidInputException if there is none
   */
  public static PropertyClass parse(String mark) {
    for (PropertyClass each : values()) {
      if (each.mark.equals(mark.strip())) {
        return each;
      }
    }
    throw InvalidInputException.of(
        "PropertyClass.mark", "one of " + List.of(values()), '"' + mark + '"');
  }

  /**
   * Proof strength S_p.
   *
   * @param thread its size matters for 8.8
   * @return in MPa
   */
  public Quantity<Pressure> proofStrength(MetricThread thread) {
    return MEGAPASCAL.of(minima(thread).proofMpa());
  }

  /**
   * Minimum tensile strength R_m.
   *
   * @param thread its size matters for 8.8
   * @return in MPa
   */
  public Quantity<Pressure> tensileStrength(MetricThread thread) {
    return MEGAPASCAL.of(minima(thread).tensileMpa());
  }

  /**
   * Minimum yield strength, R_eL or R_p0.2.
   *
   * @param thread its size matters for 8.8
   * @return in MPa
   */
  public Quantity<Pressure> yieldStrength(MetricThread thread) {
    return MEGAPASCAL.of(minima(thread).yieldMpa());
  }

  /**
   * Nominal tensile strength: 100 times the first number of the mark; f_ub of EN 1993-1-8.
   *
   * @return in MPa
   */
  public Quantity<Pressure> nominalTensileStrength() {
    return MEGAPASCAL.of(nominalTensileMpa);
  }

  /**
   * Nominal yield strength: 10 times the product of both numbers of the mark.
   *
   * @return in MPa
   */
  public Quantity<Pressure> nominalYieldStrength() {
    return MEGAPASCAL.of(nominalYieldMpa);
  }

  /**
   * Shear factor α_v of EN 1993-1-8 Table 3.4.
   *
   * @param threadsInShearPlane whether thread, not plain shank, crosses the shear plane
   * @return 0.5 or 0.6
   */
  public double shearFactor(boolean threadsInShearPlane) {
    return threadsInShearPlane ? threadShearFactor : 0.6;
  }

  private Minima minima(MetricThread thread) {
    return switch (this) {
      case CLASS_4_6 -> new Minima(225, 400, 240);
      case CLASS_5_6 -> new Minima(280, 500, 300);
      case CLASS_8_8 ->
          thread.diameterM() > LARGEST_SMALL_M
              ? new Minima(600, 830, 660)
              : new Minima(580, 800, 640);
      case CLASS_10_9 -> new Minima(830, 1040, 940);
      case CLASS_12_9 -> new Minima(970, 1220, 1100);
    };
  }

  double proofPa(MetricThread thread) {
    return minima(thread).proofMpa() * 1e6;
  }

  double tensilePa(MetricThread thread) {
    return minima(thread).tensileMpa() * 1e6;
  }

  double yieldPa(MetricThread thread) {
    return minima(thread).yieldMpa() * 1e6;
  }

  double nominalTensilePa() {
    return nominalTensileMpa * 1e6;
  }

  /**
   * The mark.
   *
   * @return for example {@code 8.8}
   */
  @Override
  public String toString() {
    return mark;
  }
}
