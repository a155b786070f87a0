package org.wattwright.drive;

import static org.wattwright.units.WorkshopUnits.KILOMETRE;
import static org.wattwright.units.WorkshopUnits.MILLISECOND;

import java.io.Serializable;
import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import javax.measure.quantity.Time;
import org.jspecify.annotations.Nullable;
import org.wattwright.units.Kind;
import org.wattwright.units.Measures;

/**
 * How much range and acceleration change with one factor: for 1 % of it, or for 1 K.
 *
 * <p>Immutable and thread-safe.
 */
public final class DriveSensitivity implements Serializable {
  private static final long serialVersionUID = 1L;

  private final DriveFactor factor;
  private final double rangeM;
  private final double timeS;

  DriveSensitivity(DriveFactor factor, double rangeM, double timeS) {
    this.factor = factor;
    this.rangeM = rangeM;
    this.timeS = timeS;
  }

  /**
   * The factor.
   *
   * @return mass, rolling resistance, drag area or temperature
   */
  public DriveFactor factor() {
    return factor;
  }

  /**
   * Change of the range for 1 % more of the factor, or for 1 K more.
   *
   * @return in km, negative where the range falls
   */
  public Quantity<Length> rangeChange() {
    return KILOMETRE.of(rangeM / 1000);
  }

  /**
   * Change of the time from 0 to 50 km/h for 1 % more of the factor, or for 1 K more.
   *
   * @return in s; empty if 50 km/h is not reached
   */
  public Optional<Quantity<Time>> timeChange() {
    return Double.isNaN(timeS) ? Optional.empty() : Optional.of(Kind.TIME.ofSi(timeS));
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof DriveSensitivity that
        && factor == that.factor
        && rangeM == that.rangeM
        && Double.compare(timeS, that.timeS) == 0;
  }

  @Override
  public int hashCode() {
    return Objects.hash(factor, rangeM);
  }

  /**
   * Factor and changes.
   *
   * @return for example {@code mass +1 %: range -0.52 km, 0–50 km/h 71 ms}
   */
  @Override
  public String toString() {
    String step = factor == DriveFactor.TEMPERATURE ? " +1 K" : " +1 %";
    return factor
        + step
        + ": range "
        + Measures.format(rangeChange(), KILOMETRE, 3)
        + timeChange().map(t -> ", 0–50 km/h " + Measures.format(t, MILLISECOND, 1)).orElse("");
  }
}
