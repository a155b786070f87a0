package org.wattwright.battery;

import static org.wattwright.units.Measures.amperes;
import static org.wattwright.units.Measures.celsius;
import static org.wattwright.units.Measures.kilograms;
import static org.wattwright.units.Measures.milliohms;
import static org.wattwright.units.Measures.ohms;
import static org.wattwright.units.Measures.percentCharge;
import static org.wattwright.units.Measures.seconds;
import static org.wattwright.units.Measures.volts;

import javax.measure.Quantity;
import javax.measure.quantity.ElectricCharge;
import javax.measure.quantity.Time;
import org.wattwright.testing.FlatCell;
import org.wattwright.units.Measures;
import org.wattwright.units.StateOfCharge;

/** Invented cells, and sources with a resistance that stand for whole strings. */
final class Fixtures {
  static final PackState HALF = PackState.of(percentCharge(50), celsius(25));
  static final Quantity<Time> AT_ONCE = seconds(0);

  private Fixtures() {}

  /** OCV = a + b·s. */
  static OpenCircuitCurve linear(double emptyV, double slopeV) {
    return OpenCircuitCurve.at(celsius(25))
        .row(StateOfCharge.EMPTY, volts(emptyV))
        .row(StateOfCharge.FULL, volts(emptyV + slopeV))
        .build();
  }

  /** A cell whose limits are out of the way. */
  static CellBuilder unlimited(OpenCircuitCurve curve, ResistanceTable resistance) {
    return Cell.of("source", Chemistry.LFP)
        .capacity(Measures.ampereHours(100))
        .openCircuit(curve)
        .resistance(resistance)
        .minimumVoltage(volts(1e-3))
        .maximumVoltage(volts(1e5))
        .continuousDischargeCurrent(amperes(1e6))
        .continuousChargeCurrent(amperes(1e6))
        .dischargeTemperatures(TemperatureRange.between(celsius(-100), celsius(200)))
        .chargeTemperatures(TemperatureRange.between(celsius(-100), celsius(200)))
        .mass(kilograms(1));
  }

  static CellBuilder source(double sourceV, double ohm) {
    return unlimited(linear(sourceV, 0), ResistanceTable.constant(ohms(ohm)));
  }

  static SeriesString string(Cell cell) {
    return SeriesString.of(BatteryModule.of(cell).build(), 1);
  }

  static SeriesString string(double sourceV, double ohm) {
    return string(source(sourceV, ohm).build());
  }

  static Pack pack(Cell cell) {
    return Pack.of(BatteryModule.of(cell).build(), 1, 1);
  }

  static Pack pack(SeriesString... strings) {
    return Pack.of(java.util.List.of(strings));
  }

  static SeriesString string(
      Quantity<ElectricCharge> capacity, OpenCircuitCurve curve, double ohm) {
    return string(unlimited(curve, ResistanceTable.constant(ohms(ohm))).capacity(capacity).build());
  }

  /** A flat-curve cell with limits as a data sheet would state them; invented. */
  static CellBuilder flatCell() {
    return FlatCell.of(2.55, 2.6, 3.45)
        .ohmicResistance(milliohms(0.4))
        .continuousDischargeCurrent(amperes(105))
        .continuousChargeCurrent(amperes(52))
        .pulseDischargeCurrent(amperes(315), seconds(30))
        .pulseChargeCurrent(amperes(105), seconds(10))
        .chargeCurrentByTemperature(
            CurrentByTemperature.from(celsius(0), amperes(0)).and(celsius(15), amperes(105)));
  }

  static BatteryModule flatModule() {
    return BatteryModule.of(flatCell().build())
        .name("flat module")
        .series(6)
        .parallel(2)
        .interconnectResistance(milliohms(0.2))
        .mass(kilograms(24.8))
        .build();
  }
}
