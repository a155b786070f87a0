package org.wattwright.protection;

import static org.wattwright.units.WorkshopUnits.MEGAOHM;
import static org.wattwright.units.WorkshopUnits.OHM;

import javax.measure.Quantity;
import javax.measure.quantity.ElectricResistance;
import org.wattwright.check.Basis;
import org.wattwright.check.Check;
import org.wattwright.check.CheckBuilder;
import org.wattwright.check.Figure;
import org.wattwright.check.Party;
import org.wattwright.check.Source;
import org.wattwright.internal.Require;

/** What must be shown of an AC charging inlet: two measurements and two items attested. */
public final class InletProtection {
  /** Inlet unplugged; UN R100 para 5.1.3.4, from memory. */
  private static final double UNPLUGGED_MOHM = 1;

  private static final double PROTECTIVE_EARTH_OHM = 0.1;

  private InletProtection() {}

  /**
   * {@code inlet.isolation}: live pins to chassis with the coupler unplugged, at least 1 MΩ.
   *
   * @param measured ≥ 0 Ω
   * @return the check
   * @throws org.wattwright.units.InvalidInputException if negative
   */
  public static Check isolation(Quantity<ElectricResistance> measured) {
    Require.quantity("InletProtection.isolation", measured, OHM).nonNegative();
    return Check.named("inlet.isolation", "inlet to chassis, unplugged")
        .source(Source.standard("UN R100", "para 5.1.3.4").fromMemory())
        .basis(Basis.MEASURED)
        .safety()
        .atLeast(Figure.of(measured, MEGAOHM), Figure.of(MEGAOHM.of(UNPLUGGED_MOHM), MEGAOHM));
  }

  /**
   * {@code inlet.protective-earth}: earth pin to chassis, as an exposed part, at most 0.1 Ω.
   *
   * @param measured ≥ 0 Ω
   * @return the check
   * @throws org.wattwright.units.InvalidInputException if negative
   */
  public static Check protectiveEarth(Quantity<ElectricResistance> measured) {
    Require.quantity("InletProtection.protectiveEarth", measured, OHM).nonNegative();
    return Check.named("inlet.protective-earth", "earth pin to chassis")
        .source(Source.commonPractice("as exposed parts by UN R100 para 5.1.2.2"))
        .basis(Basis.MEASURED)
        .safety()
        .atMost(Figure.of(measured, OHM), Figure.ofSi(PROTECTIVE_EARTH_OHM, OHM));
  }

  private static CheckBuilder residualCurrent() {
    return Check.named(
            "inlet.residual-current",
            "residual-current device that stands or detects smooth direct current")
        .source(Source.standard("IEC 61851-1", "residual-current protection").fromMemory())
        .answeredBy(Party.ELECTRICIAN)
        .safety();
  }

  /**
   * {@code inlet.residual-current}, while nobody has attested the type of the device.
   *
   * @return NOT_CHECKED, to be answered by an electrician
   */
  public static Check residualCurrentUnknown() {
    return residualCurrent().notChecked("inlet.residualCurrentType");
  }

  /**
   * {@code inlet.residual-current}, attested.
   *
   * @param by who attests it
   * @param suits whether type B, or type A with detection of 6 mA direct current, is there
   * @return the check, with the name in its note
   * @throws org.wattwright.units.InvalidInputException if the name is blank
   */
  public static Check residualCurrentAttested(String by, boolean suits) {
    String who = Require.text("InletProtection.by", by);
    return residualCurrent().note("attested by " + who).holds(suits);
  }

  private static CheckBuilder supplyBreaker() {
    return Check.named(
            "inlet.supply-breaker",
            "breaker of the supply clears short circuits in inlet, its cable and charger")
        .source(Source.standard("IEC 60364-4-43", "434, at every point of supply").fromMemory())
        .answeredBy(Party.ELECTRICIAN)
        .safety();
  }

  /**
   * {@code inlet.supply-breaker}, while nobody has attested it: above the current from which the
   * breaker trips at once, faults behind the inlet are left to it, and to the loop impedance of
   * whichever socket the vehicle charges at.
   *
   * @return NOT_CHECKED, to be answered by an electrician
   */
  public static Check supplyBreakerUnknown() {
    return supplyBreaker().notChecked("inlet.supplyBreaker");
  }

  /**
   * {@code inlet.supply-breaker}, attested for the points of supply in use.
   *
   * @param by who attests it
   * @param suits whether the breaker clears a short circuit within what the inlet's cable bears
   * @return the check, with the name in its note
   * @throws org.wattwright.units.InvalidInputException if the name is blank
   */
  public static Check supplyBreakerAttested(String by, boolean suits) {
    String who = Require.text("InletProtection.by", by);
    return supplyBreaker().note("attested by " + who).holds(suits);
  }
}
