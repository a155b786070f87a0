package org.wattwright.drive;

import static org.wattwright.units.WorkshopUnits.KILOMETRE;

import java.io.Serializable;
import java.util.Arrays;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.jspecify.annotations.Nullable;
import org.wattwright.internal.Require;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Measures;

/**
 * How a range scatters.
 *
 * <p>Immutable and thread-safe.
 */
public final class RangeSpread implements Serializable {
  private static final long serialVersionUID = 1L;

  private final double[] sortedM;
  private final long seed;

  private RangeSpread(double[] sortedM, long seed) {
    this.sortedM = sortedM;
    this.seed = seed;
  }

  static RangeSpread ofSorted(double[] sortedM, long seed) {
    return new RangeSpread(sortedM, seed);
  }

  /**
   * The range that a share of the samples does not exceed, on a straight line between samples.
   *
   * @param share 0 to 1
   * @return in km
   * @throws InvalidInputException if the share is outside its range
   */
  public Quantity<Length> percentile(double share) {
    double at = Require.fraction("RangeSpread.share", share) * (sortedM.length - 1);
    int below = Math.min((int) at, sortedM.length - 2);
    double rangeM = sortedM[below] + (at - below) * (sortedM[below + 1] - sortedM[below]);
    return KILOMETRE.of(rangeM / 1000);
  }

  /**
   * Number of samples.
   *
   * @return ≥ 20
   */
  public int samples() {
    return sortedM.length;
  }

  /**
   * Seed of the random numbers.
   *
   * @return as given
   */
  public long seed() {
    return seed;
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof RangeSpread that
        && seed == that.seed
        && Arrays.equals(sortedM, that.sortedM);
  }

  @Override
  public int hashCode() {
    return Arrays.hashCode(sortedM);
  }

  /**
   * 5 %, 50 % and 95 %.
   *
   * @return for example {@code 98.1 km … 104.5 km … 111.2 km (5 %, 50 %, 95 % of 1000)}
   */
  @Override
  public String toString() {
    return text(0.05)
        + " … "
        + text(0.5)
        + " … "
        + text(0.95)
        + " (5 %, 50 %, 95 % of "
        + sortedM.length
        + ")";
  }

  private String text(double share) {
    return Measures.format(percentile(share), KILOMETRE, 1);
  }
}
