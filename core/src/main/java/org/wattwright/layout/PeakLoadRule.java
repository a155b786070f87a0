package org.wattwright.layout;

import java.util.Optional;
import org.wattwright.check.Check;

/** The peak load of the conditions; the check itself comes from the review of the windows. */
final class PeakLoadRule implements Rule {
  private final LimitRule limit;

  PeakLoadRule(Bus bus) {
    PeakLoad load = new PeakLoad(bus);
    this.limit = new LimitRule("battery.peak-load", load, Bound.atLeast(load.askedSi()));
  }

  @Override
  public String name() {
    return limit.name();
  }

  @Override
  public Gate on(Variant variant, int mostModules) {
    return limit.on(variant, mostModules);
  }

  @Override
  public Optional<Check> check(Candidate candidate) {
    return Optional.empty();
  }

  @Override
  public Optional<String> missing(Variant variant) {
    return Optional.empty();
  }

  @Override
  public Optional<Relaxation> relaxation(Candidate candidate, double shortfallSi) {
    return limit.relaxation(candidate, shortfallSi);
  }
}
