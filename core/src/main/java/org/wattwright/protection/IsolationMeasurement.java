package org.wattwright.protection;

import static org.wattwright.units.WorkshopUnits.MEGAOHM;
import static org.wattwright.units.WorkshopUnits.OHM;
import static org.wattwright.units.WorkshopUnits.OHM_PER_VOLT;
import static org.wattwright.units.WorkshopUnits.VOLT;

import java.io.Serializable;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricPotential;
import javax.measure.quantity.ElectricResistance;
import org.wattwright.check.Basis;
import org.wattwright.check.CautionBand;
import org.wattwright.check.Check;
import org.wattwright.check.Figure;
import org.wattwright.check.Source;
import org.wattwright.check.Worksheet;
import org.wattwright.internal.Require;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;
import org.wattwright.units.Measure;

/**
 * Isolation resistance by two voltages, the pack itself as the source.
 *
 * <p>Measure pole to chassis on both sides; put R₀ across the side with the higher voltage and
 * measure that again: Ri = R₀·Vb·(1/V′ − 1/V). It is the leak of the other pole, the lesser one.
 * The voltmeter's own resistance cancels if the pack voltage Vb is measured directly. Source: UN
 * R100 rev. 2, isolation-resistance annex, para 1.2.3.4, 1.2.3.5. Immutable and thread-safe.
 *
 * <p>This measurement touches live high voltage: for trained people with insulated leads alone.
 *
 * @param pack Vb between the poles, &gt; 0 V
 * @param higher V, the higher voltage of a pole to chassis, at most Vb
 * @param lower the voltage of the other pole to chassis, ≥ 0 V, at most the higher
 * @param withKnown V′, the higher one again with R₀ across it, &gt; 0 V, below V
 * @param known R₀, &gt; 0 Ω
 */
public record IsolationMeasurement(
    Quantity<ElectricPotential> pack,
    Quantity<ElectricPotential> higher,
    Quantity<ElectricPotential> lower,
    Quantity<ElectricPotential> withKnown,
    Quantity<ElectricResistance> known)
    implements Serializable {
  private static final Source ANNEX =
      Source.standard("UN R100 rev. 2", "isolation-resistance annex, para 1.2.3.4, 1.2.3.5");

  private static final Source READING = Source.measurement("voltmeter");

  /** Draft AIS-156 (2019) Annex B cl. 1.2.2, as UN R136. */
  private static final double LEAST_VOLTMETER_MOHM = 10;

  /** Room for the known resistance around limit times voltage; note 1 of the annex. */
  private static final double KNOWN_BAND = 0.2;

  /**
   * Checks the fields.
   *
   * @param pack &gt; 0 V
   * @param higher &gt; 0 V, at most the pack voltage
   * @param lower ≥ 0 V, at most the higher
   * @param withKnown &gt; 0 V, below the higher
   * @param known &gt; 0 Ω
   * @throws InvalidInputException if a field is outside its range
   */
  public IsolationMeasurement {
    double packV = Require.quantity("IsolationMeasurement.pack", pack, VOLT).positive();
    double higherV =
        Require.quantity("IsolationMeasurement.higher", higher, VOLT).positiveUpTo(packV);
    Require.quantity("IsolationMeasurement.lower", lower, VOLT).between(0, higherV);
    double againV = Require.quantity("IsolationMeasurement.withKnown", withKnown, VOLT).positive();
    if (!(againV < higherV)) {
      throw InvalidInputException.of(
          "IsolationMeasurement.withKnown", "< higher " + higher, withKnown.toString());
    }
    Require.quantity("IsolationMeasurement.known", known, OHM).positive();
    pack = Measure.from(pack, Kind.VOLTAGE);
    higher = Measure.from(higher, Kind.VOLTAGE);
    lower = Measure.from(lower, Kind.VOLTAGE);
    withKnown = Measure.from(withKnown, Kind.VOLTAGE);
    known = Measure.from(known, Kind.RESISTANCE);
  }

  private static double volt(Quantity<ElectricPotential> voltage) {
    return Kind.VOLTAGE.siValueOf(voltage);
  }

  /**
   * Isolation resistance: the lesser of the two leaks.
   *
   * @return Ri in Ω
   */
  public Quantity<ElectricResistance> resistance() {
    double ohm = Kind.RESISTANCE.siValueOf(known);
    return OHM.of(ohm * volt(pack) * (1 / volt(withKnown) - 1 / volt(higher)));
  }

  /**
   * The same without the pack voltage: R₀·(1 + V₂/V₁)·(V₁ − V₁′)/V₁′, the form of FMVSS 305 S7.6
   * (from memory).
   *
   * <p>It reads low, the safe side, by what the voltmeter draws, since V₁ + V₂ then falls short of
   * the pack voltage.
   *
   * @return in Ω
   */
  public Quantity<ElectricResistance> resistanceBySum() {
    double ohm = Kind.RESISTANCE.siValueOf(known);
    double sumShare = 1 + volt(lower) / volt(higher);
    return OHM.of(ohm * sumShare * (volt(higher) - volt(withKnown)) / volt(withKnown));
  }

  /**
   * {@code isolation.measured}: the measured resistance against what the rule asks for.
   *
   * @param working highest working voltage, which decides and not that of the measurement
   * @param rule how AC and DC hang together
   * @return the check
   * @throws InvalidInputException if the voltage is not positive or above 1500 V
   */
  public Check check(Quantity<ElectricPotential> working, IsolationRule rule) {
    return Check.named("isolation.measured", "measured isolation resistance")
        .source(IsolationRule.SOURCE)
        .basis(Basis.MEASURED)
        .safety()
        .atLeast(Figure.of(resistance(), OHM), Figure.of(rule.required(working), OHM));
  }

  /**
   * How the measured resistance comes about, and what the rule asks for.
   *
   * @param working highest working voltage, &gt; 0 V and at most 1500 V
   * @param rule how AC and DC hang together
   * @return the steps as computed
   * @throws InvalidInputException if the voltage is outside its range
   */
  public Worksheet worksheet(Quantity<ElectricPotential> working, IsolationRule rule) {
    Worksheet.Recording sheet = Worksheet.record("Isolation resistance");
    Figure packFigure = read(sheet, "U_b", "between the poles", pack);
    Figure first = read(sheet, "U_1", "pole to chassis, the higher one", higher);
    read(sheet, "U_2", "pole to chassis, the lower one", lower);
    Figure again = read(sheet, "U′", "the higher one, R_0 across it", withKnown);
    Figure across = Figure.of(known, Kind.RESISTANCE);
    sheet.step("R_0", "known resistance").gives(across);
    sheet
        .step("R_i", "isolation resistance, the lesser leak")
        .formula("R_0·U_b·(1/U′ − 1/U_1)")
        .with("R_0", across)
        .with("U_b", packFigure)
        .with("U′", again)
        .with("U_1", first)
        .basis(Basis.MEASURED)
        .source(ANNEX)
        .gives(Figure.of(resistance(), OHM));
    needed(sheet, working, rule);
    return sheet.toWorksheet();
  }

  private static void needed(
      Worksheet.Recording sheet, Quantity<ElectricPotential> working, IsolationRule rule) {
    Figure perVolt = Figure.of(rule.perVolt(), OHM_PER_VOLT);
    Figure highest = Figure.of(working, Kind.VOLTAGE);
    sheet.step("r", "rule " + rule).source(IsolationRule.SOURCE).gives(perVolt);
    sheet
        .step("R_min", "isolation resistance that is needed")
        .formula("r·U_max")
        .with("r", perVolt)
        .with("U_max", highest)
        .source(IsolationRule.SOURCE)
        .gives(Figure.of(rule.required(working), OHM));
  }

  private static Figure read(
      Worksheet.Recording sheet, String symbol, String where, Quantity<ElectricPotential> voltage) {
    Figure figure = Figure.of(voltage, Kind.VOLTAGE);
    sheet.step(symbol, where).basis(Basis.MEASURED).source(READING).gives(figure);
    return figure;
  }

  /**
   * {@code isolation.known-resistance}: R₀ within 20 % of limit times pack voltage, as the annex
   * recommends.
   *
   * @param rule how AC and DC hang together
   * @return a recommendation
   */
  public Check checkKnown(IsolationRule rule) {
    double idealOhm = Kind.RESISTANCE.siValueOf(rule.required(pack));
    double share = Kind.RESISTANCE.siValueOf(known) / idealOhm;
    return Check.named("isolation.known-resistance", "R₀ near limit times pack voltage")
        .source(ANNEX)
        .recommends(share >= 1 - KNOWN_BAND - 1e-12 && share <= 1 + KNOWN_BAND + 1e-12);
  }

  /**
   * {@code isolation.voltmeter}: resistance of the voltmeter, at least 10 MΩ.
   *
   * @param internal of the voltmeter, &gt; 0 Ω
   * @return the check
   * @throws InvalidInputException if not positive
   */
  public static Check checkVoltmeter(Quantity<ElectricResistance> internal) {
    Require.quantity("IsolationMeasurement.voltmeter", internal, MEGAOHM).positive();
    return Check.named("isolation.voltmeter", "resistance of the voltmeter")
        .source(Source.standard("Draft AIS-156 (2019)", "Annex B cl. 1.2.2, as UN R136"))
        .cautionBand(CautionBand.NONE)
        .atLeast(
            Figure.of(internal, MEGAOHM), Figure.of(MEGAOHM.of(LEAST_VOLTMETER_MOHM), MEGAOHM));
  }
}
