package org.wattwright.battery;

import java.io.Serializable;
import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Energy;
import javax.measure.quantity.Time;
import org.jspecify.annotations.Nullable;
import org.wattwright.units.Kind;
import org.wattwright.units.Measures;
import org.wattwright.units.StateOfCharge;

/**
 * Energy out of a pack between two states of charge.
 *
 * <p>Immutable and thread-safe.
 */
public final class EnergyResult implements Serializable {
  private static final long serialVersionUID = 1L;

  private final Quantity<Energy> energy;
  private final Quantity<Energy> heat;
  private final Quantity<Time> time;
  private final Quantity<Energy> errorBound;
  private final StateOfCharge end;
  private final @Nullable Limit endedBy;

  EnergyResult(EnergySolver.Sum sum, double end, @Nullable Limit endedBy) {
    this.energy = Kind.ENERGY.ofSi(sum.energyJ());
    this.heat = Kind.ENERGY.ofSi(sum.heatJ());
    this.time = Kind.TIME.ofSi(sum.timeS());
    this.errorBound = Kind.ENERGY.ofSi(sum.errorJ());
    this.end = StateOfCharge.of(end);
    this.endedBy = endedBy;
  }

  /**
   * Energy at the terminals.
   *
   * @return in kW·h
   */
  public Quantity<Energy> energy() {
    return energy;
  }

  /**
   * Energy lost as I²·R in the pack.
   *
   * @return in kW·h
   */
  public Quantity<Energy> heat() {
    return heat;
  }

  /**
   * Time taken.
   *
   * @return in s
   */
  public Quantity<Time> time() {
    return time;
  }

  /**
   * Bound of the integration error of the energy.
   *
   * @return in kW·h
   */
  public Quantity<Energy> errorBound() {
    return errorBound;
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
        && energy.equals(that.energy)
        && heat.equals(that.heat)
        && time.equals(that.time)
        && end.equals(that.end)
        && endedBy == that.endedBy;
  }

  @Override
  public int hashCode() {
    return Objects.hash(energy, time, end);
  }

  /**
   * Energy, time and what ended it.
   *
   * @return for example {@code 28.4 kW·h down to 10 %}
   */
  @Override
  public String toString() {
    String text = Measures.format(energy, Kind.ENERGY) + " down to " + end;
    return endedBy == null ? text : text + ", ended by " + endedBy;
  }
}
