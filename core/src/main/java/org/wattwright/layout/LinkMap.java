package org.wattwright.layout;

import java.util.Arrays;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;
import org.wattwright.units.Measures;

/** Lengths of link cable between bays, in whole nanometres so that sums are exact. */
final class LinkMap {
  private static final double PER_M = 1e9;

  /** No link leads there; the sum of all links of a route stays below it. */
  static final long NONE = Long.MAX_VALUE / 64;

  private final int bays;
  private final long[] direct;
  private final long[] shortest;
  private final boolean stated;

  LinkMap(List<Bay> sorted) {
    bays = sorted.size();
    direct = new long[bays * bays];
    Arrays.fill(direct, NONE);
    boolean any = false;
    for (int i = 0; i < bays; i++) {
      direct[i * bays + i] = 0;
      any |= read(sorted, i);
    }
    stated = any;
    shortest = direct.clone();
    for (int via = 0; via < bays; via++) {
      shorten(via);
    }
  }

  private boolean read(List<Bay> sorted, int from) {
    Bay bay = sorted.get(from);
    bay.links()
        .forEach(
            (other, length) -> {
              int to = indexOf(sorted, other);
              if (to < 0) {
                throw InvalidInputException.of(
                    "Bay.link of " + bay.name(), "to a bay of the list", "to \"" + other + '"');
              }
              set(sorted, from, to, length);
            });
    return !bay.links().isEmpty();
  }

  private static int indexOf(List<Bay> sorted, String name) {
    for (int i = 0; i < sorted.size(); i++) {
      if (sorted.get(i).name().equals(name)) {
        return i;
      }
    }
    return -1;
  }

  private void set(List<Bay> sorted, int from, int to, Quantity<Length> length) {
    long given = Math.round(Kind.LENGTH.siValueOf(length) * PER_M);
    long present = direct[from * bays + to];
    if (present != NONE && present != given) {
      throw InvalidInputException.of(
          "Bay.link of " + sorted.get(from).name() + " to " + sorted.get(to).name(),
          "the same both ways: " + Measures.metres(present / PER_M),
          length.toString());
    }
    direct[from * bays + to] = given;
    direct[to * bays + from] = given;
  }

  private void shorten(int via) {
    for (int i = 0; i < bays; i++) {
      for (int j = 0; j < bays; j++) {
        long through = shortest[i * bays + via] + shortest[via * bays + j];
        shortest[i * bays + j] = Math.min(shortest[i * bays + j], through);
      }
    }
  }

  int bays() {
    return bays;
  }

  /** Whether any length is stated; if not, links are not compared. */
  boolean isStated() {
    return stated;
  }

  /** Nanometres between two bays: by a link of their own, or by way of other bays. */
  long between(int from, int to, boolean directOnly) {
    return (directOnly ? direct : shortest)[from * bays + to];
  }

  static double toM(long nanometres) {
    return nanometres / PER_M;
  }
}
