package org.wattwright.vehicle;

import static org.wattwright.units.WorkshopUnits.DEGREE;
import static org.wattwright.units.WorkshopUnits.METRE;
import static org.wattwright.units.WorkshopUnits.METRE_PER_SECOND_SQUARED;

import org.wattwright.check.Figure;
import org.wattwright.check.Recorder;
import org.wattwright.check.StepBuilder;

/** What the grip of one axle can do: drive, brake, hold on a slope. */
final class Grip {
  private final Stance stance;
  private final Axle axle;
  private final double mu;
  private final Recorder recorder;

  Grip(Stance stance, Axle axle, double adhesion, Recorder recorder) {
    this.stance = stance;
    this.axle = axle;
    this.mu = Stance.adhesion("Stance.adhesion", adhesion);
    this.recorder = recorder;
  }

  /** Highest acceleration over gravity: rear μ·a₁/(L − μ·h), front μ·a₂/(L + μ·h). */
  double tractionRate() {
    boolean rear = axle == Axle.REAR;
    double liftRate = rear ? stance.armM(Axle.FRONT) / stance.heightM() : Double.POSITIVE_INFINITY;
    double rate = limited((rear ? -1 : 1) * mu * stance.heightM(), liftRate);
    if (recorder.isOn()) {
      step("a_max/g", "highest acceleration over gravity, " + axle + " axle driven")
          .formula(rear ? "min(μ·a_1/(L - μ·h), a_2/h)" : "μ·a_2/(L + μ·h)")
          .gives(Figure.number(rate));
    }
    return rate;
  }

  /** Highest braking rate: rear μ·a₁/(L + μ·h), front μ·a₂/(L − μ·h). */
  double brakingRate() {
    boolean rear = axle == Axle.REAR;
    double liftRate = rear ? Double.POSITIVE_INFINITY : stance.armM(Axle.REAR) / stance.heightM();
    double rate = limited((rear ? 1 : -1) * mu * stance.heightM(), liftRate);
    if (recorder.isOn()) {
      step("z_max", "highest braking rate with the " + axle + " axle alone")
          .formula(rear ? "μ·a_1/(L + μ·h)" : "min(μ·a_2/(L - μ·h), a_1/h)")
          .gives(Figure.number(rate));
    }
    return rate;
  }

  private double limited(double shiftM, double liftRate) {
    double denominatorM = stance.wheelbaseM() + shiftM;
    return denominatorM > 0 ? Math.min(mu * stance.armM(axle) / denominatorM, liftRate) : liftRate;
  }

  /** The other axle's arm stands in the sheet where its lifting may limit. */
  private StepBuilder step(String symbol, String meaning) {
    return stance
        .step(recorder, symbol, meaning)
        .with("μ", Figure.number(mu))
        .with("a_1", stance.armM(Axle.REAR), METRE)
        .with("a_2", stance.armM(Axle.FRONT), METRE)
        .with("h", stance.heightM(), METRE)
        .with("L", stance.wheelbaseM(), METRE);
  }

  double accelerationMs2(double rate) {
    double limitMs2 = stance.gravity() * rate;
    if (recorder.isOn()) {
      stance
          .step(recorder, "a_max", "traction limit, " + axle + " axle driven")
          .formula("g·a_max/g")
          .with("g", stance.gravity(), METRE_PER_SECOND_SQUARED)
          .with("a_max/g", Figure.number(rate))
          .gives(limitMs2, METRE_PER_SECOND_SQUARED);
    }
    return limitMs2;
  }

  double uphillRad(double tractionRate) {
    return slope("θ_up", "nose uphill", "a_max/g", tractionRate);
  }

  double downhillRad(double brakingRate) {
    return slope("θ_down", "nose downhill", "z_max", brakingRate);
  }

  private double slope(String symbol, String way, String rateSymbol, double rate) {
    double slopeRad = Math.atan(rate);
    if (recorder.isOn()) {
      stance
          .step(recorder, symbol, "steepest slope held by the " + axle + " axle, " + way)
          .formula("atan(" + rateSymbol + ")")
          .with(rateSymbol, Figure.number(rate))
          .gives(slopeRad, DEGREE);
    }
    return slopeRad;
  }
}
