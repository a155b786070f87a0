package org.wattwright.installation;

import static org.wattwright.units.WorkshopUnits.MEGAPASCAL;
import static org.wattwright.units.WorkshopUnits.MILLIMETRE;
import static org.wattwright.units.WorkshopUnits.NEWTON;
import static org.wattwright.units.WorkshopUnits.NEWTON_METRE;

import java.io.Serializable;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import javax.measure.quantity.Pressure;
import org.wattwright.check.Source;
import org.wattwright.internal.Require;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;
import org.wattwright.units.Measure;
import org.wattwright.units.Torque;

/**
 * Highest assembly preload and torque of a bolt at a friction coefficient: thread and head alike.
 *
 * <p>F_M = ν·R_p·A_s/√(1 + 3·[1.5·(d₂/d_s)·(P/(π·d₂) + 1.155·μ)]²) with ν = 0.9, d_s = (d₂ + d₃)/2;
 * M_A = F_M·(0.16·P + 0.58·d₂·μ + D_Km/2·μ), D_Km = (d_w + d_h)/2. The values are highest values:
 * no margin belongs above them. Source: VDI 2230 Part 1. Immutable and thread-safe.
 *
 * @param friction μ, above 0 and at most 1
 * @param headBearing outer diameter d_w of the bearing face under the head
 * @param hole diameter d_h, smaller than the bearing face
 */
public record ThreadFriction(double friction, Quantity<Length> headBearing, Quantity<Length> hole)
    implements Serializable {
  /** Where the formulas come from. */
  public static final Source SOURCE =
      Source.standard(
          "VDI 2230 Part 1", "assembly preload and torque at 90 % of the yield strength");

  /** Share of the yield strength that is used. */
  public static final double YIELD_SHARE = 0.9;

  /**
   * Checks the values.
   *
   * @param friction above 0 and at most 1
   * @param headBearing larger than the hole
   * @param hole &gt; 0 mm
   * @throws InvalidInputException if a value is outside its range
   */
  public ThreadFriction {
    Require.positive("ThreadFriction.friction", friction);
    Require.fraction("ThreadFriction.friction", friction);
    double holeM = Require.quantity("ThreadFriction.hole", hole, MILLIMETRE).positive();
    double outerM = Require.quantity("ThreadFriction.headBearing", headBearing, MILLIMETRE).any();
    if (!(outerM > holeM)) {
      throw InvalidInputException.of(
          "ThreadFriction.headBearing", "> the hole of " + hole, headBearing.toString());
    }
    headBearing = Measure.from(headBearing, Kind.LENGTH);
    hole = Measure.from(hole, Kind.LENGTH);
  }

  /**
   * Highest assembly preload of a bolt.
   *
   * @param bolt thread and class
   * @return in N
   */
  public Quantity<Force> assemblyPreload(Bolt bolt) {
    return assemblyPreload(bolt.thread(), bolt.propertyClass().yieldStrength(bolt.thread()));
  }

  /**
   * Highest assembly preload of a thread.
   *
   * @param thread the thread
   * @param yieldStrength R_p0.2, &gt; 0 MPa
   * @return in N
   * @throws InvalidInputException if the strength is not positive
   */
  public Quantity<Force> assemblyPreload(MetricThread thread, Quantity<Pressure> yieldStrength) {
    double yieldPa =
        Require.quantity("ThreadFriction.yieldStrength", yieldStrength, MEGAPASCAL).positive();
    Objects.requireNonNull(thread, "thread");
    double pitchDiameterM = thread.pitchDiameterMm() / 1000;
    double stressM = (thread.pitchDiameterMm() + thread.rootDiameterMm()) / 2000;
    double twist =
        1.5
            * (pitchDiameterM / stressM)
            * (thread.pitchM() / (Math.PI * pitchDiameterM) + 1.155 * friction);
    double areaM2 = Math.PI / 4 * stressM * stressM;
    return Kind.FORCE.ofSi(YIELD_SHARE * yieldPa * areaM2 / Math.sqrt(1 + 3 * twist * twist));
  }

  /**
   * Tightening torque of a preload.
   *
   * @param thread the thread
   * @param preload ≥ 0 N
   * @return in N·m
   * @throws InvalidInputException if the preload is negative
   */
  public Quantity<Torque> torque(MetricThread thread, Quantity<Force> preload) {
    double preloadN = Require.quantity("ThreadFriction.preload", preload, NEWTON).nonNegative();
    double headM = (Kind.LENGTH.siValueOf(headBearing) + Kind.LENGTH.siValueOf(hole)) / 2;
    double armM =
        0.16 * thread.pitchM()
            + 0.58 * thread.pitchDiameterMm() / 1000 * friction
            + headM / 2 * friction;
    return NEWTON_METRE.of(preloadN * armM);
  }
}
