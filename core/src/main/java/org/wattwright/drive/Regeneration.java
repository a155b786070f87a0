package org.wattwright.drive;

import static org.wattwright.units.WorkshopUnits.KILOMETRE_PER_HOUR;
import static org.wattwright.units.WorkshopUnits.NEWTON;

import java.io.Serializable;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Force;
import javax.measure.quantity.Speed;
import org.jspecify.annotations.Nullable;
import org.wattwright.check.Figure;
import org.wattwright.internal.Require;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;
import org.wattwright.units.Measures;

/**
 * How much of the braking the motor takes, before motor, pack and tyres limit it.
 *
 * <p>A share of the braking force, at most a force, fading out on a straight line towards low
 * speed. The rest goes into the friction brakes. Motor torque, charge limit of the pack and grip of
 * the driven axle alone limit it further.
 *
 * <p>Immutable and thread-safe.
 */
public final class Regeneration implements Serializable {
  private static final long serialVersionUID = 1L;
  private static final double FADE_FROM_MS = 15 / 3.6;
  private static final double FADE_TO_MS = 5 / 3.6;

  private final double share;
  private final double mostN;
  private final double fadeFromMs;
  private final double fadeToMs;

  private Regeneration(double share, double mostN, double fadeFromMs, double fadeToMs) {
    this.share = share;
    this.mostN = mostN;
    this.fadeFromMs = fadeFromMs;
    this.fadeToMs = fadeToMs;
  }

  /**
   * All braking goes into the friction brakes.
   *
   * @return no regeneration
   */
  public static Regeneration none() {
    return ofShare(0);
  }

  /**
   * A share of the braking force at every moment, fading from 15 km/h to nothing at 5 km/h (common
   * practice).
   *
   * @param share of the braking force, 0 to 1
   * @return the regeneration
   * @throws InvalidInputException if the share is outside its range
   */
  public static Regeneration ofShare(double share) {
    return new Regeneration(
        Require.fraction("Regeneration.share", share),
        Double.POSITIVE_INFINITY,
        FADE_FROM_MS,
        FADE_TO_MS);
  }

  /**
   * With at most a force at the driven wheels.
   *
   * @param force ≥ 0 N
   * @return a new regeneration
   * @throws InvalidInputException if negative
   */
  public Regeneration withForceAtMost(Quantity<Force> force) {
    double forceN = Require.quantity("Regeneration.force", force, NEWTON).nonNegative();
    return new Regeneration(share, forceN, fadeFromMs, fadeToMs);
  }

  /**
   * With another fade towards low speed.
   *
   * @param full speed down to which nothing fades, &gt; 0
   * @param none speed at which all has faded, ≥ 0 and below the other
   * @return a new regeneration
   * @throws InvalidInputException if a speed is outside its range
   */
  public Regeneration fadingFrom(Quantity<Speed> full, Quantity<Speed> none) {
    double fullMs = Require.quantity("Regeneration.fadeFrom", full, KILOMETRE_PER_HOUR).positive();
    double noneMs = Require.quantity("Regeneration.fadeTo", none, KILOMETRE_PER_HOUR).nonNegative();
    if (!(noneMs < fullMs)) {
      throw InvalidInputException.of("Regeneration.fadeTo", "< " + full, none.toString());
    }
    return new Regeneration(share, mostN, fullMs, noneMs);
  }

  /**
   * Share of the braking force.
   *
   * @return 0 to 1
   */
  public double share() {
    return share;
  }

  double share(double speedMs) {
    return share * Math.min(1, Math.max(0, (speedMs - fadeToMs) / (fadeFromMs - fadeToMs)));
  }

  double fadeFromMs() {
    return fadeFromMs;
  }

  double fadeToMs() {
    return fadeToMs;
  }

  double mostN() {
    return mostN;
  }

  private java.util.List<Double> fields() {
    return java.util.List.of(share, mostN, fadeFromMs, fadeToMs);
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Regeneration that && fields().equals(that.fields());
  }

  @Override
  public int hashCode() {
    return Objects.hash(fields());
  }

  /**
   * Share and fade.
   *
   * @return for example {@code 100 % of braking, fading from 15 km/h to 5 km/h}
   */
  @Override
  public String toString() {
    return Figure.share(share)
        + " of braking, fading from "
        + Measures.format(Kind.SPEED.ofSi(fadeFromMs), Kind.SPEED)
        + " to "
        + Measures.format(Kind.SPEED.ofSi(fadeToMs), Kind.SPEED);
  }
}
