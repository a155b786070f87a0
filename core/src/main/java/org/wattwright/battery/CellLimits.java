package org.wattwright.battery;

import org.wattwright.units.Kind;

/**
 * What a cell in one state admits under a load, on plain doubles in SI; currents are magnitudes.
 *
 * @param openCircuitV rest voltage
 * @param ohm resistance at the end of the load, polarisation included
 * @param boundV lowest or highest voltage, by the direction of the load
 * @param byVoltageA current at which the cell reaches that voltage
 * @param ratedA rated for the duration of the load
 * @param byTemperatureA infinite where temperature does not matter
 */
record CellLimits(
    double openCircuitV,
    double ohm,
    double boundV,
    double byVoltageA,
    double ratedA,
    double byTemperatureA) {

  static CellLimits of(Cell cell, StringModel.State state, Load load) {
    boolean discharge = load.direction() == Direction.DISCHARGE;
    double openCircuitV = cell.openCircuit().table().at(state.soc(), state.temperatureK());
    double ohm = cell.resistanceOhm(state.soc(), state.temperatureK(), load);
    double boundV =
        Kind.VOLTAGE.siValueOf(discharge ? cell.minimumVoltage() : cell.maximumVoltage());
    double roomV = discharge ? openCircuitV - boundV : boundV - openCircuitV;
    return new CellLimits(
        openCircuitV,
        ohm,
        boundV,
        Math.max(0, roomV) / ohm,
        cell.currentLimits().ratedA(load.direction(), load.durationS()),
        byTemperatureA(cell, state.temperatureK(), load.direction()));
  }

  private static double byTemperatureA(Cell cell, double temperatureK, Direction direction) {
    if (!cell.temperatures(direction).containsK(temperatureK)) {
      return 0;
    }
    return direction == Direction.CHARGE
        ? cell.currentLimits().chargeByTemperatureA(temperatureK)
        : Double.POSITIVE_INFINITY;
  }

  double currentA() {
    return Math.min(Math.min(ratedA, byTemperatureA), byVoltageA);
  }

  /** Rating before temperature before voltage where they agree. */
  Limit governing() {
    double currentA = currentA();
    if (ratedA == currentA) {
      return Limit.CURRENT;
    }
    return byTemperatureA == currentA ? Limit.TEMPERATURE : Limit.VOLTAGE;
  }
}
