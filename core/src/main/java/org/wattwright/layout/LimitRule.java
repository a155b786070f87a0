package org.wattwright.layout;

import java.util.Optional;
import org.wattwright.check.Check;
import org.wattwright.check.CheckBuilder;
import org.wattwright.check.Source;

/** A limit on a property. */
final class LimitRule implements Rule {
  private final String code;
  private final Property property;
  private final Bound bound;

  LimitRule(String code, Property property, Bound bound) {
    this.code = code;
    this.property = property;
    this.bound = bound;
  }

  @Override
  public String name() {
    return property.name() + " " + bound.relation().sign() + " " + limit();
  }

  private String limit() {
    return property.figure(bound.limitSi()).toString();
  }

  @Override
  public Gate on(Variant variant, int mostModules) {
    return property.gate(variant, bound, mostModules);
  }

  @Override
  public Optional<Check> check(Candidate candidate) {
    CheckBuilder check =
        Check.named(code, property.name() + " against the limit asked for")
            .source(Source.requirement(property.name()))
            .basis(property.basis(candidate.variant()));
    Optional<String> missing = missing(candidate.variant());
    if (missing.isPresent()) {
      return Optional.of(check.notChecked(missing.get()));
    }
    double actualSi = property.replayed(candidate);
    return Optional.of(
        bound.isAtMost()
            ? check.atMost(property.figure(actualSi), property.figure(bound.limitSi()))
            : check.atLeast(property.figure(actualSi), property.figure(bound.limitSi())));
  }

  @Override
  public Optional<String> missing(Variant variant) {
    return property.missing(variant);
  }

  @Override
  public Optional<Relaxation> relaxation(Candidate candidate, double shortfallSi) {
    double sign = bound.isAtMost() ? 1 : -1;
    double neededSi = bound.limitSi() + sign * shortfallSi;
    String text = property.name() + " would have to be " + bound.relation().sign() + " ";
    return Optional.of(
        new Relaxation(
            name(),
            property.figure(bound.limitSi()),
            property.figure(neededSi),
            candidate,
            text + property.figure(neededSi) + " instead of " + limit()));
  }
}
