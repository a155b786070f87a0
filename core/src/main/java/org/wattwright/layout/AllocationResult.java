package org.wattwright.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

/**
 * What an allocator has found: the proven best allocation and the next best, or what stands in the
 * way.
 *
 * <p>Immutable and thread-safe.
 */
public final class AllocationResult {
  private final AllocationSpec spec;
  private final List<Allocation> ranked;
  private final Coverage coverage;
  private final double gap;
  private final List<BayRelaxation> relaxations;

  private AllocationResult(
      AllocationSpec spec,
      AllocationRun.Outcome outcome,
      Coverage coverage,
      List<BayRelaxation> relaxations) {
    this.spec = spec;
    this.ranked = outcome.leaves().stream().map(leaf -> new Allocation(spec, leaf)).toList();
    this.coverage = coverage;
    this.gap = outcome.gap();
    this.relaxations = relaxations;
  }

  static AllocationResult of(AllocationSpec spec) {
    if (!spec.gaps().isEmpty() && !spec.draft().provisional) {
      AllocationRun.Outcome none = new AllocationRun.Outcome(List.of(), 0, false, "", 0);
      return new AllocationResult(spec, none, new Coverage(0, 0, ""), List.of());
    }
    AllocationRun.Outcome outcome = new AllocationRun(spec).run();
    boolean infeasible = outcome.leaves().isEmpty() && !outcome.stopped();
    List<BayRelaxation> relaxations = infeasible ? AllocationRelaxations.of(spec) : List.of();
    return new AllocationResult(spec, outcome, coverage(spec, outcome), relaxations);
  }

  private static Coverage coverage(AllocationSpec spec, AllocationRun.Outcome outcome) {
    long total = 0;
    for (PackOption option : spec.options()) {
      BayTables tables = BayTables.of(spec, option, BayTables.NONE_LIFTED);
      total = Ways.plus(total, tables.size());
    }
    return outcome.stopped()
        ? new Coverage(Math.min(outcome.covered(), total - 1), total, outcome.at())
        : new Coverage(total, total, "");
  }

  /**
   * The best allocation; no check of it fails.
   *
   * @return empty if none keeps every requirement; {@link #whyNone} says why
   */
  public Optional<Allocation> best() {
    return ranked.stream().findFirst();
  }

  /**
   * The next best, as many as were asked for, in the order of the objective.
   *
   * @return without the best
   */
  public List<Allocation> alternatives() {
    return ranked.isEmpty() ? ranked : ranked.subList(1, ranked.size());
  }

  /**
   * How many allocations were covered.
   *
   * @return PROVEN, or STOPPED with what remains
   */
  public Coverage coverage() {
    return coverage;
  }

  /**
   * By how much the front-share deviation of the best might still be beaten.
   *
   * @return as a share; 0 if the run was not stopped before the least deviation was proven
   */
  public double gap() {
    return gap;
  }

  /**
   * Inputs without which a requirement is not checked.
   *
   * @return empty if every requirement was checked
   */
  public List<String> missing() {
    TreeSet<String> missing = new TreeSet<>();
    spec.gaps().forEach(entry -> missing.addAll(entry.missing()));
    return List.copyOf(missing);
  }

  /**
   * Whether the answer is provisional: a requirement is not checked for want of an input.
   *
   * @return true if inputs are missing
   */
  public boolean isProvisional() {
    return !spec.gaps().isEmpty();
  }

  /**
   * For each requirement the smallest change that would admit an allocation, all others as they
   * are; smallest relative to its limit first, so the first one binds.
   *
   * @return empty if an allocation was found, or no single change admits one
   */
  public List<BayRelaxation> relaxations() {
    return relaxations;
  }

  /**
   * Why nothing was found, and what would help.
   *
   * @return text of several lines; says so if something was found
   */
  public String whyNone() {
    if (!ranked.isEmpty()) {
      return "an allocation was found: " + ranked.get(0);
    }
    List<String> lines = new ArrayList<>();
    lines.add("No allocation keeps every requirement (" + coverage + ").");
    if (coverage.total() == 0 && isProvisional()) {
      lines.set(0, "Not searched: missing data, and provisional answers are not allowed.");
      missing().forEach(input -> lines.add("  missing: " + input));
    } else if (coverage.status() == Coverage.Status.STOPPED) {
      lines.set(0, "Nothing found before the run was stopped (" + coverage + ").");
    } else if (relaxations.isEmpty()) {
      lines.add("  No single requirement stands in the way: at least two must give.");
    }
    relaxations.forEach(relaxation -> lines.add("  " + relaxation));
    return String.join("\n", lines);
  }

  /**
   * Best allocation and coverage, or why there is none.
   *
   * @return short text
   */
  @Override
  public String toString() {
    return best().map(found -> found + " (" + coverage + ")").orElseGet(this::whyNone);
  }
}
