package org.wattwright.installation;

import static org.wattwright.units.WorkshopUnits.CELSIUS;
import static org.wattwright.units.WorkshopUnits.VOLT;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wattwright.check.CautionBand;
import org.wattwright.check.Check;
import org.wattwright.check.CheckBuilder;
import org.wattwright.check.Figure;
import org.wattwright.check.Recorder;
import org.wattwright.check.Source;

/** Verdicts on a ladder of settings. */
final class LadderChecks {
  private static final Source ORDER =
      Source.commonPractice("each step clear of the next, tolerances stacked");
  private static final Source CELL = Source.dataSheet("cell");

  private final SettingsLadder ladder;
  private final @Nullable Double measuringV;

  LadderChecks(SettingsLadder ladder) {
    this.ladder = ladder;
    this.measuringV = ladder.fields().tolerances().measuringV();
  }

  List<Check> all() {
    return List.of(
        highTrip(),
        order("installation.high-warning-trip", LadderStep.HIGH_WARNING, LadderStep.HIGH_TRIP),
        chargeEnd(),
        cutBack(),
        order("installation.low-warning-trip", LadderStep.LOW_TRIP, LadderStep.LOW_WARNING),
        lowTrip(),
        load(),
        coldInhibit(),
        hotTrip());
  }

  private CheckBuilder named(String code, String what, Source source) {
    return Check.named(code, what)
        .source(source)
        .cautionBand(CautionBand.NONE)
        .basis(ladder.fields().basis())
        .safety();
  }

  private Check highTrip() {
    CheckBuilder check =
        named("installation.high-trip-cell", "cell when the high trip acts, at the most", CELL);
    Double tripV = stepV(LadderStep.HIGH_TRIP);
    Double cellV = stepV(LadderStep.CELL_MAXIMUM);
    if (tripV == null || cellV == null || measuringV == null) {
      return missing(check, LadderStep.HIGH_TRIP, LadderStep.CELL_MAXIMUM);
    }
    return check.atMost(Figure.ofSi(tripV + measuringV, VOLT), Figure.ofSi(cellV, VOLT));
  }

  private Check lowTrip() {
    CheckBuilder check =
        named("installation.low-trip-cell", "cell when the low trip acts, at the least", CELL);
    Double tripV = stepV(LadderStep.LOW_TRIP);
    Double cellV = stepV(LadderStep.CELL_MINIMUM);
    if (tripV == null || cellV == null || measuringV == null) {
      return missing(check, LadderStep.LOW_TRIP, LadderStep.CELL_MINIMUM);
    }
    return check.atLeast(Figure.ofSi(tripV - measuringV, VOLT), Figure.ofSi(cellV, VOLT));
  }

  /** Two settings of the same device on the same reading: the order alone counts, and is strict. */
  private Check order(String code, LadderStep lower, LadderStep higher) {
    CheckBuilder check = named(code, lower + " below " + higher, ORDER);
    Double lowerV = stepV(lower);
    Double higherV = stepV(higher);
    if (lowerV == null || higherV == null) {
      return missing(check, lower, higher);
    }
    return strictlyBelow(check, lowerV, higherV);
  }

  private Check chargeEnd() {
    CheckBuilder check =
        named("installation.charge-end-warning", "highest reading at the end of charge", ORDER);
    Double endV = stepV(LadderStep.CHARGER_END);
    Double warningV = stepV(LadderStep.HIGH_WARNING);
    if (endV == null || warningV == null || measuringV == null) {
      return missing(check, LadderStep.CHARGER_END, LadderStep.HIGH_WARNING);
    }
    double readV = ladder.readingAtChargeEndV(endV, measuringV, Recorder.OFF);
    return strictlyBelow(check, readV, warningV);
  }

  private Check cutBack() {
    CheckBuilder check =
        named("installation.cut-back-warning", "lowest reading when the drive has cut back", ORDER);
    Double cutV = stepV(LadderStep.CUT_BACK);
    Double warningV = stepV(LadderStep.LOW_WARNING);
    if (cutV == null || warningV == null || measuringV == null) {
      return missing(check, LadderStep.CUT_BACK, LadderStep.LOW_WARNING);
    }
    double readV = ladder.readingAtCutBackV(cutV, measuringV, Recorder.OFF);
    return readV == warningV
        ? check.note("both " + Figure.ofSi(readV, VOLT)).holds(false)
        : check.atLeast(Figure.ofSi(readV, VOLT), Figure.ofSi(warningV, VOLT));
  }

  private static Check strictlyBelow(CheckBuilder check, double lowerV, double higherV) {
    return lowerV == higherV
        ? check.note("both " + Figure.ofSi(lowerV, VOLT)).holds(false)
        : check.atMost(Figure.ofSi(lowerV, VOLT), Figure.ofSi(higherV, VOLT));
  }

  /** A trip under load is no danger, but strands the vehicle: delay or compensation helps. */
  private Check load() {
    CheckBuilder check =
        Check.named("installation.low-trip-load", "lowest reading under the largest current")
            .source(Source.commonPractice("a trip under load needs a delay or compensation"))
            .basis(ladder.fields().basis())
            .cautionBand(CautionBand.NONE);
    CellLoad load = ladder.fields().load();
    Double tripV = stepV(LadderStep.LOW_TRIP);
    if (load == null || tripV == null || measuringV == null) {
      return load == null
          ? check.notChecked("SettingsLadder.load")
          : missing(check, LadderStep.LOW_TRIP);
    }
    return check.atLeast(
        Figure.ofSi(load.terminalV() - measuringV, VOLT), Figure.ofSi(tripV, VOLT));
  }

  private Check coldInhibit() {
    CheckBuilder check =
        named("installation.cold-charge-inhibit", "coldest cell that is still charged", CELL);
    Double inhibitK = ladder.fields().stepsK().get(TemperatureStep.CHARGE_INHIBIT);
    Double cellK = ladder.fields().stepsK().get(TemperatureStep.COLDEST_CHARGE);
    Double toleranceK = ladder.fields().tolerances().temperatureK();
    if (inhibitK == null || cellK == null || toleranceK == null) {
      return missing(check, TemperatureStep.CHARGE_INHIBIT, TemperatureStep.COLDEST_CHARGE);
    }
    return check.atLeast(Figure.ofSi(inhibitK - toleranceK, CELSIUS), Figure.ofSi(cellK, CELSIUS));
  }

  private Check hotTrip() {
    CheckBuilder check =
        named("installation.hot-trip", "hottest cell when the hot trip acts", CELL);
    Double tripK = ladder.fields().stepsK().get(TemperatureStep.HOT_TRIP);
    Double cellK = ladder.fields().stepsK().get(TemperatureStep.HOTTEST_CELL);
    Double toleranceK = ladder.fields().tolerances().temperatureK();
    if (tripK == null || cellK == null || toleranceK == null) {
      return missing(check, TemperatureStep.HOT_TRIP, TemperatureStep.HOTTEST_CELL);
    }
    return check.atMost(Figure.ofSi(tripK + toleranceK, CELSIUS), Figure.ofSi(cellK, CELSIUS));
  }

  private @Nullable Double stepV(LadderStep step) {
    return ladder.fields().stepsV().get(step);
  }

  private Check missing(CheckBuilder check, LadderStep... steps) {
    List<String> names = new ArrayList<>();
    for (LadderStep step : steps) {
      if (stepV(step) == null) {
        names.add("SettingsLadder." + step);
      }
    }
    if (names.isEmpty()) {
      names.add("SettingsLadder.measuringTolerance");
    }
    return check.notChecked(names.toArray(String[]::new));
  }

  private Check missing(CheckBuilder check, TemperatureStep... steps) {
    List<String> names = new ArrayList<>();
    for (TemperatureStep step : steps) {
      if (ladder.fields().stepsK().get(step) == null) {
        names.add("SettingsLadder." + step);
      }
    }
    if (names.isEmpty()) {
      names.add("SettingsLadder.temperatureTolerance");
    }
    return check.notChecked(names.toArray(String[]::new));
  }
}
