package org.wattwright.protection;

import java.io.Serializable;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.Time;
import org.jspecify.annotations.Nullable;
import org.wattwright.check.Basis;
import org.wattwright.units.Kind;
import org.wattwright.units.Measures;

/**
 * Faults that a circuit may see, from the lowest to the highest, as {@link FaultSource} finds them.
 *
 * <p>Immutable and thread-safe.
 */
public final class FaultRange implements Serializable {
  private static final long serialVersionUID = 1L;

  private final @Nullable FaultCurrent highest;
  private final FaultCurrent lowest;
  private final List<CapacitorDischarge> capacitors;
  private final @Nullable Double timeConstantS;
  private final List<String> missing;

  FaultRange(
      @Nullable FaultCurrent highest,
      FaultCurrent lowest,
      List<CapacitorDischarge> capacitors,
      @Nullable Double timeConstantS,
      List<String> missing) {
    this.highest = highest;
    this.lowest = lowest;
    this.capacitors = List.copyOf(capacitors);
    this.timeConstantS = timeConstantS;
    this.missing = List.copyOf(missing);
  }

  /**
   * From two faults that are known.
   *
   * @param highest largest prospective current
   * @param lowest smallest prospective current, at most the highest
   * @return the range; its time constant is the longer of the two
   * @throws org.wattwright.units.InvalidInputException if the lowest is above the highest
   */
  public static FaultRange of(FaultCurrent highest, FaultCurrent lowest) {
    Objects.requireNonNull(highest, "highest");
    if (!(lowest.prospectiveA() <= highest.prospectiveA())) {
      throw org.wattwright.units.InvalidInputException.of(
          "FaultRange.lowest", "≤ highest " + highest.prospective(), lowest.prospective() + "");
    }
    double timeConstantS = Math.max(highest.timeConstantS(), lowest.timeConstantS());
    return new FaultRange(highest, lowest, List.of(), timeConstantS, List.of());
  }

  /**
   * The same range with capacitors that empty into the highest fault.
   *
   * @param all their discharges
   * @return a new range
   */
  public FaultRange withCapacitors(List<CapacitorDischarge> all) {
    return new FaultRange(highest, lowest, all, timeConstantS, missing);
  }

  /**
   * The highest fault fed by the battery.
   *
   * @return empty if the cells' resistance for milliseconds is not known
   */
  public Optional<FaultCurrent> highest() {
    return Optional.ofNullable(highest);
  }

  /**
   * The lowest fault.
   *
   * @return the current against time
   */
  public FaultCurrent lowest() {
    return lowest;
  }

  /**
   * Capacitors that empty into the fault besides the battery.
   *
   * @return their discharges; may be empty
   */
  public List<CapacitorDischarge> capacitors() {
    return capacitors;
  }

  /**
   * Highest current of battery and capacitors together: the sum of their peaks, which do not fall
   * together, so that it is an upper bound.
   *
   * @return in A; empty if the battery's share is not known
   */
  public Optional<Quantity<ElectricCurrent>> highestCurrent() {
    if (highest == null) {
      return Optional.empty();
    }
    return Optional.of(CombinedFault.of(highest, capacitors).peakAtMost());
  }

  /**
   * Longest time constant of any fault: most inductance by least resistance.
   *
   * @return in s; empty if an inductance in the path, or the least resistance, is not known
   */
  public Optional<Quantity<Time>> longestTimeConstant() {
    return Optional.ofNullable(timeConstantS).map(Kind.TIME::ofSi);
  }

  /**
   * What is not known.
   *
   * @return names as checks print them; empty if the range is complete
   */
  public List<String> missing() {
    return missing;
  }

  /**
   * What the range rests on.
   *
   * @return the weakest basis of both ends
   */
  public Basis basis() {
    return highest == null ? lowest.basis() : highest.basis().and(lowest.basis());
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof FaultRange that
        && Objects.equals(highest, that.highest)
        && lowest.equals(that.lowest)
        && capacitors.equals(that.capacitors)
        && Objects.equals(timeConstantS, that.timeConstantS)
        && missing.equals(that.missing);
  }

  @Override
  public int hashCode() {
    return Objects.hash(highest, lowest, capacitors, timeConstantS);
  }

  /**
   * Lowest and highest current.
   *
   * @return for example {@code 1.532 kA … 6.29 kA}
   */
  @Override
  public String toString() {
    String high = highestCurrent().map(a -> Measures.format(a, Kind.CURRENT)).orElse("not known");
    return Measures.format(lowest.prospective(), Kind.CURRENT) + " … " + high;
  }
}
