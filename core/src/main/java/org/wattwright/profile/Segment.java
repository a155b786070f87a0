package org.wattwright.profile;

import java.io.Serializable;
import javax.measure.Quantity;
import javax.measure.quantity.Time;

/**
 * A part of a profile in which the value holds, or changes along a straight line.
 *
 * <p>Immutable and thread-safe.
 *
 * @param <Q> the quantity type of the value
 * @param start when it starts, in s from the start of the profile
 * @param duration how long it lasts, &gt; 0 s
 * @param from value just after its start, in the customary unit
 * @param to value just before its end, in the customary unit
 */
public record Segment<Q extends Quantity<Q>>(
    Quantity<Time> start, Quantity<Time> duration, Quantity<Q> from, Quantity<Q> to)
    implements Serializable {
  /**
   * Start, duration and values.
   *
   * @return for example {@code from 10 s for 50 s: 120 A}, or {@code …: 120 A to 0 A}
   */
  @Override
  public String toString() {
    String values = from.equals(to) ? from.toString() : from + " to " + to;
    return "from " + start + " for " + duration + ": " + values;
  }
}
