package org.wattwright.installation;

import static org.wattwright.units.WorkshopUnits.MILLIMETRE;

import java.io.Serializable;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.measure.Quantity;
import javax.measure.quantity.Area;
import javax.measure.quantity.Length;
import org.jspecify.annotations.Nullable;
import org.wattwright.check.Source;
import org.wattwright.internal.Require;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;

/**
 * A metric thread: nominal diameter and pitch, and the areas that carry.
 *
 * <p>d₂ = d − 0.649519·P, d₃ = d − 1.226869·P, A_s = π/4·(d − 0.9381943·P)², A₃ = π/4·d₃². Sources:
 * ISO 724, ISO 898-1. Immutable and thread-safe.
 */
public final class MetricThread implements Serializable {
  private static final long serialVersionUID = 1L;

  /** Where the areas come from. */
  public static final Source SOURCE = Source.standard("ISO 898-1", "stress area; geometry ISO 724");

  private static final Pattern NAME =
      Pattern.compile("M(\\d+(?:\\.\\d+)?)(?:\\s*[x×]\\s*(\\d+(?:\\.\\d+)?))?");

  /** Coarse pitches of ISO 261 in mm. */
  private static final Map<Double, Double> COARSE_MM =
      Map.ofEntries(
          Map.entry(4.0, 0.7),
          Map.entry(5.0, 0.8),
          Map.entry(6.0, 1.0),
          Map.entry(8.0, 1.25),
          Map.entry(10.0, 1.5),
          Map.entry(12.0, 1.75),
          Map.entry(14.0, 2.0),
          Map.entry(16.0, 2.0),
          Map.entry(18.0, 2.5),
          Map.entry(20.0, 2.5),
          Map.entry(24.0, 3.0));

  private final double diameterMm;
  private final double pitchMm;

  private MetricThread(double diameterMm, double pitchMm) {
    this.diameterMm = diameterMm;
    this.pitchMm = pitchMm;
  }

  /**
   * A thread of any pitch.
   *
   * @param diameter nominal, 1 mm to 100 mm
   * @param pitch above 0 and at most a third of the diameter
   * @return the thread
   * @throws InvalidInputException if a value is outside its range
   */
  public static MetricThread of(Quantity<Length> diameter, Quantity<Length> pitch) {
    Require.quantity("MetricThread.diameter", diameter, MILLIMETRE).between(1, 100);
    double diameterMm = MILLIMETRE.valueOf(diameter);
    Require.quantity("MetricThread.pitch", pitch, MILLIMETRE).positiveUpTo(diameterMm / 3);
    return new MetricThread(diameterMm, MILLIMETRE.valueOf(pitch));
  }

  /**
   * A thread by its name.
   *
   * @param name {@code M8} for the coarse pitch of ISO 261, M4 to M24, or {@code M8x1}
   * @return the thread
   * @throws InvalidInputException if the name cannot be read or there is no coarse pitch for it
   */
  public static MetricThread parse(String name) {
    Matcher matcher = NAME.matcher(Require.text("MetricThread.name", name));
    if (!matcher.matches()) {
      throw InvalidInputException.of("MetricThread.name", "such as M8 or M8x1", '"' + name + '"');
    }
    double diameterMm = Double.parseDouble(matcher.group(1));
    Double pitchMm =
        matcher.group(2) == null
            ? COARSE_MM.get(diameterMm)
            : Double.valueOf(Double.parseDouble(matcher.group(2)));
    if (pitchMm == null) {
      throw InvalidInputException.of(
          "MetricThread.name",
          "with a pitch, or one of M" + new TreeMap<>(COARSE_MM).keySet(),
          '"' + name + '"');
    }
    return of(MILLIMETRE.of(diameterMm), MILLIMETRE.of(pitchMm));
  }

  /**
   * Nominal diameter d.
   *
   * @return in mm
   */
  public Quantity<Length> diameter() {
    return MILLIMETRE.of(diameterMm);
  }

  /**
   * Pitch P.
   *
   * @return in mm
   */
  public Quantity<Length> pitch() {
    return MILLIMETRE.of(pitchMm);
  }

  /**
   * Pitch diameter: d₂ = d − 0.649519·P.
   *
   * @return in mm
   */
  public Quantity<Length> pitchDiameter() {
    return MILLIMETRE.of(pitchDiameterMm());
  }

  /**
   * Stress area by the formula: A_s = π/4·(d − 0.9381943·P)².
   *
   * @return in mm²
   */
  public Quantity<Area> stressArea() {
    return Kind.AREA.ofSi(circleMm2(diameterMm - 0.9381943 * pitchMm) * 1e-6);
  }

  /**
   * Nominal stress area as ISO 898-1 prints it: the formula rounded to three digits. Strengths are
   * figured with it.
   *
   * @return in mm²
   */
  public Quantity<Area> nominalStressArea() {
    return Kind.AREA.ofSi(nominalStressAreaM2());
  }

  /**
   * Area at the root of the thread: A₃ = π/4·(d − 1.226869·P)².
   *
   * @return in mm²
   */
  public Quantity<Area> rootArea() {
    return Kind.AREA.ofSi(circleMm2(rootDiameterMm()) * 1e-6);
  }

  /**
   * Shortest engagement at which the bolt tears before threads of equal strength strip: 2·A_s/(½·π·
   * (d − 0.64952·P)). Source: Machinery's Handbook, FED-STD-H28, from memory. In aluminium two
   * diameters are common practice.
   *
   * @return in mm
   */
  public Quantity<Length> engagementOfEqualStrength() {
    double areaMm2 = nominalStressAreaM2() * 1e6;
    return MILLIMETRE.of(2 * areaMm2 / (0.5 * Math.PI * (diameterMm - 0.64952 * pitchMm)));
  }

  double diameterM() {
    return diameterMm / 1000;
  }

  double pitchM() {
    return pitchMm / 1000;
  }

  double pitchDiameterMm() {
    return diameterMm - 0.649519 * pitchMm;
  }

  double rootDiameterMm() {
    return diameterMm - 1.226869 * pitchMm;
  }

  double nominalStressAreaM2() {
    return new BigDecimal(circleMm2(diameterMm - 0.9381943 * pitchMm))
        .round(new MathContext(3, RoundingMode.HALF_UP))
        .scaleByPowerOfTen(-6)
        .doubleValue();
  }

  private static double circleMm2(double acrossMm) {
    return Math.PI / 4 * acrossMm * acrossMm;
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof MetricThread that
        && diameterMm == that.diameterMm
        && pitchMm == that.pitchMm;
  }

  @Override
  public int hashCode() {
    return Double.hashCode(diameterMm) * 31 + Double.hashCode(pitchMm);
  }

  /**
   * The name, which {@link #parse} reads.
   *
   * @return for example {@code M8} or {@code M8x1}
   */
  @Override
  public String toString() {
    String size = "M" + plain(diameterMm);
    Double coarseMm = COARSE_MM.get(diameterMm);
    return coarseMm != null && coarseMm == pitchMm ? size : size + "x" + plain(pitchMm);
  }

  private static String plain(double value) {
    return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
  }
}
