package org.wattwright.vehicle;

import static org.wattwright.units.WorkshopUnits.METRE;
import static org.wattwright.units.WorkshopUnits.METRE_PER_SECOND_SQUARED;

import org.wattwright.check.Figure;
import org.wattwright.check.Recorder;
import org.wattwright.check.StepBuilder;

/** Writes down what {@link BrakeBalance} computes. */
final class BrakeSteps {
  private final BrakeBalance balance;
  private final Stance stance;
  private final Recorder recorder;

  BrakeSteps(BrakeBalance balance, Recorder recorder) {
    this.balance = balance;
    this.stance = balance.stance();
    this.recorder = recorder;
  }

  /** Braking rates at which the axles lock; infinite for one that does not. */
  record Rates(double front, double rear) {}

  private StepBuilder step(String symbol, String meaning) {
    return recorder.step(symbol, meaning).basis(balance.basis()).source(BrakeBalance.LIMPERT);
  }

  private StepBuilder withHeight(StepBuilder step) {
    return step.with("h", stance.heightM(), METRE).with("L", stance.wheelbaseM(), METRE);
  }

  private StepBuilder withShares(StepBuilder step) {
    return step.with("ψ", Figure.number(stance.share(Axle.REAR)))
        .with("φ", Figure.number(balance.rearShare()));
  }

  void lock(Axle axle, double mu, double rate) {
    boolean front = axle == Axle.FRONT;
    StepBuilder step =
        step(front ? "z_f" : "z_r", "braking rate at which the " + axle + " axle locks")
            .formula(front ? "(1 - ψ)·μ/(1 - φ - μ·h/L)" : "ψ·μ/(φ + μ·h/L)");
    withHeight(withShares(step).with("μ", Figure.number(mu))).gives(Figure.number(rate));
  }

  /** An axle that never locks has no rate to compare. */
  void smaller(Axle first, Rates rates) {
    StepBuilder step = step("z", first + " axle locks first; braking rate at first lock");
    if (Double.isInfinite(rates.front())) {
      step.formula("z_r")
          .with("z_r", Figure.number(rates.rear()))
          .gives(Figure.number(rates.rear()));
    } else {
      step.formula("min(z_f, z_r)")
          .with("z_f", Figure.number(rates.front()))
          .with("z_r", Figure.number(rates.rear()))
          .gives(Figure.number(Math.min(rates.front(), rates.rear())));
    }
  }

  void firstLock(FirstLock first) {
    step("a", "deceleration at first lock")
        .formula("z·g")
        .with("z", Figure.number(first.rate()))
        .with("g", stance.gravity(), METRE_PER_SECOND_SQUARED)
        .gives(Figure.of(first.deceleration(), METRE_PER_SECOND_SQUARED));
    step("η", "share of the grip used at first lock")
        .formula("z/μ")
        .with("z", Figure.number(first.rate()))
        .with("μ", Figure.number(first.rate() / first.efficiency()))
        .gives(Figure.share(first.efficiency()));
  }

  void ideal(double rate) {
    withHeight(
            step("φ_ideal", "share of the rear axle in the brake force that would be ideal there")
                .formula("ψ - z·h/L")
                .with("ψ", Figure.number(stance.share(Axle.REAR)))
                .with("z", Figure.number(rate)))
        .gives(Figure.number(balance.idealShare(Axle.REAR, rate)));
    for (Axle axle : Axle.values()) {
      boolean front = axle == Axle.FRONT;
      step(front ? "B_f/W" : "B_r/W", "ideal " + axle + " brake force over the weight")
          .formula(front ? "(1 - φ_ideal)·z" : "φ_ideal·z")
          .with("φ_ideal", Figure.number(balance.idealShare(Axle.REAR, rate)))
          .with("z", Figure.number(rate))
          .gives(Figure.number(balance.idealForce(axle, rate)));
    }
  }

  void adhesionUsed(Axle axle, double rate) {
    double used = balance.adhesionUsed(axle, rate);
    if (Double.isInfinite(used)) {
      return;
    }
    boolean front = axle == Axle.FRONT;
    StepBuilder step =
        step(front ? "μ_f" : "μ_r", "adhesion used by the " + axle + " axle")
            .formula(front ? "(1 - φ)·z/(1 - ψ + z·h/L)" : "φ·z/(ψ - z·h/L)");
    withHeight(withShares(step).with("z", Figure.number(rate))).gives(Figure.number(used));
  }

  void equalAdhesion() {
    withHeight(
            withShares(
                step("z_0", "braking rate at which both axles use the same adhesion")
                    .formula("(ψ - φ)·L/h")))
        .gives(Figure.number(balance.equalAdhesionRate()));
  }
}
