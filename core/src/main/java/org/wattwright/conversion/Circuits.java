package org.wattwright.conversion;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.wattwright.check.Check;
import org.wattwright.check.Checks;
import org.wattwright.check.Source;
import org.wattwright.protection.CircuitDesign;
import org.wattwright.protection.CircuitReview;

/**
 * The circuits of a vehicle: parts chosen, whether the list is whole, isolation, and whatever else
 * protects people.
 *
 * <pre>{@code
 * Circuits circuits = Circuits.of(designer.run(), CircuitReview.of(all).parallelStrings(3))
 *     .isolation(budget)
 *     .checks(wiring.checks())
 *     .checks(List.of(discharge.check(DischargeRule.BLEED)));
 * }</pre>
 *
 * <p>Immutable and thread-safe: every call returns new circuits.
 */
public final class Circuits {
  private final CircuitDesign design;
  private final CircuitReview review;
  private final @Nullable IsolationBudget isolation;
  private final List<Check> further;

  private Circuits(
      CircuitDesign design,
      CircuitReview review,
      @Nullable IsolationBudget isolation,
      List<Check> further) {
    this.design = design;
    this.review = review;
    this.isolation = isolation;
    this.further = List.copyOf(further);
  }

  /**
   * Circuits with their parts.
   *
   * @param design what the designer found
   * @param review of the list of circuits
   * @return circuits of whose isolation nothing is known
   */
  public static Circuits of(CircuitDesign design, CircuitReview review) {
    return new Circuits(
        Objects.requireNonNull(design, "design"),
        Objects.requireNonNull(review, "review"),
        null,
        List.of());
  }

  /**
   * With the isolation of all devices.
   *
   * @param budget leaks and capacitors to the chassis
   * @return new circuits
   */
  public Circuits isolation(IsolationBudget budget) {
    return new Circuits(design, review, Objects.requireNonNull(budget, "budget"), further);
  }

  /**
   * With further checks, such as those of sense wires, discharge, bonding, faults through the
   * chassis and the inlet.
   *
   * @param more added to those given before
   * @return new circuits
   */
  public Circuits checks(List<Check> more) {
    List<Check> all = new ArrayList<>(further);
    all.addAll(more);
    return new Circuits(design, review, isolation, all);
  }

  /**
   * The parts.
   *
   * @return what the designer found
   */
  public CircuitDesign design() {
    return design;
  }

  /**
   * Whether the list of circuits is whole.
   *
   * @return the review
   */
  public CircuitReview review() {
    return review;
  }

  /**
   * The isolation of all devices.
   *
   * @return empty if not known
   */
  public Optional<IsolationBudget> isolation() {
    return Optional.ofNullable(isolation);
  }

  /**
   * Checks of what is not part of a single circuit: discharge, bonding and the like.
   *
   * @return in the order given
   */
  public List<Check> furtherChecks() {
    return further;
  }

  /**
   * Every check: of each circuit's parts, of the list of circuits, of isolation and the rest.
   *
   * @return a circuit without parts fails {@code protection.parts}; isolation that is not known is
   *     NOT_CHECKED
   */
  public List<Check> checks() {
    List<Check> checks = new ArrayList<>(design.checks());
    design.blocked().ifPresent(blocked -> checks.add(noParts(design.whyNone())));
    checks.addAll(review.checks());
    checks.addAll(isolationChecks());
    checks.addAll(further);
    return List.copyOf(checks);
  }

  /** Isolation alone. */
  List<Check> isolationChecks() {
    return isolation == null
        ? List.of(IsolationBudget.unknown("Circuits.isolation"))
        : isolation.checks();
  }

  private static Check noParts(String why) {
    return Check.named("protection.parts", "parts of every circuit")
        .source(Source.requirement("catalogue and circuits"))
        .safety()
        .note(why)
        .holds(false);
  }

  /**
   * How many circuits, and the verdicts.
   *
   * @return for example {@code 12 circuits: 3 CAUTION, 140 PASS}
   */
  @Override
  public String toString() {
    return design.circuits().size() + " circuits: " + Checks.summary(checks());
  }
}
