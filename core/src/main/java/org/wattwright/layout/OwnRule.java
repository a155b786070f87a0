package org.wattwright.layout;

import java.util.Objects;
import java.util.Optional;
import org.wattwright.check.Check;
import org.wattwright.check.Outcome;
import org.wattwright.internal.Require;

/** A requirement of the caller's own of which only the verdict is known. */
final class OwnRule implements Rule {
  private final Requirement requirement;
  private final SearchSpec spec;

  OwnRule(Requirement requirement, SearchSpec spec) {
    this.requirement = requirement;
    this.spec = spec;
  }

  @Override
  public String name() {
    return Require.text("Requirement.name", requirement.name());
  }

  @Override
  public Gate on(Variant variant, int mostModules) {
    return new Gate() {
      @Override
      public Verdict judge(int series, int parallel) {
        Outcome outcome = checkOf(new Candidate(spec, variant, series, parallel)).outcome();
        return switch (outcome) {
          case PASS, CAUTION -> Verdict.KEPT;
          case NOT_CHECKED -> Verdict.UNKNOWN;
          case FAIL -> Verdict.BROKEN;
        };
      }

      @Override
      public double shortfallAt(int series, int parallel) {
        return Double.POSITIVE_INFINITY;
      }
    };
  }

  private Check checkOf(Candidate candidate) {
    return Objects.requireNonNull(requirement.check(candidate), () -> name() + ": check");
  }

  @Override
  public Optional<Check> check(Candidate candidate) {
    return Optional.of(checkOf(candidate));
  }

  /** Differs from candidate to candidate. */
  @Override
  public Optional<String> missing(Variant variant) {
    return Optional.of("input of " + name());
  }

  @Override
  public Optional<Relaxation> relaxation(Candidate candidate, double shortfallSi) {
    return Optional.empty();
  }
}
