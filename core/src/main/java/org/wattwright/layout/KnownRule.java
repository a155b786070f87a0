package org.wattwright.layout;

import java.util.Optional;
import java.util.function.Function;
import org.wattwright.check.Check;
import org.wattwright.check.Source;
import org.wattwright.voltage.OperatingConditions;

/** Something that must be known; a candidate of which it is not is provisional. */
final class KnownRule implements Rule {
  private final String name;
  private final Function<Variant, Optional<String>> missing;
  private final boolean reviewed;

  private KnownRule(String name, Function<Variant, Optional<String>> missing, boolean reviewed) {
    this.name = name;
    this.missing = missing;
    this.reviewed = reviewed;
  }

  /** What candidates are ranked by. */
  static Rule ranking(Property property) {
    return new KnownRule(property.name() + ", to rank by", property::missing, false);
  }

  /** The regeneration current, which may be none, but must be stated. */
  static Rule regeneration(OperatingConditions conditions) {
    Optional<String> input =
        conditions.regenerationIsStated()
            ? Optional.empty()
            : Optional.of("conditions.regenerationCurrent, 0 A if there is none");
    return new KnownRule("regeneration into the full pack", variant -> input, true);
  }

  @Override
  public String name() {
    return name;
  }

  @Override
  public Gate on(Variant variant, int mostModules) {
    boolean known = missing(variant).isEmpty();
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
    return reviewed
        ? Optional.empty()
        : missing(candidate.variant())
            .map(
                input ->
                    Check.named("pack.rank", name)
                        .source(Source.requirement("ranking"))
                        .notChecked(input));
  }

  @Override
  public Optional<String> missing(Variant variant) {
    return missing.apply(variant);
  }

  @Override
  public Optional<Relaxation> relaxation(Candidate candidate, double shortfallSi) {
    return Optional.empty();
  }
}
