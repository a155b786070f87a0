package org.wattwright.protection;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Percentage.withPercentage;
import static org.wattwright.units.Measures.amperes;
import static org.wattwright.units.Measures.celsius;
import static org.wattwright.units.Measures.metres;
import static org.wattwright.units.Measures.seconds;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.wattwright.conductor.Installation;
import org.wattwright.protection.CoverRules.Condition;

/** When trips and fuse deal with a current, with the rise of the current and the opening time. */
class CoverKernelTest {
  private static final double OWN_ALGEBRA = 1e-9;
  private static final double RISE_S = 0.01;

  /** 10⁶ A²s whatever the current. */
  private static final TimeCurve CURVE =
      TimeCurve.of(new double[] {100, 20_000}, new double[] {100, 0.0025});

  private static final FuseLine FUSE = new FuseLine(CURVE, CURVE, 0, 20_000);
  private static final SwitchLine CONTACTOR = new SwitchLine(1500, 0.02, 150, List.of());
  private static final CableWithstand CABLE =
      CableWithstand.of(
          CircuitParts.cables().get(9), Installation.freeAir(celsius(40)), celsius(60));

  private static CoverKernel kernel(boolean isSourceLimited, OvercurrentTrip... trips) {
    Circuit circuit =
        Circuit.of("traction", CircuitRole.TRACTION_MAIN)
            .continuousCurrent(amperes(100))
            .length(metres(3))
            .installation(Installation.freeAir(celsius(40)))
            .trips(List.of(trips))
            .build();
    return new CoverKernel(circuit, isSourceLimited, RISE_S);
  }

  private static final OvercurrentTrip QUICK = OvercurrentTrip.at(amperes(800), seconds(0.3), "b");
  private static final OvercurrentTrip SLOW = OvercurrentTrip.at(amperes(300), seconds(4), "b");

  @Test
  void aTripOpensAfterDelayAndOpeningTime() {
    CoverRules rules = kernel(false, SLOW, QUICK).rules(CABLE, FUSE, CONTACTOR);
    assertThat(rules.trips()).extracting(CoverRules.Trip::opensS).containsExactly(0.32, 4.02);
    assertThat(rules.tripped(4.01).contains(500)).isFalse();
    assertThat(rules.tripped(4.02).contains(500)).isTrue();
    assertThat(rules.tripped(0.32).contains(1000)).isTrue();
    assertThat(rules.tripped(5).contains(1501)).isFalse();
    CoverRules limited = kernel(true, QUICK).rules(CABLE, null, null);
    assertThat(limited.trips()).extracting(CoverRules.Trip::opensS).containsExactly(0.3);
    assertThat(limited.tripped().contains(1501)).isTrue();
    assertThat(kernel(false, QUICK).rules(CABLE, null, null).tripped().count()).isZero();
    assertThat(kernel(true).rules(CABLE, null, null).tripped().count()).isZero();
  }

  @Test
  void theRiseOfTheCurrentDelaysTheFuse() {
    CoverKernel kernel = kernel(false);
    CoverRules rules = kernel.rules(CABLE, FUSE, null);
    assertThat(kernel.clearedWithin(1, rules, FUSE).fromA(0))
        .isCloseTo(Math.sqrt(1e6 / (1 - RISE_S)), withPercentage(OWN_ALGEBRA));
    assertThat(kernel.clearedWithin(RISE_S / 2, rules, FUSE).count()).isZero();
  }

  @Test
  void aboveTheBreakLimitTheFuseComesBeforeTheQuickestTrip() {
    CoverRules rules = kernel(false, SLOW, QUICK).rules(CABLE, FUSE, CONTACTOR);
    CurrentRanges first =
        rules.fuse().stream()
            .filter(each -> each.otherwise() == CoverShortfall.CONTACTOR_OPENS_FIRST)
            .map(Condition::holds)
            .findFirst()
            .orElseThrow();
    assertThat(first.toA(0)).isEqualTo(1500);
    assertThat(first.fromA(1)).isCloseTo(Math.sqrt(1e6 / (0.3 - RISE_S)), withPercentage(1e-9));
  }
}
