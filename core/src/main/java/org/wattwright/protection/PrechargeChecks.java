package org.wattwright.protection;

import static org.wattwright.units.WorkshopUnits.JOULE;
import static org.wattwright.units.WorkshopUnits.SECOND;
import static org.wattwright.units.WorkshopUnits.VOLT;
import static org.wattwright.units.WorkshopUnits.WATT;

import java.util.ArrayList;
import java.util.List;
import javax.measure.Quantity;
import org.jspecify.annotations.Nullable;
import org.wattwright.check.Basis;
import org.wattwright.check.CautionBand;
import org.wattwright.check.Check;
import org.wattwright.check.CheckBuilder;
import org.wattwright.check.Figure;
import org.wattwright.check.Source;
import org.wattwright.units.NamedUnit;

/** The checks of a pre-charge with its resistor, each at the corner that is worst for it. */
final class PrechargeChecks {
  private static final Source CIRCUIT = Source.PHYSICS;

  private final PrechargeResult result;
  private final Precharge precharge;
  private final PrechargeResistor resistor;
  private final PrechargeCourse slowest;
  private final PrechargeCourse quickest;

  PrechargeChecks(PrechargeResult result) {
    this.result = result;
    this.precharge = result.precharge();
    this.resistor = result.resistor();
    this.slowest = result.slowest();
    this.quickest = result.quickest();
  }

  List<Check> all() {
    List<Check> checks = new ArrayList<>();
    checks.add(completes());
    Double wantedS = precharge.timing().wantedS();
    if (wantedS != null) {
      checks.add(time(wantedS));
    }
    checks.add(pulseEnergy());
    checks.add(meanPowerCheck());
    checks.add(resistorVoltage());
    checks.add(shortedBus());
    checks.add(timeOutCheck());
    checks.add(make());
    return List.copyOf(checks);
  }

  private CheckBuilder check(String code, String what, Source source) {
    CheckBuilder check =
        Check.named("precharge." + code, what).source(source).basis(precharge.basis());
    return resistor.hasTolerance() ? check : check.note("resistor at its nominal value");
  }

  /** A check whose value goes with the capacitance. */
  private CheckBuilder byCapacitance(String code, String what, Source source) {
    return check(code, what, source).estimated(precharge.estimatesOfCapacitance());
  }

  private Check completes() {
    CheckBuilder check =
        check("completes", "final voltage of the bus against closing voltage", CIRCUIT);
    double targetV = precharge.supplyV() - precharge.targetDifferenceV();
    Figure target = Figure.ofSi(targetV, VOLT);
    Figure end = Figure.of(slowest.finalVoltage(), VOLT);
    if (!slowest.completes()) {
      check.note("never completes: a load keeps the bus down at " + end + " of " + target);
      // The target itself is only approached, which is no margin but no way to close either.
      return check.holds(false);
    }
    return check.cautionBand(CautionBand.NONE).safety().atLeast(end, target);
  }

  private Check time(double wantedS) {
    CheckBuilder check =
        byCapacitance(
            "time", "slowest pre-charge against wanted time", Source.requirement("wanted time"));
    if (!precharge.missing().isEmpty()) {
      return check.notChecked(missing());
    }
    if (!slowest.completes()) {
      return check.note("never completes").holds(false);
    }
    return check.atMost(Figure.ofSi(slowest.timeToTargetS(), SECOND), Figure.ofSi(wantedS, SECOND));
  }

  private String[] missing(String... more) {
    List<String> all = new ArrayList<>(precharge.missing());
    all.addAll(List.of(more));
    return all.toArray(String[]::new);
  }

  private Check pulseEnergy() {
    CheckBuilder check =
        byCapacitance("pulse-energy", "energy of a shot against pulse energy", partSource())
            .safety();
    return against(check, result.energyJ(), resistor.pulseJ(), "resistor.pulseEnergy", JOULE);
  }

  private Source partSource() {
    return Source.dataSheet(resistor.name());
  }

  private Check meanPowerCheck() {
    CheckBuilder check =
        byCapacitance("mean-power", "mean power against continuous power", partSource()).safety();
    Double periodS = precharge.timing().periodS();
    if (periodS == null) {
      return check.notChecked(missing("precharge.repeats"));
    }
    double meanW = result.energyJ() * precharge.timing().shots() / periodS;
    return against(check, meanW, resistor.continuousW(), "resistor.continuousPower", WATT);
  }

  private <Q extends Quantity<Q>> Check against(
      CheckBuilder check,
      double actualSi,
      @Nullable Double limitSi,
      String field,
      NamedUnit<Q> unit) {
    if (!Double.isFinite(actualSi)) {
      return check.notChecked(missing("precharge.timeOut"));
    }
    if (limitSi == null || !precharge.missing().isEmpty()) {
      return check.notChecked(limitSi == null ? missing(field) : missing());
    }
    return check.atMost(Figure.ofSi(actualSi, unit), Figure.ofSi(limitSi, unit));
  }

  private Check resistorVoltage() {
    CheckBuilder check =
        check("resistor-voltage", "supply voltage against voltage of the resistor", partSource());
    Double limitV = resistor.voltageV();
    Figure actual = Figure.ofSi(precharge.supplyV(), VOLT);
    return limitV == null
        ? check.safety().notChecked(actual, "resistor.voltage")
        : check.safety().atMost(actual, Figure.ofSi(limitV, VOLT));
  }

  private Check shortedBus() {
    CheckBuilder check =
        check("shorted-bus", "time-out against life of the resistor, bus shorted", partSource())
            .safety();
    double livesS = resistor.bearsS(quickest.peakPowerW());
    if (livesS == Double.POSITIVE_INFINITY) {
      return check.note("bears a shorted bus for any time").holds(true);
    }
    Double timeOutS = precharge.timing().timeOutS();
    List<String> unknown = new ArrayList<>();
    if (timeOutS == null) {
      unknown.add("precharge.timeOut");
    }
    if (Double.isNaN(livesS)) {
      unknown.add("resistor.pulseEnergy");
    }
    return timeOutS == null || Double.isNaN(livesS)
        ? check.notChecked(unknown.toArray(String[]::new))
        : check.atMost(Figure.ofSi(timeOutS, SECOND), Figure.ofSi(livesS, SECOND));
  }

  private Check timeOutCheck() {
    CheckBuilder check = byCapacitance("time-out", "time-out against slowest pre-charge", CIRCUIT);
    Double timeOutS = precharge.timing().timeOutS();
    if (timeOutS == null || !precharge.missing().isEmpty()) {
      return check.notChecked(timeOutS == null ? missing("precharge.timeOut") : missing());
    }
    if (!slowest.completes()) {
      return check.note("never completes: every time-out is reached").holds(false);
    }
    return check
        .note("too short a time-out stops a sound vehicle")
        .atLeast(Figure.ofSi(timeOutS, SECOND), Figure.ofSi(slowest.timeToTargetS(), SECOND));
  }

  private Check make() {
    Contactor contactor = precharge.contactor();
    if (contactor == null) {
      return Check.named("contactor.make", "inrush on closing against make limit")
          .source(Source.PHYSICS)
          .safety()
          .notChecked(missing("precharge.contactor"));
    }
    if (!precharge.boundsInrush() || !precharge.missing().isEmpty()) {
      String[] fields =
          precharge.boundsInrush() ? missing() : missing("precharge.supplyResistance");
      return Check.named("contactor.make", "inrush on closing of " + contactor.name())
          .source(contactor.source())
          .basis(Basis.DATA_SHEET)
          .safety()
          .notChecked(fields);
    }
    return contactor.checks().make(precharge.inrush().peak(precharge.targetDifference()));
  }
}
