package org.wattwright.layout;

import static org.wattwright.units.WorkshopUnits.AMPERE;
import static org.wattwright.units.WorkshopUnits.MILLIOHM;
import static org.wattwright.units.WorkshopUnits.VOLT;

import org.wattwright.battery.CellProperty;
import org.wattwright.check.Basis;
import org.wattwright.check.Figure;
import org.wattwright.check.Recorder;
import org.wattwright.units.Kind;
import org.wattwright.voltage.EnvelopePoint;
import org.wattwright.voltage.OperatingConditions;
import org.wattwright.voltage.VoltageEnvelope;

/** One point of the voltage envelope: S times what one module shows at its share of the load. */
final class EnvelopeVoltage implements Property {
  private final EnvelopePoint point;
  private final OperatingConditions conditions;
  private final Bus bus;

  EnvelopeVoltage(EnvelopePoint point, Bus bus) {
    this.point = point;
    this.bus = bus;
    this.conditions = bus.conditions();
  }

  EnvelopePoint point() {
    return point;
  }

  @Override
  public String name() {
    return point.toString();
  }

  /** Voltage of one module, given how many share current and power. */
  private interface ModuleVoltage {
    double voltageV(int series, int parallel);
  }

  @Override
  public Term on(Variant variant, Recorder recorder) {
    ModuleVoltages read = bus.voltagesOf(variant.module());
    ModuleVoltage module = module(read);
    return (series, parallel, to) -> {
      double moduleV = module.voltageV(series, parallel);
      double voltageV = series * moduleV;
      if (to.isOn()) {
        recordModule(read, moduleV, parallel, to);
        to.step(point.symbol(), "voltage, " + point)
            .formula("S·u_module")
            .with("S", Figure.count(series))
            .with("u_module", moduleV, VOLT)
            .basis(basis(variant))
            .gives(voltageV, VOLT);
      }
      return voltageV;
    };
  }

  /** What one module shows at its share of the load. */
  private void recordModule(ModuleVoltages read, double moduleV, int parallel, Recorder recorder) {
    double regenerationA = Kind.CURRENT.siValueOf(conditions.regenerationCurrent()) / parallel;
    switch (point) {
      case UNDER_LOAD ->
          recorder
              .step("u_module", "module empty and cold under its share of the load")
              .formula("u − i·r")
              .with("u", read.loaded().openCircuitV(), VOLT)
              .with("i", read.loaded().currentAt(moduleV), AMPERE)
              .with("r", read.loaded().resistanceOhm(), MILLIOHM)
              .gives(moduleV, VOLT);
      case UNDER_CHARGE ->
          recorder
              .step("u_module", "module full under its share of regeneration, or at end of charge")
              .formula("greater of u_end, u + i·r")
              .with("u_end", read.endOfChargeV(), VOLT)
              .with("u", read.charging().openCircuitV(), VOLT)
              .with("i", regenerationA, AMPERE)
              .with("r", read.charging().resistanceOhm(), MILLIOHM)
              .gives(moduleV, VOLT);
      case END_OF_CHARGE, EMPTY_AT_REST -> {}
    }
  }

  private ModuleVoltage module(ModuleVoltages read) {
    double endV = read.endOfChargeV();
    double emptyV = read.emptyV();
    double regenerationA = Kind.CURRENT.siValueOf(conditions.regenerationCurrent());
    return switch (point) {
      case END_OF_CHARGE -> (series, parallel) -> endV;
      case UNDER_CHARGE ->
          (series, parallel) -> Math.max(endV, read.charging().underA(-regenerationA / parallel));
      case EMPTY_AT_REST -> (series, parallel) -> emptyV;
      case UNDER_LOAD -> loaded(read);
    };
  }

  private ModuleVoltage loaded(ModuleVoltages read) {
    ModuleVoltages.Source source = read.loaded();
    // The pack, too, lets rounding pass that would refuse its own maximum.
    double room = 1 + 1e-12;
    double atMostV = Kind.VOLTAGE.siValueOf(read.largest().voltage());
    if (conditions.peakDischargeCurrent().isPresent()) {
      double peakA = Kind.CURRENT.siValueOf(conditions.peakDischargeCurrent().get());
      double mostA = Kind.CURRENT.siValueOf(read.largest().current()) * room;
      return (series, parallel) ->
          peakA <= parallel * mostA ? source.underA(peakA / parallel) : atMostV;
    }
    double peakW = Kind.POWER.siValueOf(conditions.peakDischargePower().orElseThrow());
    double mostW = Kind.POWER.siValueOf(read.largest().power()) * room;
    return (series, parallel) -> {
      double shareW = peakW / (series * parallel);
      return shareW <= mostW ? source.underA(source.currentAtW(shareW)) : atMostV;
    };
  }

  @Override
  public double replayed(Candidate candidate) {
    return Kind.VOLTAGE.siValueOf(point.of(VoltageEnvelope.of(candidate.pack(), conditions)));
  }

  @Override
  public Figure figure(double si) {
    return Figure.ofSi(si, VOLT);
  }

  @Override
  public Basis basis(Variant variant) {
    Basis voltage = variant.module().basis(CellProperty.VOLTAGE);
    boolean atRest = point == EnvelopePoint.EMPTY_AT_REST || point == EnvelopePoint.END_OF_CHARGE;
    return atRest ? voltage : voltage.and(variant.module().basis(CellProperty.RESISTANCE));
  }
}
