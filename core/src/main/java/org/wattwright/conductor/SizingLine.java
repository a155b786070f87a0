package org.wattwright.conductor;

import java.util.List;
import java.util.Optional;
import org.wattwright.check.Check;

/**
 * One candidate of a sizing with its checks.
 *
 * <p>Immutable and thread-safe.
 */
public final class SizingLine {
  private final Candidate candidate;
  private final List<Finding> findings;

  SizingLine(Candidate candidate, List<Finding> findings) {
    this.candidate = candidate;
    this.findings = List.copyOf(findings);
  }

  /**
   * The cable.
   *
   * @return as the catalogue has it
   */
  public Cable cable() {
    return candidate.cable();
  }

  /**
   * Cables in parallel in each polarity.
   *
   * @return ≥ 1
   */
  public int parallelRuns() {
    return candidate.runs();
  }

  /**
   * Whether every criterion was checked and none fails.
   *
   * @return true if this candidate serves
   */
  public boolean passes() {
    return findings.stream().noneMatch(f -> f.fails() || f.isNotChecked());
  }

  /**
   * Whether none fails but some criteria could not be checked.
   *
   * @return true if data is missing
   */
  public boolean isProvisional() {
    return findings.stream().noneMatch(Finding::fails) && !passes();
  }

  /**
   * The check of each criterion asked for.
   *
   * @return in the order of {@link SizingCriterion}
   */
  public List<Check> checks() {
    return findings.stream().map(f -> f.toCheck(label())).toList();
  }

  /**
   * The check of one criterion.
   *
   * @param criterion what was checked
   * @return empty if it was not asked for
   */
  public Optional<Check> check(SizingCriterion criterion) {
    return findings.stream()
        .filter(f -> f.criterion() == criterion)
        .findFirst()
        .map(f -> f.toCheck(label()));
  }

  /**
   * The criteria that rule this candidate out: those that fail, or those that could not be checked
   * if none fails.
   *
   * @return empty if it passes
   */
  public List<SizingCriterion> objections() {
    List<SizingCriterion> failing =
        findings.stream().filter(Finding::fails).map(Finding::criterion).toList();
    return failing.isEmpty()
        ? findings.stream().filter(Finding::isNotChecked).map(Finding::criterion).toList()
        : failing;
  }

  /**
   * The criterion of which most is used, or that is most exceeded; temperatures count as rises over
   * the air.
   *
   * @return the criterion
   */
  public SizingCriterion mostUsed() {
    Finding most = findings.get(0);
    for (Finding finding : findings) {
      // A criterion that could not be checked ranks above all that pass.
      most = rank(finding) > rank(most) ? finding : most;
    }
    return most.criterion();
  }

  private static double rank(Finding finding) {
    return finding.isNotChecked() ? 1 : finding.use();
  }

  /** How far the worst criterion is exceeded, as a share of its limit. */
  double excess() {
    return findings.stream().filter(Finding::fails).mapToDouble(Finding::use).max().orElse(1);
  }

  Candidate candidate() {
    return candidate;
  }

  String label() {
    return candidate.label();
  }

  /**
   * Candidate and what rules it out.
   *
   * @return for example {@code 25 mm² T-25: fails voltage drop}
   */
  @Override
  public String toString() {
    if (passes()) {
      return label() + ": passes";
    }
    String objections =
        String.join(", ", objections().stream().map(SizingCriterion::toString).toList());
    return label() + (isProvisional() ? ": not checked " : ": fails ") + objections;
  }
}
