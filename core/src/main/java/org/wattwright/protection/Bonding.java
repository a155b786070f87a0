package org.wattwright.protection;

import static org.wattwright.units.WorkshopUnits.AMPERE;
import static org.wattwright.units.WorkshopUnits.AMPERE_SQUARED_SECOND;
import static org.wattwright.units.WorkshopUnits.OHM;

import javax.measure.Quantity;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.ElectricResistance;
import javax.measure.quantity.Temperature;
import org.wattwright.check.Basis;
import org.wattwright.check.CautionBand;
import org.wattwright.check.Check;
import org.wattwright.check.CheckBuilder;
import org.wattwright.check.Figure;
import org.wattwright.check.Source;
import org.wattwright.conductor.ConductorSize;
import org.wattwright.conductor.FaultDuty;
import org.wattwright.conductor.ShortCircuit;
import org.wattwright.internal.Require;

/**
 * Equipotential bonding of exposed metal parts: low resistance, and a conductor that stands the
 * current of two isolation faults until the fuse has cleared.
 */
public final class Bonding {
  /** Exposed part to chassis, strictly below; UN R100 para 5.1.2.2. */
  private static final double TO_CHASSIS_OHM = 0.1;

  private static final double TEST_A = 0.2;

  /** Two parts within 2.5 m, not above; UN GTR 20, FMVSS 305 S5.4.2, from memory. */
  private static final double BETWEEN_PARTS_OHM = 0.2;

  private static final Source R100 = Source.standard("UN R100", "para 5.1.2.2");

  private Bonding() {}

  /**
   * {@code bonding.resistance}: an exposed part to the chassis, below 0.1 Ω.
   *
   * @param part name of the part
   * @param measured with 0.2 A or more, ≥ 0 Ω
   * @return the check
   * @throws org.wattwright.units.InvalidInputException if negative
   */
  public static Check toChassis(String part, Quantity<ElectricResistance> measured) {
    double ohm = Require.quantity("Bonding.measured", measured, OHM).nonNegative();
    CheckBuilder check =
        Check.named("bonding.resistance", part + " to chassis")
            .source(R100)
            .basis(Basis.MEASURED)
            .safety();
    // The rule says lower than: the limit itself does not pass.
    return ohm == TO_CHASSIS_OHM
        ? check.note("must be lower than 0.1 Ω").holds(false)
        : check.atMost(Figure.of(measured, OHM), Figure.ofSi(TO_CHASSIS_OHM, OHM));
  }

  /**
   * {@code bonding.between-parts}: two exposed parts within 2.5 m of each other, at most 0.2 Ω.
   *
   * @param parts names of both
   * @param measured ≥ 0 Ω
   * @return the check
   * @throws org.wattwright.units.InvalidInputException if negative
   */
  public static Check betweenParts(String parts, Quantity<ElectricResistance> measured) {
    Require.quantity("Bonding.measured", measured, OHM).nonNegative();
    return Check.named("bonding.between-parts", parts + ", within 2.5 m")
        .source(Source.standard("UN GTR 20; FMVSS 305", "S5.4.2").fromMemory())
        .basis(Basis.MEASURED)
        .safety()
        .atMost(Figure.of(measured, OHM), Figure.ofSi(BETWEEN_PARTS_OHM, OHM));
  }

  /**
   * {@code bonding.test-current}: current of the bonding tester, at least 0.2 A.
   *
   * @param current ≥ 0 A
   * @return the check
   * @throws org.wattwright.units.InvalidInputException if negative
   */
  public static Check testCurrent(Quantity<ElectricCurrent> current) {
    Require.quantity("Bonding.testCurrent", current, AMPERE).nonNegative();
    return Check.named("bonding.test-current", "current of the bonding test")
        .source(R100)
        .cautionBand(CautionBand.NONE)
        .atLeast(Figure.of(current, AMPERE), Figure.ofSi(TEST_A, AMPERE));
  }

  /**
   * {@code bonding.withstand}: the let-through of two faults against what the bond conductor stands
   * without loss of heat.
   *
   * @param bond size of the bond conductor
   * @param fault total I²t until the fuse has cleared
   * @param before temperature of the conductor before, −100 °C to the melting point
   * @param highest it may reach, above the one before
   * @return the check
   * @throws org.wattwright.units.InvalidInputException if a temperature is outside its range
   */
  public static Check withstand(
      ConductorSize bond,
      FaultDuty fault,
      Quantity<Temperature> before,
      Quantity<Temperature> highest) {
    return Check.named("bonding.withstand", "two-fault I²t against bond of " + bond.name())
        .source(Source.standard("IEC 60949", "adiabatic"))
        .safety()
        .atMost(
            Figure.of(fault.jouleIntegral(), AMPERE_SQUARED_SECOND),
            Figure.of(
                ShortCircuit.of(bond.material()).withstand(bond.area(), before, highest),
                AMPERE_SQUARED_SECOND));
  }
}
