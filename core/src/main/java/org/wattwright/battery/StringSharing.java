package org.wattwright.battery;

import java.io.Serializable;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.ElectricPotential;
import javax.measure.quantity.Power;
import org.wattwright.units.Kind;
import org.wattwright.units.Measures;

/**
 * How strings in parallel share a current.
 *
 * <p>V = (ΣE/R − I)/Σ(1/R), I_k = (E_k − V)/R_k, by Kirchhoff's laws. Immutable and thread-safe.
 *
 * @param voltage at the node of the strings, before the leads
 * @param currents one per string in the pack's order, positive on discharge
 * @param heat I²·R of all strings together
 */
public record StringSharing(
    Quantity<ElectricPotential> voltage,
    List<Quantity<ElectricCurrent>> currents,
    Quantity<Power> heat)
    implements Serializable {
  /**
   * Copies the list.
   *
   * @param voltage at the node of the strings
   * @param currents one per string
   * @param heat I²·R of all strings together
   */
  public StringSharing {
    currents = List.copyOf(currents);
  }

  /**
   * Voltage and currents.
   *
   * @return for example {@code 392.7 V: 72.73 A, 27.27 A}
   */
  @Override
  public String toString() {
    List<String> texts = currents.stream().map(c -> Measures.format(c, Kind.CURRENT)).toList();
    return Measures.format(voltage, Kind.VOLTAGE) + ": " + String.join(", ", texts);
  }
}
