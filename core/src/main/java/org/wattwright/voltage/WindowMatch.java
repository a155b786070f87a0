package org.wattwright.voltage;

import java.io.Serializable;
import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricPotential;

/**
 * Which numbers of modules in series fit all devices; or, if none does, which two conflict.
 *
 * <p>Immutable and thread-safe.
 */
public sealed interface WindowMatch extends Serializable {
  /**
   * These numbers fit.
   *
   * @param counts modules in series, rising, at least one
   */
  record Fits(List<Integer> counts) implements WindowMatch {
    /**
     * Copies the list.
     *
     * @param counts modules in series, rising, at least one
     */
    public Fits {
      counts = List.copyOf(counts);
    }

    /**
     * The numbers.
     *
     * @return for example {@code 5, 6 modules in series fit}
     */
    @Override
    public String toString() {
      return String.join(", ", counts.stream().map(String::valueOf).toList())
          + " modules in series fit";
    }
  }

  /**
   * No number fits: one device ends before another begins.
   *
   * @param upper the device whose upper end allows the fewest modules
   * @param upperEnd that end
   * @param most modules in series that it allows, ≥ 0
   * @param lower the device, or the pack's peak load, that needs the most modules
   * @param fewest modules in series that it needs; empty if no number serves
   * @param apart volts by which a pack with the fewest modules exceeds the upper end; empty if no
   *     number serves
   * @param text the conflict in words
   */
  record Conflict(
      String upper,
      Quantity<ElectricPotential> upperEnd,
      int most,
      String lower,
      Optional<Integer> fewest,
      Optional<Quantity<ElectricPotential>> apart,
      String text)
      implements WindowMatch {
    /**
     * The conflict in words.
     *
     * @return for example {@code charger ends at 118.8 V, pack full is 131.4 V: 12.6 V apart; …}
     */
    @Override
    public String toString() {
      return text;
    }
  }

  /**
   * Whether any number fits.
   *
   * @return true for {@link Fits}
   */
  default boolean isPossible() {
    return this instanceof Fits;
  }

  /**
   * The numbers that fit.
   *
   * @return modules in series, rising
   * @throws IllegalStateException if none fits; the message names the conflict
   */
  default List<Integer> orElseThrow() {
    if (this instanceof Fits fits) {
      return fits.counts();
    }
    throw new IllegalStateException(toString());
  }
}
