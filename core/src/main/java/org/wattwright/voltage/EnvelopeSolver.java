package org.wattwright.voltage;

import static org.wattwright.units.WorkshopUnits.AMPERE;
import static org.wattwright.units.WorkshopUnits.MILLIOHM;
import static org.wattwright.units.WorkshopUnits.VOLT;

import javax.measure.Quantity;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.Temperature;
import org.wattwright.battery.BandEnd;
import org.wattwright.battery.CellProperty;
import org.wattwright.battery.Direction;
import org.wattwright.battery.Pack;
import org.wattwright.battery.PackState;
import org.wattwright.battery.PowerLimit;
import org.wattwright.battery.PowerResult;
import org.wattwright.battery.SeriesString;
import org.wattwright.check.Basis;
import org.wattwright.check.Figure;
import org.wattwright.check.Recorder;
import org.wattwright.units.Kind;
import org.wattwright.units.StateOfCharge;

/** Computes the voltages of a pack under conditions; the one place that does. */
final class EnvelopeSolver {
  private final Pack pack;

  /** The pack with estimated resistances at their high end. */
  private final Pack sagging;

  private final OperatingConditions conditions;
  private final Recorder recorder;

  EnvelopeSolver(Pack pack, OperatingConditions conditions, Recorder recorder) {
    this.pack = pack;
    this.sagging = pack.atBandEnd(BandEnd.HIGH);
    this.conditions = conditions;
    this.recorder = recorder;
  }

  VoltageEnvelope envelope() {
    double endOfChargeV = endOfChargeV();
    double regeneratingV = regeneratingV(conditions.fullest());
    double fullAtRestV = openCircuitV(conditions.fullest(), conditions.usual(), "full");
    double nominalV = nominalV();
    double emptyAtRestV = openCircuitV(conditions.emptiest(), conditions.coldest(), "empty");
    PeakLoad peak = peakLoad(conditions.emptiest());
    recordPeak(peak, emptyAtRestV);
    return new VoltageEnvelope(
        Kind.VOLTAGE.ofSi(endOfChargeV),
        Kind.VOLTAGE.ofSi(Math.max(endOfChargeV, regeneratingV)),
        Kind.VOLTAGE.ofSi(fullAtRestV),
        Kind.VOLTAGE.ofSi(nominalV),
        Kind.VOLTAGE.ofSi(emptyAtRestV),
        Kind.VOLTAGE.ofSi(peak.voltageV()),
        Kind.CURRENT.ofSi(peak.currentA()));
  }

  private double endOfChargeV() {
    boolean full = conditions.fullest().equals(StateOfCharge.FULL);
    double voltageV =
        Kind.VOLTAGE.siValueOf(
            full
                ? pack.maximumVoltage()
                : pack.openCircuitVoltage(PackState.of(conditions.fullest(), conditions.usual())));
    if (recorder.isOn()) {
      recorder
          .step("U_end", "end of charge at " + conditions.fullest())
          .formula(full ? "S·u_max of the cells" : "OCV at the fullest state in use")
          .basis(pack.basis(CellProperty.VOLTAGE))
          .gives(voltageV, VOLT);
    }
    return voltageV;
  }

  /** Voltage under the regeneration current at the coldest temperature that allows charging. */
  double regeneratingV(StateOfCharge stateOfCharge) {
    PackState state = PackState.of(stateOfCharge, coldestForCharge());
    double currentA = Kind.CURRENT.siValueOf(conditions.regenerationCurrent());
    Quantity<ElectricCurrent> into = Kind.CURRENT.ofSi(-currentA);
    double voltageV =
        Kind.VOLTAGE.siValueOf(sagging.terminalVoltage(state, into, conditions.peakDuration()));
    if (recorder.isOn()) {
      recorder
          .step("U_reg", "under regeneration at " + state)
          .formula("OCV + I·R")
          .with("OCV", Figure.of(pack.openCircuitVoltage(state), VOLT))
          .with("I", currentA, AMPERE)
          .with("R", Figure.of(sagging.resistance(state, Direction.CHARGE), MILLIOHM))
          .basis(loadedBasis())
          .gives(voltageV, VOLT);
    }
    return voltageV;
  }

  private Quantity<Temperature> coldestForCharge() {
    Quantity<Temperature> coldest = conditions.coldest();
    for (SeriesString string : pack.strings()) {
      for (SeriesString.Group group : string.groups()) {
        Quantity<Temperature> allowed =
            group.module().cell().temperatures(Direction.CHARGE).coldest();
        coldest = Kind.TEMPERATURE.compare(allowed, coldest) > 0 ? allowed : coldest;
      }
    }
    return coldest;
  }

  private double openCircuitV(
      StateOfCharge stateOfCharge, Quantity<Temperature> temperature, String name) {
    PackState state = PackState.of(stateOfCharge, temperature);
    double voltageV = Kind.VOLTAGE.siValueOf(pack.openCircuitVoltage(state));
    if (recorder.isOn()) {
      recorder
          .step("U_" + name, name + " at rest, " + state)
          .formula("sum of the cells' OCV")
          .basis(pack.basis(CellProperty.VOLTAGE))
          .gives(voltageV, VOLT);
    }
    return voltageV;
  }

  private double nominalV() {
    double voltageV = 0;
    for (SeriesString.Group group : pack.strings().get(0).groups()) {
      double cellV =
          Kind.VOLTAGE.siValueOf(
              group
                  .module()
                  .cell()
                  .openCircuit()
                  .meanBetween(conditions.emptiest(), conditions.fullest(), conditions.usual()));
      voltageV += group.count() * group.module().series() * cellV;
    }
    if (recorder.isOn()) {
      recorder
          .step("U_nom", "mean open-circuit voltage over the states of charge in use")
          .formula("∫OCV ds / Δs")
          .basis(pack.basis(CellProperty.VOLTAGE))
          .gives(voltageV, VOLT);
    }
    return voltageV;
  }

  /** The peak load, or the largest that the pack carries. */
  record PeakLoad(double currentA, double voltageV, boolean available, PowerLimit maximum) {}

  PeakLoad peakLoad(StateOfCharge stateOfCharge) {
    PackState state = PackState.of(stateOfCharge, conditions.coldest());
    PowerLimit maximum = sagging.maximumDischargePower(state, conditions.peakDuration());
    return conditions
        .peakDischargeCurrent()
        .map(current -> atCurrent(state, current, maximum))
        .orElseGet(() -> atPower(state, maximum));
  }

  private PeakLoad atCurrent(
      PackState state, Quantity<ElectricCurrent> current, PowerLimit maximum) {
    double voltageV =
        Kind.VOLTAGE.siValueOf(sagging.terminalVoltage(state, current, conditions.peakDuration()));
    boolean available = Kind.CURRENT.compare(current, maximum.current()) <= 0;
    return new PeakLoad(Kind.CURRENT.siValueOf(current), voltageV, available, maximum);
  }

  private PeakLoad atPower(PackState state, PowerLimit maximum) {
    PowerResult result =
        sagging.currentAtPower(
            state, conditions.peakDischargePower().orElseThrow(), conditions.peakDuration());
    if (result instanceof PowerResult.OperatingPoint point) {
      return new PeakLoad(
          Kind.CURRENT.siValueOf(point.current()),
          Kind.VOLTAGE.siValueOf(point.voltage()),
          true,
          maximum);
    }
    return new PeakLoad(
        Kind.CURRENT.siValueOf(maximum.current()),
        Kind.VOLTAGE.siValueOf(maximum.voltage()),
        false,
        maximum);
  }

  private void recordPeak(PeakLoad peak, double emptyAtRestV) {
    if (!recorder.isOn()) {
      return;
    }
    PackState state = PackState.of(conditions.emptiest(), conditions.coldest());
    String load = peak.available() ? "the peak load" : "the largest load it carries";
    recorder
        .step("U_min", "empty and cold under " + load + ", " + state)
        .formula("U_empty − I·R")
        .with("U_empty", emptyAtRestV, VOLT)
        .with("I", peak.currentA(), AMPERE)
        .with("R", Figure.of(sagging.resistance(state, Direction.DISCHARGE), MILLIOHM))
        .basis(loadedBasis())
        .gives(peak.voltageV(), VOLT);
  }

  Basis loadedBasis() {
    return pack.basis(CellProperty.VOLTAGE).and(pack.basis(CellProperty.RESISTANCE));
  }
}
