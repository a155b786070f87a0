package org.wattwright.profile;

import java.util.ArrayList;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Time;
import org.wattwright.internal.Require;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;
import org.wattwright.units.WorkshopUnits;

/**
 * Puts a {@link Profile} together from stretches that hold a value or change it in a straight line.
 *
 * <p>Mutable and not thread-safe.
 *
 * @param <Q> the quantity type of the value
 */
public final class ProfileBuilder<Q extends Quantity<Q>> {
  private final Kind<Q> kind;
  private final List<Double> durationsS = new ArrayList<>();
  private final List<Double> from = new ArrayList<>();
  private final List<Double> to = new ArrayList<>();

  ProfileBuilder(Kind<Q> kind) {
    this.kind = kind;
  }

  /**
   * Holds a value.
   *
   * @param value the value; jumps there
   * @param duration &gt; 0 s
   * @return this builder
   * @throws InvalidInputException if duration is not positive, or an argument is of another kind
   */
  public ProfileBuilder<Q> hold(Quantity<Q> value, Quantity<Time> duration) {
    double held = kind.siValueOf(value);
    return add(held, held, duration);
  }

  /**
   * Goes from the last value to another in a straight line.
   *
   * @param value the value reached at the end; the first stretch starts at 0
   * @param duration &gt; 0 s
   * @return this builder
   * @throws InvalidInputException if duration is not positive, if an argument is of another kind,
   *     or if a profile of temperatures starts so
   */
  public ProfileBuilder<Q> rampTo(Quantity<Q> value, Quantity<Time> duration) {
    if (to.isEmpty() && kind == Kind.TEMPERATURE) {
      throw InvalidInputException.of("Profile.segments[0]", "a hold", "a ramp from no temperature");
    }
    double start = to.isEmpty() ? 0 : to.get(to.size() - 1);
    return add(start, kind.siValueOf(value), duration);
  }

  private ProfileBuilder<Q> add(double start, double end, Quantity<Time> duration) {
    String field = "Profile.segments[" + from.size() + "].duration";
    durationsS.add(Require.quantity(field, duration, WorkshopUnits.SECOND).positive());
    from.add(start);
    to.add(end);
    return this;
  }

  /**
   * The profile.
   *
   * @return an immutable profile
   * @throws InvalidInputException if there is no stretch
   */
  public Profile<Q> build() {
    Require.nonEmpty("Profile.segments", from);
    return new Profile<>(
        kind, new Trace(Trace.endTimes(array(durationsS)), array(from), array(to)), false);
  }

  private static double[] array(List<Double> values) {
    return values.stream().mapToDouble(Double::doubleValue).toArray();
  }
}
