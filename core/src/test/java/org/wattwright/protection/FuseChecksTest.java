package org.wattwright.protection;

import static org.assertj.core.api.Assertions.assertThat;
import static org.wattwright.units.Measures.ampereSquaredSeconds;
import static org.wattwright.units.Measures.amperes;
import static org.wattwright.units.Measures.celsius;
import static org.wattwright.units.Measures.milliseconds;
import static org.wattwright.units.Measures.seconds;
import static org.wattwright.units.Measures.volts;

import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.wattwright.check.Check;
import org.wattwright.check.Given;
import org.wattwright.check.Outcome;
import org.wattwright.profile.Profile;
import org.wattwright.units.Kind;

/** Each check of a fuse passes, fails and stays open for its own reason. */
class FuseChecksTest {
  private static final FaultRange FAULTS =
      FaultRange.of(FaultParts.fault(400, 0.05, 1e-5), FaultParts.fault(300, 0.3, 1e-5));

  private static FuseDuty.Builder duty() {
    return FuseDuty.of(FAULTS)
        .highestVoltage(volts(403))
        .continuousCurrent(amperes(60))
        .air(celsius(60))
        .profile(Profile.constant(Kind.CURRENT, amperes(50), seconds(60)))
        .clearWithin(seconds(1))
        .withstand(Given.measured(ampereSquaredSeconds(500_000), "test"))
        .otherDeviceUpTo(amperes(600));
  }

  private static Check check(
      String code, UnaryOperator<FuseBuilder> fuse, UnaryOperator<FuseDuty.Builder> duty) {
    return fuse.apply(FaultParts.fuse()).build().checks(duty.apply(duty()).build()).stream()
        .filter(check -> check.code().equals("fuse." + code))
        .findFirst()
        .orElseThrow();
  }

  private static Outcome ofFuse(String code, UnaryOperator<FuseBuilder> fuse) {
    return check(code, fuse, d -> d).outcome();
  }

  private static Outcome ofDuty(String code, UnaryOperator<FuseDuty.Builder> duty) {
    return check(code, f -> f, duty).outcome();
  }

  @Test
  void aGoodFusePassesAll() {
    assertThat(FaultParts.fuse().build().checks(duty().build()))
        .hasSize(9)
        .allSatisfy(check -> assertThat(check.outcome()).as("%s", check).isEqualTo(Outcome.PASS))
        .allSatisfy(check -> assertThat(check.isSafety()).isTrue());
  }

  @Test
  void currents() {
    assertThat(ofDuty("continuous-current", d -> d.continuousCurrent(amperes(84))))
        .isEqualTo(Outcome.FAIL);
    assertThat(ofDuty("continuous-current", d -> d.continuousCurrent(amperes(83))))
        .isEqualTo(Outcome.CAUTION);
    // 100 A · 0.83666 · 0.8 = 66.9 A
    assertThat(
            ofDuty(
                "cyclic-current",
                d -> d.profile(Profile.constant(Kind.CURRENT, amperes(67), seconds(60)))))
        .isEqualTo(Outcome.FAIL);
    Fuse silent = Fuse.of("F", amperes(100)).build();
    assertThat(silent.checks(duty().build()))
        .allSatisfy(check -> assertThat(check.outcome()).isEqualTo(Outcome.NOT_CHECKED))
        .allSatisfy(check -> assertThat(check.missing().get(0)).startsWith("fuse."));
  }

  @Test
  void alternatingRatingDoesNotCountOnDirectCurrent() {
    Fuse fuse = Fuse.of("F", amperes(100)).alternatingVoltage(volts(690)).build();
    Check voltage =
        fuse.checks(duty().build()).stream()
            .filter(check -> check.code().equals("fuse.voltage"))
            .findFirst()
            .orElseThrow();
    assertThat(voltage.outcome()).isEqualTo(Outcome.FAIL);
    assertThat(voltage.note()).contains("alternating current only, 690 V", "fuse.directVoltage");
    assertThat(fuse).hasToString("F, 100 A, 690 V AC only");
  }

  @Test
  void ratings() {
    assertThat(ofDuty("voltage", d -> d.highestVoltage(volts(501)))).isEqualTo(Outcome.FAIL);
    assertThat(ofFuse("time-constant", f -> f.testTimeConstant(milliseconds(0.19))))
        .isEqualTo(Outcome.FAIL);
    assertThat(ofFuse("breaking-capacity", f -> f.breakingCapacity(amperes(7900))))
        .isEqualTo(Outcome.FAIL);
    assertThat(ofFuse("minimum-breaking-current", f -> f.partialRange(amperes(1001))))
        .isEqualTo(Outcome.FAIL);
    assertThat(ofFuse("minimum-breaking-current", FuseBuilder::partialRange))
        .isEqualTo(Outcome.NOT_CHECKED);
    assertThat(ofFuse("overload-range", f -> f.partialRange(amperes(601)))).isEqualTo(Outcome.FAIL);
    assertThat(ofFuse("overload-range", FuseBuilder::fullRange)).isEqualTo(Outcome.PASS);
  }

  @Test
  void capacitorsCountAgainstTheBreakingCapacity() {
    CapacitorDischarge inverter =
        CapacitorDischarge.of("inverter", org.wattwright.units.Measures.millifarads(1), volts(400))
            .through(
                org.wattwright.units.Measures.ohms(0.02), org.wattwright.units.Measures.henries(0));
    FuseDuty with =
        FuseDuty.of(FAULTS.withCapacitors(java.util.List.of(inverter)))
            .highestVoltage(volts(403))
            .continuousCurrent(amperes(60))
            .air(celsius(60))
            .build();
    Check check =
        FaultParts.fuse().build().checks(with).stream()
            .filter(c -> c.code().equals("fuse.breaking-capacity"))
            .findFirst()
            .orElseThrow();
    assertThat(check.outcome()).isEqualTo(Outcome.FAIL);
    assertThat(check.comparison()).isEqualTo("28 kA > 20 kA");
  }

  @Test
  void clearing() {
    assertThat(ofDuty("clearing-time", d -> d.clearWithin(milliseconds(50))))
        .isEqualTo(Outcome.FAIL);
    assertThat(ofFuse("clearing-time", f -> f.partialRange(amperes(2000)))).isEqualTo(Outcome.FAIL);
    // Largest at the lowest fault: 10⁶·0.0597 s + 58000.
    assertThat(
            ofDuty(
                "let-through",
                d -> d.withstand(Given.measured(ampereSquaredSeconds(110_000), "test"))))
        .isEqualTo(Outcome.FAIL);
    assertThat(
            ofDuty(
                "let-through",
                d -> d.withstand(Given.measured(ampereSquaredSeconds(130_000), "test"))))
        .isEqualTo(Outcome.PASS);
  }

  @Test
  void selectivityComparesOverTheWholeRange() {
    Fuse down = FaultParts.fuse().fullRange().build();
    Fuse up =
        Fuse.of("F-400", amperes(400))
            .preArcingCurve(
                TimeCurrentCurve.ofPoints()
                    .point(amperes(900), seconds(1000))
                    .point(amperes(1600), seconds(3))
                    .point(amperes(9000), milliseconds(6))
                    .tolerance(0)
                    .readingError(0)
                    .build())
            .preArcingJouleIntegral(ampereSquaredSeconds(450_000))
            .build();
    assertThat(Selectivity.of(up).over(down).check(FAULTS, volts(403)).outcome())
        .isEqualTo(Outcome.PASS);
    // Enough at the lowest fault, not at the highest.
    Fuse weak =
        up.toBuilder()
            .preArcingCurve(
                TimeCurrentCurve.ofPoints()
                    .point(amperes(900), seconds(1000))
                    .point(amperes(1600), seconds(3))
                    .point(amperes(3000), milliseconds(5))
                    .build())
            .preArcingJouleIntegral(ampereSquaredSeconds(45_000))
            .build();
    assertThat(Selectivity.of(weak).over(down).check(FAULTS, volts(403)).outcome())
        .isEqualTo(Outcome.FAIL);
    Fuse silent = Fuse.of("F", amperes(400)).build();
    assertThat(Selectivity.of(silent).over(down).check(FAULTS, volts(403)).outcome())
        .isEqualTo(Outcome.NOT_CHECKED);
    assertThat(Selectivity.of(up).over(silent).check(FAULTS, volts(403)).outcome())
        .isEqualTo(Outcome.NOT_CHECKED);
  }

  @Test
  void ratioOfRatingsBelongsToGeneralPurposeLinks() {
    Fuse up = Fuse.of("up", amperes(160)).build();
    Fuse down = Fuse.of("down", amperes(100)).build();
    assertThat(Selectivity.of(up).over(down).ofRatings(true).outcome()).isEqualTo(Outcome.PASS);
    assertThat(Selectivity.of(up).over(down).ofRatings(false).outcome())
        .isEqualTo(Outcome.NOT_CHECKED);
    Fuse large = Fuse.of("large", amperes(101)).build();
    assertThat(Selectivity.of(up).over(large).ofRatings(true).outcome()).isEqualTo(Outcome.FAIL);
    Fuse small = Fuse.of("small", amperes(10)).build();
    assertThat(Selectivity.of(up).over(small).ofRatings(true).outcome())
        .isEqualTo(Outcome.NOT_CHECKED);
  }
}
