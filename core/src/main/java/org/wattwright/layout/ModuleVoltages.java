package org.wattwright.layout;

import javax.measure.Quantity;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import org.wattwright.battery.BandEnd;
import org.wattwright.battery.BatteryModule;
import org.wattwright.battery.Direction;
import org.wattwright.battery.Pack;
import org.wattwright.battery.PackState;
import org.wattwright.battery.PowerLimit;
import org.wattwright.units.Kind;
import org.wattwright.voltage.OperatingConditions;
import org.wattwright.voltage.VoltageEnvelope;

/**
 * What the voltage envelope of any number of one module type follows from, read once. An estimated
 * resistance stands at the high end of its band, as in the envelope.
 */
record ModuleVoltages(
    double endOfChargeV, double emptyV, Source charging, Source loaded, PowerLimit largest) {

  /** Open-circuit voltage and resistance of one module. */
  record Source(double openCircuitV, double resistanceOhm) {
    double underA(double currentA) {
      return openCircuitV - currentA * resistanceOhm;
    }

    double currentAt(double voltageV) {
      return (openCircuitV - voltageV) / resistanceOhm;
    }

    /** Discharge current at a power that is available. */
    double currentAtW(double powerW) {
      double square = openCircuitV * openCircuitV - 4 * resistanceOhm * powerW;
      return 2 * powerW / (openCircuitV + Math.sqrt(Math.max(0, square)));
    }
  }

  static ModuleVoltages of(BatteryModule module, OperatingConditions conditions) {
    VoltageEnvelope envelope = VoltageEnvelope.of(Pack.of(module, 1, 1), conditions);
    Pack sagging = Pack.of(module.atBandEnd(BandEnd.HIGH), 1, 1);
    Quantity<Time> duration = conditions.peakDuration();
    PackState empty = PackState.of(conditions.emptiest(), conditions.coldest());
    PackState full = PackState.of(conditions.fullest(), coldestForCharge(module, conditions));
    return new ModuleVoltages(
        Kind.VOLTAGE.siValueOf(envelope.endOfCharge()),
        Kind.VOLTAGE.siValueOf(envelope.emptyAtRest()),
        source(sagging, full, Direction.CHARGE, duration),
        source(sagging, empty, Direction.DISCHARGE, duration),
        sagging.maximumDischargePower(empty, duration));
  }

  /** Below the cells' limit nothing is charged, so regeneration is asked for at that limit. */
  private static Quantity<Temperature> coldestForCharge(
      BatteryModule module, OperatingConditions conditions) {
    Quantity<Temperature> allowed = module.cell().temperatures(Direction.CHARGE).coldest();
    return Kind.TEMPERATURE.compare(allowed, conditions.coldest()) > 0
        ? allowed
        : conditions.coldest();
  }

  private static Source source(
      Pack pack, PackState state, Direction direction, Quantity<Time> duration) {
    return new Source(
        Kind.VOLTAGE.siValueOf(pack.openCircuitVoltage(state)),
        Kind.RESISTANCE.siValueOf(pack.resistance(state, direction, duration)));
  }
}
