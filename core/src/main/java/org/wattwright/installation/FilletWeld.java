package org.wattwright.installation;

import static org.wattwright.units.WorkshopUnits.MEGAPASCAL;
import static org.wattwright.units.WorkshopUnits.MILLIMETRE;
import static org.wattwright.units.WorkshopUnits.NEWTON;
import static org.wattwright.units.WorkshopUnits.NEWTON_METRE;

import java.io.Serializable;
import javax.measure.Quantity;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import javax.measure.quantity.Pressure;
import org.wattwright.check.Check;
import org.wattwright.check.Figure;
import org.wattwright.check.Given;
import org.wattwright.check.Source;
import org.wattwright.internal.Require;
import org.wattwright.units.Kind;
import org.wattwright.units.Measure;
import org.wattwright.units.Torque;

/**
 * Fillet welds of one throat: what they carry by the simplified method.
 *
 * <p>f_vw,d = f_u/(√3·β_w·γ), F = f_vw,d·a·Σ(L − 2·a); the craters at both ends of a bead do not
 * count. β_w 0.8 for S235, 0.9 for S355; γ_M2 1.25. Source: EN 1993-1-8 cl. 4.5.3.3, from memory. A
 * weld that holds a battery is work for a tested welder. Immutable and thread-safe.
 *
 * @param throat a, &gt; 0 mm
 * @param bead length of one bead, more than twice the throat
 * @param beads how many alike, at least 1
 * @param tensileStrength f_u of the weaker part, &gt; 0 MPa
 * @param correlation β_w, 0.8 to 1
 */
public record FilletWeld(
    Quantity<Length> throat,
    Quantity<Length> bead,
    int beads,
    Quantity<Pressure> tensileStrength,
    double correlation)
    implements Serializable {
  /** Where the method comes from. */
  public static final Source SOURCE =
      Source.standard("EN 1993-1-8", "cl. 4.5.3.3, simplified method for fillet welds")
          .fromMemory();

  /**
   * Checks the values.
   *
   * @param throat &gt; 0 mm
   * @param bead more than twice the throat
   * @param beads at least 1
   * @param tensileStrength &gt; 0 MPa
   * @param correlation 0.8 to 1
   * @throws org.wattwright.units.InvalidInputException if a value is outside its range
   */
  public FilletWeld {
    double throatM = Require.quantity("FilletWeld.throat", throat, MILLIMETRE).positive();
    Require.quantity("FilletWeld.bead", bead, MILLIMETRE).positive();
    Require.quantity("FilletWeld.bead", bead, MILLIMETRE)
        .between(Math.nextUp(2000 * throatM), Double.MAX_VALUE);
    Require.positiveCount("FilletWeld.beads", beads);
    Require.quantity("FilletWeld.tensileStrength", tensileStrength, MEGAPASCAL).positive();
    Require.between("FilletWeld.correlation", correlation, 0.8, 1);
    throat = Measure.from(throat, Kind.LENGTH);
    bead = Measure.from(bead, Kind.LENGTH);
    tensileStrength = Measure.from(tensileStrength, Kind.PRESSURE);
  }

  /**
   * Throat of an equal-leg fillet: a = z/√2.
   *
   * @param leg z, &gt; 0 mm
   * @return in mm
   * @throws org.wattwright.units.InvalidInputException if not positive
   */
  public static Quantity<Length> throatOf(Quantity<Length> leg) {
    double legM = Require.quantity("FilletWeld.leg", leg, MILLIMETRE).positive();
    return Kind.LENGTH.ofSi(legM / Math.sqrt(2));
  }

  /**
   * Design shear strength: f_vw,d = f_u/(√3·β_w·γ).
   *
   * @return in MPa
   */
  public Quantity<Pressure> designStrength() {
    return Kind.PRESSURE.ofSi(designPa());
  }

  private double designPa() {
    return Kind.PRESSURE.siValueOf(tensileStrength)
        / (Math.sqrt(3) * correlation * Bolt.USUAL_PARTIAL_FACTOR);
  }

  /**
   * Resistance of all beads, craters deducted: f_vw,d·a·Σ(L − 2·a).
   *
   * @return in N
   */
  public Quantity<Force> resistance() {
    return Kind.FORCE.ofSi(areaM2(2) * designPa());
  }

  /**
   * Resistance of all beads over their full length, where run-on and run-off plates kept the
   * craters outside: f_vw,d·a·ΣL.
   *
   * @return in N
   */
  public Quantity<Force> resistanceWithoutCraters() {
    return Kind.FORCE.ofSi(areaM2(0) * designPa());
  }

  private double areaM2(double throatsOff) {
    double throatM = Kind.LENGTH.siValueOf(throat);
    return throatM * beads * (Kind.LENGTH.siValueOf(bead) - throatsOff * throatM);
  }

  /**
   * Stress over the throat, full length of all beads: F/(a·ΣL).
   *
   * @param force ≥ 0 N
   * @return in MPa
   * @throws org.wattwright.units.InvalidInputException if the force is negative
   */
  public Quantity<Pressure> throatStress(Quantity<Force> force) {
    return Kind.PRESSURE.ofSi(
        Require.quantity("FilletWeld.force", force, NEWTON).nonNegative() / areaM2(0));
  }

  /**
   * Force in each of two parallel beads that hold a moment: M/h.
   *
   * @param moment ≥ 0 N·m
   * @param apart distance of the beads, &gt; 0 mm
   * @return in N
   * @throws org.wattwright.units.InvalidInputException if a value is outside its range
   */
  public static Quantity<Force> forceOfMoment(Quantity<Torque> moment, Quantity<Length> apart) {
    double momentNm = Require.quantity("FilletWeld.moment", moment, NEWTON_METRE).nonNegative();
    return Kind.FORCE.ofSi(
        momentNm / Require.quantity("FilletWeld.apart", apart, MILLIMETRE).positive());
  }

  /**
   * Whether the beads carry a force.
   *
   * @param force resultant on all beads, ≥ 0 N, with its basis
   * @return check {@code installation.weld}
   * @throws org.wattwright.units.InvalidInputException if the force is negative
   */
  public Check check(Given<Quantity<Force>> force) {
    Require.quantity("FilletWeld.force", force.value(), NEWTON).nonNegative();
    return Check.named("installation.weld", "force on the fillet welds against their resistance")
        .source(SOURCE)
        .basisOf(force)
        .safety()
        .atMost(Figure.of(force.value(), NEWTON), Figure.of(resistance(), NEWTON));
  }
}
