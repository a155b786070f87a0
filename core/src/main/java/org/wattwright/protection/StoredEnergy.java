package org.wattwright.protection;

import static org.wattwright.units.WorkshopUnits.FARAD;
import static org.wattwright.units.WorkshopUnits.JOULE;
import static org.wattwright.units.WorkshopUnits.VOLT;

import javax.measure.Quantity;
import javax.measure.quantity.ElectricCapacitance;
import javax.measure.quantity.ElectricPotential;
import javax.measure.quantity.Energy;
import org.wattwright.internal.Require;
import org.wattwright.units.Kind;

/**
 * Energy in a capacitor, in the two forms that rules use: all of it, or the part above 60 V.
 *
 * <p>W = ½·C·U², or ½·C·(U² − (60 V)²). Below 0.2 J is low energy. Source: ISO 6469-4:2015 cl.
 * 5.2.3 (limit); UN R94, R95, R137 electrical annex (part above 60 V, from memory).
 */
public enum StoredEnergy {
  /** All of it: ½·C·U². */
  WHOLE(0),
  /** What exceeds the energy at 60 V. */
  ABOVE_60_V(60);

  /** Low energy is strictly less; ISO 6469-4:2015 cl. 5.2.3. */
  static final double LOW_ENERGY_J = 0.2;

  private final double floorV;

  StoredEnergy(double floorV) {
    this.floorV = floorV;
  }

  /**
   * Energy below which a capacitor counts as harmless.
   *
   * @return 0.2 J
   */
  public static Quantity<Energy> lowEnergyLimit() {
    return JOULE.of(LOW_ENERGY_J);
  }

  /**
   * Energy in a capacitance.
   *
   * @param capacitance ≥ 0 F
   * @param voltage ≥ 0 V
   * @return in J; 0 J below 60 V for the part above it
   * @throws org.wattwright.units.InvalidInputException if an argument is negative
   */
  public Quantity<Energy> in(
      Quantity<ElectricCapacitance> capacitance, Quantity<ElectricPotential> voltage) {
    double farad = Require.quantity("StoredEnergy.capacitance", capacitance, FARAD).nonNegative();
    double volt = Require.quantity("StoredEnergy.voltage", voltage, VOLT).nonNegative();
    return JOULE.of(farad * squareV2(volt) / 2);
  }

  /**
   * Capacitance that holds just 0.2 J; what is fitted must stay below.
   *
   * @param voltage &gt; 0 V, above 60 V for the part above it
   * @return in µF
   * @throws org.wattwright.units.InvalidInputException if outside its range
   */
  public Quantity<ElectricCapacitance> capacitanceAtLimit(Quantity<ElectricPotential> voltage) {
    double volt = Require.quantity("StoredEnergy.voltage", voltage, VOLT).positive();
    Require.positive("StoredEnergy.voltage above " + floorV + " V", volt - floorV);
    return Kind.CAPACITANCE.ofSi(2 * LOW_ENERGY_J / squareV2(volt));
  }

  private double squareV2(double volt) {
    return Math.max(0, volt * volt - floorV * floorV);
  }
}
