package org.wattwright.benchmarks.layout;

import static org.wattwright.units.Measures.ampereHours;
import static org.wattwright.units.Measures.amperes;
import static org.wattwright.units.Measures.celsius;
import static org.wattwright.units.Measures.kilograms;
import static org.wattwright.units.Measures.kilowatts;
import static org.wattwright.units.Measures.milliohms;
import static org.wattwright.units.Measures.percentCharge;
import static org.wattwright.units.Measures.seconds;
import static org.wattwright.units.Measures.volts;

import java.util.ArrayList;
import java.util.List;
import org.wattwright.battery.BatteryModule;
import org.wattwright.battery.Cell;
import org.wattwright.battery.Chemistry;
import org.wattwright.battery.OpenCircuitCurve;
import org.wattwright.battery.ResistanceTable;
import org.wattwright.battery.TemperatureRange;
import org.wattwright.voltage.Device;
import org.wattwright.voltage.DeviceRole;
import org.wattwright.voltage.OperatingConditions;
import org.wattwright.voltage.VoltageRange;
import org.wattwright.voltage.VoltageWindow;

/** An invented catalogue of modules, and the devices of an invented van. */
final class Catalogue {
  private Catalogue() {}

  static List<BatteryModule> modules(int count) {
    List<BatteryModule> modules = new ArrayList<>();
    for (int k = 0; k < count; k++) {
      modules.add(
          BatteryModule.of(cell(60 + 7 * k))
              .name("module " + k)
              .series(4 + k % 9)
              .parallel(1 + k % 2)
              .overheadMass(kilograms(1 + 0.1 * k))
              .build());
    }
    return modules;
  }

  private static Cell cell(double capacityAh) {
    return Cell.of("cell", Chemistry.LFP)
        .capacity(ampereHours(capacityAh))
        .openCircuit(
            OpenCircuitCurve.at(celsius(-10), celsius(25))
                .row(percentCharge(0), volts(2.70), volts(2.75))
                .row(percentCharge(10), volts(3.10), volts(3.18))
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
        .continuousDischargeCurrent(amperes(1.5 * capacityAh))
        .continuousChargeCurrent(amperes(capacityAh))
        .dischargeTemperatures(TemperatureRange.between(celsius(-20), celsius(55)))
        .chargeTemperatures(TemperatureRange.between(celsius(0), celsius(45)))
        .mass(kilograms(capacityAh * 0.018))
        .build();
  }

  static Device inverter() {
    return device("inverter", DeviceRole.INVERTER, 220, 420);
  }

  static Device charger() {
    return device("charger", DeviceRole.CHARGER, 200, 437);
  }

  private static Device device(String name, DeviceRole role, double lowestV, double highestV) {
    return Device.of(
            name,
            role,
            VoltageWindow.operating(VoltageRange.between(volts(lowestV), volts(highestV)))
                .absoluteMaximum(volts(highestV + 30)))
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
