package org.wattwright.battery;

import java.io.Serializable;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricPotential;
import org.wattwright.units.Kind;
import org.wattwright.units.Measure;

/**
 * Typical voltages of one cell of a chemistry. Makers differ: the data sheet decides.
 *
 * <p>Immutable and thread-safe.
 *
 * @param lowest below this the cell may be damaged
 * @param endOfDischarge usual end of discharge
 * @param nominal as plates state it
 * @param maximum end of charge
 */
public record VoltageLimits(
    Quantity<ElectricPotential> lowest,
    Quantity<ElectricPotential> endOfDischarge,
    Quantity<ElectricPotential> nominal,
    Quantity<ElectricPotential> maximum)
    implements Serializable {
  /**
   * Takes any quantity implementation.
   *
   * @param lowest below this the cell may be damaged
   * @param endOfDischarge usual end of discharge
   * @param nominal as plates state it
   * @param maximum end of charge
   */
  public VoltageLimits {
    lowest = Measure.from(lowest, Kind.VOLTAGE);
    endOfDischarge = Measure.from(endOfDischarge, Kind.VOLTAGE);
    nominal = Measure.from(nominal, Kind.VOLTAGE);
    maximum = Measure.from(maximum, Kind.VOLTAGE);
  }

  /**
   * All four.
   *
   * @return for example {@code 2 V, 2.5 V … 3.2 V … 3.65 V}
   */
  @Override
  public String toString() {
    return lowest + ", " + endOfDischarge + " … " + nominal + " … " + maximum;
  }
}
