package org.wattwright.conversion;

import static org.wattwright.units.Measures.ampereHours;
import static org.wattwright.units.Measures.amperes;
import static org.wattwright.units.Measures.celsius;
import static org.wattwright.units.Measures.kilograms;
import static org.wattwright.units.Measures.kilowatts;
import static org.wattwright.units.Measures.milliohms;
import static org.wattwright.units.Measures.percentCharge;
import static org.wattwright.units.Measures.seconds;
import static org.wattwright.units.Measures.volts;

import org.wattwright.battery.BatteryModule;
import org.wattwright.battery.Cell;
import org.wattwright.battery.CellBuilder;
import org.wattwright.battery.Chemistry;
import org.wattwright.battery.OpenCircuitCurve;
import org.wattwright.battery.Pack;
import org.wattwright.battery.ResistanceTable;
import org.wattwright.battery.TemperatureRange;
import org.wattwright.voltage.Device;
import org.wattwright.voltage.DeviceRole;
import org.wattwright.voltage.OperatingConditions;
import org.wattwright.voltage.VoltageRange;
import org.wattwright.voltage.VoltageWindow;

/** An invented van with round numbers, so that its sheet can be worked out by hand. */
final class InventedVan {
  private InventedVan() {}

  /** 100 A·h, 1 mΩ, open circuit 3.0 V to 3.4 V on a straight line, limits 2.5 V and 3.65 V. */
  static CellBuilder cell() {
    return Cell.of("plain cell", Chemistry.LFP)
        .capacity(ampereHours(100))
        .openCircuit(
            OpenCircuitCurve.at(celsius(25))
                .row(percentCharge(0), volts(3.0))
                .row(percentCharge(100), volts(3.4))
                .build())
        .resistance(ResistanceTable.constant(milliohms(1)))
        .minimumVoltage(volts(2.5))
        .maximumVoltage(volts(3.65))
        .continuousDischargeCurrent(amperes(200))
        .pulseDischargeCurrent(amperes(400), seconds(30))
        .continuousChargeCurrent(amperes(100))
        .dischargeTemperatures(TemperatureRange.between(celsius(-20), celsius(55)))
        .chargeTemperatures(TemperatureRange.between(celsius(0), celsius(45)))
        .mass(kilograms(2));
  }

  /** Eight modules of four cells in series, 8 kg each. */
  static Pack pack(Cell cell) {
    return Pack.of(module(cell), 8, 1);
  }

  static BatteryModule module(Cell cell) {
    return BatteryModule.of(cell).name("plain module").series(4).build();
  }

  static Device inverter() {
    return device("inverter", DeviceRole.INVERTER, 70, 135);
  }

  static Device charger() {
    return device("charger", DeviceRole.CHARGER, 60, 120);
  }

  static Device device(String name, DeviceRole role, double lowestV, double highestV) {
    VoltageRange band = VoltageRange.between(volts(lowestV), volts(highestV));
    VoltageWindow window =
        VoltageWindow.operating(band).fullPerformance(band).absoluteMaximum(volts(1.25 * highestV));
    return Device.of(name, role, window).build();
  }

  /** 10 % to 100 %, down to −10 °C, 10 kW for 10 s, no regeneration. */
  static OperatingConditions conditions() {
    return OperatingConditions.builder()
        .stateOfCharge(percentCharge(10), percentCharge(100))
        .coldest(celsius(-10))
        .peakDischargePower(kilowatts(10), seconds(10))
        .regenerationCurrent(amperes(0))
        .build();
  }

  /** Everything fits. */
  static Conversion.Builder conversion() {
    return Conversion.of("bakery van")
        .pack(pack(cell().build()))
        .device(inverter())
        .device(charger())
        .conditions(conditions());
  }
}
