package org.wattwright.battery;

import org.wattwright.units.Kind;

/** A string as a source with a resistance and a current limit, on plain doubles in SI. */
final class StringModel {
  private final SeriesString string;

  StringModel(SeriesString string) {
    this.string = string;
  }

  double openCircuitV(double soc, double temperatureK) {
    double voltageV = 0;
    for (SeriesString.Group group : string.groups()) {
      voltageV += group.count() * group.module().openCircuitV(soc, temperatureK);
    }
    return voltageV;
  }

  double resistanceOhm(double soc, double temperatureK, Load load) {
    double ohm = string.linkOhm();
    for (SeriesString.Group group : string.groups()) {
      ohm += group.count() * group.module().resistanceOhm(soc, temperatureK, load);
    }
    return ohm;
  }

  /** Largest current by the weakest module, and what limits it. */
  CurrentBound bound(double soc, double temperatureK, Load load) {
    CurrentBound tightest = new CurrentBound(Double.POSITIVE_INFINITY, Limit.CURRENT);
    for (SeriesString.Group group : string.groups()) {
      tightest = tightest.tighter(moduleBound(group.module(), soc, temperatureK, load));
    }
    return tightest;
  }

  private static CurrentBound moduleBound(
      BatteryModule module, double soc, double temperatureK, Load load) {
    Cell cell = module.cell();
    if (!cell.temperatures(load.direction()).containsK(temperatureK)) {
      return new CurrentBound(0, Limit.TEMPERATURE);
    }
    CurrentLimits limits = cell.currentLimits();
    double ratedA = limits.ratedA(load.direction(), load.durationS()) * module.parallel();
    CurrentBound bound = new CurrentBound(ratedA, Limit.CURRENT);
    if (load.direction() == Direction.CHARGE) {
      double coldA = limits.chargeByTemperatureA(temperatureK) * module.parallel();
      bound = bound.tighter(new CurrentBound(coldA, Limit.TEMPERATURE));
    }
    return bound.tighter(voltageBound(module, soc, temperatureK, load));
  }

  /** Current at which the cells, without interconnects, reach their voltage limit. */
  private static CurrentBound voltageBound(
      BatteryModule module, double soc, double temperatureK, Load load) {
    Cell cell = module.cell();
    double openCircuitV = cell.openCircuit().table().at(soc, temperatureK);
    double roomV =
        load.direction() == Direction.DISCHARGE
            ? openCircuitV - Kind.VOLTAGE.siValueOf(cell.minimumVoltage())
            : Kind.VOLTAGE.siValueOf(cell.maximumVoltage()) - openCircuitV;
    double cellsOhm = module.resistanceOhm(soc, temperatureK, load) - module.interconnectOhm();
    double boundA = Math.max(0, roomV) * module.series() / cellsOhm;
    return new CurrentBound(boundA, Limit.VOLTAGE);
  }

  /** A current limit and its reason. */
  record CurrentBound(double currentA, Limit limit) {
    CurrentBound tighter(CurrentBound other) {
      return other.currentA < currentA ? other : this;
    }
  }
}
