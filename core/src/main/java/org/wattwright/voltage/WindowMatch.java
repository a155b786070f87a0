package org.wattwright.voltage;

import java.io.Serializable;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricPotential;
import org.jspecify.annotations.Nullable;

/**
 * Which numbers of modules in series fit all devices; or, if none does, which two conflict.
 *
 * <p>Immutable and thread-safe.
 */
public sealed interface WindowMatch extends Serializable {
  /**
   * These numbers fit: they break no known limit. What is not known, the review of a number says.
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
   * No number fits: one device ends before another, or the peak load, begins.
   *
   * <p>A class rather than a record, as it holds what may be absent and still serialises.
   */
  final class Conflict implements WindowMatch {
    private static final long serialVersionUID = 1L;

    private final String upper;
    private final Quantity<ElectricPotential> upperEnd;
    private final int most;
    private final String lower;
    private final @Nullable Integer fewest;
    private final @Nullable Quantity<ElectricPotential> apart;
    private final String text;

    private Conflict(
        ConflictSides sides,
        @Nullable Integer fewest,
        @Nullable Quantity<ElectricPotential> apart,
        String text) {
      this.upper = sides.upper();
      this.upperEnd = sides.upperEnd();
      this.most = sides.most();
      this.lower = sides.lower();
      this.fewest = fewest;
      this.apart = apart;
      this.text = text;
    }

    static Conflict between(
        ConflictSides sides, int fewest, Quantity<ElectricPotential> apart, String text) {
      return new Conflict(sides, fewest, apart, text);
    }

    static Conflict withoutAnyNumber(ConflictSides sides, String text) {
      return new Conflict(sides, null, null, text);
    }

    /**
     * The device whose upper end allows the fewest modules.
     *
     * @return its name
     */
    public String upper() {
      return upper;
    }

    /**
     * That end: the top of its operating band, or its absolute maximum.
     *
     * @return in the unit as given
     */
    public Quantity<ElectricPotential> upperEnd() {
      return upperEnd;
    }

    /**
     * Modules in series that it allows.
     *
     * @return ≥ 0; the most considered if it allows them all
     */
    public int most() {
      return most;
    }

    /**
     * The device that needs the most modules, or {@code the peak load}.
     *
     * @return its name
     */
    public String lower() {
      return lower;
    }

    /**
     * Modules in series that it needs.
     *
     * @return empty if no number serves
     */
    public Optional<Integer> fewest() {
      return Optional.ofNullable(fewest);
    }

    /**
     * Volts by which a pack with the fewest modules exceeds the upper end.
     *
     * @return in V, &gt; 0; empty if no number serves
     */
    public Optional<Quantity<ElectricPotential>> apart() {
      return Optional.ofNullable(apart);
    }

    /**
     * The conflict in words.
     *
     * @return one line
     */
    public String text() {
      return text;
    }

    @Override
    public boolean equals(@Nullable Object other) {
      return other instanceof Conflict that
          && upper.equals(that.upper)
          && upperEnd.equals(that.upperEnd)
          && most == that.most
          && lower.equals(that.lower)
          && Objects.equals(fewest, that.fewest)
          && Objects.equals(apart, that.apart)
          && text.equals(that.text);
    }

    @Override
    public int hashCode() {
      return Objects.hash(upper, upperEnd, most, lower, fewest, apart, text);
    }

    /**
     * The conflict in words.
     *
     * @return for example {@code charger ends at 118.8 V, pack full is 131.4 V: 12.6 V apart; at
     *     most 32 in series, but inverter needs 36: …}
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
