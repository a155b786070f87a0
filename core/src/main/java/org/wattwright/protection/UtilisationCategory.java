package org.wattwright.protection;

import javax.measure.Quantity;
import javax.measure.quantity.Time;
import org.wattwright.units.Measures;

/**
 * Utilisation category of a contactor for direct current, and what it must make and break in the
 * type test.
 *
 * <p>Source: IEC 60947-4-1, making and breaking capacities; the test voltage from memory.
 */
public enum UtilisationCategory {
  /** Loads with little inductance. */
  DC_1("DC-1", 1.5, 1),
  /** Shunt motors, with plugging. */
  DC_3("DC-3", 4, 2.5),
  /** Series motors, with plugging. */
  DC_5("DC-5", 4, 15);

  /** Test voltage over rated operational voltage; IEC 60947-4-1, from memory. */
  static final double TEST_VOLTAGE_FACTOR = 1.05;

  private final String label;
  private final double currentFactor;
  private final double timeConstantMs;

  UtilisationCategory(String label, double currentFactor, double timeConstantMs) {
    this.label = label;
    this.currentFactor = currentFactor;
    this.timeConstantMs = timeConstantMs;
  }

  /**
   * Current of the making and breaking test, as a multiple of the rated operational current.
   *
   * @return 1.5 or 4
   */
  public double testCurrentFactor() {
    return currentFactor;
  }

  /**
   * Voltage of the making and breaking test, as a multiple of the rated operational voltage.
   *
   * @return 1.05
   */
  public double testVoltageFactor() {
    return TEST_VOLTAGE_FACTOR;
  }

  /**
   * Time constant L/R of the making and breaking test.
   *
   * @return in s
   */
  public Quantity<Time> testTimeConstant() {
    return Measures.milliseconds(timeConstantMs);
  }

  /**
   * The name as the standard has it.
   *
   * @return for example {@code DC-1}
   */
  @Override
  public String toString() {
    return label;
  }
}
