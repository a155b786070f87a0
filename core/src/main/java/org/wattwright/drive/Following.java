package org.wattwright.drive;

import java.io.Serializable;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Speed;
import javax.measure.quantity.Time;
import org.jspecify.annotations.Nullable;
import org.wattwright.check.Figure;
import org.wattwright.units.Kind;
import org.wattwright.units.Measures;

/**
 * How well a vehicle followed a trace.
 *
 * <p>Behind means more than 2 km/h below the trace at the end of a step. Source of the figure: UN
 * GTR No. 15, Annex 6, speed trace tolerances, from memory; its ±1 s in time is left out, which is
 * stricter.
 *
 * <p>Immutable and thread-safe.
 */
public final class Following implements Serializable {
  private static final long serialVersionUID = 1L;

  /** UN GTR No. 15, Annex 6, from memory. */
  static final double TOLERANCE_MS = 2 / 3.6;

  /** UN GTR No. 15, Annex 8, break-off of the range test, from memory. */
  static final double BREAK_OFF_S = 4;

  private final double timeS;
  private final double behindS;
  private final double mostMs;
  private final double mostAtS;
  private final @Nullable DriveLimit limit;

  Following(
      double timeS, double behindS, double mostMs, double mostAtS, @Nullable DriveLimit limit) {
    this.timeS = timeS;
    this.behindS = behindS;
    this.mostMs = mostMs;
    this.mostAtS = mostAtS;
    this.limit = limit;
  }

  /**
   * Whether the vehicle kept within 2 km/h all the time.
   *
   * @return true if it never fell behind
   */
  public boolean isComplete() {
    return behindS == 0;
  }

  /**
   * Share of the time behind the trace.
   *
   * @return 0 to 1
   */
  public double shareBehind() {
    return behindS / timeS;
  }

  /**
   * Time behind the trace.
   *
   * @return in s
   */
  public Quantity<Time> timeBehind() {
    return Kind.TIME.ofSi(behindS);
  }

  /**
   * How much the speed lacked where it lacked most.
   *
   * @return in km/h, ≥ 0
   */
  public Quantity<Speed> largestGap() {
    return Kind.SPEED.ofSi(mostMs);
  }

  /**
   * When the speed lacked most, from the start of the run.
   *
   * @return in s
   */
  public Quantity<Time> largestGapAt() {
    return Kind.TIME.ofSi(mostAtS);
  }

  /**
   * What held the vehicle back there.
   *
   * @return empty if nothing ever did
   */
  public Optional<DriveLimit> heldBackBy() {
    return Optional.ofNullable(limit);
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Following that
        && timeS == that.timeS
        && behindS == that.behindS
        && mostMs == that.mostMs
        && mostAtS == that.mostAtS
        && limit == that.limit;
  }

  @Override
  public int hashCode() {
    return Double.hashCode(behindS) * 31 + Double.hashCode(mostAtS);
  }

  /**
   * Where and by how much it fell behind.
   *
   * @return for example {@code followed} or {@code behind for 61 s (5.2 %), most 31.2 km/h at 1114
   *     s, limited by motor speed}
   */
  @Override
  public String toString() {
    if (isComplete()) {
      return "followed";
    }
    return "behind for "
        + Measures.format(timeBehind(), Kind.TIME)
        + " ("
        + Figure.share(Math.rint(shareBehind() * 1000) / 1000)
        + "), most "
        + Measures.format(largestGap(), Kind.SPEED)
        + " at "
        + Measures.format(largestGapAt(), Kind.TIME)
        + (limit == null ? "" : ", limited by " + limit);
  }
}
