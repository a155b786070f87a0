package org.wattwright.conductor;

import static java.util.Comparator.comparing;
import static java.util.Comparator.comparingDouble;

import java.util.Comparator;

/** A cable and how many of it lie in parallel in each polarity. */
record Candidate(Cable cable, int runs) {
  /** Least metal first, then fewest runs, then lightest, then by name, so that ties are settled. */
  static final Comparator<Candidate> SMALLEST_FIRST =
      comparingDouble(Candidate::areaM2)
          .thenComparingInt(Candidate::runs)
          .thenComparingDouble(Candidate::massKgPerM)
          .thenComparing(candidate -> candidate.cable().name())
          .thenComparing(comparing(candidate -> candidate.cable().toString()));

  double areaM2() {
    return cable.size().areaM2() * runs;
  }

  private double massKgPerM() {
    Double massKgPerM = cable.data().massKgPerM();
    return massKgPerM == null ? Double.POSITIVE_INFINITY : massKgPerM * runs;
  }

  String label() {
    return (runs == 1 ? "" : runs + " x ") + cable.size().name() + " " + cable.name();
  }
}
