package org.wattwright.charging;

import static org.wattwright.units.WorkshopUnits.AMPERE;
import static org.wattwright.units.WorkshopUnits.KILOWATT;

import java.io.Serializable;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.Power;
import org.jspecify.annotations.Nullable;
import org.wattwright.check.Figure;
import org.wattwright.check.Worksheet;
import org.wattwright.units.Kind;

/**
 * The current a charger may draw from a charging point: the least of what pilot, cable, supply and
 * charger allow, and which of them it is.
 *
 * <p>Immutable and thread-safe.
 */
public final class AcCurrent implements Serializable {
  private static final long serialVersionUID = 1L;

  private final Map<AcLimit, Quantity<ElectricCurrent>> limits;
  private final AcLimit governing;
  private final Quantity<Power> power;
  private final Worksheet worksheet;

  AcCurrent(AcLimits limits, double powerW, Worksheet worksheet) {
    Map<AcLimit, Quantity<ElectricCurrent>> ours = new EnumMap<>(AcLimit.class);
    limits.asMap().forEach((limit, currentA) -> ours.put(limit, Kind.CURRENT.ofSi(currentA)));
    this.limits = Collections.unmodifiableMap(ours);
    this.governing = limits.governing();
    this.power = Kind.POWER.ofSi(powerW);
    this.worksheet = worksheet;
  }

  /**
   * The current allowed in each phase.
   *
   * @return ≥ 0 A; 0 A where a limit says that nothing may be drawn
   */
  public Quantity<ElectricCurrent> current() {
    return Objects.requireNonNull(limits.get(governing));
  }

  /**
   * Which of the limits is the least; of equal ones the first in the order of the enumeration.
   *
   * @return the limit
   */
  public AcLimit governing() {
    return governing;
  }

  /**
   * Every limit that is known, with its current.
   *
   * @return an immutable map
   */
  public Map<AcLimit, Quantity<ElectricCurrent>> limits() {
    return limits;
  }

  /**
   * Power drawn at that current: P = n·U·I·cos φ, at most the input power of the charger.
   *
   * @return in kW
   */
  public Quantity<Power> power() {
    return power;
  }

  /**
   * Whether any current may be drawn.
   *
   * @return false if it is 0 A
   */
  public boolean isAllowed() {
    return Kind.CURRENT.siValueOf(current()) > 0;
  }

  /**
   * The working.
   *
   * @return the steps as computed
   */
  public Worksheet worksheet() {
    return worksheet;
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof AcCurrent that
        && limits.equals(that.limits)
        && governing == that.governing
        && power.equals(that.power)
        && worksheet.equals(that.worksheet);
  }

  @Override
  public int hashCode() {
    return Objects.hash(limits, governing, power);
  }

  /**
   * Current, power and what limits them.
   *
   * @return for example {@code 16 A, 3.68 kW, limited by cable coding}
   */
  @Override
  public String toString() {
    return Figure.of(current(), AMPERE)
        + ", "
        + Figure.of(power, KILOWATT)
        + ", limited by "
        + governing;
  }
}
