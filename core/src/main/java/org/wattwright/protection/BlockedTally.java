package org.wattwright.protection;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.wattwright.check.Check;
import org.wattwright.check.Outcome;

/** Counts, per requirement, the candidates that do not meet it, and keeps the nearest misses. */
final class BlockedTally {
  private static final Comparator<RuledOut> MOST_FIRST =
      Comparator.comparingInt(RuledOut::count).reversed().thenComparing(RuledOut::code);

  private final Circuit circuit;
  private final String kind;
  private final Map<String, Entry> entries = new TreeMap<>();
  private int candidates;

  /** What is known of one requirement so far. */
  private static final class Entry {
    int count;
    @Nullable Check nearest;
    @Nullable Check alone;

    void note(Check check, boolean isAlone) {
      nearest = nearer(check, nearest);
      alone = isAlone ? nearer(check, alone) : alone;
    }

    private static Check nearer(Check check, @Nullable Check than) {
      return than == null || RuledOut.excess(check) < RuledOut.excess(than) ? check : than;
    }
  }

  /**
   * A tally without candidates.
   *
   * @param kind of candidates, plural
   */
  BlockedTally(Circuit circuit, String kind) {
    this.circuit = circuit;
    this.kind = kind;
  }

  static BlockedCircuit of(Circuit circuit, String kind, List<List<Check>> candidates) {
    BlockedTally tally = new BlockedTally(circuit, kind);
    candidates.forEach(tally::add);
    return tally.blocked();
  }

  /** A candidate with all its checks. */
  void add(List<Check> checks) {
    candidates++;
    List<Check> objections = objections(checks);
    Set<String> codes = new HashSet<>();
    objections.forEach(check -> codes.add(check.code()));
    for (Check check : objections) {
      entries.computeIfAbsent(check.code(), code -> new Entry()).note(check, codes.size() == 1);
    }
    codes.forEach(code -> entry(code).count++);
  }

  private Entry entry(String code) {
    return entries.computeIfAbsent(code, c -> new Entry());
  }

  private static List<Check> objections(List<Check> checks) {
    List<Check> failing = of(checks, Outcome.FAIL);
    boolean never = failing.stream().anyMatch(check -> check.code().equals("precharge.completes"));
    // What never completes is late too: that says nothing more.
    failing.removeIf(check -> never && isLate(check));
    return failing.isEmpty() ? of(checks, Outcome.NOT_CHECKED) : failing;
  }

  private static List<Check> of(List<Check> checks, Outcome outcome) {
    List<Check> found = new ArrayList<>(checks);
    found.removeIf(check -> check.outcome() != outcome);
    return found;
  }

  private static boolean isLate(Check check) {
    return check.code().equals("precharge.time") || check.code().equals("precharge.time-out");
  }

  BlockedCircuit blocked() {
    List<RuledOut> requirements = new ArrayList<>();
    entries.forEach(
        (code, entry) -> {
          if (entry.nearest != null) {
            requirements.add(new RuledOut(code, entry.count, entry.nearest, entry.alone));
          }
        });
    requirements.sort(MOST_FIRST);
    return new BlockedCircuit(
        circuit, new BlockedCircuit.Candidates(kind, candidates), requirements);
  }
}
