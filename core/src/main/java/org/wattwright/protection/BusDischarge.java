package org.wattwright.protection;

import static org.wattwright.units.WorkshopUnits.FARAD;
import static org.wattwright.units.WorkshopUnits.JOULE;
import static org.wattwright.units.WorkshopUnits.OHM;
import static org.wattwright.units.WorkshopUnits.SECOND;
import static org.wattwright.units.WorkshopUnits.VOLT;
import static org.wattwright.units.WorkshopUnits.WATT;

import java.io.Serializable;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricCapacitance;
import javax.measure.quantity.ElectricPotential;
import javax.measure.quantity.ElectricResistance;
import javax.measure.quantity.Energy;
import javax.measure.quantity.Power;
import javax.measure.quantity.Time;
import org.wattwright.check.Check;
import org.wattwright.check.Figure;
import org.wattwright.check.Source;
import org.wattwright.check.StepBuilder;
import org.wattwright.check.Worksheet;
import org.wattwright.internal.Require;
import org.wattwright.units.Kind;
import org.wattwright.units.Measure;

/**
 * A bus that has been cut off and discharges through a resistance: a bleed resistor that is always
 * there, or an active discharge that is switched on.
 *
 * <p>u = U₀·e^(−t/(R·C)). Source: circuit theory. Immutable and thread-safe.
 *
 * @param capacitance of the whole bus, at its upper tolerance, &gt; 0 F
 * @param from highest voltage U₀, &gt; 0 V
 * @param resistance at its upper tolerance, &gt; 0 Ω
 */
public record BusDischarge(
    Quantity<ElectricCapacitance> capacitance,
    Quantity<ElectricPotential> from,
    Quantity<ElectricResistance> resistance)
    implements Serializable {
  /** Voltage class A ends here; ISO 6469-3. */
  private static final double HARMLESS_V = 60;

  private static final Source LIMITS = Source.standard("ISO 6469-3; ISO 6469-4:2015", "cl. 5.2");

  /**
   * Checks the fields.
   *
   * @param capacitance &gt; 0 F
   * @param from &gt; 0 V
   * @param resistance &gt; 0 Ω
   * @throws org.wattwright.units.InvalidInputException if a field is not positive
   */
  public BusDischarge {
    Require.quantity("BusDischarge.capacitance", capacitance, FARAD).positive();
    Require.quantity("BusDischarge.from", from, VOLT).positive();
    Require.quantity("BusDischarge.resistance", resistance, OHM).positive();
    capacitance = Measure.from(capacitance, Kind.CAPACITANCE);
    from = Measure.from(from, Kind.VOLTAGE);
    resistance = Measure.from(resistance, Kind.RESISTANCE);
  }

  private double farad() {
    return Kind.CAPACITANCE.siValueOf(capacitance);
  }

  private double fromV() {
    return Kind.VOLTAGE.siValueOf(from);
  }

  private double ohm() {
    return Kind.RESISTANCE.siValueOf(resistance);
  }

  /**
   * Voltage after a time.
   *
   * @param time ≥ 0 s
   * @return in V
   * @throws org.wattwright.units.InvalidInputException if negative
   */
  public Quantity<ElectricPotential> voltageAt(Quantity<Time> time) {
    double timeS = Require.quantity("BusDischarge.time", time, SECOND).nonNegative();
    return VOLT.of(fromV() * Math.exp(-timeS / (ohm() * farad())));
  }

  /**
   * Time to a voltage: R·C·ln(U₀/U).
   *
   * @param voltage &gt; 0 V
   * @return in s; 0 s if it starts lower
   * @throws org.wattwright.units.InvalidInputException if not positive
   */
  public Quantity<Time> timeTo(Quantity<ElectricPotential> voltage) {
    double endV = Require.quantity("BusDischarge.voltage", voltage, VOLT).positive();
    return SECOND.of(timeToS(endV));
  }

  private double timeToS(double endV) {
    return ohm() * farad() * Math.max(0, Math.log(fromV() / endV));
  }

  /** Higher of 60 V and, where low energy will do, the voltage at which 0.2 J are left. */
  private double harmlessV(DischargeRule rule) {
    double lowEnergyV = Math.sqrt(2 * StoredEnergy.LOW_ENERGY_J / farad());
    return rule.lowEnergyWillDo() ? Math.max(HARMLESS_V, lowEnergyV) : HARMLESS_V;
  }

  /**
   * Time until it is harmless: 60 V, or 0.2 J where the rule admits that and it comes sooner.
   *
   * @param rule the case
   * @return in s
   */
  public Quantity<Time> timeToHarmless(DischargeRule rule) {
    return SECOND.of(timeToS(harmlessV(rule)));
  }

  /**
   * {@code discharge.time}: time until it is harmless against what the case allows.
   *
   * @param rule the case
   * @return the check
   */
  public Check check(DischargeRule rule) {
    return Check.named("discharge.time", "time to harmless, " + rule.name())
        .source(rule.source())
        .safety()
        .note(harmlessBy(rule))
        .atMost(Figure.of(timeToHarmless(rule), SECOND), Figure.of(rule.within(), SECOND));
  }

  private String harmlessBy(DischargeRule rule) {
    return harmlessV(rule) > HARMLESS_V ? "by less than 0.2 J" : "by 60 V";
  }

  /**
   * How the time until it is harmless, and the loss, come about.
   *
   * @param rule the case
   * @return the steps as computed
   */
  public Worksheet worksheet(DischargeRule rule) {
    Worksheet.Recording sheet = Worksheet.record("Discharge, " + rule.name());
    Figure start = Figure.of(from, Kind.VOLTAGE);
    Figure bus = Figure.of(capacitance, Kind.CAPACITANCE);
    Figure through = Figure.of(resistance, Kind.RESISTANCE);
    Figure tau = Figure.ofSi(ohm() * farad(), SECOND);
    Figure end = Figure.ofSi(harmlessV(rule), VOLT);
    sheet.step("U_0", "highest voltage of the bus").gives(start);
    sheet.step("C", "capacitance of the bus, upper tolerance").gives(bus);
    sheet.step("R", "resistance, upper tolerance").gives(through);
    sheet.step("τ", "time constant").formula("R·C").with("R", through).with("C", bus).gives(tau);
    harmless(sheet, rule, bus).gives(end);
    StepBuilder time = sheet.step("t", "time until it is harmless");
    if (harmlessV(rule) < fromV()) {
      time.formula("τ·ln(U_0/U)").with("τ", tau).with("U_0", start).with("U", end);
    }
    time.gives(Figure.of(timeToHarmless(rule), SECOND));
    sheet.step("t_max", "time of the case").source(rule.source()).gives(within(rule));
    StepBuilder loss = sheet.step("P", "loss at full voltage").formula("U_0²/R");
    loss.with("U_0", start).with("R", through).gives(Figure.of(lossAtFullVoltage(), WATT));
    return sheet.toWorksheet();
  }

  private static Figure within(DischargeRule rule) {
    return Figure.of(rule.within(), SECOND);
  }

  private StepBuilder harmless(Worksheet.Recording sheet, DischargeRule rule, Figure bus) {
    StepBuilder step =
        sheet.step("U", "voltage at which it is harmless, " + harmlessBy(rule)).source(LIMITS);
    return rule.lowEnergyWillDo()
        ? step.formula("max(60 V, √(2·W/C))")
            .with("W", Figure.of(StoredEnergy.lowEnergyLimit(), JOULE))
            .with("C", bus)
        : step;
  }

  /**
   * Power in the resistance at the start: for a bleed resistor its loss all day, U²/R.
   *
   * @return in W
   */
  public Quantity<Power> lossAtFullVoltage() {
    return WATT.of(fromV() * fromV() / ohm());
  }

  /**
   * Energy that the resistance takes until a voltage is reached.
   *
   * @param voltage ≥ 0 V, at most U₀
   * @return in J
   * @throws org.wattwright.units.InvalidInputException if outside its range
   */
  public Quantity<Energy> energyTo(Quantity<ElectricPotential> voltage) {
    double endV = Require.quantity("BusDischarge.voltage", voltage, VOLT).between(0, fromV());
    return JOULE.of(farad() * (fromV() * fromV() - endV * endV) / 2);
  }

  /**
   * Largest resistance that makes a bus harmless in the time of a case.
   *
   * @param capacitance at its upper tolerance, &gt; 0 F
   * @param from highest voltage, &gt; 60 V
   * @param rule the case
   * @return in Ω, without limit 1 TΩ where it is harmless from the start
   * @throws org.wattwright.units.InvalidInputException if an argument is outside its range
   */
  public static Quantity<ElectricResistance> largestResistance(
      Quantity<ElectricCapacitance> capacitance,
      Quantity<ElectricPotential> from,
      DischargeRule rule) {
    double perOhmS =
        Kind.TIME.siValueOf(new BusDischarge(capacitance, from, OHM.of(1)).timeToHarmless(rule));
    return OHM.of(Math.min(1e12, Kind.TIME.siValueOf(rule.within()) / perOhmS));
  }
}
