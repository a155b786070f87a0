package org.wattwright.examples;

import static org.wattwright.units.Measures.*;

import java.util.ArrayList;
import java.util.List;
import org.wattwright.check.*;
import org.wattwright.installation.*;

/** Which of the old seat holes hold this battery box? Every number here is invented. */
public final class HoldABox {
  private HoldABox() {}

  /**
   * Prints whether the old holes do, then those of the frame rails, with checks and working.
   *
   * @param args not used
   */
  public static void main(String[] args) {
    HoleSolver box =
        HoleSolver.holding("rear box", Given.measured(kilograms(92), "scales"))
            .atLeast(4)
            .centre(millimetres(300), millimetres(200), millimetres(130))
            .bolts(
                List.of(
                    Bolt.of("M8", PropertyClass.CLASS_8_8),
                    Bolt.of("M10", PropertyClass.CLASS_8_8)));
    AccelerationRules rules = AccelerationRules.published("ncop14");
    Footprint footprint = Footprint.of(millimetres(600), millimetres(400));

    HoleChoice inThinSheet = box.on(MountingFace.FLOOR, footprint, holes(0.8)).under(rules);
    System.out.println("floor of 0.8 mm: " + inThinSheet);
    HoleChoice onRails = box.on(MountingFace.FLOOR, footprint, holes(3.0)).under(rules);
    System.out.println("rails of 3 mm: " + onRails);
    Retention held = onRails.retention().orElseThrow();
    System.out.println(Checks.toText(held.checks()));
    System.out.println(held.worksheet().toText());

    TorqueCoefficient zinc = TorqueCoefficient.ZINC;
    Bolt bolt = held.group().fixings().get(0).bolt();
    System.out.println(
        "tighten " + bolt + " to " + zinc.torque(bolt, TorqueCoefficient.REUSABLE_SHARE));
  }

  private static List<MountingHole> holes(double thickness) {
    Panel panel =
        Panel.of(
                Given.measured(millimetres(thickness), "thickness gauge"),
                Given.dataSheet(megapascals(270), "body sheet"),
                millimetres(10.5),
                millimetres(30))
            .withEdgeDistance(millimetres(30));
    List<MountingHole> holes = new ArrayList<>();
    for (double u : new double[] {40, 300, 560}) {
      for (double v : new double[] {40, 360}) {
        String name = "hole " + (holes.size() + 1);
        holes.add(new MountingHole(name, millimetres(u), millimetres(v), panel));
      }
    }
    return holes;
  }
}
