package org.wattwright.charging;

import javax.measure.Quantity;
import javax.measure.quantity.ElectricCurrent;
import org.wattwright.check.Estimate;
import org.wattwright.check.Source;
import org.wattwright.units.Kind;
import org.wattwright.units.Measures;

/**
 * Typical currents of 12 V loads, for a budget before the car can be measured. Estimates: asked for
 * by name, and marked.
 *
 * <p>Source: typical amperage guide in the technical data of a wire and cable catalogue (2024-25),
 * p. 140, 12 V.
 */
public enum TypicalLoad {
  /** Headlights, dipped beam, both. */
  DIPPED_BEAM("headlights, low beam", 8.5, 0.5),
  /** Headlights, main beam, both. */
  MAIN_BEAM("headlights, high beam", 14, 1),
  /** Windscreen wiper. */
  WIPER("windscreen wiper", 4.5, 1.5),
  /** Heater and defroster blower. */
  BLOWER("heater and defroster blower", 8, 2),
  /** Two horns. */
  HORNS("two horns", 19, 1),
  /** Heated rear window. */
  REAR_WINDOW("heated rear window", 22.5, 2.5),
  /** Two stop lights. */
  STOP_LIGHTS("two stop lights", 3.75, 0.25),
  /** Two reverse lights. */
  REVERSE_LIGHTS("two reverse lights", 3.75, 0.25),
  /** Radio. */
  RADIO("radio", 3.5, 1.5),
  /** Gauges. */
  GAUGES("gauges", 0.85, 0.15),
  /** Power windows. */
  POWER_WINDOWS("power windows", 11, 9),
  /** Two tail lights. */
  TAIL_LIGHTS("two tail lights", 0.5, 0.3);

  private static final Source SOURCE =
      Source.literature("wire and cable catalogue 2024-25", "typical amperage guide, p. 140");

  private final String label;
  private final double typicalA;
  private final double halfBandA;

  TypicalLoad(String label, double typicalA, double halfBandA) {
    this.label = label;
    this.typicalA = typicalA;
    this.halfBandA = halfBandA;
  }

  /**
   * The estimated current, with the band the guide gives.
   *
   * @return at 12 V
   */
  public Estimate<ElectricCurrent> current() {
    Quantity<ElectricCurrent> typical = Measures.amperes(typicalA);
    return Estimate.of(
        label + " current",
        typical,
        Kind.CURRENT,
        new Estimate.Band(1 - halfBandA / typicalA, 1 + halfBandA / typicalA),
        SOURCE);
  }

  /**
   * A load with the typical current, marked as an estimate.
   *
   * @return a load that is on all the time
   */
  public LowVoltageLoad load() {
    return LowVoltageLoad.of(label, current().toGiven());
  }

  /**
   * The load in words.
   *
   * @return for example {@code headlights, low beam}
   */
  @Override
  public String toString() {
    return label;
  }
}
