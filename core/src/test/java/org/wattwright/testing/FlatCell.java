package org.wattwright.testing;

import static org.wattwright.units.Measures.ampereHours;
import static org.wattwright.units.Measures.celsius;
import static org.wattwright.units.Measures.kilograms;
import static org.wattwright.units.Measures.milliohms;
import static org.wattwright.units.Measures.percentCharge;
import static org.wattwright.units.Measures.volts;

import org.wattwright.battery.Cell;
import org.wattwright.battery.CellBuilder;
import org.wattwright.battery.Chemistry;
import org.wattwright.battery.OpenCircuitCurve;
import org.wattwright.battery.ResistanceTable;
import org.wattwright.battery.TemperatureRange;

/** An invented flat-curve cell, as a data sheet would state it; its currents are the test's own. */
public final class FlatCell {
  private FlatCell() {}

  /**
   * The cell with the ends of its curve that a test wants.
   *
   * @param emptyColdV open-circuit voltage, empty at −10 °C
   * @param emptyWarmV open-circuit voltage, empty at 25 °C
   * @param fullV open-circuit voltage, full at both
   * @return a builder without currents
   */
  public static CellBuilder of(double emptyColdV, double emptyWarmV, double fullV) {
    return Cell.of("flat 105", Chemistry.LFP)
        .capacity(ampereHours(105))
        .openCircuit(
            OpenCircuitCurve.at(celsius(-10), celsius(25))
                .row(percentCharge(0), volts(emptyColdV), volts(emptyWarmV))
                .row(percentCharge(10), volts(3.15), volts(3.2))
                .row(percentCharge(50), volts(3.28), volts(3.3))
                .row(percentCharge(90), volts(3.33), volts(3.35))
                .row(percentCharge(100), volts(fullV), volts(fullV))
                .build())
        .resistance(
            ResistanceTable.at(celsius(-20), celsius(0), celsius(25))
                .row(percentCharge(0), milliohms(6), milliohms(2.4), milliohms(1.2))
                .row(percentCharge(50), milliohms(4), milliohms(1.6), milliohms(0.7))
                .row(percentCharge(100), milliohms(4.4), milliohms(1.7), milliohms(0.8))
                .build())
        .minimumVoltage(volts(2.5))
        .maximumVoltage(volts(3.65))
        .dischargeTemperatures(TemperatureRange.between(celsius(-20), celsius(55)))
        .chargeTemperatures(TemperatureRange.between(celsius(0), celsius(45)))
        .mass(kilograms(1.98));
  }
}
