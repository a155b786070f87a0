package org.wattwright.protection;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.wattwright.check.Outcome;

class CurrentCoverTest {
  private static final CoverRules RULES =
      new CoverRules(
          CurrentRanges.of(0, 250),
          List.of(
              new CoverRules.Condition(
                  CoverShortfall.BELOW_MINIMUM_BREAKING, CurrentRanges.of(1000, 1e9)),
              new CoverRules.Condition(
                  CoverShortfall.FUSE_SLOWER_THAN_CABLE, CurrentRanges.of(1400, 1e9))),
          List.of(trip(0.3, 400, 1500)));

  private static CoverRules.Trip trip(double opensS, double fromA, double breakA) {
    return new CoverRules.Trip(
        opensS,
        List.of(
            new CoverRules.Condition(CoverShortfall.BELOW_TRIP, CurrentRanges.of(fromA, 1e9)),
            new CoverRules.Condition(
                CoverShortfall.ABOVE_CONTACTOR_BREAK, CurrentRanges.of(0, breakA))));
  }

  @Test
  void namesWhatDealsWithEachBandAndTheGaps() {
    CurrentCover cover = CurrentCover.of("traction", 200, 6000, RULES);
    assertThat(cover)
        .hasToString(
            "200 A to 250 A: borne for ever; "
                + "250 A to 400 A: nothing (below the fuse's minimum breaking current,"
                + " below the trip); "
                + "400 A to 1.4 kA: trip; "
                + "1.4 kA to 1.5 kA: fuse and trip; "
                + "1.5 kA to 6 kA: fuse");
    assertThat(cover.isComplete()).isFalse();
    assertThat(cover.gaps()).hasSize(1);
    assertThat(cover.check().outcome()).isEqualTo(Outcome.FAIL);
    assertThat(cover.check().note()).contains("250 A to 400 A");
  }

  @Test
  void isCompleteWithoutAGap() {
    CoverRules rules = new CoverRules(CurrentRanges.of(0, 400), RULES.fuse(), RULES.trips());
    CurrentCover cover = CurrentCover.of("traction", 200, 6000, rules);
    assertThat(cover.isComplete()).isTrue();
    assertThat(cover.check().outcome()).isEqualTo(Outcome.PASS);
    assertThat(rules.covered().covers(200, 6000)).isTrue();
  }

  @Test
  void severalTripsCoverTogether() {
    CoverRules rules =
        new CoverRules(
            CurrentRanges.of(0, 250),
            RULES.fuse(),
            List.of(trip(0.02, 900, 1500), trip(8, 250, 600)));
    CurrentCover cover = CurrentCover.of("traction", 200, 6000, rules);
    assertThat(cover)
        .hasToString(
            "200 A to 250 A: borne for ever; 250 A to 600 A: trip; "
                + "600 A to 900 A: nothing (below the fuse's minimum breaking current,"
                + " above what the contactor may break); "
                + "900 A to 1.4 kA: trip; 1.4 kA to 1.5 kA: fuse and trip; 1.5 kA to 6 kA: fuse");
    assertThat(rules.tripped(1).contains(1000)).isTrue();
    assertThat(rules.tripped(1).contains(300)).isFalse();
    assertThat(rules.tripped(8).contains(300)).isTrue();
    CoverKernel kernel =
        new CoverKernel(Circuit.of("traction", CircuitRole.TRACTION_MAIN).build(), false, 0);
    assertThat(kernel.clearingS(300, rules, null)).isEqualTo(8);
    assertThat(kernel.clearingS(1000, rules, null)).isEqualTo(0.02);
    assertThat(kernel.clearingS(700, rules, null)).isInfinite();
  }
}
