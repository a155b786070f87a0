package org.wattwright.drive;

import static org.wattwright.units.Measures.amperes;
import static org.wattwright.units.Measures.celsius;
import static org.wattwright.units.Measures.kilograms;
import static org.wattwright.units.Measures.kilowatts;
import static org.wattwright.units.Measures.metres;
import static org.wattwright.units.Measures.newtonMetres;
import static org.wattwright.units.Measures.percentCharge;
import static org.wattwright.units.Measures.revolutionsPerMinute;
import static org.wattwright.units.Measures.seconds;
import static org.wattwright.units.Measures.squareMetres;
import static org.wattwright.units.Measures.watts;

import org.wattwright.battery.BatteryModule;
import org.wattwright.battery.Cell;
import org.wattwright.battery.CurrentByTemperature;
import org.wattwright.battery.Pack;
import org.wattwright.battery.PackState;
import org.wattwright.check.Given;
import org.wattwright.testing.FlatCell;
import org.wattwright.vehicle.Axle;
import org.wattwright.vehicle.Position;
import org.wattwright.vehicle.Stance;

/** An invented small van, its drive and its pack. */
final class InventedDrive {
  private InventedDrive() {}

  static Cell cell() {
    return FlatCell.of(2.75, 2.8, 3.45)
        .continuousDischargeCurrent(amperes(157))
        .continuousChargeCurrent(amperes(105))
        .pulseDischargeCurrent(amperes(315), seconds(30))
        .pulseChargeCurrent(amperes(157), seconds(10))
        .chargeCurrentByTemperature(
            CurrentByTemperature.from(celsius(0), amperes(0)).and(celsius(15), amperes(157)))
        .build();
  }

  /** 30 in series, 3 in parallel: about 31 kW·h at 99 V. */
  static Pack pack() {
    return Pack.of(BatteryModule.of(cell()).series(6).parallel(3).build(), 5, 1);
  }

  static MotorEnvelope motor() {
    return MotorEnvelope.of("drive unit")
        .peak(newtonMetres(140), kilowatts(42))
        .continuous(newtonMetres(70), kilowatts(21))
        .maximumSpeed(revolutionsPerMinute(8000))
        .loss(MotorLoss.constantEfficiency(0.88))
        .build();
  }

  static Driveline driveline() {
    return Driveline.fixed(7.2, 0.96, Given.measured(metres(1.83), "rolled out on the floor"));
  }

  static RoadLoad load() {
    return RoadLoad.of(kilograms(1180), RollingResistance.of(0.012), squareMetres(0.9));
  }

  static Stance stance() {
    return Stance.of(
        kilograms(1180),
        metres(2.31),
        Position.behindFrontAxle(metres(1.2)).aboveGround(metres(0.55)));
  }

  static ElectricVehicleBuilder builder() {
    return ElectricVehicle.of(motor(), driveline(), load(), pack())
        .at(PackState.of(percentCharge(95), celsius(25)))
        .auxiliaries(watts(300))
        .traction(Traction.of(stance(), Axle.REAR, 0.8));
  }

  static ElectricVehicle van() {
    return builder().build();
  }
}
