package org.wattwright.protection;

import java.io.Serializable;
import java.util.List;
import java.util.Objects;
import java.util.function.Function;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.Time;
import org.wattwright.internal.Require;
import org.wattwright.units.JouleIntegral;
import org.wattwright.units.Kind;
import org.wattwright.units.Measure;
import org.wattwright.units.Measures;

/**
 * What a fuse does with a fault: it clears it, it does not, or its data sheet does not say.
 *
 * <pre>{@code
 * String text = fuse.clearing(fault, volts(400)).fold(
 *     cleared -> "off after " + cleared.time(),
 *     not -> "not interrupted: " + not.reason(),
 *     unknown -> "not known: " + unknown.reason());
 * }</pre>
 */
public sealed interface Clearing extends Serializable {
  /**
   * The fault is interrupted; every number is the upper end of the band.
   *
   * @param time until the current is off, in s; below 10 ms a virtual time, I²t by I²
   * @param letThrough total I²t until then, in A²s
   * @param peak highest current until then, in A: the cut-off current if stated, never more than
   *     the prospective current
   */
  record Cleared(
      Quantity<Time> time, Quantity<JouleIntegral> letThrough, Quantity<ElectricCurrent> peak)
      implements Clearing {
    /**
     * Takes any quantity implementation.
     *
     * @param time until the current is off
     * @param letThrough total I²t until then
     * @param peak highest current until then
     */
    public Cleared {
      time = Measure.from(time, Kind.TIME);
      letThrough = Measure.from(letThrough, Kind.JOULE_INTEGRAL);
      peak = Measure.from(peak, Kind.CURRENT);
    }

    /**
     * Time, let-through and peak.
     *
     * @return one line
     */
    @Override
    public String toString() {
      return "off within "
          + Measures.format(time, Kind.TIME)
          + ", "
          + Measures.format(letThrough, Kind.JOULE_INTEGRAL)
          + ", peak at most "
          + Measures.format(peak, Kind.CURRENT);
    }
  }

  /**
   * The fuse is not made to interrupt this fault.
   *
   * @param reason in words
   */
  record NotCleared(String reason) implements Clearing {
    /**
     * Rejects a blank reason.
     *
     * @param reason in words
     */
    public NotCleared {
      reason = Require.text("NotCleared.reason", reason);
    }

    /**
     * The reason.
     *
     * @return one line
     */
    @Override
    public String toString() {
      return "not cleared: " + reason;
    }
  }

  /**
   * The data sheet does not say.
   *
   * @param missing names of the missing fields, such as {@code fuse.preArcingCurve}; at least one
   * @param reason in words
   */
  record NotKnown(List<String> missing, String reason) implements Clearing {
    /**
     * Rejects an empty list.
     *
     * @param missing names of the missing fields
     * @param reason in words
     */
    public NotKnown {
      missing = Require.nonEmpty("NotKnown.missing", missing);
      Objects.requireNonNull(reason, "reason");
    }

    /**
     * The reason.
     *
     * @return one line
     */
    @Override
    public String toString() {
      return "not known: " + reason;
    }
  }

  /**
   * One value from whichever case holds.
   *
   * @param <R> type of the value
   * @param ifCleared from the numbers
   * @param ifNot from the reason
   * @param ifUnknown from what is missing
   * @return the value
   */
  default <R> R fold(
      Function<? super Cleared, ? extends R> ifCleared,
      Function<? super NotCleared, ? extends R> ifNot,
      Function<? super NotKnown, ? extends R> ifUnknown) {
    if (this instanceof Cleared cleared) {
      return ifCleared.apply(cleared);
    }
    return this instanceof NotCleared not ? ifNot.apply(not) : ifUnknown.apply((NotKnown) this);
  }

  /**
   * The numbers of a cleared fault.
   *
   * @return the numbers
   * @throws IllegalStateException if it is not cleared or not known, with the reason
   */
  default Cleared orElseThrow() {
    if (this instanceof Cleared cleared) {
      return cleared;
    }
    throw new IllegalStateException(toString());
  }
}
