package org.wattwright.protection;

import static org.wattwright.units.WorkshopUnits.AMPERE;
import static org.wattwright.units.WorkshopUnits.OHM;
import static org.wattwright.units.WorkshopUnits.VOLT;
import static org.wattwright.units.WorkshopUnits.WATT;

import java.io.Serializable;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.ElectricPotential;
import javax.measure.quantity.ElectricResistance;
import javax.measure.quantity.Power;
import org.jspecify.annotations.Nullable;
import org.wattwright.internal.Require;

/**
 * A load that takes current while the bus is pre-charged: the usual reason why it never completes.
 *
 * <p>Immutable and thread-safe.
 */
public final class PrechargeLoad implements Serializable {
  private static final long serialVersionUID = 1L;

  private final String name;
  private final double conductanceS;
  private final double currentA;

  private PrechargeLoad(String name, double conductanceS, double currentA) {
    this.name = Require.text("PrechargeLoad.name", name);
    this.conductanceS = conductanceS;
    this.currentA = currentA;
  }

  /**
   * A resistance, such as a bleed resistor or a heater.
   *
   * @param name as reports print it
   * @param resistance &gt; 0 Ω
   * @return the load
   * @throws org.wattwright.units.InvalidInputException if not positive
   */
  public static PrechargeLoad resistance(String name, Quantity<ElectricResistance> resistance) {
    return new PrechargeLoad(
        name, 1 / Require.quantity("PrechargeLoad.resistance", resistance, OHM).positive(), 0);
  }

  /**
   * A current that flows at any voltage.
   *
   * @param name as reports print it
   * @param current ≥ 0 A
   * @return the load
   * @throws org.wattwright.units.InvalidInputException if negative
   */
  public static PrechargeLoad current(String name, Quantity<ElectricCurrent> current) {
    return new PrechargeLoad(
        name, 0, Require.quantity("PrechargeLoad.current", current, AMPERE).nonNegative());
  }

  /**
   * A converter that takes its power from a voltage on, counted on the safe side as the current
   * that it takes there, I = P/U, from the start: at any higher voltage it takes less.
   *
   * @param name as reports print it
   * @param power ≥ 0 W
   * @param startsAt lowest voltage at which it runs, &gt; 0 V
   * @return the load
   * @throws org.wattwright.units.InvalidInputException if an argument is outside its range
   */
  public static PrechargeLoad power(
      String name, Quantity<Power> power, Quantity<ElectricPotential> startsAt) {
    double watt = Require.quantity("PrechargeLoad.power", power, WATT).nonNegative();
    double volt = Require.quantity("PrechargeLoad.startsAt", startsAt, VOLT).positive();
    return new PrechargeLoad(name, 0, watt / volt);
  }

  double conductanceS() {
    return conductanceS;
  }

  double currentA() {
    return currentA;
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof PrechargeLoad that
        && name.equals(that.name)
        && conductanceS == that.conductanceS
        && currentA == that.currentA;
  }

  @Override
  public int hashCode() {
    return Objects.hash(name, conductanceS, currentA);
  }

  /**
   * Name and what it takes.
   *
   * @return for example {@code bleed (10000 Ω)}
   */
  @Override
  public String toString() {
    return name + " (" + (conductanceS > 0 ? OHM.of(1 / conductanceS) : AMPERE.of(currentA)) + ")";
  }
}
