package org.wattwright.drive;

import static org.wattwright.units.WorkshopUnits.MEGAPASCAL;
import static org.wattwright.units.WorkshopUnits.METRE;
import static org.wattwright.units.WorkshopUnits.MILLIMETRE;
import static org.wattwright.units.WorkshopUnits.NEWTON_METRE;

import javax.measure.Quantity;
import javax.measure.quantity.Length;
import javax.measure.quantity.Pressure;
import org.wattwright.check.Estimate;
import org.wattwright.check.Source;
import org.wattwright.internal.Require;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;
import org.wattwright.units.Torque;
import org.wattwright.vehicle.Axle;
import org.wattwright.vehicle.Stance;

/** What a half-shaft of unknown strength stands, and what the tyre can put on it at all. */
public final class HalfShaft {
  private static final Source ORIGINAL_DRIVE =
      Source.commonPractice("a half-shaft held the original engine in its lowest gear");

  /** Clutch dumps loaded it beyond the steady figure, wear and age have taken from it. */
  private static final Estimate.Band BAND = new Estimate.Band(0.8, 1.5);

  private HalfShaft() {}

  /**
   * What it carried with the original engine: T·i₁·i_f/2, an open differential, no losses.
   *
   * @param engineTorque highest of the original engine, &gt; 0 N·m
   * @param lowestGear ratio of its lowest gear, &gt; 0
   * @param finalDrive ratio, &gt; 0
   * @return an estimate; common practice
   * @throws InvalidInputException if an argument is not positive
   */
  public static Estimate<Torque> fromOriginalEngine(
      Quantity<Torque> engineTorque, double lowestGear, double finalDrive) {
    double engineNm =
        Require.quantity("HalfShaft.engineTorque", engineTorque, NEWTON_METRE).positive();
    double ratio =
        Require.positive("HalfShaft.lowestGear", lowestGear)
            * Require.positive("HalfShaft.finalDrive", finalDrive);
    return Estimate.of(
        "half-shaft torque of the original drive",
        NEWTON_METRE.of(engineNm * ratio / 2),
        Kind.TORQUE,
        BAND,
        ORIGINAL_DRIVE);
  }

  /**
   * Torque at which a solid round shaft begins to yield: τ·π·d³/16. Source: torsion of a round bar.
   *
   * @param smallestDiameter at the root of the splines, &gt; 0 mm
   * @param shearYield of its steel, &gt; 0 MPa; about 0.577 times the tensile yield strength
   * @return in N·m
   * @throws InvalidInputException if an argument is not positive
   */
  public static Quantity<Torque> yieldTorque(
      Quantity<Length> smallestDiameter, Quantity<Pressure> shearYield) {
    double diameterM =
        Require.quantity("HalfShaft.smallestDiameter", smallestDiameter, MILLIMETRE).positive();
    double shearPa = Require.quantity("HalfShaft.shearYield", shearYield, MEGAPASCAL).positive();
    return NEWTON_METRE.of(shearPa * Math.PI * diameterM * diameterM * diameterM / 16);
  }

  /**
   * Torque of one half-shaft when both driven tyres are about to spin, with the load shift of that
   * acceleration: μ·N/2·r. No motor can put more on it on that road.
   *
   * @param stance the loaded vehicle
   * @param driven the driven axle
   * @param adhesion coefficient μ, 0 to 2
   * @param wheelRadius &gt; 0 m
   * @return in N·m
   * @throws InvalidInputException if an argument is outside its range
   */
  public static Quantity<Torque> atTyreSlip(
      Stance stance, Axle driven, double adhesion, Quantity<Length> wheelRadius) {
    double radiusM = Require.quantity("HalfShaft.wheelRadius", wheelRadius, METRE).positive();
    double forceN =
        Kind.MASS.siValueOf(stance.mass())
            * Kind.ACCELERATION.siValueOf(stance.tractionLimit(driven, adhesion));
    return NEWTON_METRE.of(forceN / 2 * radiusM);
  }
}
