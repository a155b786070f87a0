package org.wattwright.installation;

import static org.wattwright.units.Measures.ampereHours;
import static org.wattwright.units.Measures.amperes;
import static org.wattwright.units.Measures.hours;
import static org.wattwright.units.Measures.metres;
import static org.wattwright.units.Measures.milliohms;
import static org.wattwright.units.Measures.millivolts;
import static org.wattwright.units.Measures.ohms;
import static org.wattwright.units.Measures.ohmsPerMetre;
import static org.wattwright.units.Measures.volts;

import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricPotential;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wattwright.check.Check;
import org.wattwright.check.Outcome;
import org.wattwright.testing.ReferenceRow;
import org.wattwright.testing.ReferenceRows;
import org.wattwright.testing.Validation;
import org.wattwright.units.Kind;

class LadderReferenceTest {
  @RegisterExtension static final Validation VALIDATION = Validation.of("installation");

  private static final SenseWire WIRE = new SenseWire(metres(1), ohmsPerMetre(0.01724 / 0.35));
  private static final BleedBalancing TENTH = new BleedBalancing(amperes(0.1), 1);

  static Stream<ReferenceRow> rows() {
    return ReferenceRows.read("/installation/ladder.csv").stream();
  }

  private static SettingsLadderBuilder high(double endV, double tripV, double cellV) {
    return SettingsLadder.of(96)
        .step(LadderStep.CELL_MAXIMUM, volts(cellV))
        .step(LadderStep.HIGH_TRIP, volts(tripV))
        .step(LadderStep.HIGH_WARNING, volts(4.18))
        .step(LadderStep.CHARGER_END, volts(endV))
        .measuringTolerance(millivolts(10))
        .imbalance(millivolts(40))
        .chargerTolerance(0.005);
  }

  private static final SettingsLadder LADDER = high(4.10, 4.22, 4.25).build();

  private static Check check(SettingsLadder ladder, String code) {
    return ladder.checks().stream()
        .filter(c -> c.code().equals("installation." + code))
        .findFirst()
        .orElseThrow();
  }

  private static String verdict(SettingsLadder ladder, String... codes) {
    Outcome worst = Outcome.PASS;
    for (String code : codes) {
      worst = worst.and(check(ladder, code).outcome());
    }
    return worst.name();
  }

  private static Quantity<ElectricPotential> margin(String code) {
    return check(LADDER, code).margin().orElseThrow().quantity(Kind.VOLTAGE);
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("rows")
  void agrees(ReferenceRow row) {
    switch (row.id()) {
      case "LAD-001" ->
          VALIDATION.computed(
              row,
              LadderStep.CHARGER_END
                  + " < "
                  + word(LadderStep.HIGH_WARNING)
                  + " < "
                  + word(LadderStep.HIGH_TRIP)
                  + " < "
                  + LadderStep.CELL_MAXIMUM);
      case "LAD-002" ->
          VALIDATION.computed(
              row,
              LadderStep.CUT_BACK
                  + " > "
                  + word(LadderStep.LOW_WARNING)
                  + " > "
                  + word(LadderStep.LOW_TRIP)
                  + " > "
                  + LadderStep.CELL_MINIMUM);
      case "LAD-003" ->
          VALIDATION.computed(
              row, LADDER.perPack(LadderStep.CHARGER_END).orElseThrow(), Kind.VOLTAGE);
      case "LAD-004" ->
          VALIDATION.computed(row, LADDER.highestChargerOutput().orElseThrow(), Kind.VOLTAGE);
      case "LAD-005" ->
          VALIDATION.computed(row, LADDER.highestCellAtChargeEnd().orElseThrow(), Kind.VOLTAGE);
      case "LAD-006" ->
          VALIDATION.computed(row, LADDER.highestReadingAtChargeEnd().orElseThrow(), Kind.VOLTAGE);
      case "LAD-007" -> VALIDATION.computed(row, margin("charge-end-warning"), Kind.VOLTAGE);
      case "LAD-008" -> VALIDATION.computed(row, margin("high-trip-cell"), Kind.VOLTAGE);
      case "LAD-009" ->
          VALIDATION.computed(row, verdict(LADDER, "charge-end-warning", "high-trip-cell"));
      case "LAD-010" ->
          VALIDATION.computed(row, verdict(high(4.10, 4.20, 4.20).build(), "high-trip-cell"));
      case "LAD-011" ->
          VALIDATION.computed(row, verdict(high(4.15, 4.22, 4.25).build(), "charge-end-warning"));
      case "LAD-012" ->
          VALIDATION.computed(
              row,
              new CellLoad(volts(3.25), milliohms(2), amperes(200)).terminalVoltage(),
              Kind.VOLTAGE);
      case "LAD-013" ->
          VALIDATION.computed(
              row, BleedBalancing.chargeToRemove(ampereHours(100), 0.02), Kind.CHARGE);
      case "LAD-014" -> VALIDATION.computed(row, TENTH.timeFor(ampereHours(2)), Kind.TIME);
      case "LAD-015" ->
          VALIDATION.computed(
              row, new BleedBalancing(amperes(0.1), 0.5).timeFor(ampereHours(3)), Kind.TIME);
      case "LAD-016" ->
          VALIDATION.computed(
              row, BleedBalancing.through(ohms(41), volts(4.1)).current(), Kind.CURRENT);
      case "LAD-017" ->
          VALIDATION.computed(
              row, BleedBalancing.through(ohms(41), volts(4.1)).heat(1, volts(4.1)), Kind.POWER);
      case "LAD-018" ->
          VALIDATION.computed(
              row, BleedBalancing.through(ohms(41), volts(4.1)).heat(96, volts(4.1)), Kind.POWER);
      case "LAD-019" ->
          VALIDATION.computed(
              row, BleedBalancing.holdingCurrent(ampereHours(1), hours(730)), Kind.CURRENT);
      case "LAD-020" -> VALIDATION.computed(row, WIRE.resistance(), Kind.RESISTANCE);
      case "LAD-021" ->
          VALIDATION.computed(row, TENTH.readingError(WIRE.resistance()), Kind.VOLTAGE);
      case "LAD-022" ->
          VALIDATION.computed(
              row, MonitoringPlan.linkError(milliohms(0.30), amperes(300)), Kind.VOLTAGE);
      case "LAD-023" ->
          VALIDATION.computed(
              row, MonitoringPlan.linkError(milliohms(0.30), amperes(20)), Kind.VOLTAGE);
      case "LAD-024" ->
          VALIDATION.computed(row, WIRE.shortCircuitCurrent(volts(25.2)), Kind.CURRENT);
      case "LAD-025" -> VALIDATION.notCovered(row, "checked as installation.tap-fuse");
      default -> throw new AssertionError(row);
    }
  }

  /** The rows leave out the side. */
  private static String word(LadderStep step) {
    return step.toString().replaceFirst("high |low ", "");
  }
}
