package org.wattwright.protection;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/** The choices so far that may be part of a cheapest tree. */
abstract class KeptOptions {
  /** Whether a choice is not needed, whatever resistance it allows. */
  abstract boolean isSettled(PartsOption bound);

  abstract void add(PartsOption option);

  abstract List<PartsOption> options();

  /** Of a circuit alone only the cheapest counts. */
  static final class Cheapest extends KeptOptions {
    private @Nullable PartsOption cheapest;

    @Override
    boolean isSettled(PartsOption bound) {
      return cheapest != null && PartsOption.CHEAPEST_FIRST.compare(cheapest, bound) <= 0;
    }

    @Override
    void add(PartsOption option) {
      cheapest = option;
    }

    @Override
    List<PartsOption> options() {
      return cheapest == null ? List.of() : List.of(cheapest);
    }
  }

  /** In a tree those count that no other one of the same fuse beats in every respect. */
  static final class Undominated extends KeptOptions {
    private final Map<Integer, List<PartsOption>> byFuse = new TreeMap<>();

    private List<PartsOption> like(PartsOption option) {
      return byFuse.computeIfAbsent(option.fuse(), fuse -> new ArrayList<>());
    }

    @Override
    boolean isSettled(PartsOption bound) {
      return like(bound).stream().anyMatch(each -> each.dominates(bound));
    }

    @Override
    void add(PartsOption option) {
      List<PartsOption> like = like(option);
      if (like.stream().noneMatch(each -> each.dominates(option))) {
        like.removeIf(option::dominates);
        like.add(option);
      }
    }

    @Override
    List<PartsOption> options() {
      return byFuse.values().stream().flatMap(List::stream).toList();
    }
  }
}
