package org.wattwright.conversion;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.wattwright.check.Check;
import org.wattwright.check.Checks;
import org.wattwright.check.Figure;
import org.wattwright.check.Outcome;
import org.wattwright.internal.Require;
import org.wattwright.units.InvalidInputException;

/**
 * The checks of one area together: how many of each verdict, and which comes nearest to its limit.
 *
 * <pre>{@code
 * for (AreaVerdict area : AreaVerdict.of(van.review())) {
 *   System.out.println(area);   // brakes: 6 CAUTION, 15 PASS
 * }
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 *
 * @param area the area
 * @param checks its checks, worst first, at least one
 */
public record AreaVerdict(ReviewArea area, List<Check> checks) {
  /**
   * Sorts the checks.
   *
   * @param area the area
   * @param checks in any order, at least one
   * @throws InvalidInputException if there is no check
   */
  public AreaVerdict {
    checks = Checks.bySeverity(Require.nonEmpty("AreaVerdict.checks", checks));
  }

  /**
   * The areas of many checks.
   *
   * @param checks in any order
   * @return in the order of the areas, without empty ones
   */
  public static List<AreaVerdict> of(Collection<Check> checks) {
    Map<ReviewArea, List<Check>> byArea = new EnumMap<>(ReviewArea.class);
    for (Check check : checks) {
      byArea.computeIfAbsent(ReviewArea.of(check), any -> new ArrayList<>()).add(check);
    }
    return byArea.entrySet().stream().map(e -> new AreaVerdict(e.getKey(), e.getValue())).toList();
  }

  /**
   * How many checks have a verdict.
   *
   * @param outcome the verdict
   * @return ≥ 0
   */
  public int count(Outcome outcome) {
    return (int) checks.stream().filter(check -> check.outcome() == outcome).count();
  }

  /**
   * The worst verdict.
   *
   * @return of all checks of the area
   */
  public Outcome outcome() {
    return Outcome.worstOf(checks);
  }

  /**
   * The check of which the largest share of its limit is used. Counts, such as fuses asked for, are
   * left out, because there "all of them" is no small margin; temperatures too, because their zero
   * means nothing.
   *
   * @return empty if no check compares amounts
   */
  public Optional<Check> tightest() {
    return checks.stream()
        .filter(check -> check.use().isPresent() && !isOfCounts(check))
        .max(Comparator.comparing(check -> check.use().orElseThrow()));
  }

  private static boolean isOfCounts(Check check) {
    return check.limit().map(limit -> limit.type() == Figure.Type.COUNT).orElse(false);
  }

  /**
   * Area and verdicts.
   *
   * @return for example {@code brakes: 6 CAUTION, 15 PASS}
   */
  @Override
  public String toString() {
    return area + ": " + Checks.summary(checks);
  }
}
