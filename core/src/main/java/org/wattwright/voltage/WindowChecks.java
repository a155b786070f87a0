package org.wattwright.voltage;

import static org.wattwright.units.WorkshopUnits.AMPERE;
import static org.wattwright.units.WorkshopUnits.KILOWATT;
import static org.wattwright.units.WorkshopUnits.VOLT;

import java.util.ArrayList;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricPotential;
import org.wattwright.battery.CellProperty;
import org.wattwright.battery.Pack;
import org.wattwright.check.Basis;
import org.wattwright.check.CautionBand;
import org.wattwright.check.Check;
import org.wattwright.check.CheckBuilder;
import org.wattwright.check.Figure;
import org.wattwright.check.Recorder;
import org.wattwright.check.Source;
import org.wattwright.units.Kind;

/** The comparisons of an envelope with the windows of devices. */
final class WindowChecks {
  /** A window's ends are guaranteed values: 1 % to spare is enough. Common practice. */
  private static final CautionBand WINDOW_BAND = CautionBand.shareOfLimit(0.01);

  private final Pack pack;
  private final OperatingConditions conditions;
  private final VoltageEnvelope envelope;
  private final EnvelopeSolver solver;

  WindowChecks(Pack pack, OperatingConditions conditions, VoltageEnvelope envelope) {
    this.pack = pack;
    this.conditions = conditions;
    this.envelope = envelope;
    this.solver = new EnvelopeSolver(pack, conditions, Recorder.OFF);
  }

  List<Check> against(List<Device> devices) {
    List<Check> checks = new ArrayList<>();
    for (Device device : devices) {
      checks.add(absoluteMaximum(device));
      checks.add(upperEnd(device));
      checks.add(lowerEnd(device));
      device
          .window()
          .fullPerformance()
          .filter(band -> device.role() != DeviceRole.CHARGER)
          .ifPresent(band -> checks.add(fullPerformance(device, band)));
    }
    checks.add(peak());
    checks.add(regenerationAtFull());
    return checks;
  }

  private Check absoluteMaximum(Device device) {
    CheckBuilder check =
        named(
                "voltage.absolute-maximum",
                "full under charge against the absolute maximum of ",
                device)
            .basis(solver.loadedBasis())
            .safety();
    return device
        .window()
        .absoluteMaximum()
        .map(limit -> check.atMost(volts(envelope.fullUnderCharge()), volts(limit)))
        .orElseGet(() -> check.notChecked(device.name() + ".absoluteMaximum"));
  }

  private Check upperEnd(Device device) {
    Quantity<ElectricPotential> top = device.window().operating().highest();
    if (device.role() == DeviceRole.CHARGER) {
      return named("voltage.charger-reach", "end of charge against the highest output of ", device)
          .basis(pack.basis(CellProperty.VOLTAGE))
          .atMost(volts(envelope.endOfCharge()), volts(top));
    }
    return named("voltage.operating-maximum", "full under charge against the upper end of ", device)
        .basis(solver.loadedBasis())
        .atMost(volts(envelope.fullUnderCharge()), volts(top));
  }

  private Check lowerEnd(Device device) {
    Quantity<ElectricPotential> bottom = device.window().operating().lowest();
    if (device.role() == DeviceRole.CHARGER) {
      return named("voltage.charger-start", "empty at rest against the lowest output of ", device)
          .basis(pack.basis(CellProperty.VOLTAGE))
          .atLeast(volts(envelope.emptyAtRest()), volts(bottom));
    }
    return named(
            "voltage.operating-minimum", "empty, cold, loaded against the lower end of ", device)
        .basis(solver.loadedBasis())
        .atLeast(volts(envelope.emptyUnderLoad()), volts(bottom));
  }

  private Check fullPerformance(Device device, VoltageRange band) {
    return named(
            "voltage.full-performance", "nominal voltage in the full-performance band of ", device)
        .basis(pack.basis(CellProperty.VOLTAGE))
        .note(
            "nominal "
                + org.wattwright.units.Measures.format(envelope.nominal(), Kind.VOLTAGE)
                + ", band "
                + band)
        .recommends(band.contains(envelope.nominal()));
  }

  private Check peak() {
    EnvelopeSolver.PeakLoad peak = solver.peakLoad(conditions.emptiest());
    Basis basis = pack.basis(CellProperty.CURRENT).and(solver.loadedBasis());
    CheckBuilder check =
        Check.named("battery.peak-load", "peak load against what the cold and empty pack carries")
            .source(Source.requirement("peak load"))
            .basis(basis)
            .cautionBand(CautionBand.NONE)
            .note("limited by " + peak.maximum().governing());
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
    double regeneratingV = solver.regeneratingV(conditions.fullest());
    double maximumV = Kind.VOLTAGE.siValueOf(pack.maximumVoltage());
    return Check.named("voltage.regeneration-at-full", "regeneration into the full pack")
        .source(Source.dataSheet("cell maximum voltage"))
        .basis(solver.loadedBasis())
        .note(
            regeneratingV <= maximumV
                ? "cells stay below their maximum"
                : "cells would pass their maximum: limit regeneration when full")
        .recommends(regeneratingV <= maximumV);
  }

  private static CheckBuilder named(String code, String what, Device device) {
    return Check.named(code, what + device.name())
        .source(Source.dataSheet(device.name()))
        .cautionBand(WINDOW_BAND);
  }

  private static Figure volts(Quantity<ElectricPotential> voltage) {
    return Figure.of(voltage, VOLT);
  }
}
