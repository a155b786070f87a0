package org.wattwright.voltage;

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
import org.wattwright.check.Recorder;
import org.wattwright.units.Kind;
import org.wattwright.units.StateOfCharge;

/** Computes the voltages of a pack under conditions; the one place that does. */
final class EnvelopeSolver {
  /** What a check allows too: rounding must not refuse what the limit itself names. */
  private static final double ROUNDING = 1e-12;

  private final Pack pack;

  /** The pack with estimated resistances at their high end. */
  private final Pack sagging;

  private final OperatingConditions conditions;
  private final Quantity<Temperature> coldestForCharge;

  EnvelopeSolver(Pack pack, OperatingConditions conditions) {
    this.pack = pack;
    this.sagging = pack.atBandEnd(BandEnd.HIGH);
    this.conditions = conditions;
    this.coldestForCharge = coldestForCharge();
  }

  /** An envelope with the peak load behind it. */
  record Solution(VoltageEnvelope envelope, PeakLoad peak, double regeneratingV) {}

  Solution solve(Recorder recorder) {
    double endOfChargeV = endOfChargeV(conditions.fullest());
    double regeneratingV = regeneratingV(conditions.fullest());
    double fullAtRestV = openCircuitV(conditions.fullest(), conditions.usual());
    double nominalV = nominalV();
    double emptyAtRestV = coldAtRestV(conditions.emptiest());
    PeakLoad peak = peakLoad(conditions.emptiest());
    VoltageEnvelope envelope =
        new VoltageEnvelope(
            Kind.VOLTAGE.ofSi(endOfChargeV),
            Kind.VOLTAGE.ofSi(Math.max(endOfChargeV, regeneratingV)),
            Kind.VOLTAGE.ofSi(fullAtRestV),
            Kind.VOLTAGE.ofSi(nominalV),
            Kind.VOLTAGE.ofSi(emptyAtRestV),
            Kind.VOLTAGE.ofSi(peak.voltageV()),
            Kind.CURRENT.ofSi(peak.currentA()));
    Solution solution = new Solution(envelope, peak, regeneratingV);
    if (recorder.isOn()) {
      new EnvelopeSheet(this, recorder).record(solution);
    }
    return solution;
  }

  /** Voltage at which a charge to this state ends: all cells at their maximum, or the rest's. */
  double endOfChargeV(StateOfCharge stateOfCharge) {
    return stateOfCharge.equals(StateOfCharge.FULL)
        ? Kind.VOLTAGE.siValueOf(pack.maximumVoltage())
        : openCircuitV(stateOfCharge, conditions.usual());
  }

  /** Voltage under the regeneration current at the coldest temperature that allows charging. */
  double regeneratingV(StateOfCharge stateOfCharge) {
    double currentA = Kind.CURRENT.siValueOf(conditions.regenerationCurrent());
    Quantity<ElectricCurrent> into = Kind.CURRENT.ofSi(-currentA);
    return Kind.VOLTAGE.siValueOf(
        sagging.terminalVoltage(regenerationState(stateOfCharge), into, conditions.peakDuration()));
  }

  PackState regenerationState(StateOfCharge stateOfCharge) {
    return PackState.of(stateOfCharge, coldestForCharge);
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

  double coldAtRestV(StateOfCharge stateOfCharge) {
    return openCircuitV(stateOfCharge, conditions.coldest());
  }

  private double openCircuitV(StateOfCharge stateOfCharge, Quantity<Temperature> temperature) {
    return Kind.VOLTAGE.siValueOf(
        sagging.openCircuitVoltage(PackState.of(stateOfCharge, temperature)));
  }

  /** Energy at rest between the two states over the charge between them. */
  private double nominalV() {
    double energy = 0;
    double charge = 0;
    for (SeriesString string : pack.strings()) {
      double capacityC = Kind.CHARGE.siValueOf(string.capacity());
      energy += capacityC * meanV(string);
      charge += capacityC;
    }
    return energy / charge;
  }

  /** Mean open-circuit voltage of a string over the states of charge in use. */
  double meanV(SeriesString string) {
    double voltageV = 0;
    for (SeriesString.Group group : string.groups()) {
      voltageV += group.count() * group.module().series() * meanCellV(group);
    }
    return voltageV;
  }

  double meanCellV(SeriesString.Group group) {
    return Kind.VOLTAGE.siValueOf(
        group
            .module()
            .cell()
            .openCircuit()
            .meanBetween(conditions.emptiest(), conditions.fullest(), conditions.usual()));
  }

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
    double currentA = Kind.CURRENT.siValueOf(current);
    if (!atMost(currentA, Kind.CURRENT.siValueOf(maximum.current()))) {
      return largest(maximum);
    }
    double voltageV =
        Kind.VOLTAGE.siValueOf(sagging.terminalVoltage(state, current, conditions.peakDuration()));
    return new PeakLoad(currentA, voltageV, true, maximum);
  }

  static boolean atMost(double value, double limit) {
    return limit - value >= -ROUNDING * Math.abs(limit);
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
    return largest(maximum);
  }

  private static PeakLoad largest(PowerLimit maximum) {
    return new PeakLoad(
        Kind.CURRENT.siValueOf(maximum.current()),
        Kind.VOLTAGE.siValueOf(maximum.voltage()),
        false,
        maximum);
  }

  Basis restBasis() {
    return pack.basis(CellProperty.VOLTAGE);
  }

  Basis loadedBasis() {
    return restBasis().and(pack.basis(CellProperty.RESISTANCE));
  }

  Pack pack() {
    return pack;
  }

  Pack sagging() {
    return sagging;
  }

  OperatingConditions conditions() {
    return conditions;
  }
}
