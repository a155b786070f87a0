package org.wattwright.vehicle;

import static org.wattwright.units.WorkshopUnits.DEGREE;
import static org.wattwright.units.WorkshopUnits.KILOMETRE_PER_HOUR;
import static org.wattwright.units.WorkshopUnits.METRE;
import static org.wattwright.units.WorkshopUnits.METRE_PER_SECOND;
import static org.wattwright.units.WorkshopUnits.METRE_PER_SECOND_SQUARED;
import static org.wattwright.units.WorkshopUnits.NEWTON;

import java.io.Serializable;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.quantity.Acceleration;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Frequency;
import javax.measure.quantity.Length;
import javax.measure.quantity.Speed;
import org.jspecify.annotations.Nullable;
import org.wattwright.check.Basis;
import org.wattwright.check.Check;
import org.wattwright.check.CheckBuilder;
import org.wattwright.check.Figure;
import org.wattwright.check.Recorder;
import org.wattwright.check.Source;
import org.wattwright.check.Worksheet;
import org.wattwright.internal.Require;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;

/**
 * How the weight split bends the steering: understeer gradient from axle cornering stiffness.
 *
 * <p>K = W_f/C_f − W_r/C_r, an angle per g of lateral acceleration, with C of the whole axle;
 * positive: understeer. Tyres stiffen with load and pressures differ, which softens the result: the
 * sign is usable, the size is rough, and with an estimated stiffness the confidence is low. Source:
 * T. D. Gillespie, Fundamentals of Vehicle Dynamics (SAE 1992), chapter 6. Immutable and
 * thread-safe.
 */
public final class Understeer implements Serializable {
  private static final long serialVersionUID = 1L;

  private static final Source GILLESPIE =
      Source.literature("T. D. Gillespie, Fundamentals of Vehicle Dynamics", "chapter 6, SAE 1992");

  /** How a vehicle answers growing lateral acceleration. */
  public enum Behaviour {
    /** The wheel must be turned further: positive gradient. */
    UNDERSTEER,
    /** The wheel stays where it is: no gradient. */
    NEUTRAL,
    /** The wheel must be turned back, and there is a critical speed: negative gradient. */
    OVERSTEER
  }

  private final Stance stance;
  private final CorneringStiffness front;
  private final CorneringStiffness rear;
  private final double gradientRad;

  private Understeer(Stance stance, CorneringStiffness front, CorneringStiffness rear) {
    this.stance = stance;
    this.front = front;
    this.rear = rear;
    this.gradientRad = gradient(Recorder.OFF);
  }

  /**
   * From the weight split and the stiffness of both axles.
   *
   * @param stance the vehicle in its load case
   * @param front stiffness of the front axle
   * @param rear stiffness of the rear axle
   * @return the handling
   * @throws InvalidInputException if a stiffness is that of the other axle
   */
  public static Understeer of(Stance stance, CorneringStiffness front, CorneringStiffness rear) {
    Objects.requireNonNull(stance, "stance");
    if (front.axle() != Axle.FRONT || rear.axle() != Axle.REAR) {
      throw InvalidInputException.of(
          "Understeer.front, rear", "of front and rear axle", front.axle() + ", " + rear.axle());
    }
    return new Understeer(stance, front, rear);
  }

  private double gradient(Recorder recorder) {
    double weightN = stance.massKg() * stance.gravity();
    double frontN = weightN * stance.share(Axle.FRONT);
    double rearN = weightN * stance.share(Axle.REAR);
    double gradient = frontN / front.axleNPerRad() - rearN / rear.axleNPerRad();
    if (recorder.isOn()) {
      recorder
          .step("K", "understeer gradient, angle per g (C in N per radian)")
          .formula("W_f/C_f - W_r/C_r")
          .with("W_f", frontN, NEWTON)
          .with("C_f", front.axleNPerRad(), NEWTON)
          .with("W_r", rearN, NEWTON)
          .with("C_r", rear.axleNPerRad(), NEWTON)
          .basis(basis())
          .source(GILLESPIE)
          .gives(gradient, DEGREE);
    }
    return gradient;
  }

  /**
   * Understeer gradient: extra steer angle per g of lateral acceleration.
   *
   * @return positive for understeer
   */
  public Quantity<Angle> gradientPerG() {
    return Kind.ANGLE.ofSi(gradientRad);
  }

  /**
   * How the vehicle answers.
   *
   * @return by the sign of the gradient
   */
  public Behaviour behaviour() {
    if (gradientRad == 0) {
      return Behaviour.NEUTRAL;
    }
    return gradientRad > 0 ? Behaviour.UNDERSTEER : Behaviour.OVERSTEER;
  }

  /**
   * What the gradient rests on.
   *
   * @return weakest of stance and stiffness; estimated means low confidence
   */
  public Basis basis() {
    return stance.basis().and(front.basis()).and(rear.basis());
  }

  /**
   * Speed at which an understeering vehicle needs twice the steer angle: √(g·L/K).
   *
   * @return empty unless it understeers
   */
  public Optional<Quantity<Speed>> characteristicSpeed() {
    return gradientRad > 0 ? Optional.of(speed()) : Optional.empty();
  }

  /**
   * Speed above which an oversteering vehicle is unstable: √(−g·L/K).
   *
   * @return empty unless it oversteers
   */
  public Optional<Quantity<Speed>> criticalSpeed() {
    return gradientRad < 0 ? Optional.of(speed()) : Optional.empty();
  }

  private Quantity<Speed> speed() {
    return Kind.SPEED.ofSi(speedMs(Recorder.OFF));
  }

  private double speedMs(Recorder recorder) {
    double speedMs = Math.sqrt(stance.gravity() * stance.wheelbaseM() / Math.abs(gradientRad));
    if (recorder.isOn()) {
      boolean under = gradientRad > 0;
      recorder
          .step(under ? "V_ch" : "V_cr", under ? "characteristic speed" : "critical speed")
          .formula(under ? "√(g·L/K)" : "√(-g·L/K)")
          .with("g", stance.gravity(), METRE_PER_SECOND_SQUARED)
          .with("L", stance.wheelbaseM(), METRE)
          .with("K", gradientRad, DEGREE)
          .basis(basis())
          .source(GILLESPIE)
          .gives(speedMs, KILOMETRE_PER_HOUR);
    }
    return speedMs;
  }

  /**
   * Steer angle without tyre slip, small-angle form: L/R.
   *
   * @param radius of the bend, &gt; 0 m
   * @return mean angle of the front wheels
   * @throws InvalidInputException if the radius is not positive
   */
  public Quantity<Angle> ackermannAngle(Quantity<Length> radius) {
    double radiusM = Require.quantity("Understeer.radius", radius, METRE).positive();
    return Kind.ANGLE.ofSi(stance.wheelbaseM() / radiusM);
  }

  /**
   * Steer angle in a steady bend: L/R + K·a_y/g.
   *
   * @param radius of the bend, &gt; 0 m
   * @param lateral acceleration, ≥ 0 m/s²
   * @return mean angle of the front wheels
   * @throws InvalidInputException if an argument is outside its range
   */
  public Quantity<Angle> steerAngle(Quantity<Length> radius, Quantity<Acceleration> lateral) {
    double ayMs2 =
        Require.quantity("Understeer.lateral", lateral, METRE_PER_SECOND_SQUARED).nonNegative();
    double ackermannRad = Kind.ANGLE.siValueOf(ackermannAngle(radius));
    return Kind.ANGLE.ofSi(ackermannRad + gradientRad * ayMs2 / stance.gravity());
  }

  /**
   * Yaw velocity per steer angle: V/(L + K·V²/g).
   *
   * @param speed &gt; 0 km/h, below the critical speed
   * @return in 1/s
   * @throws InvalidInputException if the speed is outside its range
   */
  public Quantity<Frequency> yawVelocityGain(Quantity<Speed> speed) {
    double speedMs = Require.quantity("Understeer.speed", speed, METRE_PER_SECOND).positive();
    double lengthM = stance.wheelbaseM() + gradientRad * speedMs * speedMs / stance.gravity();
    if (!(lengthM > 0)) {
      throw InvalidInputException.of(
          "Understeer.speed", "< critical speed, " + speed(), speed.toString());
    }
    return Kind.FREQUENCY.ofSi(speedMs / lengthM);
  }

  /**
   * Static margin: distance of the neutral steer point behind the centre of gravity over the
   * wheelbase, C_r/(C_f + C_r) − a₁/L.
   *
   * @return positive for understeer
   */
  public double staticMargin() {
    return staticMargin(Recorder.OFF);
  }

  private double staticMargin(Recorder recorder) {
    double cr = rear.axleNPerRad();
    double margin = cr / (front.axleNPerRad() + cr) - stance.share(Axle.REAR);
    if (recorder.isOn()) {
      recorder
          .step("s_m", "static margin: neutral steer point behind the centre of gravity, over L")
          .formula("C_r/(C_f + C_r) - ψ")
          .with("C_r", cr, NEWTON)
          .with("C_f", front.axleNPerRad(), NEWTON)
          .with("ψ", Figure.share(stance.share(Axle.REAR)))
          .basis(basis())
          .source(GILLESPIE)
          .gives(Figure.share(margin));
    }
    return margin;
  }

  /**
   * The handlings between which the truth lies when a stiffness is an estimate with a band: least
   * understeer (stiff front, soft rear axle) first.
   *
   * @return this one alone if no stiffness has a band; else two
   */
  public List<Understeer> extremes() {
    if (!front.hasBand() && !rear.hasBand()) {
      return List.of(this);
    }
    return List.of(
        new Understeer(stance, front.end(1), rear.end(-1)),
        new Understeer(stance, front.end(-1), rear.end(1)));
  }

  /**
   * Critical speed against the top speed; passes without one, at best with caution if the stiffness
   * is estimated. Of an estimate with a band the end with the least understeer decides.
   *
   * @param topSpeed of the converted vehicle, &gt; 0 km/h
   * @return the check {@code handling.speed.critical}
   * @throws InvalidInputException if the top speed is not positive
   */
  public Check check(Quantity<Speed> topSpeed) {
    Require.quantity("Understeer.topSpeed", topSpeed, KILOMETRE_PER_HOUR).positive();
    Understeer least = extremes().get(0);
    CheckBuilder check =
        Check.named("handling.speed.critical", "critical speed above top speed")
            .source(GILLESPIE)
            .basis(basis())
            .estimated(estimates())
            .safety()
            .note(note());
    return least
        .criticalSpeed()
        .map(
            critical ->
                check.atLeast(
                    Figure.of(critical, KILOMETRE_PER_HOUR),
                    Figure.of(topSpeed, KILOMETRE_PER_HOUR)))
        .orElseGet(() -> check.holds(true));
  }

  private String[] estimates() {
    return Stream.of(front, rear)
        .filter(stiffness -> stiffness.basis() == Basis.ESTIMATED)
        .map(stiffness -> "cornering stiffness of the " + stiffness.axle() + " axle")
        .toArray(String[]::new);
  }

  private String note() {
    if (basis() != Basis.ESTIMATED) {
      return "";
    }
    String band =
        extremes().stream()
            .map(end -> Figure.of(end.gradientPerG(), Kind.ANGLE).toString())
            .collect(Collectors.joining(" to "));
    return "low confidence: estimated; understeer gradient per g " + band;
  }

  /**
   * The working: gradient, characteristic or critical speed, static margin.
   *
   * @return the worksheet
   */
  public Worksheet worksheet() {
    Worksheet.Recording recording = Worksheet.record("Understeer gradient");
    gradient(recording);
    if (gradientRad != 0) {
      speedMs(recording);
    }
    staticMargin(recording);
    return recording.toWorksheet();
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return this == other
        || (other instanceof Understeer that
            && stance.equals(that.stance)
            && front.equals(that.front)
            && rear.equals(that.rear));
  }

  @Override
  public int hashCode() {
    return Objects.hash(stance, front, rear);
  }

  /**
   * Gradient and basis.
   *
   * @return for example {@code understeer gradient 0.4903 ° per g (estimated)}
   */
  @Override
  public String toString() {
    return "understeer gradient "
        + Figure.of(gradientPerG(), Kind.ANGLE)
        + " per g ("
        + basis()
        + ")";
  }
}
