package org.wattwright.voltage;

import java.io.Serializable;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.ElectricPotential;
import org.wattwright.battery.Pack;
import org.wattwright.check.Recorder;
import org.wattwright.check.Worksheet;
import org.wattwright.units.Kind;
import org.wattwright.units.Measure;
import org.wattwright.units.Measures;

/**
 * The voltages of a pack between full and empty under stated conditions.
 *
 * <p>Loaded points take an estimated resistance at the high end of its band: the sag is the deepest
 * and the rise under charge the highest that the estimate allows. Regeneration is taken at the full
 * current and at the coldest temperature at which every cell may be charged, where resistance is
 * highest. Voltages are those at the pack's terminals. Immutable and thread-safe.
 *
 * @param endOfCharge voltage at which charging ends: every cell at its maximum if charged to 100 %,
 *     else the open-circuit voltage at the fullest state in use
 * @param fullUnderCharge the higher of the end of charge and the fullest state under regeneration
 * @param fullAtRest open-circuit voltage at the fullest state, usual temperature
 * @param nominal mean open-circuit voltage between the fullest and the emptiest state at the usual
 *     temperature; strings that differ count by their capacities
 * @param emptyAtRest open-circuit voltage at the emptiest state, coldest temperature
 * @param emptyUnderLoad voltage at the emptiest state and coldest temperature under the peak load,
 *     or under the largest load the pack can carry if that is less
 * @param peakCurrent the current of that load
 */
public record VoltageEnvelope(
    Quantity<ElectricPotential> endOfCharge,
    Quantity<ElectricPotential> fullUnderCharge,
    Quantity<ElectricPotential> fullAtRest,
    Quantity<ElectricPotential> nominal,
    Quantity<ElectricPotential> emptyAtRest,
    Quantity<ElectricPotential> emptyUnderLoad,
    Quantity<ElectricCurrent> peakCurrent)
    implements Serializable {
  /**
   * Takes any quantity implementation.
   *
   * @param endOfCharge voltage at which charging ends
   * @param fullUnderCharge highest voltage
   * @param fullAtRest open-circuit voltage at the fullest state
   * @param nominal mean open-circuit voltage
   * @param emptyAtRest open-circuit voltage at the emptiest state
   * @param emptyUnderLoad lowest voltage
   * @param peakCurrent current at the lowest voltage
   */
  public VoltageEnvelope {
    endOfCharge = Measure.from(endOfCharge, Kind.VOLTAGE);
    fullUnderCharge = Measure.from(fullUnderCharge, Kind.VOLTAGE);
    fullAtRest = Measure.from(fullAtRest, Kind.VOLTAGE);
    nominal = Measure.from(nominal, Kind.VOLTAGE);
    emptyAtRest = Measure.from(emptyAtRest, Kind.VOLTAGE);
    emptyUnderLoad = Measure.from(emptyUnderLoad, Kind.VOLTAGE);
    peakCurrent = Measure.from(peakCurrent, Kind.CURRENT);
  }

  /**
   * The envelope of a pack.
   *
   * @param pack the pack
   * @param conditions the conditions
   * @return the envelope
   */
  public static VoltageEnvelope of(Pack pack, OperatingConditions conditions) {
    return new EnvelopeSolver(pack, conditions).solve(Recorder.OFF).envelope();
  }

  /**
   * The working of the envelope of a pack.
   *
   * @param pack the pack
   * @param conditions the conditions
   * @return the steps as computed
   */
  public static Worksheet worksheet(Pack pack, OperatingConditions conditions) {
    Worksheet.Recording recording = Worksheet.record("Voltage envelope, " + conditions);
    new EnvelopeSolver(pack, conditions).solve(recording);
    return recording.toWorksheet();
  }

  /**
   * The envelope from top to bottom.
   *
   * @return for example {@code 131.4 V charging, 124.2 V full, 118 V nominal, 90 V empty, 75 V
   *     loaded}
   */
  @Override
  public String toString() {
    return Measures.format(fullUnderCharge, Kind.VOLTAGE)
        + " charging, "
        + Measures.format(fullAtRest, Kind.VOLTAGE)
        + " full, "
        + Measures.format(nominal, Kind.VOLTAGE)
        + " nominal, "
        + Measures.format(emptyAtRest, Kind.VOLTAGE)
        + " empty, "
        + Measures.format(emptyUnderLoad, Kind.VOLTAGE)
        + " loaded";
  }
}
