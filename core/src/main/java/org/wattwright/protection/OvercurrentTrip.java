package org.wattwright.protection;

import static org.wattwright.units.WorkshopUnits.AMPERE;
import static org.wattwright.units.WorkshopUnits.SECOND;

import java.io.Serializable;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.Time;
import org.jspecify.annotations.Nullable;
import org.wattwright.internal.Require;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;

/**
 * A setting that opens the contactor: from a current on, after a delay, and who measures it.
 *
 * <p>The delay is the longest from the current's rise to the command, filter included. Immutable
 * and thread-safe.
 */
public final class OvercurrentTrip implements Serializable {
  private static final long serialVersionUID = 1L;

  private final double currentA;
  private final double delayS;
  private final String by;

  private OvercurrentTrip(double currentA, double delayS, String by) {
    this.currentA = currentA;
    this.delayS = delayS;
    this.by = by;
  }

  /**
   * A setting.
   *
   * @param current from which it trips for certain, tolerance included, &gt; 0 A
   * @param delay to the command at the latest, ≥ 0 s
   * @param by who trips, such as {@code battery management}
   * @return the setting
   * @throws InvalidInputException if an argument is outside its range
   */
  public static OvercurrentTrip at(
      Quantity<ElectricCurrent> current, Quantity<Time> delay, String by) {
    return new OvercurrentTrip(
        Require.quantity("OvercurrentTrip.current", current, AMPERE).positive(),
        Require.quantity("OvercurrentTrip.delay", delay, SECOND).nonNegative(),
        Require.text("OvercurrentTrip.by", by));
  }

  /**
   * From which current.
   *
   * @return in A
   */
  public Quantity<ElectricCurrent> current() {
    return Kind.CURRENT.ofSi(currentA);
  }

  /**
   * How long to the command.
   *
   * @return in s
   */
  public Quantity<Time> delay() {
    return Kind.TIME.ofSi(delayS);
  }

  /**
   * Who trips.
   *
   * @return for example {@code battery management}
   */
  public String by() {
    return by;
  }

  double currentA() {
    return currentA;
  }

  double delayS() {
    return delayS;
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof OvercurrentTrip that
        && currentA == that.currentA
        && delayS == that.delayS
        && by.equals(that.by);
  }

  @Override
  public int hashCode() {
    return Objects.hash(currentA, delayS, by);
  }

  /**
   * Setting and who trips.
   *
   * @return for example {@code 420 A after 0.5 s by battery management}
   */
  @Override
  public String toString() {
    return current() + " after " + delay() + " by " + by;
  }
}
