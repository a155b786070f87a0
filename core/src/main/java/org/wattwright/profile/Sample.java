package org.wattwright.profile;

import java.io.Serializable;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Time;
import org.wattwright.units.Kind;
import org.wattwright.units.Measure;

/**
 * A value at a point in time, as a logger writes it.
 *
 * <p>Immutable and thread-safe.
 *
 * @param <Q> the quantity type of the value
 * @param time counted from the start of the profile
 * @param value the value at that time
 */
public record Sample<Q extends Quantity<Q>>(Quantity<Time> time, Quantity<Q> value)
    implements Serializable {
  /**
   * Rejects null.
   *
   * @param time counted from the start of the profile
   * @param value the value at that time
   */
  public Sample {
    time = Measure.from(time, Kind.TIME);
    Objects.requireNonNull(value, "value");
  }

  /**
   * A value at a point in time.
   *
   * @param <Q> the quantity type of the value
   * @param time counted from the start of the profile
   * @param value the value at that time
   * @return the sample
   */
  public static <Q extends Quantity<Q>> Sample<Q> of(Quantity<Time> time, Quantity<Q> value) {
    return new Sample<>(time, value);
  }

  /**
   * Time and value.
   *
   * @return for example {@code 200 A at 10 s}
   */
  @Override
  public String toString() {
    return value + " at " + time;
  }
}
