package org.wattwright.layout;

import java.util.Arrays;

/** One allocation with all it is compared by. */
final class Leaf {
  private final int option;
  private final int[] counts;
  private final double deviation;
  private final int enclosures;
  private final Ranks ranks;

  /** Link cable in nanometres; height of the centre of gravity, 0 if not known. */
  record Ranks(long linkNm, double heightM) {}

  /** Option: index of the pack, by content. Counts: units in each bay, bays by name. */
  Leaf(int option, int[] counts, double deviation, Ranks ranks) {
    this.option = option;
    this.counts = counts.clone();
    this.deviation = deviation;
    this.enclosures = Integer.bitCount(StringRoute.usedSet(counts));
    this.ranks = ranks;
  }

  int option() {
    return option;
  }

  /** Not to be changed. */
  int[] counts() {
    return counts;
  }

  /** From the wanted front share; or what a rule is missed by. */
  double deviation() {
    return deviation;
  }

  /** Bays in use. */
  int enclosures() {
    return enclosures;
  }

  long linkNm() {
    return ranks.linkNm();
  }

  double heightM() {
    return ranks.heightM();
  }

  /** What it is, whatever it is compared by. */
  int compareContent(Leaf other) {
    int byOption = Integer.compare(option, other.option);
    return byOption != 0 ? byOption : Arrays.compare(counts, other.counts);
  }
}
