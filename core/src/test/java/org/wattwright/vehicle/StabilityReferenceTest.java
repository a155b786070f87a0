package org.wattwright.vehicle;

import static org.wattwright.units.Measures.kilograms;
import static org.wattwright.units.Measures.metres;
import static org.wattwright.units.Measures.standardGravities;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.wattwright.testing.ReferenceRow;
import org.wattwright.testing.ReferenceRows;
import org.wattwright.testing.Validation;
import org.wattwright.units.Kind;

/** Lateral centre of gravity and static stability factor. */
class StabilityReferenceTest {
  @RegisterExtension static final Validation VALIDATION = Validation.of("vehicle");

  private static final ReferenceRows ROWS = ReferenceRows.read("/vehicle/stability.csv");

  private static ReferenceRow row(String number) {
    return ROWS.row("LAT-" + number);
  }

  private static StabilityFactor factor(double massKg, double trackM, double heightM) {
    Position centre = Position.behindFrontAxle(metres(1)).aboveGround(metres(heightM));
    return StabilityFactor.of(Stance.of(kilograms(massKg), metres(2.3), centre), metres(trackM));
  }

  @Test
  void cornerWeights() {
    WeighedVehicle car =
        WeighedVehicle.withWheelbase(metres(2.3))
            .frontLeft(kilograms(276))
            .frontRight(kilograms(264))
            .rearLeft(kilograms(241))
            .rearRight(kilograms(229))
            .frontTrack(metres(1.25))
            .rearTrack(metres(1.24))
            .build();
    LoadState state = MassLedger.of(car).after(LoadCase.KERB);
    VALIDATION.computed(
        row("001"), state.centreOfGravity().leftOfCentre().orElseThrow(), Kind.LENGTH);
    WheelLoads wheels = state.wheels().orElseThrow();
    VALIDATION.computed(row("002"), 100 * wheels.leftShare());
    VALIDATION.computed(row("003"), 100 * wheels.crossShare());
  }

  @Test
  void stabilityFactor() {
    VALIDATION.computed(row("004"), factor(1000, 1.40, 0.50).factor());
    StabilityFactor narrow = factor(1010, 1.25, 0.54);
    VALIDATION.computed(row("005"), narrow.factor());
    VALIDATION.computed(row("013"), narrow.tippingAcceleration(), Kind.ACCELERATION);
    VALIDATION.computed(row("014"), narrow.lateralTransfer(standardGravities(0.5)), Kind.FORCE);
    for (String id : new String[] {"006", "007", "008", "009", "010", "011", "012"}) {
      VALIDATION.notCovered(row(id), "a band that the caller gives as data");
    }
  }
}
