package org.wattwright.installation;

import static org.wattwright.units.WorkshopUnits.CELSIUS;
import static org.wattwright.units.WorkshopUnits.KELVIN_OF_DIFFERENCE;
import static org.wattwright.units.WorkshopUnits.VOLT;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wattwright.check.Figure;
import org.wattwright.check.Source;
import org.wattwright.check.Worksheet;

/** Settings and working of a ladder. */
final class LadderSheet {
  private static final String MANAGEMENT = "battery management";
  private static final Source ORDER = Source.commonPractice("ladder of settings");

  private final SettingsLadder ladder;
  private final SettingsLadder.Tolerances tolerances;
  private final List<Setting> settings = new ArrayList<>();

  LadderSheet(SettingsLadder ladder) {
    this.ladder = ladder;
    this.tolerances = ladder.fields().tolerances();
  }

  SettingsSheet toSheet() {
    pack("charger", LadderStep.CHARGER_END, tolerances.chargerShare(), "below the high warning");
    cell(LadderStep.HIGH_WARNING, "warn, ask the charger to stop");
    cell(LadderStep.HIGH_TRIP, "open the contactors before the cell maximum");
    pack(
        "inverter",
        LadderStep.CUT_BACK,
        tolerances.inverterShare(),
        "no torque left above the low warning");
    cell(LadderStep.LOW_WARNING, "warn, ask the inverter to cut back");
    cell(LadderStep.LOW_TRIP, "open the contactors before the cell minimum");
    temperature(TemperatureStep.CHARGE_INHIBIT, "no charge and no regeneration into a cold cell");
    temperature(TemperatureStep.HOT_TRIP, "open the contactors before the hottest cell");
    return new SettingsSheet(settings);
  }

  private void pack(String device, LadderStep step, double share, String why) {
    ladder
        .perPack(step)
        .ifPresent(
            v ->
                settings.add(
                    Setting.of(device, step + ", pack", Figure.of(v, VOLT))
                        .within(Figure.share(share))
                        .because(why, ORDER)));
  }

  private void cell(LadderStep step, String why) {
    ladder
        .perCell(step)
        .map(v -> Setting.of(MANAGEMENT, step + ", cell", Figure.of(v, VOLT)).because(why, ORDER))
        .map(
            s ->
                tolerant(
                    s,
                    tolerances.measuringV() == null
                        ? null
                        : Figure.ofSi(tolerances.measuringV(), VOLT)))
        .ifPresent(settings::add);
  }

  private void temperature(TemperatureStep step, String why) {
    Double toleranceK = tolerances.temperatureK();
    ladder
        .temperature(step)
        .map(
            t -> Setting.of(MANAGEMENT, step.toString(), Figure.of(t, CELSIUS)).because(why, ORDER))
        .map(
            s ->
                tolerant(
                    s, toleranceK == null ? null : Figure.ofSi(toleranceK, KELVIN_OF_DIFFERENCE)))
        .ifPresent(settings::add);
  }

  private static Setting tolerant(Setting setting, @Nullable Figure tolerance) {
    return tolerance == null ? setting : setting.within(tolerance);
  }

  Worksheet toWorksheet() {
    Worksheet.Recording sheet = Worksheet.record("Ladder of settings");
    Double measuringV = tolerances.measuringV();
    if (measuringV != null) {
      ladder
          .stepV(LadderStep.CHARGER_END)
          .ifPresent(v -> ladder.readingAtChargeEndV(v, measuringV, sheet));
      reached(sheet, LadderStep.HIGH_TRIP, measuringV);
      ladder
          .stepV(LadderStep.CUT_BACK)
          .ifPresent(v -> ladder.readingAtCutBackV(v, measuringV, sheet));
      reached(sheet, LadderStep.LOW_TRIP, measuringV);
    }
    return sheet.toWorksheet();
  }

  private void reached(Worksheet.Recording sheet, LadderStep trip, double measuringV) {
    boolean high = trip == LadderStep.HIGH_TRIP;
    ladder
        .stepV(trip)
        .ifPresent(
            v ->
                sheet
                    .step(high ? "U_max" : "U_min", "cell when the " + trip + " acts, at worst")
                    .formula(high ? "U_trip + t_m" : "U_trip - t_m")
                    .with("U_trip", v, VOLT)
                    .with("t_m", measuringV, VOLT)
                    .basis(ladder.fields().basis())
                    .gives(high ? v + measuringV : v - measuringV, VOLT));
  }
}
