package org.wattwright.installation;

import static org.wattwright.units.Measures.kilograms;
import static org.wattwright.units.Measures.millimetres;
import static org.wattwright.units.Measures.newtons;
import static org.wattwright.units.Measures.standardGravities;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.wattwright.check.Given;
import org.wattwright.check.Source;
import org.wattwright.testing.ReferenceRow;
import org.wattwright.testing.ReferenceRows;
import org.wattwright.testing.Validation;
import org.wattwright.units.Kind;

/** Bolt groups in eccentric shear and overturning. */
class FixingGroupReferenceTest {
  @RegisterExtension static final Validation VALIDATION = Validation.of("installation");

  private static final ReferenceRows ROWS = ReferenceRows.read("/installation/bolts.csv");
  private static final Bolt M8 = Bolt.of("M8", PropertyClass.CLASS_8_8);

  private static ReferenceRow row(int number) {
    return ROWS.row(String.format(Locale.ROOT, "BLT-%03d", number));
  }

  private static FixingGroup group(double[]... placesMm) {
    List<Fixing> fixings = new ArrayList<>();
    for (double[] place : placesMm) {
      fixings.add(
          Fixing.at(
              "bolt " + (fixings.size() + 1), millimetres(place[0]), millimetres(place[1]), M8));
    }
    Footprint wide =
        new Footprint(millimetres(-500), millimetres(500), millimetres(-500), millimetres(500));
    return FixingGroup.of(wide, fixings);
  }

  private static FixingGroup rectangle(double x, double y) {
    return group(new double[][] {{x, y}, {x, -y}, {-x, y}, {-x, -y}});
  }

  /** In the plane of the bolts. */
  private static GroupLoad load(double fx, double fy, double xMm, double yMm) {
    return new GroupLoad(
        newtons(fx), newtons(fy), newtons(0), millimetres(xMm), millimetres(yMm), millimetres(0));
  }

  @Test
  void barOnChannel() {
    FixingGroup bar = rectangle(75, 60);
    GroupReactions held = bar.reactions(load(0, -16000, 425, 0)).orElseThrow();
    FixingReaction near = held.fixings().get(0);
    FixingReaction far = held.fixings().get(2);
    double radius = Math.hypot(75, 60);
    double secondaryN = Kind.FORCE.siValueOf(near.shearU()) / 60 * radius;
    VALIDATION.computed(row(182), -momentNm(held, 75, 60));
    VALIDATION.computed(
        row(183), Math.sqrt(Kind.AREA.siValueOf(bar.sumOfSquaredRadii()) / 4) * 1000);
    VALIDATION.computed(
        row(184), -(Kind.FORCE.siValueOf(near.shearV()) + Kind.FORCE.siValueOf(far.shearV())) / 2);
    VALIDATION.computed(row(185), Math.abs(secondaryN));
    VALIDATION.computed(row(186), near.shear(), Kind.FORCE);
    VALIDATION.computed(row(187), far.shear(), Kind.FORCE);
  }

  private static double momentNm(GroupReactions held, double x, double y) {
    double[][] places = {{x, y}, {x, -y}, {-x, y}, {-x, -y}};
    double sum = 0;
    for (int i = 0; i < places.length; i++) {
      FixingReaction each = held.fixings().get(i);
      sum +=
          (places[i][0] * Kind.FORCE.siValueOf(each.shearV())
                  - places[i][1] * Kind.FORCE.siValueOf(each.shearU()))
              / 1000;
    }
    return sum;
  }

  @Test
  void smallerPattern() {
    GroupReactions held = rectangle(40, 25).reactions(load(0, -6000, 120, 0)).orElseThrow();
    VALIDATION.computed(row(188), held.highestShear(), Kind.FORCE);
    VALIDATION.computed(row(189), held.of("bolt 3").shear(), Kind.FORCE);
  }

  @Test
  void threeBoltsAskew() {
    FixingGroup three = group(new double[][] {{0, 0}, {120, 0}, {40, 90}});
    GroupReactions held = three.reactions(load(2000, -5000, 200, 60)).orElseThrow();
    VALIDATION.computed(row(190), three.centreU(), Kind.LENGTH);
    VALIDATION.computed(row(191), three.centreV(), Kind.LENGTH);
    double centreUM = Kind.LENGTH.siValueOf(three.centreU());
    double centreVM = Kind.LENGTH.siValueOf(three.centreV());
    VALIDATION.computed(row(192), (0.2 - centreUM) * -5000 - (0.06 - centreVM) * 2000);
    VALIDATION.computed(row(193), three.sumOfSquaredRadii(), Kind.AREA);
    for (int i = 0; i < 3; i++) {
      VALIDATION.computed(row(194 + i), held.fixings().get(i).shear(), Kind.FORCE);
    }
  }

  /** Pack of 180 kg, thrown toward u = 0, where it tips. */
  private static Retention pack() {
    List<Fixing> fixings = new ArrayList<>();
    for (double uMm : new double[] {50, 450}) {
      for (double vMm : new double[] {100, 200, 300}) {
        fixings.add(Fixing.at(uMm + "/" + vMm, millimetres(uMm), millimetres(vMm), M8));
      }
    }
    return Retention.of("pack", Given.measured(kilograms(180), "scales"))
        .on(
            MountingFace.FLOOR,
            FixingGroup.of(Footprint.of(millimetres(500), millimetres(400)), fixings))
        .centre(millimetres(250), millimetres(200), millimetres(150))
        .under(
            AccelerationRules.of("own", Source.requirement("test"))
                .with(LoadDirection.REARWARD, standardGravities(20)))
        .build();
  }

  @Test
  void overturning() {
    GroupReactions held = pack().reactions(LoadDirection.REARWARD, false).orElseThrow();
    double farN = Kind.FORCE.siValueOf(held.of("450.0/100.0").tension());
    double nearN = Kind.FORCE.siValueOf(held.of("50.0/100.0").tension());
    VALIDATION.computed(row(197), 3 * (farN * 0.45 + nearN * 0.05));
    VALIDATION.computed(row(198), farN);
    VALIDATION.computed(row(199), nearN);
    GroupReactions helped = pack().reactions(LoadDirection.REARWARD, true).orElseThrow();
    VALIDATION.computed(row(200), helped.highestTension(), Kind.FORCE);
    VALIDATION.computed(row(201), held.highestShear(), Kind.FORCE);
    FixingUse combined =
        pack().uses().stream()
            .filter(use -> use.mode() == FixingMode.BOLT_COMBINED)
            .max(java.util.Comparator.comparingDouble(FixingUse::share))
            .orElseThrow();
    VALIDATION.computed(row(202), combined.actual().number());
  }
}
