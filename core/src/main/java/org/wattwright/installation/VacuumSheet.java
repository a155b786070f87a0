package org.wattwright.installation;

import static org.wattwright.units.WorkshopUnits.KILOPASCAL;
import static org.wattwright.units.WorkshopUnits.LITRE;
import static org.wattwright.units.WorkshopUnits.SECOND;

import org.wattwright.check.Figure;
import org.wattwright.check.Source;
import org.wattwright.check.StepBuilder;
import org.wattwright.check.Worksheet;
import org.wattwright.units.Kind;

/** The working of a vacuum system, from the values that the checks use. */
final class VacuumSheet {
  /** Applications written out; more say nothing new. */
  private static final int MOST_STEPS = 12;

  private final VacuumSystem system;
  private final VacuumReserve reserve;
  private final Worksheet.Recording sheet = Worksheet.record("Vacuum of the brake servo");

  VacuumSheet(VacuumSystem system, VacuumReserve reserve) {
    this.system = system;
    this.reserve = reserve;
  }

  Worksheet toWorksheet() {
    double ambientPa = Kind.PRESSURE.siValueOf(system.ambient());
    sheet
        .step("V", "volume of servo, hose and reservoir")
        .formula("V_servo + V_reservoir")
        .with("V_servo", system.fields().servo().heldM3(), LITRE)
        .with("V_reservoir", system.fields().reservoirM3(), LITRE)
        .basis(system.fields().basis())
        .gives(system.totalM3(), LITRE);
    sheet
        .step("p_lim", "highest absolute pressure that leaves the difference asked for")
        .formula("p_atm - Δp")
        .with("p_atm", ambientPa, KILOPASCAL)
        .with("Δp", Figure.of(reserve.leastDifference(), KILOPASCAL))
        .basis(system.fields().basis())
        .gives(system.limitPa(reserve), KILOPASCAL);
    system.restartPa().ifPresent(pa -> applications(pa, ambientPa));
    pumpTimes(ambientPa);
    return sheet.toWorksheet();
  }

  private void applications(double startPa, double ambientPa) {
    double limitPa = system.limitPa(reserve);
    int shown = Math.min(MOST_STEPS, system.stops(startPa, limitPa) + 1);
    double pa = startPa;
    for (int i = 1; i <= shown; i++) {
      double nextPa = system.afterOnePa(pa);
      StepBuilder step =
          sheet
              .step("p_" + i, "absolute pressure after full application " + i)
              .formula("min(p_atm, p_" + (i - 1) + " + (p_atm·V_s - p_" + (i - 1) + "·V_r)/V)")
              .with("p_atm", ambientPa, KILOPASCAL)
              .with("p_" + (i - 1), pa, KILOPASCAL)
              .with("V_s", system.fields().servo().strokeM3(), LITRE)
              .with("V_r", system.fields().servo().restM3(), LITRE)
              .with("V", system.totalM3(), LITRE);
      step.basis(system.fields().basis()).gives(nextPa, KILOPASCAL);
      pa = nextPa;
    }
    system
        .reservoirFor(KILOPASCAL.of(startPa / 1000), reserve)
        .ifPresent(
            v ->
                sheet
                    .step(
                        "V_needed",
                        "reservoir for "
                            + reserve.stops()
                            + " applications, same formula solved for V")
                    .source(Source.PHYSICS)
                    .basis(system.fields().basis())
                    .gives(Figure.of(v, LITRE)));
  }

  private void pumpTimes(double ambientPa) {
    system
        .stopPa()
        .filter(pa -> pa > 0 && pa < ambientPa)
        .flatMap(pa -> system.pumpDownTime(PressureFall.ofPa(ambientPa, pa)))
        .ifPresent(
            t ->
                sheet
                    .step(
                        "t_up",
                        "time of the pump from no vacuum to its stop, V·∫dp/Q over its curve")
                    .source(Source.PHYSICS)
                    .basis(system.fields().basis())
                    .gives(Figure.of(t, SECOND)));
    system
        .recoveryTime()
        .ifPresent(
            t ->
                sheet
                    .step(
                        "t_1",
                        "time of the pump after one full application, V·∫dp/Q over its curve")
                    .source(Source.PHYSICS)
                    .basis(system.fields().basis())
                    .gives(Figure.of(t, SECOND)));
  }
}
