package org.wattwright.conductor;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wattwright.check.Recorder;

/** Works out every criterion of one candidate, and tells a recorder how. */
final class CandidateKernel {
  private CandidateKernel() {}

  /** The findings on all that the duty asks, in the order of {@link SizingCriterion}. */
  static List<Finding> evaluate(
      SizingDuty duty, Installation installation, Candidate candidate, Recorder recorder) {
    CandidateCase of = CandidateCase.of(duty, installation, candidate, recorder);
    List<Finding> findings = new ArrayList<>();
    double hottestK = new HeatCriteria(of, findings).hottestK();
    CircuitCriteria circuit = new CircuitCriteria(of);
    FittingCriteria fitting = new FittingCriteria(of);
    add(findings, new TerminalCriterion(of, hottestK).finding());
    add(findings, circuit.voltageDrop(hottestK));
    add(findings, circuit.shortCircuit());
    add(findings, fitting.bendRadius());
    add(findings, fitting.mechanicalMinimum());
    add(findings, fitting.voltageRating());
    return findings;
  }

  private static void add(List<Finding> findings, @Nullable Finding finding) {
    if (finding != null) {
      findings.add(finding);
    }
  }
}
