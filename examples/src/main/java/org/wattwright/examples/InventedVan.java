package org.wattwright.examples;

import static org.wattwright.units.Measures.*;

import org.wattwright.battery.*;
import org.wattwright.check.Given;
import org.wattwright.drive.*;

/** The van of the range and limit examples. Every part is invented. */
final class InventedVan {
  private InventedVan() {}

  static final RoadLoad LOAD =
      RoadLoad.of(kilograms(1180), RollingResistance.radialTyre(), squareMetres(0.9));

  static ElectricVehicle build() {
    Cell cell =
        Cell.of("plate cell", Chemistry.LFP)
            .capacity(ampereHours(105))
            .openCircuit(CellEstimates.openCircuit(Chemistry.LFP))
            .resistance(CellEstimates.resistanceOverTemperature(milliohms(0.8)))
            .minimumVoltage(volts(2.5))
            .maximumVoltage(volts(3.65))
            .continuousDischargeCurrent(amperes(157))
            .pulseDischargeCurrent(amperes(315), seconds(30))
            .continuousChargeCurrent(amperes(105))
            .dischargeTemperatures(TemperatureRange.between(celsius(-20), celsius(55)))
            .chargeTemperatures(TemperatureRange.between(celsius(0), celsius(50)))
            .mass(kilograms(1.98))
            .build();
    MotorEnvelope motor =
        MotorEnvelope.of("drive unit")
            .peak(newtonMetres(140), kilowatts(42))
            .continuous(newtonMetres(70), kilowatts(21))
            .maximumSpeed(revolutionsPerMinute(8000))
            .loss(MotorLoss.constantEfficiency(0.88))
            .build();
    Driveline driveline =
        Driveline.fixed(7.2, 0.96, Given.measured(metres(1.83), "rolled out on the floor"));
    Pack pack = Pack.of(BatteryModule.of(cell).series(6).parallel(3).build(), 5, 1);
    return ElectricVehicle.of(motor, driveline, LOAD, pack)
        .at(PackState.of(percentCharge(95), celsius(20)))
        .auxiliaries(watts(300))
        .build();
  }
}
