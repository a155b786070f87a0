package org.wattwright.vehicle;

import static org.wattwright.units.Measures.degrees;
import static org.wattwright.units.Measures.kilograms;
import static org.wattwright.units.Measures.metres;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.wattwright.testing.ReferenceRow;
import org.wattwright.testing.ReferenceRows;
import org.wattwright.testing.Validation;
import org.wattwright.units.Kind;

/** Height of the centre of gravity by axle lift. */
class AxleLiftReferenceTest {
  @RegisterExtension static final Validation VALIDATION = Validation.of("vehicle");

  private static final ReferenceRows ROWS = ReferenceRows.read("/vehicle/axle-lift.csv");

  private static ReferenceRow row(String number) {
    return ROWS.row("CGH-" + number);
  }

  private static WeighedVehicle car() {
    return WeighedVehicle.withWheelbase(metres(2.40))
        .frontAxle(kilograms(540))
        .rearAxle(kilograms(460))
        .build();
  }

  @Test
  void equalWheels() {
    AxleLift lift =
        AxleLift.of(car(), Axle.REAR)
            .reading(kilograms(560))
            .rise(metres(0.60))
            .frontLoadedRadius(metres(0.30))
            .rearLoadedRadius(metres(0.30))
            .build();
    VALIDATION.computed(row("001"), lift.angle(), Kind.ANGLE);
    VALIDATION.computed(row("002"), lift.height(), Kind.LENGTH);
    VALIDATION.computed(row("003"), lift.errorFrom(kilograms(1)), Kind.LENGTH);
    VALIDATION.computed(row("004"), lift.height(), Kind.LENGTH);
  }

  @Test
  void unequalWheels() {
    AxleLift lift =
        AxleLift.of(car(), Axle.REAR)
            .reading(kilograms(560))
            .angle(degrees(14))
            .frontLoadedRadius(metres(0.31))
            .rearLoadedRadius(metres(0.34))
            .build();
    VALIDATION.computed(row("006"), lift.height(), Kind.LENGTH);
    VALIDATION.notCovered(row("005"), "height of the axle line of the approximate form, not used");
  }

  @Test
  void expectedGain() {
    WeighedVehicle car =
        WeighedVehicle.withWheelbase(metres(2.30))
            .frontAxle(kilograms(550))
            .rearAxle(kilograms(500))
            .centreOfGravityHeight(metres(0.52))
            .build();
    VALIDATION.computed(
        row("007"), AxleLift.expectedGain(car, metres(0.29), metres(0.70)), Kind.MASS);
  }
}
