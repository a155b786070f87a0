package org.wattwright.vehicle;

import static org.wattwright.units.Measures.kilograms;
import static org.wattwright.units.Measures.metres;
import static org.wattwright.units.Measures.newtonMetresPerDegree;

import java.util.ArrayList;
import java.util.List;
import org.wattwright.check.Check;
import org.wattwright.check.Given;
import org.wattwright.testing.Generator;

/** Invented vehicles and random ledgers for the tests of this package. */
final class Vans {
  private Vans() {}

  static Position at(double behindM, double leftM, double heightM) {
    return Position.behindFrontAxle(metres(behindM))
        .leftOfCentre(metres(leftM))
        .aboveGround(metres(heightM));
  }

  static MassItem item(String name, double kg, double behindM, double leftM) {
    return MassItem.of(name, kilograms(kg), at(behindM, leftM, 0.5));
  }

  /** Weighed by two axles, nothing else known. */
  static WeighedVehicle plain() {
    return WeighedVehicle.withWheelbase(metres(2.31))
        .frontAxle(kilograms(560))
        .rearAxle(kilograms(470))
        .build();
  }

  /** Weighed by four wheels, everything known. */
  static WeighedVehicleBuilder full() {
    return WeighedVehicle.withWheelbase(metres(2.31))
        .frontLeft(kilograms(284))
        .frontRight(kilograms(276))
        .rearLeft(kilograms(240))
        .rearRight(kilograms(230))
        .frontTrack(metres(1.25))
        .rearTrack(metres(1.24))
        .centreOfGravityHeight(metres(0.54))
        .frontRollStiffness(Given.dataSheet(newtonMetresPerDegree(220), "springs"))
        .rearRollStiffness(Given.dataSheet(newtonMetresPerDegree(140), "springs"));
  }

  /** Items anywhere from ahead of the front axle to behind the rear one. */
  static List<MassItem> items(Generator random, int count) {
    List<MassItem> items = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      Position place =
          at(random.between(-0.8, 3.2), random.between(-0.6, 0.6), random.between(0.1, 1.2));
      MassItem item =
          MassItem.of("item " + i, kilograms(random.between(1, 60)), place)
              .withMassTolerance(kilograms(random.between(0, 3)))
              .withPositionTolerance(metres(random.between(0, 0.05)));
      items.add(random.chance(0.3) ? item.onAxle() : item);
    }
    return items;
  }

  static MassLedger ledger(Generator random) {
    return MassLedger.of(full().build())
        .removing(items(random, random.count(0, 5)))
        .adding(items(random, random.count(1, 8)));
  }

  static Check find(List<Check> checks, String code) {
    return checks.stream().filter(c -> c.code().equals(code)).findFirst().orElseThrow();
  }
}
