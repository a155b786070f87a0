package org.wattwright.vehicle;

import static org.wattwright.units.WorkshopUnits.KILOGRAM;

import java.io.Serializable;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Mass;
import org.wattwright.check.Figure;
import org.wattwright.internal.Require;
import org.wattwright.units.Kind;

/**
 * Load index of a tyre: a step of the table of loads that one tyre may carry.
 *
 * <p>60 (250 kg) to 130 (1900 kg); steps near 45 kg·10^(index/80). Source: UN R30 and ISO 4000-1;
 * which entries were copied from a printed table and which are from memory stands in the table's
 * source column. Immutable and thread-safe.
 *
 * @param index 60 to 130
 */
public record LoadIndex(int index) implements Comparable<LoadIndex>, Serializable {
  /**
   * Checks the range.
   *
   * @param index 60 to 130
   * @throws org.wattwright.units.InvalidInputException if the index is outside the table
   */
  public LoadIndex {
    Require.count("LoadIndex.index", index, LoadIndexTable.first(), LoadIndexTable.last());
  }

  /**
   * The lowest index whose load reaches a needed one: the load is rounded up to the next step.
   *
   * @param load on one tyre, ≥ 0 kg
   * @return empty if no index of the table carries it
   * @throws org.wattwright.units.InvalidInputException if the load is negative
   */
  public static Optional<LoadIndex> lowestFor(Quantity<Mass> load) {
    double loadKg = Require.quantity("LoadIndex.load", load, KILOGRAM).nonNegative();
    int found = LoadIndexTable.lowestFor(loadKg);
    return found == 0 ? Optional.empty() : Optional.of(new LoadIndex(found));
  }

  /**
   * Load that one tyre may carry at its reference pressure and up to its speed.
   *
   * @return in kg
   */
  public Quantity<Mass> load() {
    return Si.mass(LoadIndexTable.loadKg(index));
  }

  @Override
  public int compareTo(LoadIndex other) {
    return Integer.compare(index, other.index);
  }

  /**
   * Index and load.
   *
   * @return for example {@code 84 (500 kg)}
   */
  @Override
  public String toString() {
    return index + " (" + Figure.of(load(), Kind.MASS) + ")";
  }
}
