package org.wattwright.drive;

import static org.wattwright.units.WorkshopUnits.KILOMETRE;
import static org.wattwright.units.WorkshopUnits.WATT_HOUR_PER_KILOMETRE;

import java.io.Serializable;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import javax.measure.quantity.Time;
import org.jspecify.annotations.Nullable;
import org.wattwright.units.EnergyPerDistance;
import org.wattwright.units.Kind;
import org.wattwright.units.Measures;

/**
 * A drive by demand: how long it took, how far it went, what it used.
 *
 * <p>Immutable and thread-safe.
 */
public final class DemandResult implements Serializable {
  private static final long serialVersionUID = 1L;

  private final double timeS;
  private final double distanceM;
  private final EnergyBalance balance;
  private final int missedTargets;

  DemandResult(double timeS, double distanceM, EnergyBalance balance, int missedTargets) {
    this.timeS = timeS;
    this.distanceM = distanceM;
    this.balance = balance;
    this.missedTargets = missedTargets;
  }

  /**
   * Time from the first start to the last stop.
   *
   * @return in s
   */
  public Quantity<Time> time() {
    return Kind.TIME.ofSi(timeS);
  }

  /**
   * Distance.
   *
   * @return in km
   */
  public Quantity<Length> distance() {
    return KILOMETRE.of(distanceM / 1000);
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
   * Energy at the terminals for each distance.
   *
   * @return in W·h/km; empty if the vehicle did not move
   */
  public Optional<Quantity<EnergyPerDistance>> consumption() {
    return distanceM > 0
        ? Optional.of(Kind.ENERGY_PER_DISTANCE.ofSi(balance.terminalJ() / distanceM))
        : Optional.empty();
  }

  /**
   * Starts that did not reach their speed within two minutes.
   *
   * @return ≥ 0
   */
  public int missedTargets() {
    return missedTargets;
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof DemandResult that
        && timeS == that.timeS
        && distanceM == that.distanceM
        && missedTargets == that.missedTargets
        && balance.equals(that.balance);
  }

  @Override
  public int hashCode() {
    return Double.hashCode(timeS) * 31 + Double.hashCode(distanceM);
  }

  /**
   * Distance, time and consumption.
   *
   * @return for example {@code 4.12 km in 391 s at 148.2 W·h/km}
   */
  @Override
  public String toString() {
    String used =
        consumption().map(c -> " at " + Measures.format(c, WATT_HOUR_PER_KILOMETRE, 1)).orElse("");
    String missed = missedTargets == 0 ? "" : ", " + missedTargets + " targets missed";
    return Measures.format(distance(), KILOMETRE, 2)
        + " in "
        + Measures.format(time(), Kind.TIME)
        + used
        + missed;
  }
}
