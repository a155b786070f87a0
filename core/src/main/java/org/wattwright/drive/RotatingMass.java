package org.wattwright.drive;

import static org.wattwright.units.WorkshopUnits.KILOGRAM;
import static org.wattwright.units.WorkshopUnits.KILOGRAM_SQUARE_METRE;
import static org.wattwright.units.WorkshopUnits.METRE;

import javax.measure.Quantity;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import org.wattwright.internal.Require;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.MomentOfInertia;

/** What turning parts add to the mass that has to be accelerated. */
public final class RotatingMass {
  /** 3 % of the mass, all wheels: UN GTR No. 15, Annex 4, equivalent effective mass. */
  public static final double WLTP_FACTOR = 1.03;

  private RotatingMass() {}

  /**
   * Mass that costs as much to accelerate as a turning part: J·i²/r².
   *
   * @param inertia of the part, or of all parts alike together, ≥ 0 kg·m²
   * @param ratio its turns for one turn of the wheels, &gt; 0; 1 for the wheels
   * @param wheelRadius &gt; 0 m
   * @return in kg
   * @throws InvalidInputException if an argument is outside its range
   */
  public static Quantity<Mass> equivalent(
      Quantity<MomentOfInertia> inertia, double ratio, Quantity<Length> wheelRadius) {
    double kgM2 =
        Require.quantity("RotatingMass.inertia", inertia, KILOGRAM_SQUARE_METRE).nonNegative();
    double radiusM = Require.quantity("RotatingMass.wheelRadius", wheelRadius, METRE).positive();
    double turns = Require.positive("RotatingMass.ratio", ratio);
    return KILOGRAM.of(kgM2 * turns * turns / (radiusM * radiusM));
  }

  /**
   * Mass factor of a car with an engine: 1.04 + 0.0025·i². Made for engines, so high for electric
   * motors. Source: T. D. Gillespie, Fundamentals of Vehicle Dynamics (SAE 1992), chapter 2.
   *
   * @param overallRatio gear times final drive, &gt; 0
   * @return factor on the mass
   * @throws InvalidInputException if not positive
   */
  public static double factorWithEngine(double overallRatio) {
    double ratio = Require.positive("RotatingMass.overallRatio", overallRatio);
    return 1.04 + 0.0025 * ratio * ratio;
  }
}
