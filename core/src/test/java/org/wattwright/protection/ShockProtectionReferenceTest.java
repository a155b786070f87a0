package org.wattwright.protection;

import static org.wattwright.units.Measures.amperes;
import static org.wattwright.units.Measures.kiloohms;
import static org.wattwright.units.Measures.kilovolts;
import static org.wattwright.units.Measures.megaohms;
import static org.wattwright.units.Measures.metres;
import static org.wattwright.units.Measures.microfarads;
import static org.wattwright.units.Measures.ohms;
import static org.wattwright.units.Measures.volts;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javax.measure.quantity.Length;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wattwright.testing.ReferenceRow;
import org.wattwright.testing.Validation;
import org.wattwright.units.Kind;

/** Isolation, stored energy, discharge, bonding, creepage and clearance against the rules. */
class ShockProtectionReferenceTest {
  @RegisterExtension static final Validation VALIDATION = Validation.of("protection");

  static Stream<ReferenceRow> isolations() {
    return TopicRows.of("ISO");
  }

  @ParameterizedTest
  @MethodSource("isolations")
  void isolationAgrees(ReferenceRow row) {
    IsolationLeaks a = new IsolationLeaks(kiloohms(150), kiloohms(250));
    IsolationMeasurement measured =
        new IsolationMeasurement(
            volts(400), volts(250), volts(150), volts(170.212766), kiloohms(200));
    switch (row.id()) {
      case "ISO-001" -> perVolt(row, IsolationRule.DC);
      case "ISO-002" -> perVolt(row, IsolationRule.AC);
      case "ISO-003" -> perVolt(row, IsolationRule.JOINED);
      case "ISO-004" -> perVolt(row, IsolationRule.JOINED_WITH_PROTECTED_AC);
      case "ISO-005" ->
          VALIDATION.transcribed(
              row,
              InletProtection.isolation(ohms(1)).limit().orElseThrow().quantity(Kind.RESISTANCE),
              Kind.RESISTANCE);
      case "ISO-006" ->
          VALIDATION.transcribed(
              row,
              Kind.RESISTANCE.siValueOf(
                      IsolationMeasurement.checkVoltmeter(ohms(1))
                          .limit()
                          .orElseThrow()
                          .quantity(Kind.RESISTANCE))
                  / 1e6);
      case "ISO-007" -> VALIDATION.computed(row, 0.8 * requiredOhm(IsolationRule.JOINED, 400));
      case "ISO-008" -> VALIDATION.computed(row, 1.2 * requiredOhm(IsolationRule.JOINED, 400));
      case "ISO-009" -> VALIDATION.computed(row, requiredOhm(IsolationRule.DC, 403.2));
      case "ISO-010" -> VALIDATION.computed(row, requiredOhm(IsolationRule.JOINED, 403.2));
      case "ISO-011" -> VALIDATION.computed(row, limitMa(IsolationRule.DC));
      case "ISO-012" -> VALIDATION.computed(row, limitMa(IsolationRule.AC));
      case "ISO-020", "ISO-021", "ISO-022" ->
          VALIDATION.notCovered(
              row, "readings of the circuit: ShockNgspiceTest works them out and compares");
      case "ISO-023" -> VALIDATION.computed(row, measured.resistance(), Kind.RESISTANCE);
      case "ISO-024" ->
          VALIDATION.computed(row, a.perVolt(volts(400)), Kind.RESISTANCE_PER_VOLTAGE);
      case "ISO-025" ->
          VALIDATION.computed(row, a.check(volts(400), IsolationRule.DC).outcome().toString());
      case "ISO-026" ->
          VALIDATION.computed(row, a.check(volts(400), IsolationRule.JOINED).outcome().toString());
      case "ISO-027" -> VALIDATION.computed(row, measured.resistanceBySum(), Kind.RESISTANCE);
      case "ISO-028" -> VALIDATION.computed(row, a.monitorReading(), Kind.RESISTANCE);
      case "ISO-030" -> VALIDATION.computed(row, loadedMeter().resistance(), Kind.RESISTANCE);
      case "ISO-031" -> VALIDATION.computed(row, loadedMeter().resistanceBySum(), Kind.RESISTANCE);
      case "ISO-032" ->
          VALIDATION.computed(
              row,
              IsolationLeaks.inParallel(Collections.nCopies(8, IsolationLeaks.even(megaohms(5))))
                  .lesser(),
              Kind.RESISTANCE);
      default -> throw new AssertionError(row + " is not covered");
    }
  }

  private static void perVolt(ReferenceRow row, IsolationRule rule) {
    VALIDATION.transcribed(row, Kind.RESISTANCE_PER_VOLTAGE.siValueOf(rule.perVolt()));
  }

  private static double requiredOhm(IsolationRule rule, double volt) {
    return Kind.RESISTANCE.siValueOf(rule.required(volts(volt)));
  }

  private static double limitMa(IsolationRule rule) {
    IsolationLeaks atLimit = IsolationLeaks.even(rule.required(volts(400)));
    return Math.rint(Kind.CURRENT.siValueOf(atLimit.faultCurrent(volts(400))) * 1e15) / 1e12;
  }

  /** A 10 MΩ meter on the minus side in both readings, then on the plus side. */
  private static IsolationMeasurement loadedMeter() {
    double plusOhm = 1.5e6;
    double minusOhm = parallel(2.5e6, 10e6);
    double againOhm = parallel(minusOhm, 200e3);
    double otherOhm = parallel(plusOhm, 10e6);
    return new IsolationMeasurement(
        volts(400),
        volts(400 * minusOhm / (plusOhm + minusOhm)),
        volts(400 * otherOhm / (otherOhm + 2.5e6)),
        volts(400 * againOhm / (plusOhm + againOhm)),
        kiloohms(200));
  }

  private static double parallel(double a, double b) {
    return a * b / (a + b);
  }

  static Stream<ReferenceRow> energies() {
    return TopicRows.of("ENE", "DIS", "WTH");
  }

  @ParameterizedTest
  @MethodSource("energies")
  void energyAndDischargeAgree(ReferenceRow row) {
    BusDischarge bleed = new BusDischarge(microfarads(1000), volts(400), kiloohms(47));
    BusDischarge active = new BusDischarge(microfarads(1000), volts(400), ohms(2635.574));
    switch (row.id()) {
      case "ENE-001" -> VALIDATION.transcribed(row, StoredEnergy.lowEnergyLimit(), Kind.ENERGY);
      case "ENE-004" -> VALIDATION.transcribed(row, DischargeRule.AFTER_CRASH.within(), Kind.TIME);
      case "ENE-006" ->
          VALIDATION.transcribed(row, DischargeRule.AFTER_CRASH_LATEST.within(), Kind.TIME);
      case "ENE-007" -> perVolt(row, IsolationRule.DC);
      case "ENE-008" -> perVolt(row, IsolationRule.AC);
      case "ENE-010" -> VALIDATION.computed(row, joule(StoredEnergy.ABOVE_60_V, 1000));
      case "ENE-011" -> VALIDATION.computed(row, joule(StoredEnergy.ABOVE_60_V, 1));
      case "ENE-012" -> VALIDATION.computed(row, joule(StoredEnergy.ABOVE_60_V, 3.3));
      case "ENE-013" -> VALIDATION.computed(row, joule(StoredEnergy.WHOLE, 1));
      case "ENE-014" -> VALIDATION.computed(row, limitUf(StoredEnergy.WHOLE, 400));
      case "ENE-015" -> VALIDATION.computed(row, limitUf(StoredEnergy.ABOVE_60_V, 400));
      case "ENE-016" -> VALIDATION.computed(row, limitUf(StoredEnergy.WHOLE, 800));
      case "ENE-017" ->
          VALIDATION.computed(
              row,
              RailCapacitance.of(Collections.nCopies(3, microfarads(0.47))).total(),
              Kind.CAPACITANCE);
      case "ENE-002", "ENE-003", "ENE-005" ->
          VALIDATION.notCovered(row, "a reading of a crash test, not of a design");
      case "DIS-001" ->
          VALIDATION.computed(row, bleed.timeToHarmless(DischargeRule.BLEED), Kind.TIME);
      case "DIS-002" -> VALIDATION.computed(row, bleed.lossAtFullVoltage(), Kind.POWER);
      case "DIS-003" -> VALIDATION.computed(row, largestOhm(DischargeRule.BLEED));
      case "DIS-004" -> VALIDATION.computed(row, largestOhm(DischargeRule.ACTIVE_DISCHARGE));
      case "DIS-005" -> VALIDATION.computed(row, active.lossAtFullVoltage(), Kind.POWER);
      case "DIS-006" -> VALIDATION.computed(row, active.energyTo(volts(60)), Kind.ENERGY);
      case "DIS-007" ->
          VALIDATION.computed(
              row,
              Kind.TIME.siValueOf(
                      new BusDischarge(microfarads(1000), volts(800), ohms(1)).timeTo(volts(60)))
                  * 1000);
      case "WTH-001" ->
          VALIDATION.computed(row, WithstandTest.alternating(volts(230)), Kind.VOLTAGE);
      case "WTH-002" -> VALIDATION.computed(row, WithstandTest.direct(volts(230)), Kind.VOLTAGE);
      default -> throw new AssertionError(row + " is not covered");
    }
  }

  private static double joule(StoredEnergy form, double microfarad) {
    return Kind.ENERGY.siValueOf(form.in(microfarads(microfarad), volts(400)));
  }

  private static double limitUf(StoredEnergy form, double volt) {
    return Kind.CAPACITANCE.siValueOf(form.capacitanceAtLimit(volts(volt))) * 1e6;
  }

  private static double largestOhm(DischargeRule rule) {
    return Kind.RESISTANCE.siValueOf(
        BusDischarge.largestResistance(microfarads(1000), volts(400), rule));
  }

  static Stream<ReferenceRow> shocks() {
    return TopicRows.of("SHK", "LBL", "BAT", "HV");
  }

  @ParameterizedTest
  @MethodSource("shocks")
  void shockRulesAgree(ReferenceRow row) {
    switch (row.id()) {
      case "SHK-001" ->
          VALIDATION.transcribed(
              row,
              Bonding.toChassis("part", ohms(0)).limit().orElseThrow().quantity(Kind.RESISTANCE),
              Kind.RESISTANCE);
      case "SHK-002" ->
          VALIDATION.transcribed(
              row,
              Bonding.testCurrent(amperes(1)).limit().orElseThrow().quantity(Kind.CURRENT),
              Kind.CURRENT);
      case "SHK-005" ->
          VALIDATION.transcribed(
              row,
              Bonding.betweenParts("parts", ohms(0))
                  .limit()
                  .orElseThrow()
                  .quantity(Kind.RESISTANCE),
              Kind.RESISTANCE);
      case "SHK-009" ->
          VALIDATION.transcribed(row, DischargeRule.SEPARATED_CONNECTOR.within(), Kind.TIME);
      case "SHK-014" ->
          VALIDATION.transcribed(row, DischargeRule.ACTIVE_DISCHARGE.within(), Kind.TIME);
      case "SHK-015" -> VALIDATION.transcribed(row, DischargeRule.BLEED.within(), Kind.TIME);
      default -> VALIDATION.notCovered(row, why(row.id()));
    }
  }

  private static String why(String id) {
    return switch (id.substring(0, 3)) {
      case "HV-" -> "compared in the voltage package, which owns the class";
      case "BAT" -> "type tests of batteries, which no calculation here replaces";
      case "LBL" -> "marking: attested, not calculated";
      default -> "attested on the vehicle, a test method, or a rule for machines";
    };
  }

  static Stream<ReferenceRow> distances() {
    return TopicRows.of("INS", "INSH");
  }

  @ParameterizedTest
  @MethodSource("distances")
  void distancesAgree(ReferenceRow row) {
    switch (row.quantity()) {
      case "rated impulse withstand voltage" ->
          VALIDATION.transcribed(
              row,
              Kind.VOLTAGE.siValueOf(
                      InsulationDistances.ratedImpulse(
                              volts(number(row, "voltage up to ")),
                              OvervoltageCategory.valueOf(word(row, "overvoltage category ")))
                          .orElseThrow())
                  / 1000);
      case "minimum clearance up to 2000 m" ->
          VALIDATION.transcribed(row, mm(places(row).clearance(impulse(row))));
      case "altitude multiplication factor for clearances" ->
          VALIDATION.transcribed(row, factorAt(number(row, "altitude ")));
      case "corrected clearance" ->
          VALIDATION.computed(
              row,
              mm(
                  InsulationDistances.in(PollutionDegree.TWO)
                      .at(metres(3000))
                      .clearance(kilovolts(4))));
      case "clearance for reinforced insulation" ->
          VALIDATION.computed(
              row,
              mm(InsulationDistances.in(PollutionDegree.TWO).reinforced().clearance(kilovolts(4))));
      case "minimum creepage distance, basic insulation" ->
          VALIDATION.transcribed(
              row, mm(places(row).creepage(volts(number(row, "working voltage ")))));
      case "interpolated creepage" ->
          VALIDATION.computed(
              row, mm(InsulationDistances.in(PollutionDegree.TWO).creepage(volts(450))));
      case "creepage for reinforced insulation" ->
          VALIDATION.computed(
              row,
              mm(InsulationDistances.in(PollutionDegree.TWO).reinforced().creepage(volts(400))));
      case "material group" ->
          VALIDATION.computed(
              row,
              MaterialGroup.ofTrackingIndex(
                      Integer.parseInt(
                          row.conditions().toString().replaceAll("\\D*(\\d+).*", "$1")))
                  .name());
      default -> throw new AssertionError(row + " is not covered");
    }
  }

  private static InsulationDistances places(ReferenceRow row) {
    String text = row.conditions().keySet().toString();
    PollutionDegree degree =
        text.contains("pollution degree 2") ? PollutionDegree.TWO : PollutionDegree.THREE;
    InsulationDistances basic = InsulationDistances.in(degree);
    if (text.contains("material group")) {
      String group = word(row, "material group ");
      return basic.on(group.equals("III") ? MaterialGroup.IIIa : MaterialGroup.valueOf(group));
    }
    return text.contains("case B") ? basic.in(ElectricField.HOMOGENEOUS) : basic;
  }

  private static javax.measure.Quantity<javax.measure.quantity.ElectricPotential> impulse(
      ReferenceRow row) {
    return kilovolts(number(row, "impulse "));
  }

  private static double factorAt(double metre) {
    InsulationDistances low = InsulationDistances.in(PollutionDegree.THREE);
    return mm(low.at(metres(metre)).clearance(kilovolts(8))) / 8;
  }

  private static double mm(Optional<javax.measure.Quantity<Length>> length) {
    return Kind.LENGTH.siValueOf(length.orElseThrow()) * 1000;
  }

  private static String word(ReferenceRow row, String before) {
    String text = String.join(";", row.conditions().keySet()) + ";";
    List<String> words =
        List.of(text.substring(text.indexOf(before) + before.length()).split("[ ;]"));
    return words.get(0);
  }

  private static double number(ReferenceRow row, String before) {
    return Double.parseDouble(word(row, before));
  }
}
