package org.wattwright.charging;

import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.jspecify.annotations.Nullable;
import org.wattwright.battery.Limit;

/**
 * The charge current in a state: the least that source, settings and cells allow, and which of them
 * it is. On plain doubles in SI; charge currents are positive.
 */
final class ChargeKernel {
  private static final double CURRENT_TOLERANCE_A = 1e-13;
  private static final int MOST_EVALUATIONS = 200;

  /** What the vehicle asks for; infinite where it asks for nothing. */
  record Settings(
      double currentA, double powerW, double voltageV, double endA, double auxiliaryW) {}

  /** A moment of a charge. Powers in W; NaN where the draw from the mains is not known. */
  record Moment(
      double currentA,
      double voltageV,
      double openCircuitV,
      double wallW,
      ChargeLimit limit,
      boolean ended) {
    boolean isBlocked() {
      return !(currentA > 0);
    }

    double terminalW() {
      return currentA * voltageV;
    }

    double heatW() {
      return currentA * (voltageV - openCircuitV);
    }

    boolean isLike(Moment other) {
      return limit == other.limit && ended == other.ended && isBlocked() == other.isBlocked();
    }
  }

  private final PackModel pack;
  private final SourceModel source;
  private final Settings settings;
  private final @Nullable AmbientCooling cooling;

  ChargeKernel(
      PackModel pack, SourceModel source, Settings settings, @Nullable AmbientCooling cooling) {
    this.pack = pack;
    this.source = source;
    this.settings = settings;
    this.cooling = cooling;
  }

  PackModel pack() {
    return pack;
  }

  SourceModel source() {
    return source;
  }

  Settings settings() {
    return settings;
  }

  /** The least of all limits; of equal ones the first in the order of {@link ChargeLimit}. */
  private static final class Least {
    private double currentA = Double.POSITIVE_INFINITY;
    private ChargeLimit limit = ChargeLimit.CHARGER_POWER;

    void take(double byThisA, ChargeLimit by) {
      double magnitudeA = Math.max(0, byThisA);
      if (magnitudeA < currentA || (magnitudeA == currentA && by.compareTo(limit) < 0)) {
        currentA = magnitudeA;
        limit = by;
      }
    }
  }

  Moment at(double soc, double temperatureK) {
    PackModel.Bound cells = pack.at(soc, temperatureK);
    Least least = new Least();
    least.take(cells.currentA(), limitOf(cells.limit()));
    least.take(settings.currentA(), ChargeLimit.SET_CURRENT);
    least.take(atVoltage(cells, settings.voltageV()), ChargeLimit.CHARGE_VOLTAGE);
    least.take(atVoltage(cells, source.highestV()), ChargeLimit.CHARGER_VOLTAGE);
    least.take(atOutputCurrent(cells, source.currentA()), ChargeLimit.CHARGER_CURRENT);
    least.take(atPower(cells, settings.powerW()), ChargeLimit.SET_POWER);
    least.take(atSourcePower(cells, least.currentA), source.powerLimit());
    if (cells.openCircuitV() < source.lowestV()) {
      least.take(0, ChargeLimit.CHARGER_START);
    }
    double currentA = least.currentA;
    double voltageV = cells.voltageAt(currentA);
    double outputW = currentA * voltageV + settings.auxiliaryW();
    double wallW = currentA > 0 ? source.wallW(outputW, voltageV) : 0;
    boolean ended = least.limit.isTaper() && currentA <= settings.endA();
    return new Moment(currentA, voltageV, cells.openCircuitV(), wallW, least.limit, ended);
  }

  /** dT/dt at a moment; 0 where the temperature is held. */
  double warmingKPerS(double soc, double temperatureK, Moment moment) {
    if (cooling == null) {
      return 0;
    }
    double heatW = moment.heatW() + pack.reversibleW(soc, temperatureK, moment.currentA());
    return cooling.warmingKPerS(temperatureK, heatW);
  }

  private static ChargeLimit limitOf(Limit limit) {
    return switch (limit) {
      case CURRENT -> ChargeLimit.CELL_CURRENT;
      case TEMPERATURE -> ChargeLimit.CELL_TEMPERATURE;
      case VOLTAGE, POWER_TRANSFER -> ChargeLimit.CELL_VOLTAGE;
    };
  }

  /** I = (U − E)/R. */
  private static double atVoltage(PackModel.Bound cells, double voltageV) {
    double roomV = voltageV - cells.openCircuitV();
    return roomV > 0 ? roomV / cells.ohm() : 0;
  }

  /** I = 2·P/(E + √(E² + 4·R·P)). */
  private static double atPower(PackModel.Bound cells, double powerW) {
    double openCircuitV = cells.openCircuitV();
    if (Double.isInfinite(powerW)) {
      return powerW;
    }
    return 2
        * powerW
        / (openCircuitV + Math.sqrt(openCircuitV * openCircuitV + 4 * cells.ohm() * powerW));
  }

  /** The larger solution of I + P_aux/(E + I·R) = I_max. */
  private double atOutputCurrent(PackModel.Bound cells, double largestA) {
    if (Double.isInfinite(largestA)) {
      return largestA;
    }
    double openCircuitV = cells.openCircuitV();
    double forPackW = largestA * openCircuitV - settings.auxiliaryW();
    double sumV = openCircuitV + largestA * cells.ohm();
    double root = Math.sqrt(Math.max(0, sumV * sumV - 4 * cells.ohm() * settings.auxiliaryW()));
    return 2 * forPackW / (openCircuitV - largestA * cells.ohm() + root);
  }

  /** At the voltage that is reached, the source gives what pack and auxiliaries take. */
  private double atSourcePower(PackModel.Bound cells, double leastA) {
    if (cells.openCircuitV() < source.lowestV()) {
      return Double.POSITIVE_INFINITY; // said by the lowest voltage instead
    }
    if (spareW(cells, 0) <= 0) {
      return 0;
    }
    if (Double.isFinite(leastA) && spareW(cells, leastA) >= 0) {
      return Double.POSITIVE_INFINITY;
    }
    double mostW = source.powerW(cells.openCircuitV()) - settings.auxiliaryW();
    double plainA = atPower(cells, mostW);
    if (plainA <= leastA && Math.abs(spareW(cells, plainA)) <= BankModel.ROUNDING * mostW) {
      return plainA;
    }
    double highA = Double.isFinite(leastA) ? leastA : highestA(cells, plainA);
    return new BrentSolver(BankModel.ROUNDING, CURRENT_TOLERANCE_A)
        .solve(MOST_EVALUATIONS, currentA -> spareW(cells, currentA), 0, highA);
  }

  private double highestA(PackModel.Bound cells, double fromA) {
    double highA = fromA;
    while (spareW(cells, highA) > 0) {
      highA *= 2;
    }
    return highA;
  }

  private double spareW(PackModel.Bound cells, double currentA) {
    double voltageV = cells.voltageAt(currentA);
    return source.powerW(voltageV) - settings.auxiliaryW() - currentA * voltageV;
  }
}
