package org.wattwright.profile;

import java.io.Serializable;
import javax.measure.Quantity;
import javax.measure.quantity.Time;
import org.wattwright.units.Kind;

/**
 * An unbroken stretch of time in which a profile stays at or above a level.
 *
 * <p>Immutable and thread-safe.
 *
 * @param start when it starts, in s from the start of the profile
 * @param length how long it lasts, ≥ 0 s; one period if it is endless
 * @param endless whether a repeating profile never falls below the level, so that it never ends
 */
public record Spell(Quantity<Time> start, Quantity<Time> length, boolean endless)
    implements Serializable {
  /**
   * Whether this lasts at least so long.
   *
   * @param time ≥ 0 s
   * @return true if it is endless or not shorter
   */
  public boolean lastsAtLeast(Quantity<Time> time) {
    return endless || Kind.TIME.compare(length, time) >= 0;
  }

  /**
   * Length and start.
   *
   * @return for example {@code 12 s from 30 s on}, or {@code endless}
   */
  @Override
  public String toString() {
    return endless ? "endless" : length + " from " + start + " on";
  }
}
