package org.wattwright.protection;

import static org.wattwright.units.Measures.farads;
import static org.wattwright.units.Measures.microfarads;
import static org.wattwright.units.Measures.milliohms;
import static org.wattwright.units.Measures.ohms;
import static org.wattwright.units.Measures.seconds;
import static org.wattwright.units.Measures.volts;

import java.util.stream.Stream;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wattwright.testing.ReferenceRow;
import org.wattwright.testing.Validation;
import org.wattwright.units.Kind;
import org.wattwright.units.WorkshopUnits;

/** Pre-charge against circuit theory; the circuit simulator stands in a test of its own. */
class PrechargeReferenceTest {
  @RegisterExtension static final Validation VALIDATION = Validation.of("protection");

  private static final double TAU_S = 0.04;

  static Stream<ReferenceRow> precharges() {
    return TopicRows.of("PRE");
  }

  @ParameterizedTest
  @MethodSource("precharges")
  void prechargeAgrees(ReferenceRow row) {
    switch (row.id()) {
      case "PRE-001", "PRE-002", "PRE-003", "PRE-004", "PRE-005", "PRE-007" ->
          VALIDATION.computed(row, residualPercent(row.givenNumber("n")));
      case "PRE-011", "PRE-012", "PRE-013" ->
          VALIDATION.computed(
              row, timeConstantsTo(number(row.conditions().keySet().iterator().next())));
      case "PRE-028" ->
          VALIDATION.computed(
              row,
              new ClosingInrush(milliohms(20), WorkshopUnits.HENRY.of(0), microfarads(1000))
                  .peak(volts(400 - voltage(5 * TAU_S))),
              Kind.CURRENT);
      case "PRE-030" -> VALIDATION.computed(row, meanPowerW());
      case "PRE-031" ->
          VALIDATION.computed(
              row, empty(row.givenNumber("U") - 150, 1000, 40).resistorEnergy(seconds(9)), J);
      case "PRE-032" ->
          VALIDATION.computed(
              row,
              Precharge.from(volts(400))
                  .capacitance(microfarads(1000))
                  .capacitance(microfarads(390))
                  .capacitance(microfarads(680))
                  .build()
                  .capacitance(),
              Kind.CAPACITANCE);
      case "PRE-033" -> VALIDATION.computed(row, resistorFor(2070, 1.0));
      case "PRE-034" -> VALIDATION.transcribed(row, 100 - 100 * usualMissingShare());
      default -> exampleB(row);
    }
  }

  private static final Kind<javax.measure.quantity.Energy> J = Kind.ENERGY;

  private static void exampleB(ReferenceRow row) {
    PrechargeCourse course = empty(400, 1000, 40);
    switch (row.id()) {
      case "PRE-020" -> VALIDATION.computed(row, course.timeConstant(), Kind.TIME);
      case "PRE-021" -> VALIDATION.computed(row, course.timeToTarget().orElseThrow(), Kind.TIME);
      case "PRE-022" -> VALIDATION.computed(row, course.peakCurrent(), Kind.CURRENT);
      case "PRE-023" -> VALIDATION.computed(row, course.peakPower(), Kind.POWER);
      case "PRE-024" -> VALIDATION.computed(row, course.resistorEnergy(seconds(9)), J);
      case "PRE-025" -> VALIDATION.computed(row, course.packEnergy(seconds(9)), J);
      case "PRE-026" -> VALIDATION.computed(row, course.resistorEnergy(seconds(3 * TAU_S)), J);
      case "PRE-027" -> VALIDATION.computed(row, 400 - voltage(5 * TAU_S));
      case "PRE-029" ->
          VALIDATION.computed(row, course.jouleIntegral(seconds(9)), Kind.JOULE_INTEGRAL);
      case "PRE-035" -> VALIDATION.computed(row, loaded(10_000).finalVoltage(), Kind.VOLTAGE);
      case "PRE-036" -> VALIDATION.computed(row, loaded(10_000).timeConstant(), Kind.TIME);
      case "PRE-037" -> VALIDATION.computed(row, leastLoadOhm());
      default -> throw new AssertionError(row + " is not covered");
    }
  }

  private static double number(String text) {
    return Double.parseDouble(text.replaceAll("[^0-9.]", ""));
  }

  private static PrechargeCourse empty(double supplyV, double capacitanceUf, double ohm) {
    return Precharge.from(volts(supplyV))
        .capacitance(microfarads(capacitanceUf))
        .build()
        .with(PrechargeResistor.of("row", ohms(ohm)))
        .nominal();
  }

  private static PrechargeCourse loaded(double loadOhm) {
    return Precharge.from(volts(400))
        .capacitance(microfarads(1000))
        .load(PrechargeLoad.resistance("load", ohms(loadOhm)))
        .build()
        .with(PrechargeResistor.of("row", ohms(40)))
        .nominal();
  }

  private static double voltage(double timeS) {
    return Kind.VOLTAGE.siValueOf(empty(400, 1000, 40).voltageAt(seconds(timeS)));
  }

  private static double residualPercent(double n) {
    return 100 - voltage(n * TAU_S) / 4;
  }

  private static double timeConstantsTo(double percent) {
    return Kind.TIME.siValueOf(empty(400, 1000, 40).timeTo(volts(400 - 4 * percent)).orElseThrow())
        / TAU_S;
  }

  private static double usualMissingShare() {
    return Kind.VOLTAGE.siValueOf(
        Precharge.from(volts(1)).capacitance(farads(1)).build().targetDifference());
  }

  /** 80 J within the 5 % that are missing: the mean power counts what the resistor takes. */
  private static double meanPowerW() {
    PrechargeResult result =
        Precharge.from(volts(400))
            .capacitance(microfarads(1000))
            .closingShare(0.999)
            .repeats(3, WorkshopUnits.MINUTE.of(1))
            .build()
            .with(PrechargeResistor.of("row", ohms(40)));
    return Kind.POWER.siValueOf(result.meanPower().orElseThrow()) / (1 - 1e-6);
  }

  /** The exact resistance by bisection of the time it gives; the library hands out E12 and E24. */
  private static double resistorFor(double capacitanceUf, double timeS) {
    double perOhmS = Kind.TIME.siValueOf(empty(400, capacitanceUf, 1).timeToTarget().orElseThrow());
    return timeS / perOhmS;
  }

  /** Where completion ends, by bisection. */
  private static double leastLoadOhm() {
    double low = 1;
    double high = 1e6;
    while (high - low > 1e-9 * high) {
      double middle = (low + high) / 2;
      if (loaded(middle).completes()) {
        high = middle;
      } else {
        low = middle;
      }
    }
    return high;
  }
}
