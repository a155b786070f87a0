package org.wattwright.examples;

import static org.wattwright.units.WorkshopUnits.AMPERE;
import static org.wattwright.units.WorkshopUnits.KILOWATT;
import static org.wattwright.units.WorkshopUnits.KILOWATT_HOUR;

import java.util.ArrayList;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricCurrent;
import org.wattwright.battery.CellProperty;
import org.wattwright.battery.EnergyResult;
import org.wattwright.battery.Pack;
import org.wattwright.battery.PackState;
import org.wattwright.battery.PowerLimit;
import org.wattwright.battery.PowerResult;
import org.wattwright.check.Basis;
import org.wattwright.check.Check;
import org.wattwright.check.Figure;
import org.wattwright.check.Source;
import org.wattwright.examples.job.DeviceInput;
import org.wattwright.examples.job.JobInput;
import org.wattwright.examples.job.Requirement;
import org.wattwright.examples.job.Statement;
import org.wattwright.layout.Candidate;
import org.wattwright.voltage.DeviceRole;

/**
 * What the customer asked of the pack, checked on the pack with its link cables; mass, volume and
 * price are as the search found them.
 */
final class RequirementChecks {
  private RequirementChecks() {}

  static List<Check> of(Candidate candidate, Pack pack, JobInput job) {
    Requirement requirement = job.requirement();
    List<Check> checks = new ArrayList<>();
    checks.add(energy(pack, job));
    checks.add(peakPower(pack, job));
    job.devices().stream()
        .filter(device -> device.role() == DeviceRole.INVERTER && device.current().isPresent())
        .forEach(device -> checks.add(peakCurrent(pack, requirement.peak(), device)));
    candidate.checks().stream()
        .filter(check -> List.of("pack.mass", "pack.volume", "pack.price").contains(check.code()))
        .forEach(checks::add);
    return checks;
  }

  private static Check energy(Pack pack, JobInput job) {
    Requirement.UsableEnergy asked = job.requirement().energy();
    EnergyResult energy =
        pack.usableEnergyAtPower(asked.power(), asked.full(), asked.empty(), asked.temperature());
    return Check.named(
            "pack.energy",
            "usable energy at " + asked.power() + " from " + asked.full() + " to " + energy.end())
        .source(Source.requirement("usable energy"))
        .basis(basis(pack).and(pack.basis(CellProperty.CAPACITY)))
        .estimated(estimated(job, List.of("cruising power", "cruising temperature")))
        .estimated(estimated(job, Requirement.Links.KEYS))
        .atLeast(
            Figure.of(energy.energy(), KILOWATT_HOUR), Figure.of(asked.energy(), KILOWATT_HOUR));
  }

  /** The inputs among these that the job marks as estimated. */
  private static String[] estimated(JobInput job, List<String> names) {
    return job.statements().stream()
        .filter(s -> s.basis() == Basis.ESTIMATED && names.contains(s.what()))
        .map(Statement::what)
        .toArray(String[]::new);
  }

  /** The current of the peak power, or the largest there is if that power is too high. */
  static Quantity<ElectricCurrent> peakCurrent(Pack pack, Requirement.PeakPower asked) {
    PackState state = PackState.of(asked.stateOfCharge(), asked.temperature());
    PowerResult result = pack.currentAtPower(state, asked.power(), asked.duration());
    return result instanceof PowerResult.OperatingPoint point
        ? point.current()
        : pack.maximumDischargePower(state, asked.duration()).current();
  }

  private static Check peakCurrent(Pack pack, Requirement.PeakPower asked, DeviceInput device) {
    return Check.named(
            "pack.peak-current",
            "current at the peak power against what " + device.name() + " takes")
        .source(Source.dataSheet(device.name()))
        .basis(basis(pack).and(device.basis()))
        .atMost(
            Figure.of(peakCurrent(pack, asked), AMPERE),
            Figure.of(device.current().orElseThrow(), AMPERE));
  }

  private static Check peakPower(Pack pack, JobInput job) {
    Requirement.PeakPower asked = job.requirement().peak();
    PackState state = PackState.of(asked.stateOfCharge(), asked.temperature());
    PowerLimit most = pack.maximumDischargePower(state, asked.duration());
    return Check.named(
            "pack.power.discharge", "peak power for " + asked.duration() + " at " + state)
        .source(Source.requirement("peak power"))
        .basis(basis(pack).and(pack.basis(CellProperty.CURRENT)))
        .estimated(estimated(job, Requirement.Links.KEYS))
        .note("limited by " + most.governing())
        .atLeast(Figure.of(most.power(), KILOWATT), Figure.of(asked.power(), KILOWATT));
  }

  private static Basis basis(Pack pack) {
    return pack.basis(CellProperty.VOLTAGE).and(pack.basis(CellProperty.RESISTANCE));
  }
}
