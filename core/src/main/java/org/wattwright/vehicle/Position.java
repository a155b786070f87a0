package org.wattwright.vehicle;

import static org.wattwright.units.WorkshopUnits.METRE;

import java.io.Serializable;
import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.jspecify.annotations.Nullable;
import org.wattwright.internal.Require;
import org.wattwright.units.Kind;
import org.wattwright.units.Measure;

/**
 * Where the centre of a mass sits, as a workshop measures it: distance behind the front axle, left
 * of the centre line, above the ground.
 *
 * <p>Distances behind the front axle are positive; ahead of it they are negative, and behind the
 * rear axle they exceed the wheelbase. Nothing is clamped: a mass behind the rear axle lightens the
 * front axle. In the directions of ISO 8855 (x forward, y left, z up, origin on the ground below
 * the middle of the front axle) a position is x = −d, y, z. Sideways place and height may be left
 * out; what depends on them is then not calculated.
 *
 * <pre>{@code
 * Position.behindFrontAxle(metres(2.62)).leftOfCentre(millimetres(80)).aboveGround(metres(0.52))
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 */
public final class Position implements Serializable {
  private static final long serialVersionUID = 1L;

  private final Quantity<Length> behind;
  private final @Nullable Quantity<Length> left;
  private final @Nullable Quantity<Length> height;

  private Position(
      Quantity<Length> behind, @Nullable Quantity<Length> left, @Nullable Quantity<Length> height) {
    this.behind = Measure.from(behind, Kind.LENGTH);
    this.left = left;
    this.height = height;
  }

  /**
   * A place behind the front axle.
   *
   * @param distance along the vehicle, in m; negative ahead of the axle
   * @return the position; sideways place and height not yet known
   */
  public static Position behindFrontAxle(Quantity<Length> distance) {
    return new Position(Objects.requireNonNull(distance, "distance"), null, null);
  }

  /**
   * A place ahead of the front axle.
   *
   * @param distance along the vehicle, in m; negative behind the axle
   * @return the position; sideways place and height not yet known
   */
  public static Position aheadOfFrontAxle(Quantity<Length> distance) {
    return behindFrontAxle(Si.negated(distance));
  }

  /**
   * This position with its sideways place.
   *
   * @param distance from the centre line, in m; positive to the left of the driver
   * @return a new position
   */
  public Position leftOfCentre(Quantity<Length> distance) {
    return new Position(behind, Measure.from(distance, Kind.LENGTH), height);
  }

  /**
   * This position with its sideways place.
   *
   * @param distance from the centre line, in m; positive to the right of the driver
   * @return a new position
   */
  public Position rightOfCentre(Quantity<Length> distance) {
    return leftOfCentre(Si.negated(distance));
  }

  /**
   * This position on the centre line.
   *
   * @return a new position
   */
  public Position onCentreLine() {
    return leftOfCentre(METRE.of(0));
  }

  /**
   * This position with its height.
   *
   * @param distance above level ground, ≥ 0 m
   * @return a new position
   * @throws org.wattwright.units.InvalidInputException if the height is negative
   */
  public Position aboveGround(Quantity<Length> distance) {
    Require.quantity("Position.aboveGround", distance, METRE).nonNegative();
    return new Position(behind, left, Measure.from(distance, Kind.LENGTH));
  }

  /**
   * Distance behind the front axle.
   *
   * @return as given; negative ahead of the axle
   */
  public Quantity<Length> behindFrontAxle() {
    return behind;
  }

  /**
   * Distance from the centre line.
   *
   * @return positive to the left; empty if not known
   */
  public Optional<Quantity<Length>> leftOfCentre() {
    return Optional.ofNullable(left);
  }

  /**
   * Height above the ground.
   *
   * @return empty if not known
   */
  public Optional<Quantity<Length>> aboveGround() {
    return Optional.ofNullable(height);
  }

  double behindM() {
    return Kind.LENGTH.siValueOf(behind);
  }

  /** NaN if not known, so that sums with it are not known either. */
  double leftM() {
    return left == null ? Double.NaN : Kind.LENGTH.siValueOf(left);
  }

  /** NaN if not known. */
  double heightM() {
    return height == null ? Double.NaN : Kind.LENGTH.siValueOf(height);
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return this == other
        || (other instanceof Position that
            && behind.equals(that.behind)
            && Objects.equals(left, that.left)
            && Objects.equals(height, that.height));
  }

  @Override
  public int hashCode() {
    return Objects.hash(behind, left, height);
  }

  /**
   * The three distances that are known.
   *
   * @return for example {@code 2.62 m behind front axle, 80 mm left, 0.52 m up}
   */
  @Override
  public String toString() {
    String side = left == null ? "" : ", " + left + " left";
    String up = height == null ? "" : ", " + height + " up";
    return behind + " behind front axle" + side + up;
  }
}
