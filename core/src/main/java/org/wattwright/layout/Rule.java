package org.wattwright.layout;

import java.util.Optional;
import org.wattwright.check.Check;

/** A requirement as the search counts it: on the doubles of a variant, and on one candidate. */
interface Rule {
  /** With its limit, such as {@code pack mass ≤ 290 kg}. */
  String name();

  Gate on(Variant variant, int mostModules);

  /** The check of one candidate; empty where the review of the windows makes it. */
  Optional<Check> check(Candidate candidate);

  /** The input that is missing for every candidate of a variant. */
  Optional<String> missing(Variant variant);

  /** The limit that would admit a candidate, if the limit is a number. */
  Optional<Relaxation> relaxation(Candidate candidate, double shortfallSi);
}
