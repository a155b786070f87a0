package org.wattwright.battery;

import java.io.Serializable;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricCurrent;
import org.jspecify.annotations.Nullable;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;

/** The current limits of a cell, both directions. */
record CurrentLimits(
    Quantity<ElectricCurrent> continuousDischarge,
    Quantity<ElectricCurrent> continuousCharge,
    @Nullable PulseCurrent pulseDischarge,
    @Nullable PulseCurrent pulseCharge,
    @Nullable CurrentByTemperature chargeByTemperature)
    implements Serializable {

  static CurrentLimits of(CellBuilder builder) {
    CurrentLimits limits =
        new CurrentLimits(
            CellBuilder.required(builder.continuousDischarge),
            CellBuilder.required(builder.continuousCharge),
            builder.pulseDischarge,
            builder.pulseCharge,
            builder.chargeByTemperature);
    limits.rejectPulseBelowContinuous(Direction.DISCHARGE);
    limits.rejectPulseBelowContinuous(Direction.CHARGE);
    return limits;
  }

  Quantity<ElectricCurrent> continuous(Direction direction) {
    return direction == Direction.DISCHARGE ? continuousDischarge : continuousCharge;
  }

  @Nullable PulseCurrent pulse(Direction direction) {
    return direction == Direction.DISCHARGE ? pulseDischarge : pulseCharge;
  }

  /** Rated current for a duration, without regard to temperature. */
  double ratedA(Direction direction, double durationS) {
    PulseCurrent pulse = pulse(direction);
    boolean short_ = pulse != null && durationS <= Kind.TIME.siValueOf(pulse.duration());
    return Kind.CURRENT.siValueOf(
        short_ && pulse != null ? pulse.current() : continuous(direction));
  }

  /** Largest charge current at a temperature; infinite if no table is given. */
  double chargeByTemperatureA(double temperatureK) {
    return chargeByTemperature == null
        ? Double.POSITIVE_INFINITY
        : chargeByTemperature.table().at(temperatureK);
  }

  private void rejectPulseBelowContinuous(Direction direction) {
    PulseCurrent pulse = pulse(direction);
    if (pulse != null && Kind.CURRENT.compare(pulse.current(), continuous(direction)) < 0) {
      String field = direction == Direction.DISCHARGE ? "pulseDischarge" : "pulseCharge";
      throw InvalidInputException.of(
          "Cell." + field + "Current",
          "≥ the continuous current " + continuous(direction),
          pulse.current().toString());
    }
  }
}
