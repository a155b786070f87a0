package org.wattwright.layout;

import java.util.List;
import org.wattwright.check.Recorder;

/** One run over the whole space. Not thread-safe: made for one run, then dropped. */
final class SearchRun {
  /** Candidates between two looks at the cancel signal, less one. */
  private static final long CANCEL_MASK = (1 << 10) - 1;

  /** Candidates between two reports of progress, less one. */
  private static final long PROGRESS_MASK = (1 << 16) - 1;

  private final SearchSpec spec;
  private final SearchDraft draft;
  private final Space space;
  private final List<Rule> rules;
  private final Property ranking;
  private final ContentOrder order;
  private final Tally tally;
  private final Found complete = new Found();
  private final Found provisional = new Found();
  private Gate[] gates = {};
  private Term cost = (series, parallel, recorder) -> Double.NaN;
  private long covered;

  SearchRun(SearchSpec spec) {
    this.spec = spec;
    this.draft = spec.draft();
    this.space = spec.space();
    this.ranking = spec.ranking().property(spec);
    this.rules = spec.rules();
    this.order = new ContentOrder(space);
    this.tally = new Tally(rules.size());
  }

  Findings run() {
    for (Variant variant : space.variants()) {
      bind(variant);
      if (!coverVariant()) {
        break;
      }
    }
    draft.progress.accept(covered);
    return new Findings(spec, rules, tally, new Findings.Lists(complete, provisional), covered);
  }

  private void bind(Variant variant) {
    gates = new Gate[rules.size()];
    for (int i = 0; i < gates.length; i++) {
      gates[i] = rules.get(i).on(variant, space.mostModules());
    }
    cost = ranking.on(variant, Recorder.OFF);
  }

  private boolean coverVariant() {
    for (int parallel = 1; parallel <= space.parallelAtMost(); parallel++) {
      for (int series = 1; series <= space.seriesAtMost(); series++) {
        if (isStopped()) {
          return false;
        }
        examine(series, parallel);
        covered++;
      }
    }
    return true;
  }

  private boolean isStopped() {
    if ((covered & PROGRESS_MASK) == 0 && covered > 0) {
      draft.progress.accept(covered);
    }
    return covered >= draft.budget || ((covered & CANCEL_MASK) == 0 && draft.cancel.getAsBoolean());
  }

  private void examine(int series, int parallel) {
    int broken = 0;
    int lastSlot = 0;
    boolean complete = true;
    for (int i = 0; i < gates.length; i++) {
      Gate.Verdict verdict = gates[i].judge(series, parallel);
      if (verdict == Gate.Verdict.KEPT) {
        continue;
      }
      complete &= verdict != Gate.Verdict.UNKNOWN;
      if (verdict == Gate.Verdict.BROKEN || !draft.provisional) {
        lastSlot = verdict == Gate.Verdict.BROKEN ? i : i + gates.length;
        tally.count(lastSlot);
        broken++;
      }
    }
    if (broken == 0) {
      keep(series, parallel, complete);
    } else if (broken == 1) {
      reject(lastSlot, series, parallel);
    }
  }

  private void keep(int series, int parallel, boolean isComplete) {
    double value = cost.valueAt(series, parallel, Recorder.OFF);
    (isComplete ? complete : provisional).add(covered, spec.ranking().cost(value));
  }

  /** Only one thing is wrong with it: it may show the smallest relaxation. */
  private void reject(int slot, int series, int parallel) {
    tally.countAlone(slot);
    if (slot < gates.length) {
      Gate gate = gates[slot];
      double shortfall = gate.shortfallAt(series, parallel);
      tally.offer(slot, new Tally.Miss(covered, shortfall, gate.rounding()), order);
    }
  }
}
