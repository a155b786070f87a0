package org.wattwright.examples;

import static org.wattwright.units.Measures.amperes;
import static org.wattwright.units.Measures.celsius;
import static org.wattwright.units.Measures.metres;
import static org.wattwright.units.Measures.millimetres;
import static org.wattwright.units.Measures.squareMillimetres;
import static org.wattwright.units.Measures.volts;

import java.util.Collections;
import java.util.List;
import org.wattwright.conductor.Cable;
import org.wattwright.conductor.ConductorSize;
import org.wattwright.conductor.ConductorSizer;
import org.wattwright.conductor.Installation;
import org.wattwright.conductor.InsulationMaterial;
import org.wattwright.conductor.Joint;
import org.wattwright.conductor.SizingResult;
import org.wattwright.conductor.StrandClass;

/** Which cable does a heater need? Every part is invented. */
final class SizeACable {
  private SizeACable() {}

  public static void main(String[] args) {
    System.out.print(report());
  }

  static String report() {
    SizingResult result =
        ConductorSizer.over(List.of(cable(4, 2.6, 4.3), cable(6, 3.2, 5.1), cable(10, 4.2, 6.5)))
            .installation(Installation.freeAir(celsius(50)).bundled(2))
            .continuousCurrent(amperes(42))
            .lengths(metres(0.9), metres(0.9))
            .joints(Collections.nCopies(4, Joint.estimatedBoltedLug("lug")))
            .terminalTemperatureAtMost(celsius(85))
            .voltageDropAtMost(volts(0.5))
            .circuitVoltage(volts(102))
            .run();
    return result.fold(
        sized -> sized + "\n\n" + sized.worksheet().toText() + "\n",
        none -> "no cable of these will do: " + none + "\n");
  }

  private static Cable cable(double areaMm2, double conductorMm, double outerMm) {
    ConductorSize size = ConductorSize.metric(squareMillimetres(areaMm2), StrandClass.FLEXIBLE);
    return Cable.of("vehicle cable", size, InsulationMaterial.XLPE)
        .conductorDiameter(millimetres(conductorMm))
        .outerDiameter(millimetres(outerMm))
        .temperatureLimit(celsius(125))
        .voltageRating(volts(600))
        .build();
  }
}
