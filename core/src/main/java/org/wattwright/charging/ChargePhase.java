package org.wattwright.charging;

import java.io.Serializable;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Energy;
import javax.measure.quantity.Time;
import org.wattwright.check.Figure;
import org.wattwright.units.Kind;
import org.wattwright.units.Measure;
import org.wattwright.units.StateOfCharge;

/**
 * A stretch of a charge in which one limit governs.
 *
 * <p>Immutable and thread-safe.
 *
 * @param limit what limits the current
 * @param start since the start of the charge
 * @param duration how long
 * @param from state of charge at its beginning
 * @param to state of charge at its end
 * @param energy into the pack's terminals
 */
public record ChargePhase(
    ChargeLimit limit,
    Quantity<Time> start,
    Quantity<Time> duration,
    StateOfCharge from,
    StateOfCharge to,
    Quantity<Energy> energy)
    implements Serializable {
  /**
   * Takes any quantity implementation.
   *
   * @param limit what limits the current
   * @param start since the start of the charge
   * @param duration how long
   * @param from state of charge at its beginning
   * @param to state of charge at its end
   * @param energy into the pack's terminals
   */
  public ChargePhase {
    Objects.requireNonNull(limit, "limit");
    start = Measure.from(start, Kind.TIME);
    duration = Measure.from(duration, Kind.TIME);
    Objects.requireNonNull(from, "from");
    Objects.requireNonNull(to, "to");
    energy = Measure.from(energy, Kind.ENERGY);
  }

  static ChargePhase between(ChargeRun.State first, ChargeRun.State last) {
    return new ChargePhase(
        first.moment().limit(),
        Kind.TIME.ofSi(first.timeS()),
        Kind.TIME.ofSi(last.timeS() - first.timeS()),
        StateOfCharge.of(first.soc()),
        StateOfCharge.of(last.soc()),
        Kind.ENERGY.ofSi(last.terminalJ() - first.terminalJ()));
  }

  /**
   * Limit, states of charge, duration and energy.
   *
   * @return for example {@code 20 % … 93.2 % in 5 h 10 min, 21.4 kW·h: supply circuit}
   */
  @Override
  public String toString() {
    return Figure.of(from)
        + " … "
        + Figure.of(to)
        + " in "
        + Clock.text(Kind.TIME.siValueOf(duration))
        + ", "
        + Figure.of(energy, Kind.ENERGY)
        + ": "
        + limit;
  }
}
