package org.wattwright.drive;

import java.io.Serializable;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import javax.measure.quantity.Speed;
import javax.measure.quantity.Time;
import org.jspecify.annotations.Nullable;
import org.wattwright.units.Kind;
import org.wattwright.units.Measures;

/**
 * Time and distance from one speed to another with full pedal, or the speed beyond which the
 * vehicle does not get.
 *
 * <p>Immutable and thread-safe.
 */
public final class TimeToSpeed implements Serializable {
  private static final long serialVersionUID = 1L;

  private final double timeS;
  private final double distanceM;
  private final double stuckAtMs;
  private final @Nullable DriveLimit limit;

  private TimeToSpeed(
      double timeS, double distanceM, double stuckAtMs, @Nullable DriveLimit limit) {
    this.timeS = timeS;
    this.distanceM = distanceM;
    this.stuckAtMs = stuckAtMs;
    this.limit = limit;
  }

  static TimeToSpeed reached(double timeS, double distanceM) {
    return new TimeToSpeed(timeS, distanceM, Double.NaN, null);
  }

  static TimeToSpeed stuck(double atMs, DriveLimit limit) {
    return new TimeToSpeed(Double.NaN, Double.NaN, atMs, limit);
  }

  /**
   * Whether the speed is reached at all.
   *
   * @return false if the force is used up before
   */
  public boolean isReached() {
    return limit == null;
  }

  /**
   * Time taken.
   *
   * @return in s; empty if the speed is not reached
   */
  public Optional<Quantity<Time>> time() {
    return isReached() ? Optional.of(Kind.TIME.ofSi(timeS)) : Optional.empty();
  }

  /**
   * Distance covered.
   *
   * @return in m; empty if the speed is not reached
   */
  public Optional<Quantity<Length>> distance() {
    return isReached() ? Optional.of(Kind.LENGTH.ofSi(distanceM)) : Optional.empty();
  }

  /**
   * Speed at which no force is left to accelerate.
   *
   * @return empty if the speed asked for is reached
   */
  public Optional<Quantity<Speed>> stuckAt() {
    return isReached() ? Optional.empty() : Optional.of(Kind.SPEED.ofSi(stuckAtMs));
  }

  /**
   * What limits the force there.
   *
   * @return empty if the speed asked for is reached
   */
  public Optional<DriveLimit> limit() {
    return Optional.ofNullable(limit);
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof TimeToSpeed that
        && Double.compare(timeS, that.timeS) == 0
        && Double.compare(distanceM, that.distanceM) == 0
        && Double.compare(stuckAtMs, that.stuckAtMs) == 0
        && limit == that.limit;
  }

  @Override
  public int hashCode() {
    return Double.hashCode(timeS) * 31 + Double.hashCode(stuckAtMs);
  }

  /**
   * Time and distance, or where it gets stuck.
   *
   * @return for example {@code 7.82 s, 58.3 m} or {@code not reached: no force left at 84.2 km/h,
   *     limited by pack}
   */
  @Override
  public String toString() {
    return limit == null
        ? Measures.format(Kind.TIME.ofSi(timeS), Kind.TIME)
            + ", "
            + Measures.format(Kind.LENGTH.ofSi(distanceM), Kind.LENGTH)
        : "not reached: no force left at "
            + Measures.format(Kind.SPEED.ofSi(stuckAtMs), Kind.SPEED)
            + ", limited by "
            + limit;
  }
}
