package org.wattwright.protection;

import static org.wattwright.units.WorkshopUnits.AMPERE;
import static org.wattwright.units.WorkshopUnits.VOLT;

import java.io.Serializable;
import java.util.EnumSet;
import java.util.Set;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.ElectricPotential;
import org.wattwright.internal.Require;
import org.wattwright.units.Kind;
import org.wattwright.units.Measure;
import org.wattwright.units.Measures;

/**
 * What a contactor may break, or what it is asked to break: current, voltage, direction, and how
 * many times.
 *
 * <p>A rating covers a duty of no more current, no more voltage and no more breaks in a direction
 * that it has; nothing is interpolated between ratings. Immutable and thread-safe.
 *
 * @param current &gt; 0 A, without sign
 * @param voltage &gt; 0 V, before it opens
 * @param directions one or both
 * @param breaks how many times, ≥ 1
 */
public record BreakRating(
    Quantity<ElectricCurrent> current,
    Quantity<ElectricPotential> voltage,
    Set<BreakDirection> directions,
    int breaks)
    implements Serializable {
  /**
   * Checks the fields.
   *
   * @param current &gt; 0 A, without sign
   * @param voltage &gt; 0 V
   * @param directions one or both
   * @param breaks ≥ 1
   * @throws org.wattwright.units.InvalidInputException if a field is outside its range
   */
  public BreakRating {
    Require.quantity("BreakRating.current", current, AMPERE).positive();
    Require.quantity("BreakRating.voltage", voltage, VOLT).positive();
    Require.positiveCount("BreakRating.breaks", breaks);
    Require.positiveCount("BreakRating.directions", directions.size());
    current = Measure.from(current, Kind.CURRENT);
    voltage = Measure.from(voltage, Kind.VOLTAGE);
    directions = Set.copyOf(directions);
  }

  /**
   * One break in the direction of discharge.
   *
   * @param current &gt; 0 A
   * @param voltage &gt; 0 V
   * @return the rating; {@link #times} sets how often
   * @throws org.wattwright.units.InvalidInputException if an argument is not positive
   */
  public static BreakRating forward(
      Quantity<ElectricCurrent> current, Quantity<ElectricPotential> voltage) {
    return new BreakRating(current, voltage, Set.of(BreakDirection.FORWARD), 1);
  }

  /**
   * One break against the direction of discharge, as under regeneration.
   *
   * @param current &gt; 0 A, without sign
   * @param voltage &gt; 0 V
   * @return the rating; {@link #times} sets how often
   * @throws org.wattwright.units.InvalidInputException if an argument is not positive
   */
  public static BreakRating reverse(
      Quantity<ElectricCurrent> current, Quantity<ElectricPotential> voltage) {
    return new BreakRating(current, voltage, Set.of(BreakDirection.REVERSE), 1);
  }

  /**
   * One break in either direction.
   *
   * @param current &gt; 0 A
   * @param voltage &gt; 0 V
   * @return the rating; {@link #times} sets how often
   * @throws org.wattwright.units.InvalidInputException if an argument is not positive
   */
  public static BreakRating eitherWay(
      Quantity<ElectricCurrent> current, Quantity<ElectricPotential> voltage) {
    return new BreakRating(current, voltage, EnumSet.allOf(BreakDirection.class), 1);
  }

  /**
   * What the type test of a utilisation category makes a contactor break, in its marked direction.
   *
   * @param category the category
   * @param operational rated operational current Ie, &gt; 0 A
   * @param voltage rated operational voltage Ue, &gt; 0 V
   * @return the test current, at Ue: the 5 % above it are the test's margin and not for use
   * @throws org.wattwright.units.InvalidInputException if an argument is not positive
   */
  public static BreakRating ofCategory(
      UtilisationCategory category,
      Quantity<ElectricCurrent> operational,
      Quantity<ElectricPotential> voltage) {
    double operationalA = Require.quantity("BreakRating.current", operational, AMPERE).positive();
    return forward(AMPERE.of(category.testCurrentFactor() * operationalA), voltage);
  }

  /**
   * The same rating for a number of breaks.
   *
   * @param count ≥ 1
   * @return the rating
   * @throws org.wattwright.units.InvalidInputException if below 1
   */
  public BreakRating times(int count) {
    return new BreakRating(current, voltage, directions, count);
  }

  /** Whether this rating says anything about a duty: its direction, voltage and breaks. */
  boolean speaksOf(BreakRating duty) {
    return directions.containsAll(duty.directions)
        && Kind.VOLTAGE.compare(voltage, duty.voltage) >= 0
        && breaks >= duty.breaks;
  }

  double currentA() {
    return Kind.CURRENT.siValueOf(current);
  }

  private String way() {
    return directions.size() > 1 ? "either way" : directions.iterator().next().toString();
  }

  /**
   * In words.
   *
   * @return for example {@code 1500 A at 450 V forward, 5 times}
   */
  @Override
  public String toString() {
    String often = breaks == 1 ? "once" : breaks + " times";
    return Measures.format(current, Kind.CURRENT)
        + " at "
        + Measures.format(voltage, Kind.VOLTAGE)
        + " "
        + way()
        + ", "
        + often;
  }
}
