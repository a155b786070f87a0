package org.wattwright.battery;

/** A string as a source with a resistance and a current limit, on plain doubles in SI. */
final class StringModel {
  private final SeriesString string;

  StringModel(SeriesString string) {
    this.string = string;
  }

  double capacityC() {
    return string.capacityC();
  }

  double openCircuitV(State state) {
    double voltageV = 0;
    for (SeriesString.Group group : string.groups()) {
      voltageV += group.count() * group.module().openCircuitV(state.soc(), state.temperatureK());
    }
    return voltageV;
  }

  double resistanceOhm(State state, Load load) {
    double ohm = string.linkOhm();
    for (SeriesString.Group group : string.groups()) {
      ohm += group.count() * group.module().resistanceOhm(state.soc(), state.temperatureK(), load);
    }
    return ohm;
  }

  /** Largest current by the weakest module, and what limits it. */
  CurrentBound bound(State state, Load load) {
    CurrentBound tightest = new CurrentBound(Double.POSITIVE_INFINITY, Limit.CURRENT);
    for (SeriesString.Group group : string.groups()) {
      BatteryModule module = group.module();
      CellLimits limits = CellLimits.of(module.cell(), state, load);
      double currentA = limits.currentA() * module.parallel();
      if (currentA < tightest.currentA()) {
        tightest = new CurrentBound(currentA, limits.governing());
      }
    }
    return tightest;
  }

  /** State of charge and temperature of a string. */
  record State(double soc, double temperatureK) {
    static State of(PackState state) {
      return new State(state.soc(), state.temperatureK());
    }
  }

  /** A current limit and its reason. */
  record CurrentBound(double currentA, Limit limit) {}
}
