package org.wattwright.drive;

import static org.wattwright.units.WorkshopUnits.AMPERE;
import static org.wattwright.units.WorkshopUnits.KILOMETRE;
import static org.wattwright.units.WorkshopUnits.KILOWATT_HOUR;
import static org.wattwright.units.WorkshopUnits.SECOND;
import static org.wattwright.units.WorkshopUnits.WATT_HOUR_PER_KILOMETRE;

import java.io.Serializable;
import java.util.Arrays;
import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.Length;
import org.jspecify.annotations.Nullable;
import org.wattwright.check.Basis;
import org.wattwright.check.Worksheet;
import org.wattwright.profile.Profile;
import org.wattwright.units.EnergyPerDistance;
import org.wattwright.units.Kind;
import org.wattwright.units.Measures;
import org.wattwright.units.StateOfCharge;

/**
 * One drive of a cycle: energy part by part, current, and how well the trace was followed.
 *
 * <p>Immutable and thread-safe.
 */
public final class CycleResult implements Serializable {
  private static final long serialVersionUID = 1L;

  private final String cycle;
  private final Totals totals;
  private final EnergyBalance balance;
  private final Following following;
  private final double[] durationsS;
  private final double[] currentsA;
  private final Basis basis;

  /** Plain numbers of a run. */
  record Totals(
      double distanceM,
      double timeS,
      double endSoc,
      double squareA2s,
      double highestA,
      double lowestA)
      implements Serializable {
    static Totals of(CycleKernel kernel) {
      return new Totals(
          kernel.distanceM,
          kernel.timeS,
          kernel.soc,
          kernel.squareA2s,
          kernel.highestA,
          kernel.lowestA);
    }
  }

  CycleResult(
      DriveCycle cycle, CycleKernel kernel, CycleDriver driver, double[] currentsA, Basis basis) {
    this.cycle = cycle.name();
    this.totals = Totals.of(kernel);
    this.balance = kernel.balance();
    this.following = driver.following();
    this.currentsA = currentsA;
    this.durationsS = new double[currentsA.length];
    for (int i = 0; i < durationsS.length; i++) {
      durationsS[i] = cycle.timeS(i + 1) - cycle.timeS(i);
    }
    this.basis = basis;
  }

  /**
   * Distance driven; less than the cycle's where the vehicle fell behind.
   *
   * @return in km
   */
  public Quantity<Length> distance() {
    return KILOMETRE.of(totals.distanceM / 1000);
  }

  /**
   * Energy at the terminals of the pack for each distance.
   *
   * @return in W·h/km; empty if the vehicle did not move
   */
  public Optional<Quantity<EnergyPerDistance>> consumption() {
    return totals.distanceM > 0
        ? Optional.of(Kind.ENERGY_PER_DISTANCE.ofSi(balance.terminalJ() / totals.distanceM))
        : Optional.empty();
  }

  /**
   * Where the energy went.
   *
   * @return part by part
   */
  public EnergyBalance balance() {
    return balance;
  }

  /**
   * How well the trace was followed.
   *
   * @return the answer, with where and by how much it was not
   */
  public Following following() {
    return following;
  }

  /**
   * State of charge at the end; below the start.
   *
   * @return held at empty where the cycle took more than there was
   */
  public StateOfCharge endCharge() {
    return StateOfCharge.of(Math.max(0, Math.min(1, totals.endSoc)));
  }

  /**
   * Whether the pack was empty before the end of the cycle.
   *
   * @return true if the figures go beyond the pack
   */
  public boolean isBeyondEmpty() {
    return totals.endSoc < 0;
  }

  /**
   * Pack current against time: the mean of each step, for cables and fuses. Positive on discharge.
   *
   * @return as long as the cycle
   */
  public Profile<ElectricCurrent> current() {
    return Profile.ofSteps(SECOND, durationsS, AMPERE, currentsA);
  }

  /**
   * Root mean square of the pack current, within the steps as well.
   *
   * @return in A
   */
  public Quantity<ElectricCurrent> rmsCurrent() {
    return Kind.CURRENT.ofSi(Math.sqrt(totals.squareA2s / totals.timeS));
  }

  /**
   * Highest discharge current.
   *
   * @return in A
   */
  public Quantity<ElectricCurrent> peakDischargeCurrent() {
    return Kind.CURRENT.ofSi(Math.max(0, totals.highestA));
  }

  /**
   * Highest charge current while braking.
   *
   * @return magnitude, in A
   */
  public Quantity<ElectricCurrent> peakChargeCurrent() {
    return Kind.CURRENT.ofSi(Math.max(0, -totals.lowestA));
  }

  /**
   * The working: each part, their sum, distance and consumption.
   *
   * @return the steps
   */
  public Worksheet worksheet() {
    Worksheet.Recording recording = Worksheet.record("Energy on " + cycle);
    balance.record(recording, basis);
    recording
        .step("E_T", "energy at the terminals")
        .formula("E − E_10")
        .with("E", org.wattwright.check.Figure.of(balance.battery(), KILOWATT_HOUR))
        .with("E_10", org.wattwright.check.Figure.of(balance.of(EnergyPart.PACK), KILOWATT_HOUR))
        .basis(basis)
        .gives(balance.terminalJ(), KILOWATT_HOUR);
    consumption()
        .ifPresent(
            c ->
                recording
                    .step("e", "consumption")
                    .formula("E_T/s")
                    .with("E_T", balance.terminalJ(), KILOWATT_HOUR)
                    .with("s", totals.distanceM, KILOMETRE)
                    .basis(basis)
                    .gives(Kind.ENERGY_PER_DISTANCE.siValueOf(c), WATT_HOUR_PER_KILOMETRE));
    return recording.toWorksheet();
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof CycleResult that
        && cycle.equals(that.cycle)
        && totals.equals(that.totals)
        && balance.equals(that.balance)
        && following.equals(that.following)
        && Arrays.equals(currentsA, that.currentsA)
        && Arrays.equals(durationsS, that.durationsS)
        && basis == that.basis;
  }

  @Override
  public int hashCode() {
    return Objects.hash(cycle, totals);
  }

  /**
   * Distance, consumption and following.
   *
   * @return for example {@code NEDC: 11.01 km, 118.3 W·h/km, followed}
   */
  @Override
  public String toString() {
    String used =
        consumption().map(c -> Measures.format(c, WATT_HOUR_PER_KILOMETRE, 1) + ", ").orElse("");
    return cycle + ": " + Measures.format(distance(), KILOMETRE, 2) + ", " + used + following;
  }
}
