package org.wattwright.examples.job;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricPotential;
import org.wattwright.charging.LowVoltageBudget;
import org.wattwright.charging.LowVoltageTargets;

/**
 * The low-voltage side as the job states it.
 *
 * <p>Immutable and thread-safe.
 *
 * @param budget loads and battery
 * @param voltage held by the converter
 * @param targets what is asked for
 * @param statements as typed, for the list of inputs
 */
public record LowVoltageInput(
    LowVoltageBudget budget,
    Quantity<ElectricPotential> voltage,
    LowVoltageTargets targets,
    List<Statement> statements) {
  /**
   * Copies the list.
   *
   * @param budget loads and battery
   * @param voltage held by the converter
   * @param targets what is asked for
   * @param statements as typed, for the list of inputs
   */
  public LowVoltageInput {
    statements = List.copyOf(statements);
  }
}
