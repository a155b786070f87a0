package org.wattwright.conversion;

import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Temperature;
import org.wattwright.charging.DcDcConverter;
import org.wattwright.charging.LowVoltageBudget;
import org.wattwright.charging.LowVoltageTargets;
import org.wattwright.check.Check;
import org.wattwright.check.Source;
import org.wattwright.units.Kind;
import org.wattwright.units.Measure;

/**
 * The low-voltage side: what is drawn, what feeds it, how hot that gets, what is asked of it.
 *
 * @param budget the loads and the battery
 * @param converter from the traction bus
 * @param temperature by which the converter derates
 * @param targets time without converter, time parked, voltages
 */
public record LowVoltage(
    LowVoltageBudget budget,
    DcDcConverter converter,
    Quantity<Temperature> temperature,
    LowVoltageTargets targets) {
  /**
   * Takes any quantity implementation.
   *
   * @param budget the loads and the battery
   * @param converter from the traction bus
   * @param temperature by which the converter derates
   * @param targets time without converter, time parked, voltages
   */
  public LowVoltage {
    Objects.requireNonNull(budget, "budget");
    Objects.requireNonNull(converter, "converter");
    temperature = Measure.from(temperature, Kind.TEMPERATURE);
    Objects.requireNonNull(targets, "targets");
  }

  /** For a conversion that says nothing about it. */
  static Check missing() {
    return Check.named("charging.low-voltage", "converter and battery against the loads")
        .source(Source.PHYSICS)
        .safety()
        .notChecked("Conversion.lowVoltage");
  }

  /**
   * Whether converter and battery serve.
   *
   * @return the checks of {@link LowVoltageBudget#checks}
   */
  public List<Check> checks() {
    return budget.checks(converter, temperature, targets);
  }
}
