package org.wattwright.layout;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.wattwright.check.Recorder;
import org.wattwright.internal.Require;

/** What a run has found. Never changed after the run. */
final class Findings implements PackSearch.Result {
  private final SearchSpec spec;
  private final List<Rule> rules;
  private final Tally tally;
  private final Lists lists;
  private final long covered;

  /** Candidates that keep every rule: those with all data, and those with data missing. */
  record Lists(Found complete, Found provisional) {}

  Findings(SearchSpec spec, List<Rule> rules, Tally tally, Lists lists, long covered) {
    this.spec = spec;
    this.rules = rules;
    this.tally = tally;
    this.lists = lists;
    this.covered = covered;
  }

  @Override
  public Optional<Candidate> best() {
    return top(1).stream().findFirst();
  }

  @Override
  public List<Candidate> top(int count) {
    Require.count("count", count, 0, Integer.MAX_VALUE);
    ContentOrder ties = new ContentOrder(spec.space());
    List<Candidate> top = new ArrayList<>();
    for (long index : lists.complete().best(count, ties)) {
      top.add(spec.candidateAt(index));
    }
    for (long index : lists.provisional().best(count - top.size(), ties)) {
      top.add(spec.candidateAt(index));
    }
    return List.copyOf(top);
  }

  @Override
  public List<Candidate> ranked() {
    return top(Integer.MAX_VALUE);
  }

  @Override
  public long candidateCount() {
    return covered;
  }

  @Override
  public long feasibleCount() {
    return lists.complete().size();
  }

  @Override
  public long provisionalCount() {
    return lists.provisional().size();
  }

  @Override
  public List<Candidate> paretoFront(Criterion... criteria) {
    List<Criterion> asked = Require.nonEmpty("criteria", Arrays.asList(criteria));
    Found among = feasibleCount() > 0 ? lists.complete() : lists.provisional();
    Term[][] terms = new Term[asked.size()][];
    for (int i = 0; i < terms.length; i++) {
      Property property = asked.get(i).property(spec);
      terms[i] =
          spec.space().variants().stream()
              .map(variant -> property.on(variant, Recorder.OFF))
              .toArray(Term[]::new);
    }
    long[] indexes = among.indexes();
    double[][] levels = new double[terms.length][];
    for (int i = 0; i < terms.length; i++) {
      levels[i] = Levels.of(costs(indexes, asked.get(i), terms[i]));
    }
    return ParetoFront.of(points(indexes, levels), new ContentOrder(spec.space())::compare).stream()
        .map(point -> spec.candidateAt(point.index()))
        .toList();
  }

  private double[] costs(long[] indexes, Criterion criterion, Term[] terms) {
    Space space = spec.space();
    return Arrays.stream(indexes)
        .mapToDouble(
            index ->
                criterion.cost(
                    terms[space.variantOf(index)].valueAt(
                        space.seriesOf(index), space.parallelOf(index), Recorder.OFF)))
        .toArray();
  }

  /** Points of which every cost is known. */
  private static List<ParetoFront.Point> points(long[] indexes, double[][] levels) {
    List<ParetoFront.Point> points = new ArrayList<>();
    for (int k = 0; k < indexes.length; k++) {
      int candidate = k;
      double[] costs = Arrays.stream(levels).mapToDouble(level -> level[candidate]).toArray();
      ParetoFront.Point point = new ParetoFront.Point(indexes[k], costs);
      if (point.isKnown()) {
        points.add(point);
      }
    }
    return points;
  }

  @Override
  public List<Rejection> rejections() {
    List<Rejection> rejections = new ArrayList<>();
    for (int i = 0; i < rules.size(); i++) {
      addRejection(rejections, i, false);
      addRejection(rejections, i, true);
    }
    rejections.sort(
        Comparator.comparingLong(Rejection::count).reversed().thenComparing(Rejection::reason));
    return List.copyOf(rejections);
  }

  private void addRejection(List<Rejection> rejections, int rule, boolean missing) {
    int slot = missing ? rule + rules.size() : rule;
    long count = tally.countOf(slot);
    if (count > 0) {
      String reason = missing ? missingText(rules.get(rule)) : rules.get(rule).name();
      @Nullable Relaxation relaxation = missing ? null : relaxation(rule).orElse(null);
      rejections.add(new Rejection(reason, missing, count, tally.aloneCountOf(slot), relaxation));
    }
  }

  private String missingText(Rule rule) {
    TreeSet<String> inputs = new TreeSet<>();
    spec.space().variants().forEach(variant -> rule.missing(variant).ifPresent(inputs::add));
    return "missing data: " + String.join(", ", inputs) + " (for " + rule.name() + ")";
  }

  private Optional<Relaxation> relaxation(int rule) {
    long index = tally.nearestOf(rule);
    return index < 0
        ? Optional.empty()
        : rules.get(rule).relaxation(spec.candidateAt(index), tally.shortfallOf(rule));
  }

  @Override
  public List<Relaxation> relaxations() {
    return rejections().stream().map(Rejection::relaxation).flatMap(Optional::stream).toList();
  }

  @Override
  public Coverage coverage() {
    long total = spec.space().size();
    String next = covered < total ? spec.candidateAt(covered).arrangement() : "";
    return new Coverage(covered, total, next);
  }

  @Override
  public String whyNone() {
    return WhyNone.text(this, spec.space());
  }

  @Override
  public String toString() {
    String best = best().map(b -> ", best by " + spec.ranking() + ": " + b).orElse("");
    String more = provisionalCount() == 0 ? "" : " and " + provisionalCount() + " provisional";
    return feasibleCount() + " feasible" + more + " of " + covered + " candidates" + best;
  }
}
