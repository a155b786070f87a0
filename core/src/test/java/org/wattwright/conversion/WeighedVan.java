package org.wattwright.conversion;

import static org.wattwright.units.Measures.kilograms;
import static org.wattwright.units.Measures.kilopascals;
import static org.wattwright.units.Measures.metres;
import static org.wattwright.units.Measures.millimetres;
import static org.wattwright.units.Measures.newtonMetresPerDegree;
import static org.wattwright.units.Measures.newtons;
import static org.wattwright.units.Measures.newtonsPerMillimetre;

import org.wattwright.check.Basis;
import org.wattwright.check.Given;
import org.wattwright.check.Source;
import org.wattwright.vehicle.Axle;
import org.wattwright.vehicle.AxleLimits;
import org.wattwright.vehicle.AxleSpring;
import org.wattwright.vehicle.LoadCase;
import org.wattwright.vehicle.MassItem;
import org.wattwright.vehicle.MassLedger;
import org.wattwright.vehicle.ParkingBrake;
import org.wattwright.vehicle.Position;
import org.wattwright.vehicle.Seating;
import org.wattwright.vehicle.Tyre;
import org.wattwright.vehicle.WeighedVehicle;

/** An invented van with round numbers: 2 m between axles of 600 kg and 400 kg. */
final class WeighedVan {
  static final Tyre TYRE = Tyre.parse("165 R13 83T");

  private WeighedVan() {}

  static Position at(double behindM, double heightM) {
    return Position.behindFrontAxle(metres(behindM)).onCentreLine().aboveGround(metres(heightM));
  }

  static MassItem item(String name, double kg, double behindM) {
    return MassItem.of(name, kilograms(kg), at(behindM, 0.5));
  }

  /** Four scales, tracks, height and roll stiffness. */
  static WeighedVehicle full() {
    return WeighedVehicle.withWheelbase(metres(2))
        .frontLeft(kilograms(300))
        .frontRight(kilograms(300))
        .rearLeft(kilograms(200))
        .rearRight(kilograms(200))
        .frontTrack(metres(1.2))
        .rearTrack(metres(1.2))
        .centreOfGravityHeight(metres(0.5))
        .frontRollStiffness(Given.dataSheet(newtonMetresPerDegree(200), "springs"))
        .rearRollStiffness(Given.dataSheet(newtonMetresPerDegree(200), "springs"))
        .build();
  }

  /** Two axles and nothing else. */
  static WeighedVehicle axlesOnly() {
    return WeighedVehicle.withWheelbase(metres(2))
        .frontAxle(kilograms(600))
        .rearAxle(kilograms(400))
        .build();
  }

  /** 200 kg off the front axle, 100 kg on the middle, 150 kg on the rear axle. */
  static MassLedger ledger(WeighedVehicle vehicle) {
    return MassLedger.of(vehicle)
        .removing(item("engine", 200, 0))
        .adding(item("front box", 100, 1), item("drive unit", 150, 2).onAxle());
  }

  static LoadCase driver() {
    return LoadCase.withDriver(Seating.driverAt(at(1, 0.7)));
  }

  static AxleLimits limits() {
    return AxleLimits.builder()
        .frontAxle(kilograms(700))
        .rearAxle(kilograms(800))
        .grossMass(kilograms(1400))
        .frontTyre(TYRE)
        .rearTyre(TYRE)
        .build();
  }

  static Chassis chassis() {
    return Chassis.unknown()
        .brakes(Given.measured(0.3, "brake tester"))
        .parkingBrake(ParkingBrake.on(Axle.REAR).withForce(newtons(4000), Basis.MEASURED))
        .steeringShareAtLeast(0.4, Source.requirement("workshop"))
        .spring(
            AxleSpring.of(Axle.FRONT, newtonsPerMillimetre(20), millimetres(70)), millimetres(20))
        .spring(
            AxleSpring.of(Axle.REAR, newtonsPerMillimetre(25), millimetres(90)), millimetres(20))
        .tyrePressure(Axle.FRONT, TYRE, Given.measured(kilopascals(200), "gauge"))
        .tyrePressure(Axle.REAR, TYRE, Given.measured(kilopascals(240), "gauge"));
  }
}
