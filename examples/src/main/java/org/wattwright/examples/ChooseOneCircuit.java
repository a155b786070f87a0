package org.wattwright.examples;

import static org.wattwright.units.Measures.*;

import java.util.ArrayList;
import java.util.List;
import org.wattwright.check.Checks;
import org.wattwright.conductor.*;
import org.wattwright.protection.*;

/** Which cable, fuse and contactor does one circuit need together? Every number is invented. */
public final class ChooseOneCircuit {
  private ChooseOneCircuit() {}

  /**
   * Prints the parts chosen, what deals with each current, the checks, and the working.
   *
   * @param args not used
   */
  public static void main(String[] args) {
    CircuitSupply battery =
        CircuitSupply.of(
            "battery",
            volts(116.8),
            FaultRange.of(
                FaultCurrent.of(volts(116.8), milliohms(18), microhenries(9)),
                FaultCurrent.of(volts(72), milliohms(68), microhenries(9))));
    Circuit traction =
        Circuit.of("traction", CircuitRole.TRACTION_MAIN)
            .continuousCurrent(amperes(110))
            .highestOperatingCurrent(amperes(220))
            .length(metres(3.2))
            .installation(Installation.freeAir(celsius(45)))
            .terminalTemperatureAtMost(celsius(105))
            .voltageDropAtMost(volts(1.2))
            .switched()
            .trip(OvercurrentTrip.at(amperes(260), milliseconds(200), "battery management"))
            .build();
    CircuitDesign design =
        CircuitDesigner.fedBy(battery)
            .circuits(List.of(traction))
            .cables(cables())
            .fuses(fuses())
            .contactors(contactors())
            .run();
    System.out.println(design);
    for (DesignedCircuit chosen : design.circuits()) {
      chosen.cover().bands().forEach(System.out::println);
      System.out.println("governing: " + chosen.governing());
      chosen.runnerUp().ifPresent(next -> System.out.println("runner-up: " + next));
      System.out.println(Checks.toText(chosen.checks()));
      System.out.println(chosen.worksheet().toText());
    }
  }

  private static List<Cable> cables() {
    List<Cable> cables = new ArrayList<>();
    double[][] family = {{25, 6.7, 10.2}, {35, 7.9, 11.7}, {50, 9.4, 13.9}, {70, 11.2, 16}};
    for (double[] row : family) {
      cables.add(
          Cable.of(
                  "HV",
                  ConductorSize.metric(squareMillimetres(row[0]), StrandClass.FLEXIBLE),
                  InsulationMaterial.XLPE)
              .conductorDiameter(millimetres(row[1]))
              .outerDiameter(millimetres(row[2]))
              .temperatureLimit(celsius(125))
              .voltageRating(volts(600))
              .massPerLength(kilogramsPerMetre(0.011 * row[0]))
              .build());
    }
    return cables;
  }

  private static List<Fuse> fuses() {
    List<Fuse> fuses = new ArrayList<>();
    for (double rated : new double[] {100, 125, 160, 200}) {
      fuses.add(
          Fuse.of("F-" + (int) rated, amperes(rated))
              .directVoltage(volts(150))
              .testTimeConstant(milliseconds(2))
              .breakingCapacity(kiloamperes(10))
              .fullRange()
              .ambientDerating(AmbientDerating.squareRoot(celsius(130), celsius(30)))
              .preArcingCurve(
                  TimeCurrentCurve.ofPoints()
                      .point(amperes(1.6 * rated), seconds(2000))
                      .point(amperes(2.5 * rated), seconds(60))
                      .point(amperes(5 * rated), seconds(0.5))
                      .point(amperes(12 * rated), milliseconds(8))
                      .build())
              .preArcingJouleIntegral(ampereSquaredSeconds(0.8 * rated * rated))
              .totalJouleIntegral(ampereSquaredSeconds(3.5 * rated * rated), volts(150))
              .peakLetThrough(amperes(30 * rated))
              .mass(grams(40 + rated))
              .build());
    }
    return fuses;
  }

  private static List<Contactor> contactors() {
    List<Contactor> contactors = new ArrayList<>();
    for (double carries : new double[] {150, 250, 400}) {
      contactors.add(
          Contactor.of("K-" + (int) carries, volts(150))
              .carry(amperes(carries))
              .carryCurve(
                  CarryCurve.through(
                      CarryCurve.point(amperes(1.5 * carries), seconds(120)),
                      CarryCurve.point(amperes(4 * carries), seconds(10))))
              .makeLimit(amperes(3 * carries))
              .breaks(BreakRating.eitherWay(amperes(6 * carries), volts(150)))
              .withstand(ampereSquaredSeconds(9 * carries * carries))
              .peakWithstand(amperes(40 * carries))
              .openingTime(milliseconds(15))
              .mass(grams(1.5 * carries))
              .build());
    }
    return contactors;
  }
}
