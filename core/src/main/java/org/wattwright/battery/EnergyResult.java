package org.wattwright.battery;

import java.io.Serializable;
import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Energy;
import javax.measure.quantity.Time;
import org.jspecify.annotations.Nullable;
import org.wattwright.check.Figure;
import org.wattwright.units.Kind;
import org.wattwright.units.Measures;
import org.wattwright.units.StateOfCharge;

/**
 * Energy out of a pack between two states of charge.
 *
 * <p>dt = Q·ds/I, dE = U·Q·ds, all cells at the same state of charge throughout: exact for strings
 * that are alike, an approximation for strings of unlike capacity or resistance.
 *
 * <p>Immutable and thread-safe.
 */
public final class EnergyResult implements Serializable {
  private static final long serialVersionUID = 1L;

  private final EnergySolver.Sum sum;
  private final StateOfCharge end;
  private final @Nullable Limit endedBy;

  EnergyResult(EnergySolver.Sum sum, double end, @Nullable Limit endedBy) {
    this.sum = sum;
    this.end = StateOfCharge.of(end);
    this.endedBy = endedBy;
  }

  EnergySolver.Sum sum() {
    return sum;
  }

  /**
   * Energy at the terminals.
   *
   * @return in kW·h
   */
  public Quantity<Energy> energy() {
    return Kind.ENERGY.ofSi(sum.energyJ());
  }

  /**
   * Energy lost as I²·R in the pack.
   *
   * @return in kW·h
   */
  public Quantity<Energy> heat() {
    return Kind.ENERGY.ofSi(sum.heatJ());
  }

  /**
   * Time taken.
   *
   * @return in s
   */
  public Quantity<Time> time() {
    return Kind.TIME.ofSi(sum.timeS());
  }

  /**
   * Bound of the integration error of the energy: the difference to a rule of half the order.
   *
   * @return in kW·h
   */
  public Quantity<Energy> errorBound() {
    return Kind.ENERGY.ofSi(sum.errorJ());
  }

  /**
   * State of charge at the end.
   *
   * @return the one asked for, or the one at which a limit ended it earlier
   */
  public StateOfCharge end() {
    return end;
  }

  /**
   * The limit that ended it before the state of charge asked for.
   *
   * @return empty if that state of charge was reached
   */
  public Optional<Limit> endedBy() {
    return Optional.ofNullable(endedBy);
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof EnergyResult that
        && sum.equals(that.sum)
        && end.equals(that.end)
        && endedBy == that.endedBy;
  }

  @Override
  public int hashCode() {
    return Objects.hash(sum, end);
  }

  /**
   * Energy, time and what ended it.
   *
   * @return for example {@code 28.4 kW·h down to 10 %}
   */
  @Override
  public String toString() {
    String text = Measures.format(energy(), Kind.ENERGY) + " down to " + Figure.of(end);
    return endedBy == null ? text : text + ", ended by " + endedBy;
  }
}
