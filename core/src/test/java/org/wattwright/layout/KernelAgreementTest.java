package org.wattwright.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wattwright.check.Check;
import org.wattwright.check.Outcome;
import org.wattwright.check.Recorder;
import org.wattwright.testing.Generator;
import org.wattwright.units.Kind;

/** The doubles of the search against the pack and the review of the windows, value by value. */
class KernelAgreementTest {
  private static final double RELATIVE = 1e-12;

  static Stream<Generator> cases() {
    return Generator.cases(40);
  }

  @ParameterizedTest
  @MethodSource("cases")
  void everyPropertyIsWhatThePackSays(Generator random) {
    SearchSpec spec = new SearchSpec(RandomSearch.of(random).search().draft());
    Variant variant = random.oneOf(spec.space().variants());
    int series = random.count(1, RandomSearch.SERIES);
    int parallel = random.count(1, RandomSearch.PARALLEL);
    Candidate candidate = new Candidate(spec, variant, series, parallel);
    for (Property property : spec.worksheetProperties()) {
      double kernel = property.on(variant, Recorder.OFF).valueAt(series, parallel, Recorder.OFF);
      double replayed = property.replayed(candidate);
      if (Double.isNaN(replayed)) {
        assertThat(kernel).as(property.name()).isNaN();
        assertThat(property.missing(variant)).as(property.name()).isPresent();
      } else {
        assertThat(kernel)
            .as(property.name())
            .isCloseTo(replayed, within(RELATIVE * Math.max(1, Math.abs(replayed))));
      }
    }
  }

  /** FAIL or NOT_CHECKED of the checks is what the gates say, requirement by requirement. */
  @ParameterizedTest
  @MethodSource("cases")
  void gatesAndChecksCountTheSameFailures(Generator random) {
    SearchSpec spec = new SearchSpec(RandomSearch.of(random).search().draft());
    for (int i = 0; i < 20; i++) {
      Candidate candidate =
          new Candidate(
              spec,
              random.oneOf(spec.space().variants()),
              random.count(1, RandomSearch.SERIES),
              random.count(1, RandomSearch.PARALLEL));
      List<Check> checks = candidate.checks();
      assertThat(gates(candidate, spec, Gate.Verdict.BROKEN))
          .as("%s %s", candidate, checks)
          .isEqualTo(checks.stream().filter(c -> c.outcome() == Outcome.FAIL).count());
      assertThat(gates(candidate, spec, Gate.Verdict.UNKNOWN))
          .as("%s %s", candidate, checks)
          .isEqualTo(checks.stream().filter(c -> c.outcome() == Outcome.NOT_CHECKED).count());
    }
  }

  private static long gates(Candidate candidate, SearchSpec spec, Gate.Verdict verdict) {
    return spec.rules().stream()
        .map(rule -> rule.on(candidate.variant(), spec.space().mostModules()))
        .filter(gate -> gate.judge(candidate.series(), candidate.parallel()) == verdict)
        .count();
  }

  @ParameterizedTest
  @MethodSource("cases")
  void envelopeOfTheWorksheetIsThatOfTheCandidate(Generator random) {
    SearchSpec spec = new SearchSpec(RandomSearch.of(random).search().draft());
    Candidate candidate = new Candidate(spec, spec.space().variants().get(0), 7, 2);
    double shownV =
        candidate.worksheet().steps().stream()
            .filter(step -> step.symbol().equals("U_min"))
            .mapToDouble(step -> Kind.VOLTAGE.siValueOf(step.result().quantity(Kind.VOLTAGE)))
            .findFirst()
            .orElseThrow();
    double actualV = Kind.VOLTAGE.siValueOf(candidate.envelope().orElseThrow().emptyUnderLoad());
    assertThat(shownV).isCloseTo(actualV, within(RELATIVE * Math.abs(actualV)));
  }
}
