package org.wattwright.profile;

import java.io.Serializable;
import javax.measure.Quantity;
import javax.measure.quantity.Time;

/**
 * The stretch of a profile, of a given length, in which a figure such as the RMS is highest.
 *
 * <p>Immutable and thread-safe.
 *
 * @param <Q> the quantity type of the value
 * @param start when it starts, in s from the start of the profile; the first one if several are
 *     equal
 * @param length its length, in s
 * @param value the figure over this window, in the customary unit
 */
public record Window<Q extends Quantity<Q>>(
    Quantity<Time> start, Quantity<Time> length, Quantity<Q> value) implements Serializable {
  /**
   * Value, length and start.
   *
   * @return for example {@code 350 A over 10 s from 30 s on}
   */
  @Override
  public String toString() {
    return value + " over " + length + " from " + start + " on";
  }
}
