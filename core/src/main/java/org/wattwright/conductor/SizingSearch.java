package org.wattwright.conductor;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.wattwright.check.Recorder;
import org.wattwright.check.Worksheet;

/** Walks the candidates, smallest first, with the kernel of {@link CandidateKernel}. */
final class SizingSearch {
  private final SizingDuty duty;
  private final Installation installation;
  private final List<Candidate> candidates;

  SizingSearch(SizingDuty duty, Installation installation, List<Candidate> candidates) {
    this.duty = duty;
    this.installation = installation;
    this.candidates = List.copyOf(candidates);
  }

  SizingResult run(boolean isProvisionalAllowed) {
    @Nullable SizingLine smaller = null;
    @Nullable SizingLine provisional = null;
    @Nullable SizingLine smallerThanProvisional = null;
    for (Candidate candidate : candidates) {
      SizingLine line = line(candidate);
      if (line.passes()) {
        return sized(line, smaller);
      }
      if (provisional == null && line.isProvisional()) {
        provisional = line;
        smallerThanProvisional = smaller;
      }
      smaller = line;
    }
    return provisional != null && isProvisionalAllowed
        ? sized(provisional, smallerThanProvisional)
        : noSize(lines());
  }

  private SizingLine line(Candidate candidate) {
    return new SizingLine(
        candidate, CandidateKernel.evaluate(duty, installation, candidate, Recorder.OFF));
  }

  /** Every candidate, for the table. */
  List<SizingLine> lines() {
    return candidates.stream().map(this::line).toList();
  }

  private SizingResult sized(SizingLine chosen, @Nullable SizingLine smaller) {
    SizingCriterion governing = smaller == null ? chosen.mostUsed() : smaller.mostUsed();
    return new SizingResult.Sized(this, chosen, governing);
  }

  /** The chosen candidate again, this time with its working. */
  Worksheet worksheet(SizingLine chosen) {
    return worksheet(chosen.candidate());
  }

  Worksheet worksheet(Candidate candidate) {
    Worksheet.Recording recording = Worksheet.record("Conductor " + candidate.label());
    CandidateKernel.evaluate(duty, installation, candidate, recording);
    return recording.toWorksheet();
  }

  ConductorRun runOf(SizingLine chosen) {
    return duty.run(chosen.candidate());
  }

  /** Blocking is what the nearest miss fails alone; else what rules out most candidates. */
  private SizingResult noSize(List<SizingLine> lines) {
    Map<SizingCriterion, Integer> ruledOut = new EnumMap<>(SizingCriterion.class);
    List<SizingLine> nearMisses = new ArrayList<>();
    for (SizingLine line : lines) {
      List<SizingCriterion> objections = line.objections();
      objections.forEach(criterion -> ruledOut.merge(criterion, 1, Integer::sum));
      if (objections.size() == 1) {
        nearMisses.add(line);
      }
    }
    @Nullable SizingLine nearest = null;
    for (SizingLine line : nearMisses) {
      nearest = nearest == null || line.excess() < nearest.excess() ? line : nearest;
    }
    SizingCriterion blocking = nearest != null ? nearest.objections().get(0) : mostOften(ruledOut);
    return new SizingResult.NoSize(this, blocking, ruledOut, nearest);
  }

  private static SizingCriterion mostOften(Map<SizingCriterion, Integer> ruledOut) {
    return ruledOut.entrySet().stream()
        .reduce((a, b) -> b.getValue() > a.getValue() ? b : a)
        .orElseThrow()
        .getKey();
  }
}
