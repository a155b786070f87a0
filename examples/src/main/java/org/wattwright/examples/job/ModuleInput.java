package org.wattwright.examples.job;

import javax.measure.Quantity;
import javax.measure.quantity.ElectricResistance;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import org.wattwright.check.Basis;
import org.wattwright.units.Price;

/**
 * A candidate battery module as the job states it.
 *
 * <p>Immutable and thread-safe.
 *
 * @param origin where it stands
 * @param name its name, unique in the job
 * @param cell what it is made of
 * @param series cells in series
 * @param parallel cells in parallel
 * @param interconnectResistance of all joints and bars inside, terminal to terminal
 * @param mass of the whole module
 * @param size outer size
 * @param price of one
 * @param state new or salvaged
 * @param basis what mass, size and resistance rest on
 * @param source where they come from
 */
public record ModuleInput(
    Origin origin,
    String name,
    CellInput cell,
    int series,
    int parallel,
    Quantity<ElectricResistance> interconnectResistance,
    Quantity<Mass> mass,
    Size size,
    Price price,
    ModuleState state,
    Basis basis,
    String source) {
  /**
   * Outer size of a box.
   *
   * @param length &gt; 0
   * @param width &gt; 0
   * @param height &gt; 0
   */
  public record Size(Quantity<Length> length, Quantity<Length> width, Quantity<Length> height) {
    /**
     * The three lengths.
     *
     * @return for example {@code 355 mm × 152 mm × 108 mm}
     */
    @Override
    public String toString() {
      return length + " × " + width + " × " + height;
    }
  }
}
