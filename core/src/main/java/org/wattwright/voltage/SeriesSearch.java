package org.wattwright.voltage;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntFunction;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.wattwright.check.Recorder;

/** Finds the numbers of modules in series between the ends of all windows. */
final class SeriesSearch {
  private final IntFunction<EnvelopeSolver> solver;
  private final List<Device> devices;
  private final int largest;

  /** Envelopes computed so far. */
  private final Map<Integer, EnvelopeSolver.Solution> solutions = new HashMap<>();

  SeriesSearch(IntFunction<EnvelopeSolver> solver, List<Device> devices, int largest) {
    this.solver = solver;
    this.devices = devices;
    this.largest = largest;
  }

  /**
   * A limit with the end of the range of numbers that keeps it.
   *
   * @param number most modules of an upper limit, fewest of a lower one; one more than the largest
   *     considered if no number serves
   */
  record End(Device device, WindowRule rule, int number) {
    End at(int found) {
      return new End(device, rule, found);
    }
  }

  WindowMatch run() {
    End upper = tightestUpper();
    End lower = tightestLower();
    int peak = first(n -> solution(n).peak().available());
    int fewest = Math.max(peak, lower.number());
    if (fewest <= upper.number()) {
      return new WindowMatch.Fits(IntStream.rangeClosed(fewest, upper.number()).boxed().toList());
    }
    ConflictText text = new ConflictText(this::solution, largest, upper);
    return peak > lower.number() ? text.withPeakLoad(peak) : text.with(lower);
  }

  /** The end that allows the fewest modules; of equal ones an operating end, then the first. */
  private End tightestUpper() {
    return known(true)
        .sorted(Comparator.comparing(end -> end.rule() == WindowRule.ABSOLUTE_MAXIMUM))
        .map(end -> end.at(first(n -> !isKept(end, n)) - 1))
        .reduce((a, b) -> b.number() < a.number() ? b : a)
        .orElseThrow();
  }

  /** The end that needs the most modules; of equal ones the first. */
  private End tightestLower() {
    return known(false)
        .map(end -> end.at(first(n -> isKept(end, n))))
        .reduce((a, b) -> b.number() > a.number() ? b : a)
        .orElseThrow();
  }

  private Stream<End> known(boolean upper) {
    return devices.stream()
        .flatMap(device -> WindowRule.of(device).stream().map(rule -> new End(device, rule, 0)))
        .filter(end -> end.rule().isUpper() == upper)
        .filter(end -> end.rule().limitOf(end.device()).isPresent());
  }

  private boolean isKept(End end, int series) {
    return end.rule().isKept(end.device(), end.rule().point().inV(solution(series).envelope()));
  }

  private EnvelopeSolver.Solution solution(int series) {
    return solutions.computeIfAbsent(series, n -> solver.apply(n).solve(Recorder.OFF));
  }

  /** The first number for which something that stays true becomes true; one too many if none. */
  private int first(IntPredicate becomesTrue) {
    int low = 1;
    int high = largest + 1;
    while (low < high) {
      int middle = (low + high) / 2;
      if (becomesTrue.test(middle)) {
        high = middle;
      } else {
        low = middle + 1;
      }
    }
    return low;
  }
}
