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
  private final StringCut cut;
  private final long[] bySet;

  StringRoute(LinkMap links, PackOption option, boolean equalStrings, boolean contiguous) {
    this.links = links;
    this.contiguous = contiguous;
    this.equalStrings = equalStrings || option.parallel() == 1;
    this.parallel = option.parallel();
    this.cut = new StringCut(option.perString());
    this.bySet = new long[1 << links.bays()];
    Arrays.fill(bySet, UNKNOWN);
  }

  /** Nanometres of link cable; {@link LinkMap#NONE} or more if the bays are not linked. */
  long length(int[][] modules) {
    if (!links.isStated()) {
      return 0;
    }
    int used = usedSet(modules);
    if (!equalStrings) {
      return solve(modules, used).best();
    }
    if (bySet[used] == UNKNOWN) {
      bySet[used] = solve(modules, used).best();
    }
    return bySet[used];
  }

  /** Bays in the order of the shortest route. */
  int[] order(int[][] modules) {
    return links.isStated()
        ? solve(modules, usedSet(modules)).order()
        : new Route(modules, usedSet(modules)).inListOrder();
  }

  private static int usedSet(int[][] modules) {
    int set = 0;
    for (int[] ofType : modules) {
      set |= usedSet(ofType);
    }
    return set;
  }

  static int usedSet(int[] counts) {
    int set = 0;
    for (int i = 0; i < counts.length; i++) {
      set |= counts[i] > 0 ? 1 << i : 0;
    }
    return set;
  }

  private Route solve(int[][] modules, int used) {
    Route route = new Route(modules, used);
    route.run();
    return route;
  }

  /** Cable from one bay to the next when the bays of a set are full up to here. */
  private long crossing(int strings, int from, int to) {
    long length = links.between(from, to, contiguous);
    return length >= LinkMap.NONE ? LinkMap.NONE : Math.min(LinkMap.NONE, strings * length);
  }

  /** One run over the sets of used bays, renumbered without gaps. */
  private final class Route {
    private final int[] bay;

    /** Modules of each type, by renumbered bay. */
    private final int[][] modules;

    private final long[] least;
    private final int[] cameFrom;

    Route(int[][] ofType, int used) {
      this.bay = new int[Integer.bitCount(used)];
      for (int i = 0, next = 0; i < links.bays(); i++) {
        if ((used >> i & 1) != 0) {
          bay[next++] = i;
        }
      }
      modules = new int[bay.length][ofType.length];
      for (int i = 0; i < bay.length; i++) {
        for (int type = 0; type < ofType.length; type++) {
          modules[i][type] = ofType[type][bay[i]];
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
        int[] soFar = modulesIn(set);
        for (int last = 0; last < n; last++) {
          if (least[set * n + last] < LinkMap.NONE) {
            extend(set, last, soFar);
          }
        }
      }
    }

    private int[] modulesIn(int set) {
      int[] sum = new int[modules[0].length];
      for (int i = 0; i < bay.length; i++) {
        for (int type = 0; type < sum.length && (set >> i & 1) != 0; type++) {
          sum[type] += modules[i][type];
        }
      }
      return sum;
    }

    private void extend(int set, int last, int[] soFar) {
      int n = bay.length;
      int strings = equalStrings ? parallel : cut.crossing(soFar);
      for (int next = 0; next < n; next++) {
        if ((set >> next & 1) != 0) {
          continue;
        }
        int grown = set | 1 << next;
        long cable = strings == 0 ? 0 : crossing(strings, bay[last], bay[next]);
        long length = least[set * n + last] + cable;
        if (length < least[grown * n + next] && mayPass(soFar, modules[next])) {
          least[grown * n + next] = length;
          cameFrom[grown * n + next] = last;
        }
      }
    }

    /** Whether every string that goes on through a bay has a module in it, where asked. */
    private boolean mayPass(int[] soFar, int[] next) {
      return !contiguous || equalStrings || next.length == 1 || !cut.passesBy(soFar, next);
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
