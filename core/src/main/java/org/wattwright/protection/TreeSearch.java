package org.wattwright.protection;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/**
 * Cheapest parts for a tree of circuits, by dynamic programming from the leaves to the source.
 *
 * <p>A branch is tied to the rest by two things only: the fuse in charge nearer to the source, with
 * which its own must be selective, and the resistance of the circuits nearer to the source. For
 * each fuse in charge a branch is therefore known by its frontier: the cheapest parts for each
 * resistance that it allows. Exact: no combination is left out that could be cheapest.
 */
final class TreeSearch {
  private final int[] parents;
  private final CircuitChoices choices;
  private final Map<Branch, List<Entry>> frontiers = new HashMap<>();

  private record Branch(int circuit, int fuseInCharge) {}

  /** A branch served: parts of its first circuit and the branches behind it. */
  private record Entry(double allowedOhm, PartCost cost, PartsOption option, List<Entry> behind) {
    static final Comparator<Entry> CHEAPEST_FIRST =
        Comparator.comparing(Entry::cost)
            .thenComparing(Comparator.comparingDouble(Entry::allowedOhm).reversed())
            .thenComparing(Entry::option, PartsOption.CHEAPEST_FIRST);
  }

  /**
   * A search.
   *
   * @param parents the circuit nearer to the source of each; −1 at the source
   */
  TreeSearch(int[] parents, CircuitChoices choices) {
    this.parents = parents.clone();
    this.choices = choices;
  }

  /** The cheapest parts of every circuit; empty if there are none. */
  Optional<PartsOption[]> best() {
    PartsOption[] chosen = new PartsOption[parents.length];
    for (int i = 0; i < parents.length; i++) {
      if (parents[i] < 0) {
        Entry cheapest = cheapest(frontier(i, PartsOption.NONE), 0, 0);
        if (cheapest == null) {
          return Optional.empty();
        }
        note(i, cheapest, chosen);
      }
    }
    return Optional.of(chosen);
  }

  /**
   * Whether the branch from a circuit on can be served at all behind a source without resistance.
   */
  boolean canServe(int circuit, int fuseInCharge) {
    return cheapest(frontier(circuit, fuseInCharge), 0, 0) != null;
  }

  private void note(int circuit, Entry entry, PartsOption[] chosen) {
    chosen[circuit] = entry.option();
    int next = 0;
    for (int child = 0; child < parents.length; child++) {
      if (parents[child] == circuit) {
        note(child, entry.behind().get(next++), chosen);
      }
    }
  }

  private List<Entry> frontier(int circuit, int fuseInCharge) {
    Branch branch = new Branch(circuit, fuseInCharge);
    List<Entry> known = frontiers.get(branch);
    if (known == null) {
      known = undominated(entries(circuit, fuseInCharge));
      frontiers.put(branch, known);
    }
    return known;
  }

  private List<Entry> entries(int circuit, int fuseInCharge) {
    List<Entry> entries = new ArrayList<>();
    for (PartsOption option : choices.options(circuit, fuseInCharge)) {
      boolean fused = option.fuse() != PartsOption.NONE;
      if (!fused
          || fuseInCharge == PartsOption.NONE
          || choices.isSelective(circuit, fuseInCharge, option.fuse())) {
        addServed(entries, option, behind(circuit, fused ? option.fuse() : fuseInCharge));
      }
    }
    return entries;
  }

  private List<List<Entry>> behind(int circuit, int fuseInCharge) {
    List<List<Entry>> behind = new ArrayList<>();
    for (int child = 0; child < parents.length; child++) {
      if (parents[child] == circuit) {
        behind.add(frontier(child, fuseInCharge));
      }
    }
    return behind;
  }

  /** One entry for each resistance at which the cheapest branches behind change. */
  private static void addServed(List<Entry> entries, PartsOption option, List<List<Entry>> behind) {
    TreeSet<Double> allowed = new TreeSet<>(List.of(option.allowedOhm()));
    for (List<Entry> branch : behind) {
      for (Entry entry : branch) {
        double leftOhm = entry.allowedOhm() - option.loopOhm();
        if (leftOhm >= 0 && leftOhm < option.allowedOhm()) {
          allowed.add(leftOhm);
        }
      }
    }
    for (double allowedOhm : allowed) {
      Entry served = served(option, behind, allowedOhm);
      if (served != null) {
        entries.add(served);
      }
    }
  }

  private static @Nullable Entry served(
      PartsOption option, List<List<Entry>> behind, double allowedOhm) {
    PartCost cost = option.cost();
    Entry[] picked = new Entry[behind.size()];
    for (int i = 0; i < picked.length; i++) {
      Entry cheapest = cheapest(behind.get(i), option.loopOhm(), allowedOhm);
      if (cheapest == null) {
        return null;
      }
      picked[i] = cheapest;
      cost = cost.plus(cheapest.cost());
    }
    return new Entry(allowedOhm, cost, option, Arrays.asList(picked));
  }

  /** The cheapest entry that still allows a resistance behind a loop; null if none does. */
  private static @Nullable Entry cheapest(List<Entry> frontier, double loopOhm, double allowedOhm) {
    for (Entry entry : frontier) {
      if (entry.allowedOhm() - loopOhm >= allowedOhm) {
        return entry;
      }
    }
    return null;
  }

  /** Cheapest first, each with more resistance allowed than all before it. */
  private static List<Entry> undominated(List<Entry> entries) {
    entries.sort(Entry.CHEAPEST_FIRST);
    List<Entry> kept = new ArrayList<>();
    double mostOhm = Double.NEGATIVE_INFINITY;
    for (Entry entry : entries) {
      if (entry.allowedOhm() > mostOhm) {
        kept.add(entry);
        mostOhm = entry.allowedOhm();
      }
    }
    return kept;
  }
}
