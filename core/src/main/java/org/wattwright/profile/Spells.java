package org.wattwright.profile;

import org.jspecify.annotations.Nullable;

/** The spells of a trace at or above a level, and the longest of them. */
final class Spells {
  private final Trace trace;
  private final double level;
  private @Nullable Found first;
  private @Nullable Found current;
  private @Nullable Found longest;

  /** One spell; endless if a repeating trace never falls below the level. */
  record Found(double startS, double endS, boolean endless) {
    double lengthS() {
      return endS - startS;
    }
  }

  private Spells(Trace trace, double level) {
    this.trace = trace;
    this.level = level;
  }

  /** The longest, the first of equals; null if the level is never reached. */
  static @Nullable Found longest(Trace trace, double level, boolean repeating) {
    Spells spells = new Spells(trace, level);
    for (int i = 0; i < trace.size(); i++) {
      spells.segment(i);
    }
    if (repeating) {
      spells.joinEndToStart();
    }
    return spells.longest;
  }

  private void segment(int i) {
    boolean startsAbove = trace.from(i) >= level;
    boolean endsAbove = trace.to(i) >= level;
    if (startsAbove && endsAbove) {
      add(trace.startS(i), trace.endS(i));
    } else if (startsAbove) {
      add(trace.startS(i), crossingS(i));
    } else if (endsAbove) {
      add(crossingS(i), trace.endS(i));
    }
  }

  private double crossingS(int i) {
    double share = (level - trace.from(i)) / (trace.to(i) - trace.from(i));
    return trace.startS(i) + share * trace.lengthS(i);
  }

  private void add(double startS, double endS) {
    Found spell = new Found(startS, endS, false);
    if (current != null && current.endS() == startS) {
      spell = new Found(current.startS(), endS, false);
    }
    if (spell.startS() == 0) {
      first = spell;
    }
    current = spell;
    keepIfLonger(spell);
  }

  private void joinEndToStart() {
    double periodS = trace.durationS();
    if (first == null || current == null || current.endS() != periodS) {
      return;
    }
    if (first.endS() == periodS) {
      longest = new Found(0, periodS, true);
    } else {
      keepIfLonger(new Found(current.startS(), periodS + first.endS(), false));
    }
  }

  private void keepIfLonger(Found spell) {
    if (longest == null || spell.lengthS() > longest.lengthS()) {
      longest = spell;
    }
  }
}
