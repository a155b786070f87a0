package org.wattwright.protection;

import static org.wattwright.units.WorkshopUnits.OHM_PER_VOLT;
import static org.wattwright.units.WorkshopUnits.VOLT;

import javax.measure.Quantity;
import javax.measure.quantity.ElectricPotential;
import javax.measure.quantity.ElectricResistance;
import org.wattwright.check.Source;
import org.wattwright.internal.Require;
import org.wattwright.units.Kind;
import org.wattwright.units.ResistancePerVoltage;

/**
 * How DC and AC buses hang together, and the isolation resistance per volt that this asks for.
 *
 * <p>If nothing is known of the AC side, {@link #JOINED} counts. Source: UN R100 para 5.1.3.1,
 * 5.1.3.2.
 */
public enum IsolationRule {
  /** DC bus separate from every AC bus: 100 Ω/V, so at most 10 mA. */
  DC(100),
  /** AC bus separate from every DC bus: 500 Ω/V, so at most 2 mA. */
  AC(500),
  /** AC and DC buses joined, as through an inverter: 500 Ω/V. */
  JOINED(500),
  /** Joined, every AC bus with two layers of insulation or mechanically robust: 100 Ω/V. */
  JOINED_WITH_PROTECTED_AC(100);

  /** Source of the limits. */
  static final Source SOURCE = Source.standard("UN R100", "para 5.1.3.1, 5.1.3.2");

  private final double ohmPerVolt;

  IsolationRule(double ohmPerVolt) {
    this.ohmPerVolt = ohmPerVolt;
  }

  /**
   * Least isolation resistance per volt.
   *
   * @return in Ω/V
   */
  public Quantity<ResistancePerVoltage> perVolt() {
    return OHM_PER_VOLT.of(ohmPerVolt);
  }

  /**
   * Least isolation resistance of a bus.
   *
   * @param working highest working voltage, &gt; 0 V and at most 1500 V
   * @return in Ω
   * @throws org.wattwright.units.InvalidInputException if outside its range
   */
  public Quantity<ElectricResistance> required(Quantity<ElectricPotential> working) {
    double volt = Require.quantity("IsolationRule.working", working, VOLT).positiveUpTo(1500);
    return Kind.RESISTANCE.ofSi(ohmPerVolt * volt);
  }
}
