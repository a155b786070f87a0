package org.wattwright.voltage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.wattwright.units.Measures.amperes;
import static org.wattwright.units.Measures.celsius;
import static org.wattwright.units.Measures.millivolts;
import static org.wattwright.units.Measures.seconds;
import static org.wattwright.units.Measures.volts;
import static org.wattwright.voltage.TestParts.voltsOf;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wattwright.battery.BatteryModule;
import org.wattwright.battery.Pack;
import org.wattwright.check.Outcome;
import org.wattwright.testing.Generator;

class WindowMatcherPropertyTest {
  static Stream<Generator> cases() {
    return Generator.cases(100);
  }

  static Stream<Generator> fewCases() {
    return Generator.cases(40);
  }

  private static Device device(Generator random, int index, double widen) {
    boolean charger = random.chance(0.4);
    double lowestV = random.between(20, 250);
    double highestV = lowestV * random.between(1.2, 4);
    VoltageWindow window = TestParts.window(lowestV / widen, highestV * widen);
    if (random.chance(0.7)) {
      window = window.absoluteMaximum(volts(highestV * random.between(1, 1.1) * widen));
    }
    return Device.of("device " + index, charger ? DeviceRole.CHARGER : DeviceRole.INVERTER, window)
        .build();
  }

  private static WindowMatcher matcher(
      Generator random, BatteryModule module, OperatingConditions conditions, double widen) {
    WindowMatcher matcher = WindowMatcher.of(module, random.count(1, 3)).under(conditions);
    int count = random.count(1, 4);
    for (int i = 1; i <= count; i++) {
      matcher = matcher.device(device(random, i, widen));
    }
    return matcher;
  }

  private static WindowMatcher matcher(long seed, double widen) {
    Generator random = Generator.ofSeed(seed);
    BatteryModule module = TestParts.module(TestParts.randomCell(random), random.count(4, 16));
    return matcher(random, module, TestParts.randomConditions(random), widen);
  }

  private static List<Integer> counts(WindowMatch match) {
    return match.isPossible() ? match.orElseThrow() : List.of();
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("fewCases")
  void matchIsTheNumbersWhoseReviewHoldsNoFail(Generator random) {
    int series = random.count(4, 16);
    BatteryModule module = TestParts.module(TestParts.randomCell(random), series);
    WindowMatcher matcher =
        matcher(random, module, TestParts.randomConditions(random), random.between(1, 1.5));
    List<Integer> reviewed = new ArrayList<>();
    for (int n = 1; n <= 400 / series; n++) {
      if (matcher.review(n).outcome() != Outcome.FAIL) {
        reviewed.add(n);
      }
    }
    assertThat(counts(matcher.match())).isEqualTo(reviewed);
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("cases")
  void aWiderWindowNeverLosesANumber(Generator random) {
    long seed = random.count(0, Integer.MAX_VALUE - 1);
    double narrow = random.between(1, 1.4);
    assertThat(counts(matcher(seed, narrow * random.between(1, 1.5)).match()))
        .containsAll(counts(matcher(seed, narrow).match()));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("cases")
  void conflictTellsTheTruthAboutItsTwoSides(Generator random) {
    WindowMatcher matcher =
        matcher(
            random,
            TestParts.module(TestParts.randomCell(random), random.count(4, 16)),
            TestParts.randomConditions(random),
            1);
    if (!(matcher.match() instanceof WindowMatch.Conflict conflict)) {
      return;
    }
    int most = conflict.most();
    if (most >= 1) {
      assertThat(brokenUpperEnds(matcher.review(most))).isEmpty();
    }
    assertThat(brokenUpperEnds(matcher.review(most + 1)))
        .anyMatch(what -> what.endsWith(conflict.upper()));
    conflict
        .fewest()
        .ifPresent(
            fewest -> {
              assertThat(fewest).isGreaterThan(most);
              double fullV = voltsOf(matcher.review(fewest).envelope().fullUnderCharge());
              double endOfChargeV = voltsOf(matcher.review(fewest).envelope().endOfCharge());
              double apartV = voltsOf(conflict.apart().orElseThrow());
              double reachedV = voltsOf(conflict.upperEnd()) + apartV;
              assertThat(Math.min(Math.abs(reachedV - fullV), Math.abs(reachedV - endOfChargeV)))
                  .isLessThan(1e-9);
              assertThat(apartV).isPositive();
            });
  }

  private static List<String> brokenUpperEnds(WindowReview review) {
    return review.checks().stream()
        .filter(check -> check.outcome() == Outcome.FAIL)
        .filter(check -> check.relation() == org.wattwright.check.Check.Relation.AT_MOST)
        .filter(check -> !check.code().equals("battery.peak-load"))
        .map(org.wattwright.check.Check::what)
        .toList();
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("cases")
  void moreModulesRaiseEveryVoltage(Generator random) {
    BatteryModule module = TestParts.module(TestParts.randomCell(random), random.count(2, 12));
    OperatingConditions conditions = TestParts.randomConditions(random);
    VoltageEnvelope before = VoltageEnvelope.of(Pack.of(module, 1, 1), conditions);
    for (int n = 2; n <= 20; n++) {
      VoltageEnvelope next = VoltageEnvelope.of(Pack.of(module, n, 1), conditions);
      assertThat(voltsOf(next.endOfCharge())).isGreaterThan(voltsOf(before.endOfCharge()));
      assertThat(voltsOf(next.fullUnderCharge())).isGreaterThan(voltsOf(before.fullUnderCharge()));
      assertThat(voltsOf(next.fullAtRest())).isGreaterThan(voltsOf(before.fullAtRest()));
      assertThat(voltsOf(next.nominal())).isGreaterThan(voltsOf(before.nominal()));
      assertThat(voltsOf(next.emptyAtRest())).isGreaterThan(voltsOf(before.emptyAtRest()));
      assertThat(voltsOf(next.emptyUnderLoad())).isGreaterThan(voltsOf(before.emptyUnderLoad()));
      before = next;
    }
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("cases")
  void envelopeIsInOrder(Generator random) {
    BatteryModule module = TestParts.module(TestParts.randomCell(random), random.count(2, 12));
    VoltageEnvelope envelope =
        VoltageEnvelope.of(Pack.of(module, 8, 2), TestParts.randomConditions(random));
    assertThat(voltsOf(envelope.fullUnderCharge()))
        .isGreaterThanOrEqualTo(voltsOf(envelope.endOfCharge()));
    assertThat(voltsOf(envelope.fullAtRest())).isGreaterThan(voltsOf(envelope.nominal()));
    assertThat(voltsOf(envelope.nominal())).isGreaterThan(voltsOf(envelope.emptyAtRest()));
    assertThat(voltsOf(envelope.emptyAtRest()))
        .isGreaterThanOrEqualTo(voltsOf(envelope.emptyUnderLoad()));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("cases")
  void colderSagsDeeper(Generator random) {
    BatteryModule module = TestParts.module(TestParts.randomCell(random), 10);
    double coldC = random.typed(-19, 20, 1);
    OperatingConditions.Builder conditions =
        TestParts.conditions().peakDischargeCurrent(amperes(random.between(20, 200)), seconds(10));
    double coldV = loadedV(module, conditions.coldest(celsius(coldC)).build());
    double warmV =
        loadedV(module, conditions.coldest(celsius(coldC + random.between(0.5, 5))).build());
    double leastV = 50 * 2.5; // every cell at its minimum: there the load is cut
    assertThat(coldV).isLessThanOrEqualTo(warmV * (1 + 1e-12));
    if (coldV > leastV * (1 + 1e-9)) {
      assertThat(coldV).isLessThan(warmV);
    }
  }

  private static double loadedV(BatteryModule module, OperatingConditions conditions) {
    return voltsOf(VoltageEnvelope.of(Pack.of(module, 5, 1), conditions).emptyUnderLoad());
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("cases")
  void windowsInMillivoltsGiveTheSameNumbers(Generator random) {
    BatteryModule module = TestParts.module(TestParts.randomCell(random), random.count(4, 16));
    OperatingConditions conditions = TestParts.randomConditions(random);
    double lowestV = random.typed(20, 150, 1);
    double highestV = random.typed(160, 400, 1);
    Device inVolts =
        Device.of("a", DeviceRole.INVERTER, TestParts.window(lowestV, highestV)).build();
    Device inMillivolts =
        Device.of(
                "a",
                DeviceRole.INVERTER,
                VoltageWindow.operating(
                    VoltageRange.between(millivolts(lowestV * 1000), millivolts(highestV * 1000))))
            .build();
    assertThat(counts(WindowMatcher.of(module, 1).device(inMillivolts).under(conditions).match()))
        .isEqualTo(counts(WindowMatcher.of(module, 1).device(inVolts).under(conditions).match()));
  }
}
