package org.wattwright.layout;

import static org.wattwright.units.Measures.ampereHours;
import static org.wattwright.units.Measures.amperes;
import static org.wattwright.units.Measures.celsius;
import static org.wattwright.units.Measures.kilograms;
import static org.wattwright.units.Measures.kilowatts;
import static org.wattwright.units.Measures.millimetres;
import static org.wattwright.units.Measures.milliohms;
import static org.wattwright.units.Measures.percentCharge;
import static org.wattwright.units.Measures.seconds;
import static org.wattwright.units.Measures.volts;

import org.wattwright.battery.BatteryModule;
import org.wattwright.battery.Cell;
import org.wattwright.battery.CellEstimates;
import org.wattwright.battery.Chemistry;
import org.wattwright.battery.Dimensions;
import org.wattwright.battery.OpenCircuitCurve;
import org.wattwright.battery.ResistanceTable;
import org.wattwright.battery.TemperatureRange;
import org.wattwright.units.Price;
import org.wattwright.voltage.Device;
import org.wattwright.voltage.DeviceRole;
import org.wattwright.voltage.OperatingConditions;
import org.wattwright.voltage.VoltageRange;
import org.wattwright.voltage.VoltageWindow;

/** Invented parts of an invented van. */
final class InventedParts {
  private InventedParts() {}

  static Cell flatCell() {
    return Cell.of("flat cell", Chemistry.LFP)
        .capacity(ampereHours(105))
        .openCircuit(
            OpenCircuitCurve.at(celsius(-10), celsius(25))
                .row(percentCharge(0), volts(2.70), volts(2.75))
                .row(percentCharge(10), volts(3.10), volts(3.18))
                .row(percentCharge(50), volts(3.26), volts(3.29))
                .row(percentCharge(90), volts(3.31), volts(3.33))
                .row(percentCharge(100), volts(3.40), volts(3.43))
                .build())
        .resistance(
            ResistanceTable.at(celsius(-10), celsius(25))
                .row(percentCharge(10), milliohms(2.4), milliohms(0.7))
                .row(percentCharge(90), milliohms(1.6), milliohms(0.5))
                .build())
        .minimumVoltage(volts(2.5))
        .maximumVoltage(volts(3.65))
        .continuousDischargeCurrent(amperes(157))
        .pulseDischargeCurrent(amperes(315), seconds(30))
        .continuousChargeCurrent(amperes(105))
        .dischargeTemperatures(TemperatureRange.between(celsius(-20), celsius(55)))
        .chargeTemperatures(TemperatureRange.between(celsius(0), celsius(45)))
        .mass(kilograms(1.9))
        .build();
  }

  /** 12 cells in series: 39.5 V, 105 A·h. */
  static BatteryModule flat() {
    return BatteryModule.of(flatCell())
        .name("flat module")
        .series(12)
        .interconnectResistance(milliohms(0.6))
        .mass(kilograms(25.4))
        .dimensions(Dimensions.of(millimetres(620), millimetres(330), millimetres(105)))
        .price(Price.of("1450", "EUR"))
        .build();
  }

  /** 8 cells in series, 2 in parallel, resistance estimated, no size known. */
  static BatteryModule tall() {
    Cell cell =
        flatCell().toBuilder()
            .capacity(ampereHours(86))
            .resistance(CellEstimates.resistance(Chemistry.LFP, ampereHours(86)))
            .build();
    return BatteryModule.of(cell)
        .name("tall module")
        .series(8)
        .parallel(2)
        .mass(kilograms(32.5))
        .price(Price.of("1390", "EUR"))
        .build();
  }

  static Device inverter() {
    return Device.of(
            "inverter",
            DeviceRole.INVERTER,
            VoltageWindow.operating(VoltageRange.between(volts(220), volts(420)))
                .fullPerformance(VoltageRange.between(volts(280), volts(400)))
                .absoluteMaximum(volts(450)))
        .build();
  }

  static Device charger() {
    return charger(437);
  }

  static Device charger(double topV) {
    return Device.of(
            "charger",
            DeviceRole.CHARGER,
            VoltageWindow.operating(VoltageRange.between(volts(200), volts(topV)))
                .absoluteMaximum(volts(500)))
        .build();
  }

  /** A converter of which nobody has written down the absolute maximum. */
  static Device converter() {
    return Device.of(
            "converter",
            DeviceRole.CONVERTER,
            VoltageWindow.operating(VoltageRange.between(volts(180), volts(430))))
        .build();
  }

  static OperatingConditions conditions() {
    return OperatingConditions.builder()
        .stateOfCharge(percentCharge(10), percentCharge(100))
        .coldest(celsius(-5))
        .peakDischargePower(kilowatts(45), seconds(10))
        .regenerationCurrent(amperes(60))
        .build();
  }
}
