package org.wattwright.layout;

import org.wattwright.check.Check;
import org.wattwright.check.CheckBuilder;
import org.wattwright.check.Figure;
import org.wattwright.check.Source;

/** A limit on a quantity of the caller's own. */
record MeasuredRequirement(OwnValue<?> own, Bound bound) implements Requirement {
  static final String CODE = "pack.own-requirement";

  @Override
  public String name() {
    return own.name() + " " + bound.relation().sign() + " " + own.figure(bound.limitSi());
  }

  @Override
  public Check check(Candidate candidate) {
    Figure actual = own.figure(own.siOf(candidate));
    Figure limit = own.figure(bound.limitSi());
    CheckBuilder check =
        Check.named(CODE, own.name() + " against the limit asked for")
            .source(Source.requirement(own.name()));
    return bound.isAtMost() ? check.atMost(actual, limit) : check.atLeast(actual, limit);
  }

  @Override
  public String toString() {
    return name();
  }
}
