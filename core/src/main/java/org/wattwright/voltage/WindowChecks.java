package org.wattwright.voltage;

import static org.wattwright.units.WorkshopUnits.AMPERE;
import static org.wattwright.units.WorkshopUnits.KILOWATT;
import static org.wattwright.units.WorkshopUnits.VOLT;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricPotential;
import org.wattwright.battery.CellProperty;
import org.wattwright.battery.SeriesString;
import org.wattwright.check.Basis;
import org.wattwright.check.CautionBand;
import org.wattwright.check.Check;
import org.wattwright.check.CheckBuilder;
import org.wattwright.check.Figure;
import org.wattwright.check.Party;
import org.wattwright.check.Source;
import org.wattwright.units.Kind;
import org.wattwright.units.Measures;

/** The comparisons of an envelope with the windows of devices. */
final class WindowChecks {
  /** A window's ends are guaranteed values: 1 % to spare is enough. Common practice. */
  private static final CautionBand WINDOW_BAND = CautionBand.shareOfLimit(0.01);

  private final EnvelopeSolver solver;
  private final OperatingConditions conditions;
  private final VoltageEnvelope envelope;
  private final PeakLoad peak;
  private final double regeneratingV;

  WindowChecks(EnvelopeSolver solver, EnvelopeSolver.Solution solution) {
    this.solver = solver;
    this.conditions = solver.conditions();
    this.envelope = solution.envelope();
    this.peak = solution.peak();
    this.regeneratingV = solution.regeneratingV();
  }

  List<Check> against(List<Device> devices) {
    List<Check> checks = new ArrayList<>();
    for (Device device : devices) {
      WindowRule.of(device).forEach(rule -> checks.add(window(rule, device)));
      fullPerformance(device).ifPresent(checks::add);
    }
    checks.add(peak());
    checks.add(regenerationAtFull());
    return checks;
  }

  private Check window(WindowRule rule, Device device) {
    CheckBuilder check =
        named(rule.code(), rule.words(), device, inputsOf(rule.point()))
            .note(situation(rule.point()));
    if (rule == WindowRule.ABSOLUTE_MAXIMUM) {
      check.safety();
    }
    Figure actual = Figure.ofSi(rule.point().inV(envelope), VOLT);
    return rule.limitOf(device)
        .map(limit -> Figure.of(limit, VOLT))
        .map(limit -> rule.isUpper() ? check.atMost(actual, limit) : check.atLeast(actual, limit))
        .orElseGet(
            () ->
                check
                    .answeredBy(Party.PARTS_SUPPLIER)
                    .notChecked(actual, device.name() + ".absoluteMaximum"));
  }

  /** What of the cells a point follows from. */
  private static CellProperty[] inputsOf(EnvelopePoint point) {
    return switch (point) {
      case END_OF_CHARGE, EMPTY_AT_REST -> new CellProperty[] {CellProperty.VOLTAGE};
      case UNDER_LOAD -> new CellProperty[] {CellProperty.VOLTAGE, CellProperty.RESISTANCE};
      case UNDER_CHARGE ->
          new CellProperty[] {
            CellProperty.VOLTAGE, CellProperty.RESISTANCE, CellProperty.TEMPERATURE
          };
    };
  }

  /** When the pack has the voltage of a point. */
  private String situation(EnvelopePoint point) {
    return switch (point) {
      case END_OF_CHARGE -> "charged to " + conditions.fullest();
      case UNDER_CHARGE -> highestSituation();
      case EMPTY_AT_REST -> conditions.emptiest() + " at " + conditions.coldest();
      case UNDER_LOAD -> loadSituation();
    };
  }

  private String highestSituation() {
    return regeneratingV > Kind.VOLTAGE.siValueOf(envelope.endOfCharge())
        ? Measures.format(conditions.regenerationCurrent(), Kind.CURRENT)
            + " regeneration at "
            + solver.regenerationState(conditions.fullest())
        : "at the end of charge";
  }

  private String loadSituation() {
    String current = Measures.format(envelope.peakCurrent(), Kind.CURRENT);
    String load = peak.available() ? current : current + ", the most the pack gives,";
    return load + " at " + conditions.emptiest() + " and " + conditions.coldest();
  }

  /** Outside the band the device works with less power: never worse than a caution. */
  private Optional<Check> fullPerformance(Device device) {
    Optional<VoltageRange> band = device.window().fullPerformance();
    boolean matters = band.isPresent() || device.role() == DeviceRole.INVERTER;
    if (device.role() == DeviceRole.CHARGER || !matters) {
      return Optional.empty();
    }
    String nominal = "nominal " + Measures.format(envelope.nominal(), Kind.VOLTAGE);
    String known =
        band.map(range -> "band " + range)
            .orElse("band not known: ask for it, power is taken as full wherever it works");
    return Optional.of(
        named(
                "voltage.full-performance",
                "nominal in the full-performance band of ",
                device,
                CellProperty.VOLTAGE)
            .answeredBy(band.isPresent() ? Party.WORKSHOP : Party.PARTS_SUPPLIER)
            .note(nominal + ", " + known)
            .recommends(band.map(range -> range.contains(envelope.nominal())).orElse(false)));
  }

  private Check peak() {
    CheckBuilder check =
        Check.named("battery.peak-load", "peak load against what the cold and empty pack carries")
            .source(Source.requirement("peak load"))
            .cautionBand(CautionBand.NONE)
            .note("limited by " + peak.maximum().governing());
    restOn(
        check,
        CellProperty.VOLTAGE,
        CellProperty.RESISTANCE,
        CellProperty.CURRENT,
        CellProperty.TEMPERATURE);
    return conditions
        .peakDischargePower()
        .map(
            asked ->
                check.atMost(
                    Figure.of(asked, KILOWATT), Figure.of(peak.maximum().power(), KILOWATT)))
        .orElseGet(
            () ->
                check.atMost(
                    Figure.of(conditions.peakDischargeCurrent().orElseThrow(), AMPERE),
                    Figure.of(peak.maximum().current(), AMPERE)));
  }

  /** Cells must not pass their maximum under regeneration: a matter of settings, so a caution. */
  private Check regenerationAtFull() {
    CheckBuilder check =
        Check.named("voltage.regeneration-at-full", "regeneration into the full pack")
            .source(Source.dataSheet("cell maximum voltage"));
    restOn(check, inputsOf(EnvelopePoint.UNDER_CHARGE));
    if (!conditions.regenerationIsStated()) {
      return check
          .note("no regeneration is taken: state it, 0 A if there is none")
          .notChecked("conditions.regenerationCurrent");
    }
    Quantity<ElectricPotential> maximum = solver.pack().maximumVoltage();
    boolean below = EnvelopeSolver.atMost(regeneratingV, Kind.VOLTAGE.siValueOf(maximum));
    String voltages =
        Measures.format(Kind.VOLTAGE.ofSi(regeneratingV), Kind.VOLTAGE)
            + " against "
            + Measures.format(maximum, Kind.VOLTAGE)
            + " with every cell at its maximum";
    return check
        .note(below ? voltages : voltages + ": limit regeneration when full")
        .recommends(below);
  }

  private CheckBuilder named(String code, String words, Device device, CellProperty... inputs) {
    CheckBuilder check =
        Check.named(code, words + device.name())
            .source(Source.dataSheet(device.name()))
            .cautionBand(WINDOW_BAND);
    restOn(check, inputs);
    return check;
  }

  /** Weakens a check to the basis of its inputs, and names the estimated ones. */
  private void restOn(CheckBuilder check, CellProperty... inputs) {
    for (CellProperty input : inputs) {
      check.basis(solver.pack().basis(input));
      for (SeriesString string : solver.pack().strings()) {
        for (SeriesString.Group group : string.groups()) {
          if (group.module().basis(input) == Basis.ESTIMATED) {
            check.estimated(input + " of " + group.module().name());
          }
        }
      }
    }
  }
}
