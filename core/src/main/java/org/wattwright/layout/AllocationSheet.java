package org.wattwright.layout;

import static org.wattwright.units.WorkshopUnits.KILOGRAM;
import static org.wattwright.units.WorkshopUnits.METRE;

import java.util.ArrayList;
import java.util.List;
import org.wattwright.check.Basis;
import org.wattwright.check.CautionBand;
import org.wattwright.check.Check;
import org.wattwright.check.CheckBuilder;
import org.wattwright.check.Figure;
import org.wattwright.check.Source;
import org.wattwright.check.Worksheet;
import org.wattwright.vehicle.LoadState;

/** Checks and working of an allocation, from the whole numbers that the allocator compared. */
final class AllocationSheet {
  private static final Source LIMIT = Source.requirement("limit as stated");

  /** Usual caution band relative to a limit of mass; common practice. */
  private static final double USUAL_BAND = 0.05;

  private AllocationSheet() {}

  static List<Check> checks(Allocation allocation) {
    AllocationSpec spec = allocation.spec();
    List<Check> checks = new ArrayList<>();
    for (LoadRule rule : spec.rules()) {
      long sum = BayTables.sum(allocation.tables().of(rule), allocation.entries());
      for (LoadRule.Case loadCase : rule.cases()) {
        checks.add(check(allocation, rule, sum, loadCase));
      }
    }
    for (int bay = 0; bay < spec.bays().size(); bay++) {
      LoadRule rule = spec.bayRule(bay);
      if (rule != null && allocation.entries()[bay] > 0) {
        long sum = BayTables.sum(allocation.tables().of(rule, bay), allocation.entries());
        checks.add(compare(named(rule, ""), rule, massFigure(sum)));
      }
    }
    spec.gaps().forEach(gap -> checks.add(notChecked(gap)));
    StringCells.check(allocation.tables().option()).ifPresent(checks::add);
    return List.copyOf(checks);
  }

  private static Check notChecked(RuleBook.Gap gap) {
    return Check.named(gap.identity().code(), gap.identity().what())
        .source(LIMIT)
        .safety()
        .notChecked(gap.missing().toArray(String[]::new));
  }

  private static Check check(
      Allocation allocation, LoadRule rule, long sum, LoadRule.Case loadCase) {
    CheckBuilder check = named(rule, ", " + loadCase.name()).basis(loadCase.base().basis());
    long load = loadCase.baseLoad() + sum;
    if (!rule.limit().share()) {
      return compare(check, rule, massFigure(load));
    }
    long massOfVehicle = loadCase.baseMass() + allocation.tables().massOf(allocation.entries());
    double share = rule.limit().value() + (double) load / massOfVehicle;
    return compare(check, rule, Figure.share(share));
  }

  private static CheckBuilder named(LoadRule rule, String where) {
    CautionBand band =
        rule.limit().share() || rule.limit().value() == 0
            ? CautionBand.NONE
            : CautionBand.shareOfLimit(USUAL_BAND);
    return Check.named(rule.code(), rule.what() + where).source(LIMIT).cautionBand(band).safety();
  }

  private static Check compare(CheckBuilder check, LoadRule rule, Figure actual) {
    Figure limit = limitFigure(rule, rule.limit().value());
    return rule.limit().atMost() ? check.atMost(actual, limit) : check.atLeast(actual, limit);
  }

  static Figure limitFigure(LoadRule rule, double value) {
    return rule.limit().share() ? Figure.share(value) : Figure.ofSi(value, KILOGRAM);
  }

  private static Figure massFigure(long micrograms) {
    return Figure.ofSi(Micrograms.toKg(micrograms), KILOGRAM);
  }

  static Worksheet worksheet(Allocation allocation) {
    Worksheet.Recording recording = Worksheet.record("Bays, " + allocation);
    AllocationSpec spec = allocation.spec();
    int[] entries = allocation.entries();
    double addedKg = 0;
    double addedFrontKg = 0;
    for (int bay = 0; bay < entries.length; bay++) {
      if (entries[bay] > 0) {
        BayLoad load = allocation.tables().load(bay, entries[bay], recording);
        addedKg += load.massKg();
        addedFrontKg += load.frontKg();
      }
    }
    List<LoadState> states = new ArrayList<>(spec.states());
    if (spec.draft().target != null) {
      LoadState wanted = spec.draft().ledger.after(spec.draft().target.loadCase());
      states.remove(wanted);
      states.add(0, wanted);
    }
    for (LoadState state : states) {
      record(recording, state, addedKg, addedFrontKg);
    }
    recordOrder(recording, allocation);
    return recording.toWorksheet();
  }

  private static void record(
      Worksheet.Recording recording, LoadState state, double addedKg, double addedFrontKg) {
    BayLoad base = BayLoad.of(state);
    String where = ", " + state.loadCase().name();
    double frontKg = base.frontKg() + addedFrontKg;
    double totalKg = base.massKg() + addedKg;
    step(recording, "m_f", "front axle load" + where, base.frontKg(), addedFrontKg);
    step(recording, "m_t", "mass of the vehicle" + where, base.massKg(), addedKg);
    recording
        .step("m_r", "rear axle load" + where)
        .formula("m_t - m_f")
        .with("m_t", totalKg, KILOGRAM)
        .with("m_f", frontKg, KILOGRAM)
        .basis(state.basis().and(Basis.DATA_SHEET))
        .gives(totalKg - frontKg, KILOGRAM);
    recording
        .step("s_f", "front share" + where)
        .formula("m_f/m_t")
        .with("m_f", frontKg, KILOGRAM)
        .with("m_t", totalKg, KILOGRAM)
        .basis(state.basis().and(Basis.DATA_SHEET))
        .gives(Figure.share(frontKg / totalKg));
  }

  private static void step(
      Worksheet.Recording recording, String symbol, String what, double baseKg, double addedKg) {
    recording
        .step(symbol, what)
        .formula(symbol + "0 + ΣΔ" + symbol)
        .with(symbol + "0", baseKg, KILOGRAM)
        .with("ΣΔ" + symbol, addedKg, KILOGRAM)
        .basis(Basis.DATA_SHEET)
        .gives(baseKg + addedKg, KILOGRAM);
  }

  private static void recordOrder(Worksheet.Recording recording, Allocation allocation) {
    recording
        .step("n_e", "bays in use")
        .source(LIMIT)
        .gives(Figure.count(allocation.enclosureCount()));
    allocation
        .linkLength()
        .ifPresent(
            length ->
                recording
                    .step("l", "link cable along the shortest route, all strings, one way")
                    .source(LIMIT)
                    .gives(Figure.of(length, METRE)));
    allocation
        .centreOfGravityHeight()
        .ifPresent(
            height ->
                recording
                    .step("h_p", "centre of gravity of modules and enclosures, above ground")
                    .source(Source.PHYSICS)
                    .gives(Figure.of(height, METRE)));
  }
}
