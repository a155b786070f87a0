package org.wattwright.vehicle;

import java.io.Serializable;
import javax.measure.Quantity;
import javax.measure.quantity.Mass;
import org.wattwright.check.Figure;
import org.wattwright.units.Kind;
import org.wattwright.units.Measure;

/**
 * A load with what the stated tolerances do to it.
 *
 * <p>Lowest and highest: every tolerance at its worst at once. Root-sum-square: independent
 * tolerances, first order; the likely half-width. Immutable and thread-safe.
 *
 * @param lowest in kg
 * @param nominal in kg
 * @param highest in kg
 * @param rootSumSquare half-width, ≥ 0 kg
 */
public record MassSpread(
    Quantity<Mass> lowest,
    Quantity<Mass> nominal,
    Quantity<Mass> highest,
    Quantity<Mass> rootSumSquare)
    implements Serializable {
  /**
   * Takes any implementation of a quantity.
   *
   * @param lowest in kg
   * @param nominal in kg
   * @param highest in kg
   * @param rootSumSquare half-width, ≥ 0 kg
   */
  public MassSpread {
    lowest = Measure.from(lowest, Kind.MASS);
    nominal = Measure.from(nominal, Kind.MASS);
    highest = Measure.from(highest, Kind.MASS);
    rootSumSquare = Measure.from(rootSumSquare, Kind.MASS);
  }

  /**
   * Nominal value and both spreads.
   *
   * @return for example {@code 541.8 kg (535 kg … 548.7 kg; ±3.1 kg root-sum-square)}
   */
  @Override
  public String toString() {
    return text(nominal)
        + " ("
        + text(lowest)
        + " … "
        + text(highest)
        + "; ±"
        + text(rootSumSquare)
        + " root-sum-square)";
  }

  private static String text(Quantity<Mass> mass) {
    return Figure.of(mass, Kind.MASS).toString();
  }
}
