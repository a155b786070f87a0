package org.wattwright.vehicle;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.wattwright.check.Basis;
import org.wattwright.check.CautionBand;
import org.wattwright.check.Check;
import org.wattwright.check.Figure;
import org.wattwright.check.Recorder;
import org.wattwright.check.Source;
import org.wattwright.check.Worksheet;
import org.wattwright.internal.Require;
import org.wattwright.units.Kind;

/**
 * A fixed split of brake force between the axles, against what the axle loads ask for.
 *
 * <p>ψ: static rear share; χ = h/L; φ: rear share of the brake force; z: braking rate, deceleration
 * over gravity; μ: adhesion. Ideal forces over weight: front (1 − ψ + χ·z)·z, rear (ψ − χ·z)·z.
 * Adhesion used: front (1 − φ)·z/(1 − ψ + χ·z), rear φ·z/(ψ − χ·z); equal at z = (ψ − φ)/χ. Brakes
 * suited to the old weight split may lock the rear axle first after mass has moved forward, and
 * load cases differ: look at the empty and the laden vehicle.
 *
 * <p>Source: R. Limpert, Brake Design and Safety, chapter 7; UN R13-H, Annex 5 (figures from
 * memory). Inertia of turning parts and air forces left out. Immutable and thread-safe.
 */
public final class BrakeBalance implements Serializable {
  private static final long serialVersionUID = 1L;

  /** Range of braking rates over which the front axle must use more adhesion; UN R13-H, memory. */
  static final double LOWEST_RATE = 0.15;

  private static final double HIGHEST_RATE = 0.8;

  static final Source LIMPERT =
      Source.literature("R. Limpert, Brake Design and Safety", "chapter 7");
  private static final Source R13H = Source.standard("UN R13-H", "Annex 5, from memory");

  private final Stance stance;
  private final double rearShare;
  private final Basis basis;

  private BrakeBalance(Stance stance, double rearShare, Basis basis) {
    this.stance = stance;
    this.rearShare = rearShare;
    this.basis = basis;
  }

  /**
   * A split known from measurement or from cylinder, drum and lining data.
   *
   * @param stance the vehicle in its load case
   * @param rearShare share of the rear axle in the brake force, 0 to 1
   * @return the balance, on the basis of a data sheet or better
   * @throws org.wattwright.units.InvalidInputException if the share is outside its range
   */
  public static BrakeBalance of(Stance stance, double rearShare) {
    return of(stance, rearShare, Basis.DATA_SHEET);
  }

  /**
   * A split with what it rests on.
   *
   * @param stance the vehicle in its load case
   * @param rearShare share of the rear axle in the brake force, 0 to 1
   * @param basis of the share
   * @return the balance
   * @throws org.wattwright.units.InvalidInputException if the share is outside its range
   */
  public static BrakeBalance of(Stance stance, double rearShare, Basis basis) {
    Objects.requireNonNull(stance, "stance");
    Require.fraction("BrakeBalance.rearShare", rearShare);
    return new BrakeBalance(stance, rearShare, basis.and(stance.basis()));
  }

  /**
   * The vehicle in its load case.
   *
   * @return the stance
   */
  public Stance stance() {
    return stance;
  }

  /**
   * Share of the rear axle in the brake force.
   *
   * @return 0 to 1
   */
  public double rearShare() {
    return rearShare;
  }

  /**
   * What split and stance rest on.
   *
   * @return the weaker of the two
   */
  public Basis basis() {
    return basis;
  }

  /** The balances between which the truth lies when the height is an estimate. */
  List<BrakeBalance> extremes() {
    return stance.extremes().stream().map(s -> new BrakeBalance(s, rearShare, basis)).toList();
  }

  /**
   * Brake force of an axle, over the weight of the vehicle, that uses the grip of both axles alike.
   *
   * @param axle front or rear
   * @param rate braking rate z, 0 to 2
   * @return force over weight; both sum to z
   * @throws org.wattwright.units.InvalidInputException if the rate is outside its range
   */
  public double idealForce(Axle axle, double rate) {
    return rate(rate) * loadShare(axle, rate);
  }

  /** Share of an axle in the weight while braking. */
  private double loadShare(Axle axle, double rate) {
    double shift = stance.heightM() / stance.wheelbaseM() * rate;
    return stance.share(axle) + (axle == Axle.FRONT ? shift : -shift);
  }

  /**
   * Share of an axle in the brake force that uses the grip of both axles alike.
   *
   * @param axle front or rear
   * @param rate braking rate z, 0 to 2, rolling resistance included where it counts
   * @return share; outside 0 to 1 where the other axle would lift
   * @throws org.wattwright.units.InvalidInputException if the rate is outside its range
   */
  public double idealShare(Axle axle, double rate) {
    return loadShare(axle, rate(rate));
  }

  private static double rate(double rate) {
    return Require.between("BrakeBalance.rate", rate, 0, 2);
  }

  /**
   * Points of the ideal curve from z = 0 in equal steps, for drawing.
   *
   * @param steps number of steps, 1 to 1000
   * @param upTo highest braking rate, 0 to 2
   * @return steps + 1 points
   * @throws org.wattwright.units.InvalidInputException if an argument is outside its range
   */
  public List<IdealPoint> idealCurve(int steps, double upTo) {
    Require.count("BrakeBalance.steps", steps, 1, 1000);
    rate(upTo);
    List<IdealPoint> points = new ArrayList<>();
    for (int i = 0; i <= steps; i++) {
      double z = upTo * i / steps;
      points.add(new IdealPoint(z, idealForce(Axle.FRONT, z), idealForce(Axle.REAR, z)));
    }
    return List.copyOf(points);
  }

  /**
   * A point of the ideal brake force curve; all are pure numbers.
   *
   * @param rate braking rate
   * @param front front brake force over weight
   * @param rear rear brake force over weight
   */
  public record IdealPoint(double rate, double front, double rear) implements Serializable {}

  /**
   * Adhesion that an axle uses at a braking rate.
   *
   * @param axle front or rear
   * @param rate braking rate z, 0 to 2
   * @return coefficient; infinite if the braked axle has lifted
   * @throws org.wattwright.units.InvalidInputException if the rate is outside its range
   */
  public double adhesionUsed(Axle axle, double rate) {
    double force = brakeShare(axle) * rate(rate);
    double load = loadShare(axle, rate);
    if (force == 0) {
      return 0;
    }
    return load > 0 ? force / load : Double.POSITIVE_INFINITY;
  }

  private double brakeShare(Axle axle) {
    return axle == Axle.REAR ? rearShare : 1 - rearShare;
  }

  /**
   * Braking rate at which both axles use the same adhesion: (ψ − φ)/χ. Below it the front axle
   * locks first, above it the rear axle.
   *
   * @return negative if the rear axle always locks first
   */
  public double equalAdhesionRate() {
    double chi = stance.heightM() / stance.wheelbaseM();
    return (stance.share(Axle.REAR) - rearShare) / chi;
  }

  /**
   * Which axle locks first on a given road, and at what deceleration.
   *
   * @param adhesion coefficient μ, 0 to 2
   * @return axle, deceleration, efficiency
   * @throws org.wattwright.units.InvalidInputException if the coefficient is outside its range
   */
  public FirstLock firstLock(double adhesion) {
    return firstLock(adhesion, Recorder.OFF);
  }

  /**
   * Which axle locks first, with the working.
   *
   * @param adhesion coefficient μ, above 0 and up to 2
   * @param recorder takes down the steps
   * @return axle, deceleration, efficiency; the front axle if both lock together
   * @throws org.wattwright.units.InvalidInputException if the coefficient is outside its range
   */
  public FirstLock firstLock(double adhesion, Recorder recorder) {
    double mu =
        Stance.adhesion(
            "BrakeBalance.adhesion", Require.positive("BrakeBalance.adhesion", adhesion));
    double front = lockRate(Axle.FRONT, mu, recorder);
    double rear = lockRate(Axle.REAR, mu, recorder);
    Axle first = rear < front ? Axle.REAR : Axle.FRONT;
    double rate = Math.min(front, rear);
    if (recorder.isOn()) {
      new BrakeSteps(this, recorder).smaller(first, new BrakeSteps.Rates(front, rear));
    }
    return new FirstLock(first, rate, Kind.ACCELERATION.ofSi(rate * stance.gravity()), rate / mu);
  }

  /**
   * Front (1 − ψ)·μ/(1 − φ − μ·χ), rear ψ·μ/(φ + μ·χ); no lock where the divisor is not positive.
   */
  private double lockRate(Axle axle, double mu, Recorder recorder) {
    double chi = stance.heightM() / stance.wheelbaseM();
    double divisor = brakeShare(axle) - (axle == Axle.FRONT ? mu * chi : -mu * chi);
    if (!(divisor > 0)) {
      return Double.POSITIVE_INFINITY;
    }
    double rate = stance.share(axle) * mu / divisor;
    if (recorder.isOn()) {
      new BrakeSteps(this, recorder).lock(axle, mu, rate);
    }
    return rate;
  }

  /**
   * The working of the first lock, of the distribution that would be ideal at that braking rate,
   * and of the rate at which both axles use the same adhesion.
   *
   * @param adhesion coefficient μ, above 0 and up to 2
   * @return the worksheet
   */
  public Worksheet worksheet(double adhesion) {
    Worksheet.Recording recording = Worksheet.record("Brake balance, adhesion " + adhesion);
    FirstLock first = firstLock(adhesion, recording);
    BrakeSteps steps = new BrakeSteps(this, recording);
    steps.firstLock(first);
    steps.ideal(first.rate());
    steps.equalAdhesion();
    return recording.toWorksheet();
  }

  /**
   * The working of a point of the ideal curve and of the adhesion that each axle uses there.
   *
   * @param rate braking rate z, 0 to 2
   * @return the worksheet
   * @throws org.wattwright.units.InvalidInputException if the rate is outside its range
   */
  public Worksheet rateWorksheet(double rate) {
    Worksheet.Recording recording = Worksheet.record("Brake forces at braking rate " + rate(rate));
    BrakeSteps steps = new BrakeSteps(this, recording);
    steps.ideal(rate);
    for (Axle axle : Axle.values()) {
      steps.adhesionUsed(axle, rate);
    }
    return recording.toWorksheet();
  }

  /**
   * Whether the front axle locks before the rear one at every braking rate from 0.15 to 0.8.
   *
   * <p>The rear axle overtakes at z = (ψ − φ)/χ, so that rate must reach 0.8. With an estimated
   * height the end of its band with the lower rate decides. Source: UN R13-H, Annex 5, from memory;
   * whether it binds an older vehicle is for the local code to say.
   *
   * @return the check {@code brake.lock.order}
   */
  public Check checkLockOrder() {
    double lowest =
        extremes().stream().mapToDouble(BrakeBalance::equalAdhesionRate).min().orElseThrow();
    return Check.named(
            "brake.lock.order", "front axle locks before the rear up to a braking rate of 0.8")
        .source(R13H)
        .basis(basis)
        .safety()
        .cautionBand(CautionBand.shareOfLimit(0.05))
        .note(lowest < LOWEST_RATE ? "rear axle locks first in all ordinary braking" : "")
        .atLeast(Figure.number(lowest), Figure.number(HIGHEST_RATE));
  }

  /**
   * Whether the braking rate at first lock reaches the least that a road surface must give: z ≥ 0.1
   * + 0.7·(μ − 0.2). Source: UN R13-H, Annex 5, from memory.
   *
   * @param adhesion coefficient μ, 0.2 to 0.8
   * @return the check {@code brake.adhesion.use}
   * @throws org.wattwright.units.InvalidInputException if the coefficient is outside its range
   */
  public Check checkAdhesionUse(double adhesion) {
    double lowest =
        extremes().stream().mapToDouble(end -> end.firstLock(adhesion).rate()).min().orElseThrow();
    return Check.named("brake.adhesion.use", "braking rate at first lock, adhesion " + adhesion)
        .source(R13H)
        .basis(basis)
        .safety()
        .atLeast(Figure.number(lowest), Figure.number(leastRate(adhesion)));
  }

  /**
   * The least braking rate before a wheel may lock: 0.1 + 0.7·(μ − 0.2). Source: UN R13-H, Annex 5,
   * from memory.
   *
   * @param adhesion coefficient μ, 0.2 to 0.8
   * @return braking rate
   * @throws org.wattwright.units.InvalidInputException if the coefficient is outside its range
   */
  public static double leastRate(double adhesion) {
    return 0.1 + 0.7 * (Require.between("BrakeBalance.adhesion", adhesion, 0.2, 0.8) - 0.2);
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return this == other
        || (other instanceof BrakeBalance that
            && stance.equals(that.stance)
            && rearShare == that.rearShare
            && basis == that.basis);
  }

  @Override
  public int hashCode() {
    return Objects.hash(stance, rearShare, basis);
  }

  /**
   * Split and stance.
   *
   * @return for example {@code 30 % of the brake force at the rear; 1178 kg, …}
   */
  @Override
  public String toString() {
    return Figure.share(rearShare) + " of the brake force at the rear; " + stance;
  }
}
