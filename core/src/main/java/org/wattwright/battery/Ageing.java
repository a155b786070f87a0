package org.wattwright.battery;

import java.io.Serializable;
import org.wattwright.internal.Require;

/**
 * What age does to a cell: less capacity, more resistance.
 *
 * <p>Immutable and thread-safe.
 *
 * @param capacityFactor remaining share of the rated capacity, &gt; 0 and ≤ 1
 * @param resistanceFactor resistance against that of a new cell, ≥ 1
 */
public record Ageing(double capacityFactor, double resistanceFactor) implements Serializable {
  /** A new cell. */
  public static final Ageing NEW = new Ageing(1, 1);

  /** The usual end of traction life: 80 % capacity, double resistance. Common practice. */
  public static final Ageing END_OF_TRACTION_LIFE = new Ageing(0.8, 2);

  /**
   * Checks the range.
   *
   * @param capacityFactor &gt; 0 and ≤ 1
   * @param resistanceFactor ≥ 1
   * @throws org.wattwright.units.InvalidInputException if a factor is outside its range
   */
  public Ageing {
    Require.positive("Ageing.capacityFactor", capacityFactor);
    Require.fraction("Ageing.capacityFactor", capacityFactor);
    Require.positive("Ageing.resistanceFactor", resistanceFactor);
    Require.between("Ageing.resistanceFactor", resistanceFactor, 1, 1000);
  }

  /**
   * From the two factors.
   *
   * @param capacityFactor &gt; 0 and ≤ 1
   * @param resistanceFactor ≥ 1 and ≤ 1000
   * @return the age
   */
  public static Ageing of(double capacityFactor, double resistanceFactor) {
    return new Ageing(capacityFactor, resistanceFactor);
  }

  /**
   * This age on top of another.
   *
   * @param other another age
   * @return both together
   */
  public Ageing and(Ageing other) {
    return new Ageing(
        capacityFactor * other.capacityFactor, resistanceFactor * other.resistanceFactor);
  }
}
