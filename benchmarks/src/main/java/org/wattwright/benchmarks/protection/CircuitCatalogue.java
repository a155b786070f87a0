package org.wattwright.benchmarks.protection;

import static org.wattwright.units.Measures.ampereSquaredSeconds;
import static org.wattwright.units.Measures.amperes;
import static org.wattwright.units.Measures.celsius;
import static org.wattwright.units.Measures.grams;
import static org.wattwright.units.Measures.kiloamperes;
import static org.wattwright.units.Measures.kilogramsPerMetre;
import static org.wattwright.units.Measures.metres;
import static org.wattwright.units.Measures.microhenries;
import static org.wattwright.units.Measures.millimetres;
import static org.wattwright.units.Measures.milliohms;
import static org.wattwright.units.Measures.milliseconds;
import static org.wattwright.units.Measures.percentPerKelvin;
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
import org.wattwright.protection.AmbientDerating;
import org.wattwright.protection.BreakRating;
import org.wattwright.protection.CarryCurve;
import org.wattwright.protection.Circuit;
import org.wattwright.protection.CircuitRole;
import org.wattwright.protection.CircuitSupply;
import org.wattwright.protection.Contactor;
import org.wattwright.protection.FaultCurrent;
import org.wattwright.protection.FaultRange;
import org.wattwright.protection.Fuse;
import org.wattwright.protection.OvercurrentTrip;
import org.wattwright.protection.TimeCurrentCurve;

/** Invented catalogues of any size, and one circuit. */
final class CircuitCatalogue {
  private static final double[] AREAS_MM2 = {1.5, 2.5, 4, 6, 10, 16, 25, 35, 50, 70, 95, 120};

  private CircuitCatalogue() {}

  static CircuitSupply battery() {
    return CircuitSupply.of(
        "battery",
        volts(403.2),
        FaultRange.of(
            FaultCurrent.of(volts(403.2), milliohms(60), microhenries(20)),
            FaultCurrent.of(volts(280), milliohms(130), microhenries(20))));
  }

  static Circuit circuit() {
    return Circuit.of("traction", CircuitRole.TRACTION_MAIN)
        .continuousCurrent(amperes(120))
        .highestOperatingCurrent(amperes(200))
        .length(metres(3))
        .installation(Installation.freeAir(celsius(45)))
        .voltageDropAtMost(volts(4))
        .switched()
        .trip(OvercurrentTrip.at(amperes(230), seconds(0.3), "battery management"))
        .build();
  }

  static List<Cable> cables(int count) {
    List<Cable> cables = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      double areaMm2 = AREAS_MM2[i % AREAS_MM2.length];
      int make = i / AREAS_MM2.length;
      double conductorMm = 1.33 * Math.sqrt(areaMm2);
      cables.add(
          Cable.of(
                  "C" + make,
                  ConductorSize.metric(squareMillimetres(areaMm2), StrandClass.FLEXIBLE),
                  InsulationMaterial.XLPE)
              .conductorDiameter(millimetres(conductorMm))
              .outerDiameter(millimetres(1.2 * conductorMm + 1.6 + 0.2 * make))
              .temperatureLimit(celsius(125))
              .voltageRating(volts(1000))
              .massPerLength(kilogramsPerMetre(0.011 * areaMm2 + 0.01 * make))
              .build());
    }
    return cables;
  }

  static List<Fuse> fuses(int count) {
    List<Fuse> fuses = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      double ratedA = Math.rint(16 * Math.pow(40, i / (double) count));
      double slowness = 0.5 + i % 4 * 0.5;
      fuses.add(fuse("F" + i, ratedA, slowness));
    }
    return fuses;
  }

  private static Fuse fuse(String name, double ratedA, double slowness) {
    return Fuse.of(name, amperes(ratedA))
        .directVoltage(volts(500))
        .testTimeConstant(milliseconds(5))
        .breakingCapacity(kiloamperes(20))
        .fullRange()
        .ambientDerating(AmbientDerating.linear(percentPerKelvin(0.5), celsius(40)))
        .cyclicFactor(0.8)
        .preArcingCurve(
            TimeCurrentCurve.ofPoints()
                .point(amperes(1.6 * ratedA), seconds(2000 * slowness))
                .point(amperes(2 * ratedA), seconds(300 * slowness))
                .point(amperes(2.5 * ratedA), seconds(60 * slowness))
                .point(amperes(5 * ratedA), seconds(slowness))
                .point(amperes(12 * ratedA), seconds(0.01 * slowness))
                .build())
        .preArcingJouleIntegral(ampereSquaredSeconds(0.8 * slowness * ratedA * ratedA))
        .totalJouleIntegral(ampereSquaredSeconds(3.5 * slowness * ratedA * ratedA), volts(500))
        .peakLetThrough(amperes(25 * ratedA))
        .mass(grams(40 + ratedA * (1 + 0.1 * slowness)))
        .build();
  }

  static List<Contactor> contactors(int count) {
    List<Contactor> contactors = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      double carryA = 40 + 20 * i;
      contactors.add(
          Contactor.of("K" + i, volts(450))
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
              .build());
    }
    return contactors;
  }
}
