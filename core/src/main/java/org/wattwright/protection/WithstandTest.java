package org.wattwright.protection;

import static org.wattwright.units.WorkshopUnits.VOLT;

import javax.measure.Quantity;
import javax.measure.quantity.ElectricPotential;
import org.wattwright.internal.Require;

/**
 * Withstand voltage test of an on-board charger: its inputs, joined, to chassis for one minute.
 *
 * <p>U = 2·(Un + 1200 V) rms, or √2 of it DC. Source: draft AIS-156 (2019) Annex Ab, as UN R136.
 * Done by a test house: the voltage kills.
 */
public final class WithstandTest {
  private static final double ADDED_V = 1200;

  private WithstandTest() {}

  /**
   * Test voltage with alternating current.
   *
   * @param supply nominal AC supply Un, rms, &gt; 0 V and at most 1000 V
   * @return rms in V
   * @throws org.wattwright.units.InvalidInputException if outside its range
   */
  public static Quantity<ElectricPotential> alternating(Quantity<ElectricPotential> supply) {
    double volt = Require.quantity("WithstandTest.supply", supply, VOLT).positiveUpTo(1000);
    return VOLT.of(2 * (volt + ADDED_V));
  }

  /**
   * Test voltage with direct current: the peak of the alternating one.
   *
   * @param supply nominal AC supply Un, rms, &gt; 0 V and at most 1000 V
   * @return in V
   * @throws org.wattwright.units.InvalidInputException if outside its range
   */
  public static Quantity<ElectricPotential> direct(Quantity<ElectricPotential> supply) {
    return VOLT.of(Math.sqrt(2) * VOLT.valueOf(alternating(supply)));
  }
}
