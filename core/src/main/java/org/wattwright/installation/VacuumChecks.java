package org.wattwright.installation;

import static org.wattwright.units.WorkshopUnits.KILOPASCAL;
import static org.wattwright.units.WorkshopUnits.SECOND;

import java.util.List;
import java.util.Optional;
import org.wattwright.check.Check;
import org.wattwright.check.CheckBuilder;
import org.wattwright.check.Figure;
import org.wattwright.check.Party;
import org.wattwright.check.Source;
import org.wattwright.units.Kind;

/** Verdicts on the vacuum of a servo. */
final class VacuumChecks {
  /** Full strokes after the warning, before secondary performance must still be there. */
  private static final int STOPS_AFTER_WARNING = 4;

  private static final double BUILD_UP_S = 180;

  private static final Source WARNING =
      Source.standard("Directive 71/320/EEC", "Annex I: energy supply failure, warning device");
  private static final Source BUILD_UP =
      Source.standard("UN R13", "Annex 7, vacuum, no trailer").fromMemory();
  private static final Source REACH =
      Source.commonPractice("the pump reaches its switch, or it never stops");

  private final VacuumSystem system;
  private final VacuumReserve reserve;

  VacuumChecks(VacuumSystem system, VacuumReserve reserve) {
    this.system = system;
    this.reserve = reserve;
  }

  List<Check> all() {
    return List.of(stops(), reach(), buildUp(), warning());
  }

  private Check stops() {
    CheckBuilder check =
        Check.named(
                "installation.vacuum-stops",
                "full applications without the pump, from where it would restart, down to a"
                    + " difference of "
                    + Figure.of(reserve.leastDifference(), KILOPASCAL))
            .source(reserve.source())
            .basis(system.fields().basis())
            .safety();
    return system
        .restartPa()
        .map(pa -> system.stops(pa, system.limitPa(reserve)))
        .map(n -> check.atLeast(Figure.count(n), Figure.count(reserve.stops())))
        .orElseGet(() -> check.notChecked("VacuumSystem.pumpRestartsAt"));
  }

  private Check reach() {
    CheckBuilder check =
        Check.named("installation.vacuum-pump-reach", "end pressure of the pump, absolute")
            .source(REACH)
            .basis(system.fields().basis())
            .safety();
    Optional<VacuumPump> pump = system.pump();
    Optional<Double> stopPa = system.stopPa();
    if (pump.isEmpty() || stopPa.isEmpty()) {
      return check
          .answeredBy(Party.PARTS_SUPPLIER)
          .notChecked(pump.isEmpty() ? "VacuumSystem.pump" : "VacuumSystem.pumpStopsAt");
    }
    return check.atMost(
        Figure.of(pump.get().endPressure(), KILOPASCAL), Figure.ofSi(stopPa.get(), KILOPASCAL));
  }

  private Check buildUp() {
    CheckBuilder check =
        Check.named("installation.vacuum-build-up", "time from no vacuum to where the pump stops")
            .source(BUILD_UP)
            .basis(system.fields().basis())
            .safety();
    Optional<Double> stopPa = system.stopPa();
    if (system.pump().isEmpty() || stopPa.isEmpty()) {
      return check.notChecked(stopPa.isEmpty() ? "VacuumSystem.pumpStopsAt" : "VacuumSystem.pump");
    }
    double ambientPa = Kind.PRESSURE.siValueOf(system.ambient());
    double seconds = secondsTo(stopPa.get(), ambientPa);
    return seconds <= Double.MAX_VALUE
        ? check.atMost(Figure.ofSi(seconds, SECOND), Figure.ofSi(BUILD_UP_S, SECOND))
        : check.note("the pump never gets there").holds(false);
  }

  private double secondsTo(double stopPa, double ambientPa) {
    if (!(stopPa > 0)) {
      return Double.POSITIVE_INFINITY;
    }
    return system
        .pumpDownTime(PressureFall.ofPa(Math.max(ambientPa, stopPa), stopPa))
        .map(Kind.TIME::siValueOf)
        .orElse(Double.POSITIVE_INFINITY);
  }

  private Check warning() {
    CheckBuilder check =
        Check.named(
                "installation.vacuum-warning", "full applications left when the driver is warned")
            .source(WARNING)
            .basis(system.fields().basis())
            .safety();
    return system
        .warningPa()
        .map(pa -> system.stops(pa, system.limitPa(reserve)))
        .map(n -> check.atLeast(Figure.count(n), Figure.count(STOPS_AFTER_WARNING)))
        .orElseGet(() -> check.notChecked("VacuumSystem.warnsAt"));
  }
}
