package org.wattwright.examples;

import java.util.ArrayList;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricCurrent;
import org.wattwright.battery.Cell;
import org.wattwright.battery.Direction;
import org.wattwright.battery.Pack;
import org.wattwright.battery.PackState;
import org.wattwright.battery.SeriesString;
import org.wattwright.check.Check;
import org.wattwright.examples.job.ControlsInput;
import org.wattwright.examples.job.Requirement;
import org.wattwright.installation.Attestations;
import org.wattwright.installation.BleedBalancing;
import org.wattwright.installation.CellLoad;
import org.wattwright.installation.Interlocks;
import org.wattwright.installation.LadderStep;
import org.wattwright.installation.MonitorJoin;
import org.wattwright.installation.MonitoredModule;
import org.wattwright.installation.MonitoringPlan;
import org.wattwright.installation.PedalGear;
import org.wattwright.installation.SettingsLadder;
import org.wattwright.installation.SettingsLadderBuilder;
import org.wattwright.installation.TemperatureStep;
import org.wattwright.units.Kind;
import org.wattwright.units.Measures;

/**
 * Vacuum, settings, pedal and gauges with the pack chosen.
 *
 * @param input as stated
 * @param ladder with the limits of the cell chosen
 * @param plans measuring units of each string
 * @param checks all verdicts
 */
record ControlsDesign(
    ControlsInput input, SettingsLadder ladder, List<MonitoringPlan> plans, List<Check> checks) {

  static ControlsDesign of(ControlsInput input, Pack pack, Requirement requirement) {
    SettingsLadder ladder = ladder(input, pack, requirement);
    List<MonitoringPlan> plans = new ArrayList<>();
    for (SeriesString string : pack.strings()) {
      plans.add(plan(input.monitoring(), string, pack));
    }
    List<Check> checks = new ArrayList<>();
    addBrakes(checks, input.brakes());
    checks.addAll(ladder.checks());
    addMonitoring(checks, plans, RequirementChecks.peakCurrent(pack, requirement.peak()));
    checks.add(balancing(input.monitoring(), pack));
    checks.addAll(input.throttle().signal().checks());
    checks.addAll(
        input.throttle().map().checks(input.throttle().tolerance(), input.throttle().release()));
    checks.addAll(Interlocks.usualChecks());
    addGauges(checks, input.gauges(), pack, requirement);
    checks.addAll(Attestations.none().checks());
    return new ControlsDesign(input, ladder, List.copyOf(plans), List.copyOf(checks));
  }

  private static void addBrakes(List<Check> checks, ControlsInput.Brakes brakes) {
    checks.addAll(brakes.vacuum().checks(brakes.reserve()));
    checks.add(brakes.pedal().checkServoDead(PedalGear.Category.OTHER, brakes.secondary()));
    checks.addAll(brakes.lamps().checks());
  }

  /** Each string carries its share of the current. */
  private static void addMonitoring(
      List<Check> checks, List<MonitoringPlan> plans, Quantity<ElectricCurrent> peak) {
    double perStringA = Kind.CURRENT.siValueOf(peak) / plans.size();
    for (int i = 0; i < plans.size(); i++) {
      String which = "string " + (i + 1);
      plans
          .get(i)
          .checks(Kind.CURRENT.ofSi(perStringA))
          .forEach(check -> checks.add(check.in(which)));
    }
  }

  private static Check balancing(ControlsInput.Monitoring monitoring, Pack pack) {
    double perGroupC = Kind.CHARGE.siValueOf(pack.capacity()) / pack.strings().size();
    return monitoring
        .bleed()
        .check(
            BleedBalancing.chargeToRemove(Kind.CHARGE.ofSi(perGroupC), monitoring.imbalance()),
            monitoring.within());
  }

  private static void addGauges(
      List<Check> checks, ControlsInput.Gauges gauges, Pack pack, Requirement requirement) {
    var peak = RequirementChecks.peakCurrent(pack, requirement.peak());
    checks.addAll(gauges.shunt().checks(gauges.continuous(), peak));
    checks.addAll(
        gauges.ammeter().checks(gauges.shunt(), peak, requirement.regeneration().current()));
  }

  private static SettingsLadder ladder(ControlsInput input, Pack pack, Requirement requirement) {
    SeriesString string = pack.strings().get(0);
    Cell cell = string.groups().get(0).module().cell();
    SettingsLadderBuilder builder =
        SettingsLadder.of(string.cellsInSeries())
            .step(LadderStep.CELL_MAXIMUM, cell.maximumVoltage())
            .step(LadderStep.CELL_MINIMUM, cell.minimumVoltage())
            .temperature(
                TemperatureStep.COLDEST_CHARGE, cell.temperatures(Direction.CHARGE).coldest())
            .temperature(
                TemperatureStep.HOTTEST_CELL, cell.temperatures(Direction.DISCHARGE).hottest())
            .load(load(pack, cell, requirement));
    return input.ladder().addTo(builder).build();
  }

  /** The peak power asked for, on the cells of one string, at the charge it is asked for. */
  private static CellLoad load(Pack pack, Cell cell, Requirement requirement) {
    Requirement.PeakPower peak = requirement.peak();
    PackState state = PackState.of(peak.stateOfCharge(), peak.temperature());
    int cells = pack.strings().size() * pack.strings().get(0).groups().get(0).module().parallel();
    double amps = Kind.CURRENT.siValueOf(RequirementChecks.peakCurrent(pack, peak)) / cells;
    return new CellLoad(
        cell.openCircuit().at(state),
        cell.resistance(Direction.DISCHARGE).at(state),
        Kind.CURRENT.ofSi(amps));
  }

  private static MonitoringPlan plan(
      ControlsInput.Monitoring monitoring, SeriesString string, Pack pack) {
    List<MonitoredModule> modules = new ArrayList<>();
    int middle = string.moduleCount() / 2;
    for (SeriesString.Group group : string.groups()) {
      for (int i = 0; i < group.count(); i++) {
        MonitoredModule module =
            MonitoredModule.of(
                "module " + (modules.size() + 1), group.bay(), group.module().series());
        boolean fused = monitoring.fuseInString() && modules.size() == middle;
        modules.add(fused ? module.behind(FUSE) : module);
      }
    }
    return MonitoringPlan.of(modules, monitoring.type(), pack.maximumVoltage())
        .tapsFused(monitoring.everyTapFused());
  }

  private static final MonitorJoin FUSE =
      new MonitorJoin("fuse of the string", MonitorJoin.Type.FUSE, Measures.milliohms(0));
}
