package org.wattwright.examples;

import static org.wattwright.units.WorkshopUnits.KILOWATT;
import static org.wattwright.units.WorkshopUnits.KILOWATT_HOUR;

import java.util.ArrayList;
import java.util.List;
import org.wattwright.battery.CellProperty;
import org.wattwright.battery.EnergyResult;
import org.wattwright.battery.Pack;
import org.wattwright.battery.PackState;
import org.wattwright.battery.PowerLimit;
import org.wattwright.check.Basis;
import org.wattwright.check.Check;
import org.wattwright.check.Figure;
import org.wattwright.check.Source;
import org.wattwright.examples.job.Requirement;
import org.wattwright.layout.Candidate;

/**
 * What the customer asked of the pack, checked on the pack with its link cables; mass, volume and
 * price are as the search found them.
 */
final class RequirementChecks {
  private RequirementChecks() {}

  static List<Check> of(Candidate candidate, Pack pack, Requirement requirement) {
    List<Check> checks = new ArrayList<>();
    checks.add(energy(pack, requirement.energy()));
    checks.add(peakPower(pack, requirement.peak()));
    candidate.checks().stream()
        .filter(check -> List.of("pack.mass", "pack.volume", "pack.price").contains(check.code()))
        .forEach(checks::add);
    return checks;
  }

  private static Check energy(Pack pack, Requirement.UsableEnergy asked) {
    EnergyResult energy =
        pack.usableEnergyAtPower(asked.power(), asked.full(), asked.empty(), asked.temperature());
    return Check.named(
            "pack.energy",
            "usable energy at " + asked.power() + " from " + asked.full() + " to " + energy.end())
        .source(Source.requirement("usable energy"))
        .basis(basis(pack).and(pack.basis(CellProperty.CAPACITY)))
        .atLeast(
            Figure.of(energy.energy(), KILOWATT_HOUR), Figure.of(asked.energy(), KILOWATT_HOUR));
  }

  private static Check peakPower(Pack pack, Requirement.PeakPower asked) {
    PackState state = PackState.of(asked.stateOfCharge(), asked.temperature());
    PowerLimit most = pack.maximumDischargePower(state, asked.duration());
    return Check.named(
            "pack.power.discharge", "peak power for " + asked.duration() + " at " + state)
        .source(Source.requirement("peak power"))
        .basis(basis(pack).and(pack.basis(CellProperty.CURRENT)))
        .note("limited by " + most.governing())
        .atLeast(Figure.of(most.power(), KILOWATT), Figure.of(asked.power(), KILOWATT));
  }

  private static Basis basis(Pack pack) {
    return pack.basis(CellProperty.VOLTAGE).and(pack.basis(CellProperty.RESISTANCE));
  }
}
