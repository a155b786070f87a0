package org.wattwright.protection;

import static org.wattwright.units.Measures.ampereSquaredSeconds;
import static org.wattwright.units.Measures.amperes;
import static org.wattwright.units.Measures.celsius;
import static org.wattwright.units.Measures.grams;
import static org.wattwright.units.Measures.metres;
import static org.wattwright.units.Measures.microhenries;
import static org.wattwright.units.Measures.millimetres;
import static org.wattwright.units.Measures.milliohms;
import static org.wattwright.units.Measures.milliseconds;
import static org.wattwright.units.Measures.seconds;
import static org.wattwright.units.Measures.squareMillimetres;
import static org.wattwright.units.Measures.volts;

import java.util.ArrayList;
import java.util.List;
import org.wattwright.conductor.Cable;
import org.wattwright.conductor.ConductorSize;
import org.wattwright.conductor.Installation;
import org.wattwright.conductor.InsulationMaterial;
import org.wattwright.conductor.StrandClass;
import org.wattwright.units.Measures;
import org.wattwright.units.Price;

/** Invented catalogues and circuits for the tests of the designer. */
final class CircuitParts {
  /** Area, conductor and outer diameter, in mm² and mm. */
  private static final double[][] CABLES = {
    {2.5, 2.1, 4.2}, {4, 2.6, 4.8}, {6, 3.2, 5.4}, {10, 4.2, 6.8}, {16, 5.3, 8.1},
    {25, 6.7, 10.2}, {35, 7.9, 11.7}, {50, 9.4, 13.9}, {70, 11.2, 16}, {95, 13, 18.5}
  };

  private CircuitParts() {}

  static CircuitSupply battery() {
    return CircuitSupply.of(
        "battery",
        volts(403.2),
        FaultRange.of(
            FaultCurrent.of(volts(403.2), milliohms(60), microhenries(20)),
            FaultCurrent.of(volts(280), milliohms(130), microhenries(20))));
  }

  static List<Cable> cables() {
    List<Cable> cables = new ArrayList<>();
    for (double[] row : CABLES) {
      cables.add(cable(row));
    }
    return cables;
  }

  private static Cable cable(double[] row) {
    return Cable.of(
            "T",
            ConductorSize.metric(squareMillimetres(row[0]), StrandClass.FLEXIBLE),
            InsulationMaterial.XLPE)
        .conductorDiameter(millimetres(row[1]))
        .outerDiameter(millimetres(row[2]))
        .temperatureLimit(celsius(125))
        .voltageRating(volts(1000))
        .massPerLength(Measures.kilogramsPerMetre(row[0] * 0.011))
        .pricePerMetre(Price.of(String.valueOf(row[0] * 0.4), "EUR"))
        .build();
  }

  /** A full-range link whose curve goes with its rating, at a speed of 1 or slower above it. */
  static Fuse fuse(String name, double ratedA, double slowness) {
    return Fuse.of(name, amperes(ratedA))
        .directVoltage(volts(500))
        .testTimeConstant(milliseconds(5))
        .breakingCapacity(Measures.kiloamperes(20))
        .fullRange()
        .ambientDerating(AmbientDerating.linear(Measures.percentPerKelvin(0.5), celsius(40)))
        .cyclicFactor(0.8)
        .preArcingCurve(
            TimeCurrentCurve.ofPoints()
                .point(amperes(1.6 * ratedA), seconds(2000 * slowness))
                .point(amperes(2.5 * ratedA), seconds(60 * slowness))
                .point(amperes(5 * ratedA), seconds(1 * slowness))
                .point(amperes(12 * ratedA), seconds(0.01 * slowness))
                .build())
        .preArcingJouleIntegral(ampereSquaredSeconds(0.8 * slowness * ratedA * ratedA))
        .totalJouleIntegral(ampereSquaredSeconds(3.5 * slowness * ratedA * ratedA), volts(500))
        .peakLetThrough(amperes(25 * ratedA))
        .mass(grams(40 + ratedA))
        .price(Price.of("20", "EUR"))
        .build();
  }

  static List<Fuse> fuses() {
    List<Fuse> fuses = new ArrayList<>();
    for (double ratedA : new double[] {20, 32, 50, 80, 125, 160, 200, 250, 315, 400}) {
      fuses.add(fuse("F-" + (int) ratedA, ratedA, 1));
    }
    return fuses;
  }

  static Contactor contactor(String name, double carryA) {
    return Contactor.of(name, volts(450))
        .carry(amperes(carryA))
        .carryCurve(
            CarryCurve.through(
                CarryCurve.point(amperes(1.5 * carryA), seconds(120)),
                CarryCurve.point(amperes(4 * carryA), seconds(10))))
        .makeLimit(amperes(3 * carryA))
        .breaks(BreakRating.eitherWay(amperes(6 * carryA), volts(450)))
        .withstand(ampereSquaredSeconds(9 * carryA * carryA))
        .peakWithstand(amperes(40 * carryA))
        .openingTime(milliseconds(15))
        .mass(grams(1.5 * carryA))
        .price(Price.of(String.valueOf(carryA / 4), "EUR"))
        .build();
  }

  static List<Contactor> contactors() {
    List<Contactor> contactors = new ArrayList<>();
    for (double carryA : new double[] {50, 100, 150, 250, 400}) {
      contactors.add(contactor("K-" + (int) carryA, carryA));
    }
    return contactors;
  }

  static CircuitBuilder traction() {
    return Circuit.of("traction", CircuitRole.TRACTION_MAIN)
        .continuousCurrent(amperes(120))
        .highestOperatingCurrent(amperes(200))
        .length(metres(3))
        .installation(Installation.freeAir(celsius(45)))
        .voltageDropAtMost(volts(4))
        .switched()
        .trip(OvercurrentTrip.at(amperes(230), seconds(0.3), "battery management"));
  }

  static CircuitBuilder heater(Circuit upstream) {
    return Circuit.of("heater", CircuitRole.HEATER)
        .fedFrom(upstream)
        .continuousCurrent(amperes(15))
        .length(metres(2))
        .installation(Installation.freeAir(celsius(60)));
  }

  static CircuitDesigner designer(List<Circuit> circuits) {
    return CircuitDesigner.fedBy(battery())
        .circuits(circuits)
        .cables(cables())
        .fuses(fuses())
        .contactors(contactors());
  }
}
