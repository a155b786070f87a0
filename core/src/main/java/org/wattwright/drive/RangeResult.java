package org.wattwright.drive;

import static org.wattwright.units.WorkshopUnits.KILOMETRE;
import static org.wattwright.units.WorkshopUnits.KILOWATT_HOUR;
import static org.wattwright.units.WorkshopUnits.WATT_HOUR_PER_KILOMETRE;

import java.io.Serializable;
import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import javax.measure.quantity.Time;
import org.jspecify.annotations.Nullable;
import org.wattwright.check.Basis;
import org.wattwright.check.Figure;
import org.wattwright.check.Worksheet;
import org.wattwright.units.EnergyPerDistance;
import org.wattwright.units.Kind;
import org.wattwright.units.Measures;
import org.wattwright.units.StateOfCharge;

/**
 * How far a vehicle goes on a cycle driven over and over, and what ended it.
 *
 * <p>Immutable and thread-safe.
 */
public final class RangeResult implements Serializable {
  private static final long serialVersionUID = 1L;

  private final String cycle;
  private final double distanceM;
  private final int fullCycles;
  private final CycleResult.Totals totals;
  private final EnergyBalance balance;
  private final Following following;
  private final RangeEnd end;
  private final Basis basis;

  RangeResult(
      DriveCycle cycle,
      CycleKernel kernel,
      CycleDriver driver,
      int fullCycles,
      RangeEnd end,
      Basis basis) {
    this.cycle = cycle.name();
    this.distanceM = kernel.distanceM - driver.overshootM;
    this.fullCycles = fullCycles;
    this.totals = CycleResult.Totals.of(kernel);
    this.balance = kernel.balance();
    this.following = driver.following();
    this.end = end;
    this.basis = basis;
  }

  /**
   * Distance to the end.
   *
   * @return in km
   */
  public Quantity<Length> distance() {
    return KILOMETRE.of(distanceM / 1000);
  }

  /**
   * Cycles driven to their end.
   *
   * @return ≥ 0
   */
  public int fullCycles() {
    return fullCycles;
  }

  /**
   * Driving time.
   *
   * @return in s
   */
  public Quantity<Time> time() {
    return Kind.TIME.ofSi(totals.timeS());
  }

  /**
   * What ended it.
   *
   * @return reserve, left behind, or the bound on the number of cycles
   */
  public RangeEnd endedBy() {
    return end;
  }

  /**
   * State of charge at the end.
   *
   * @return the reserve, or more if something else ended it
   */
  public StateOfCharge endCharge() {
    return StateOfCharge.of(Math.max(0, Math.min(1, totals.endSoc())));
  }

  /**
   * Mean energy at the terminals for each distance.
   *
   * @return in W·h/km; empty if the vehicle did not move
   */
  public Optional<Quantity<EnergyPerDistance>> consumption() {
    return totals.distanceM() > 0
        ? Optional.of(Kind.ENERGY_PER_DISTANCE.ofSi(balance.terminalJ() / totals.distanceM()))
        : Optional.empty();
  }

  /**
   * Where the energy went.
   *
   * @return part by part, over the whole run
   */
  public EnergyBalance balance() {
    return balance;
  }

  /**
   * How well the trace was followed.
   *
   * @return over the whole run
   */
  public Following following() {
    return following;
  }

  double distanceM() {
    return distanceM;
  }

  /**
   * The working.
   *
   * @return energies by part, consumption and distance
   */
  public Worksheet worksheet() {
    Worksheet.Recording recording = Worksheet.record("Range on " + cycle + ", until " + end);
    balance.record(recording, basis);
    double terminalJ = balance.terminalJ();
    if (totals.distanceM() > 0) {
      recording
          .step("e", "mean consumption at the terminals")
          .formula("E_T/s_run")
          .with("E_T", terminalJ, KILOWATT_HOUR)
          .with("s_run", totals.distanceM(), KILOMETRE)
          .basis(basis)
          .gives(terminalJ / totals.distanceM(), WATT_HOUR_PER_KILOMETRE);
    }
    recording
        .step("s", "range, " + fullCycles + " full cycles, until " + end)
        .formula("sum over the steps")
        .with("SoC_end", Figure.of(endCharge()))
        .basis(basis)
        .gives(distanceM, KILOMETRE);
    return recording.toWorksheet();
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof RangeResult that
        && cycle.equals(that.cycle)
        && distanceM == that.distanceM
        && totals.equals(that.totals)
        && balance.equals(that.balance)
        && following.equals(that.following)
        && end == that.end
        && basis == that.basis;
  }

  @Override
  public int hashCode() {
    return Objects.hash(cycle, distanceM, end);
  }

  /**
   * Distance, consumption, and what ended it.
   *
   * @return for example {@code 131.2 km on NEDC at 118.4 W·h/km, until the reserve is reached}
   */
  @Override
  public String toString() {
    String used =
        consumption().map(c -> " at " + Measures.format(c, WATT_HOUR_PER_KILOMETRE, 1)).orElse("");
    return Measures.format(distance(), KILOMETRE, 1) + " on " + cycle + used + ", until " + end;
  }
}
