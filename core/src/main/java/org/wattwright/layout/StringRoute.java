package org.wattwright.layout;

import java.util.Arrays;

/**
 * Shortest link cable of an allocation, and the order in which its strings pass through the bays.
 *
 * <p>Equal strings each pass every used bay: strings × the shortest open route. Otherwise strings
 * are laid one after another along one route, so that between two bays at most one string crosses:
 * Σ d over the crossings where the modules so far do not fill whole strings. Shortest over all
 * routes by the recursion over sets of bays of Held and Karp (1962). Not thread-safe: caches the
 * length per set of bays where that is all it depends on.
 */
final class StringRoute {
  /** Bays of one list; their sets are kept in tables. */
  static final int MOST_BAYS = 12;

  private static final long UNKNOWN = -1;

  private final LinkMap links;
  private final boolean contiguous;
  private final boolean equalStrings;
  private final int parallel;
  private final int series;
  private final long[] bySet;

  StringRoute(LinkMap links, PackOption option, boolean equalStrings, boolean contiguous) {
    this.links = links;
    this.contiguous = contiguous;
    this.equalStrings = equalStrings || option.parallel() == 1;
    this.parallel = option.parallel();
    this.series = option.series();
    this.bySet = new long[1 << links.bays()];
    Arrays.fill(bySet, UNKNOWN);
  }

  /** Nanometres of link cable; {@link LinkMap#NONE} or more if the bays are not linked. */
  long length(int[] counts) {
    if (!links.isStated()) {
      return 0;
    }
    int used = usedSet(counts);
    if (!equalStrings) {
      return solve(counts, used).best();
    }
    if (bySet[used] == UNKNOWN) {
      bySet[used] = solve(counts, used).best();
    }
    return bySet[used];
  }

  /** Bays in the order of the shortest route. */
  int[] order(int[] counts) {
    return links.isStated()
        ? solve(counts, usedSet(counts)).order()
        : new Route(counts, usedSet(counts)).inListOrder();
  }

  boolean isLinked(int[] counts) {
    return length(counts) < LinkMap.NONE;
  }

  static int usedSet(int[] counts) {
    int set = 0;
    for (int i = 0; i < counts.length; i++) {
      set |= counts[i] > 0 ? 1 << i : 0;
    }
    return set;
  }

  private Route solve(int[] counts, int used) {
    Route route = new Route(counts, used);
    route.run();
    return route;
  }

  /** Cable from one bay to the next when the bays of a set are full up to here. */
  private long crossing(int modulesSoFar, int from, int to) {
    if (equalStrings) {
      return Math.min(LinkMap.NONE, parallel * links.between(from, to, contiguous));
    }
    return modulesSoFar % series == 0 ? 0 : links.between(from, to, contiguous);
  }

  /** One run over the sets of used bays, renumbered without gaps. */
  private final class Route {
    private final int[] bay;
    private final int[] counts;
    private final long[] least;
    private final int[] cameFrom;

    Route(int[] counts, int used) {
      this.counts = counts;
      this.bay = new int[Integer.bitCount(used)];
      for (int i = 0, next = 0; i < counts.length; i++) {
        if ((used >> i & 1) != 0) {
          bay[next++] = i;
        }
      }
      least = new long[(1 << bay.length) * bay.length];
      cameFrom = new int[least.length];
    }

    int[] inListOrder() {
      return bay.clone();
    }

    void run() {
      int n = bay.length;
      Arrays.fill(least, LinkMap.NONE);
      for (int i = 0; i < n; i++) {
        least[(1 << i) * n + i] = 0;
      }
      for (int set = 1; set < 1 << n; set++) {
        int modules = modulesIn(set);
        for (int last = 0; last < n; last++) {
          if (least[set * n + last] < LinkMap.NONE) {
            extend(set, last, modules);
          }
        }
      }
    }

    private int modulesIn(int set) {
      int modules = 0;
      for (int i = 0; i < bay.length; i++) {
        modules += (set >> i & 1) == 0 ? 0 : counts[bay[i]];
      }
      return modules;
    }

    private void extend(int set, int last, int modules) {
      int n = bay.length;
      for (int next = 0; next < n; next++) {
        if ((set >> next & 1) != 0) {
          continue;
        }
        int grown = set | 1 << next;
        long length = least[set * n + last] + crossing(modules, bay[last], bay[next]);
        if (length < least[grown * n + next]) {
          least[grown * n + next] = length;
          cameFrom[grown * n + next] = last;
        }
      }
    }

    private int bestLast() {
      int n = bay.length;
      int full = ((1 << n) - 1) * n;
      int best = 0;
      for (int last = 1; last < n; last++) {
        best = least[full + last] < least[full + best] ? last : best;
      }
      return best;
    }

    long best() {
      return least[((1 << bay.length) - 1) * bay.length + bestLast()];
    }

    int[] order() {
      int n = bay.length;
      int[] order = new int[n];
      int set = (1 << n) - 1;
      int last = bestLast();
      for (int i = n - 1; i >= 0; i--) {
        order[i] = bay[last];
        int before = cameFrom[set * n + last];
        set &= ~(1 << last);
        last = before;
      }
      return order;
    }
  }
}
