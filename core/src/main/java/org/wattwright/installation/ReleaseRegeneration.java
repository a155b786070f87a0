package org.wattwright.installation;

import static org.wattwright.units.WorkshopUnits.KILOGRAM;
import static org.wattwright.units.WorkshopUnits.METRE;
import static org.wattwright.units.WorkshopUnits.METRE_PER_SECOND_SQUARED;
import static org.wattwright.units.WorkshopUnits.NEWTON;
import static org.wattwright.units.WorkshopUnits.NEWTON_METRE;

import java.io.Serializable;
import javax.measure.Quantity;
import javax.measure.quantity.Acceleration;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import org.wattwright.check.Figure;
import org.wattwright.check.Recorder;
import org.wattwright.check.Worksheet;
import org.wattwright.internal.Require;
import org.wattwright.units.Kind;
import org.wattwright.units.Measure;
import org.wattwright.units.Torque;

/**
 * A vehicle that slows down when the accelerator is let go: a = (F + F_road)/(m·λ). Source:
 * Newton's second law. The lightest vehicle slows down most. Immutable and thread-safe.
 *
 * @param mass of the vehicle, &gt; 0 kg
 * @param massFactor λ, turning parts included, 1 to 2
 * @param roadLoad rolling and air at the speed looked at, ≥ 0 N
 */
public record ReleaseRegeneration(Quantity<Mass> mass, double massFactor, Quantity<Force> roadLoad)
    implements Serializable {
  /**
   * Checks the ranges.
   *
   * @param mass &gt; 0 kg
   * @param massFactor 1 to 2
   * @param roadLoad ≥ 0 N
   * @throws org.wattwright.units.InvalidInputException if a value is outside its range
   */
  public ReleaseRegeneration {
    Require.quantity("ReleaseRegeneration.mass", mass, KILOGRAM).positive();
    Require.between("ReleaseRegeneration.massFactor", massFactor, 1, 2);
    Require.quantity("ReleaseRegeneration.roadLoad", roadLoad, NEWTON).nonNegative();
    mass = Measure.from(mass, Kind.MASS);
    roadLoad = Measure.from(roadLoad, Kind.FORCE);
  }

  private double inertiaKg() {
    return Kind.MASS.siValueOf(mass) * massFactor;
  }

  /**
   * Deceleration from a braking force of the drive.
   *
   * @param wheelForce at the tyres, ≥ 0 N
   * @return in m/s²
   * @throws org.wattwright.units.InvalidInputException if negative
   */
  public Quantity<Acceleration> deceleration(Quantity<Force> wheelForce) {
    return METRE_PER_SECOND_SQUARED.of(rate(wheelForce, Recorder.OFF));
  }

  private double rate(Quantity<Force> wheelForce, Recorder recorder) {
    double forceN =
        Require.quantity("ReleaseRegeneration.wheelForce", wheelForce, NEWTON).nonNegative();
    double roadN = Kind.FORCE.siValueOf(roadLoad);
    double rate = (forceN + roadN) / inertiaKg();
    if (recorder.isOn()) {
      recorder
          .step("a", "deceleration on release of the accelerator")
          .formula("(F + F_road)/(m·λ)")
          .with("F", forceN, NEWTON)
          .with("F_road", roadN, NEWTON)
          .with("m", Kind.MASS.siValueOf(mass), KILOGRAM)
          .with("λ", Figure.number(massFactor))
          .gives(rate, METRE_PER_SECOND_SQUARED);
    }
    return rate;
  }

  /**
   * Wheel force that reaches a deceleration: m·λ·a − F_road.
   *
   * @param deceleration ≥ 0 m/s²
   * @return in N, not below 0
   * @throws org.wattwright.units.InvalidInputException if negative
   */
  public Quantity<Force> wheelForceFor(Quantity<Acceleration> deceleration) {
    double rate =
        Require.quantity("ReleaseRegeneration.deceleration", deceleration, METRE_PER_SECOND_SQUARED)
            .nonNegative();
    return NEWTON.of(Math.max(0, inertiaKg() * rate - Kind.FORCE.siValueOf(roadLoad)));
  }

  /**
   * Motor torque that reaches a deceleration: F·r/i·η. In braking the losses of the gears help.
   *
   * @param deceleration ≥ 0 m/s²
   * @param gearing between motor and road
   * @return in N·m
   * @throws org.wattwright.units.InvalidInputException if negative
   */
  public Quantity<Torque> motorTorqueFor(Quantity<Acceleration> deceleration, Gearing gearing) {
    double forceN = Kind.FORCE.siValueOf(wheelForceFor(deceleration));
    double radiusM = Kind.LENGTH.siValueOf(gearing.wheelRadius());
    return NEWTON_METRE.of(forceN * radiusM / gearing.ratio() * gearing.efficiency());
  }

  /**
   * The working.
   *
   * @param wheelForce at the tyres, ≥ 0 N
   * @return the worksheet
   * @throws org.wattwright.units.InvalidInputException if negative
   */
  public Worksheet worksheet(Quantity<Force> wheelForce) {
    Worksheet.Recording sheet = Worksheet.record("Regeneration on release of the accelerator");
    rate(wheelForce, sheet);
    return sheet.toWorksheet();
  }

  /**
   * Between motor and road.
   *
   * @param wheelRadius &gt; 0 m
   * @param ratio motor turns by wheel turns, &gt; 0
   * @param efficiency of the gears, &gt; 0 to 1
   */
  public record Gearing(Quantity<Length> wheelRadius, double ratio, double efficiency)
      implements Serializable {
    /**
     * Checks the ranges.
     *
     * @param wheelRadius &gt; 0 m
     * @param ratio &gt; 0
     * @param efficiency &gt; 0 to 1
     * @throws org.wattwright.units.InvalidInputException if a value is outside its range
     */
    public Gearing {
      Require.quantity("ReleaseRegeneration.wheelRadius", wheelRadius, METRE).positive();
      Require.positive("ReleaseRegeneration.ratio", ratio);
      Require.positive("ReleaseRegeneration.efficiency", efficiency);
      Require.fraction("ReleaseRegeneration.efficiency", efficiency);
      wheelRadius = Measure.from(wheelRadius, Kind.LENGTH);
    }
  }
}
