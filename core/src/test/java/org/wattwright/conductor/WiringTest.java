package org.wattwright.conductor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.wattwright.units.Measures.amperes;
import static org.wattwright.units.Measures.celsius;
import static org.wattwright.units.Measures.kilogramsPerMetre;
import static org.wattwright.units.Measures.metres;
import static org.wattwright.units.Measures.millimetres;
import static org.wattwright.units.Measures.milliohms;
import static org.wattwright.units.Measures.squareMillimetres;
import static org.wattwright.units.Measures.volts;

import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.wattwright.check.Check;
import org.wattwright.check.Given;
import org.wattwright.units.Kind;

/** Three conductors, two, or one: metal, drop and heat by circuit theory of balanced phases. */
class WiringTest {
  private static final Cable CABLE =
      Cable.of(
              "T",
              ConductorSize.metric(squareMillimetres(35), StrandClass.FLEXIBLE),
              InsulationMaterial.XLPE)
          .conductorDiameter(millimetres(7.9))
          .outerDiameter(millimetres(11.7))
          .temperatureLimit(celsius(125))
          .massPerLength(kilogramsPerMetre(0.4))
          .build();
  private static final Joint LUG = Joint.of("lug", Given.dataSheet(milliohms(0.1), "lug"));

  private static ConductorRun run(Wiring wiring, int lugs) {
    return ConductorRun.of(CABLE, metres(2))
        .withJoints(Collections.nCopies(lugs, LUG))
        .wired(wiring);
  }

  /** 0.554 mΩ/m at 20 °C, IEC 60228 class 5. */
  private static final double PHASE_OHM = 2 * 0.554e-3;

  @Test
  void threePhasesTakeThreeConductors() {
    ConductorRun phases = run(Wiring.THREE_PHASE, 4);
    assertThat(Kind.LENGTH.siValueOf(phases.cableLength())).isCloseTo(6, within(1e-12));
    assertThat(Kind.LENGTH.siValueOf(phases.inParallel(2).cableLength()))
        .isCloseTo(12, within(1e-12));
    assertThat(Kind.MASS.siValueOf(phases.mass().orElseThrow())).isCloseTo(2.4, within(1e-12));
    assertThat(Kind.MASS.siValueOf(run(Wiring.PAIR, 0).mass().orElseThrow()))
        .isCloseTo(1.6, within(1e-12));
    assertThat(Kind.MASS.siValueOf(run(Wiring.CHASSIS_RETURN, 0).mass().orElseThrow()))
        .isCloseTo(0.8, within(1e-12));
    assertThat(Wiring.THREE_PHASE.conductors()).isEqualTo(3);
    assertThat(Wiring.PAIR.conductors()).isEqualTo(2);
    assertThat(Wiring.CHASSIS_RETURN.conductors()).isEqualTo(1);
  }

  /** Between two phases √3·I·R of one phase, in all three 3·I²·R. */
  @Test
  void losesVoltageBetweenPhasesAndHeatInAllOfThem() {
    ConductorRun phases = run(Wiring.THREE_PHASE, 4);
    double oneOhm = PHASE_OHM + 2 * 0.1e-3;
    assertThat(Kind.VOLTAGE.siValueOf(phases.dropAt(amperes(200), celsius(20))))
        .isCloseTo(Math.sqrt(3) * 200 * oneOhm, within(1e-9));
    assertThat(Kind.POWER.siValueOf(phases.lossAt(amperes(200), celsius(20))))
        .isCloseTo(3 * 200 * 200 * oneOhm, within(1e-6));
    assertThat(Kind.RESISTANCE.siValueOf(phases.loopResistanceAt(celsius(20))))
        .isCloseTo(2 * oneOhm, within(1e-12));
  }

  @Test
  void countsOnlyTheWayOutWithAReturnThroughTheBody() {
    ConductorRun out = run(Wiring.CHASSIS_RETURN, 0);
    assertThat(Kind.VOLTAGE.siValueOf(out.dropAt(amperes(200), celsius(20))))
        .isCloseTo(200 * PHASE_OHM, within(1e-9));
    assertThat(out).hasToString("35 mm² T, chassis return of 2 m, 0 joints");
    assertThat(run(Wiring.THREE_PHASE, 2)).hasToString("35 mm² T, three phases of 2 m, 2 joints");
    assertThat(run(Wiring.PAIR, 0)).isEqualTo(ConductorRun.of(CABLE, metres(2)));
    assertThat(run(Wiring.THREE_PHASE, 0)).isNotEqualTo(ConductorRun.of(CABLE, metres(2)));
  }

  @Test
  void sizesThreePhasesByTheVoltageBetweenThem() {
    ConductorSizer sizer =
        ConductorSizer.over(List.of(CABLE))
            .installation(Installation.freeAir(celsius(45)))
            .continuousCurrent(amperes(150))
            .length(metres(2))
            .voltageDropAtMost(volts(1));
    double pairV = dropV(sizer);
    double phasesV = dropV(sizer.wiring(Wiring.THREE_PHASE));
    double bodyV = dropV(sizer.wiring(Wiring.CHASSIS_RETURN));
    assertThat(phasesV / pairV).isCloseTo(Math.sqrt(3) / 2, within(1e-12));
    assertThat(bodyV / pairV).isCloseTo(0.5, within(1e-12));
  }

  private static double dropV(ConductorSizer sizer) {
    Check drop =
        sizer.run().table().lines().get(0).check(SizingCriterion.VOLTAGE_DROP).orElseThrow();
    return Kind.VOLTAGE.siValueOf(drop.actual().orElseThrow().quantity(Kind.VOLTAGE));
  }
}
