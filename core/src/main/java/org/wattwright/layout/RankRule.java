package org.wattwright.layout;

import java.util.Optional;
import org.wattwright.check.Check;
import org.wattwright.check.Source;

/** What candidates are ranked by must be known; a candidate of which it is not is provisional. */
final class RankRule implements Rule {
  private final Property property;

  RankRule(Property property) {
    this.property = property;
  }

  @Override
  public String name() {
    return property.name() + ", to rank by";
  }

  @Override
  public Gate on(Variant variant, int mostModules) {
    boolean known = property.missing(variant).isEmpty();
    Gate.Verdict verdict = known ? Gate.Verdict.KEPT : Gate.Verdict.UNKNOWN;
    return new Gate() {
      @Override
      public Verdict judge(int series, int parallel) {
        return verdict;
      }

      @Override
      public double shortfallAt(int series, int parallel) {
        return Double.POSITIVE_INFINITY;
      }
    };
  }

  @Override
  public Optional<Check> check(Candidate candidate) {
    return property
        .missing(candidate.variant())
        .map(
            input ->
                Check.named("pack.rank", name())
                    .source(Source.requirement("ranking"))
                    .notChecked(input));
  }

  @Override
  public Optional<String> missing(Variant variant) {
    return property.missing(variant);
  }

  @Override
  public Optional<Relaxation> relaxation(Candidate candidate, double shortfallSi) {
    return Optional.empty();
  }
}
