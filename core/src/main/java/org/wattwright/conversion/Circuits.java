package org.wattwright.conversion;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.wattwright.check.Check;
import org.wattwright.check.Checks;
import org.wattwright.check.Source;
import org.wattwright.check.Worksheet;
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
 *     .checks(List.of(discharge.check(DischargeRule.BLEED)))
 *     .worksheets(List.of(discharge.worksheet(DischargeRule.BLEED)));
 * }</pre>
 *
 * <p>Immutable and thread-safe: every call returns new circuits.
 */
public final class Circuits {
  private final CircuitDesign design;
  private final CircuitReview review;
  private final @Nullable IsolationBudget isolation;
  private final Further further;

  private Circuits(
      CircuitDesign design,
      CircuitReview review,
      @Nullable IsolationBudget isolation,
      Further further) {
    this.design = design;
    this.review = review;
    this.isolation = isolation;
    this.further = further;
  }

  /** What is not of a single circuit. */
  private record Further(List<Check> checks, List<Worksheet> worksheets) {
    static final Further NONE = new Further(List.of(), List.of());

    Further with(List<Check> more) {
      List<Check> all = new ArrayList<>(checks);
      all.addAll(more);
      return new Further(List.copyOf(all), worksheets);
    }

    Further withWorksheets(List<Worksheet> more) {
      List<Worksheet> all = new ArrayList<>(worksheets);
      all.addAll(more);
      return new Further(checks, List.copyOf(all));
    }
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
        Further.NONE);
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
    return new Circuits(design, review, isolation, further.with(more));
  }

  /**
   * With the working of further checks, such as that of a discharge or a measured isolation.
   *
   * @param more added to those given before
   * @return new circuits
   */
  public Circuits worksheets(List<Worksheet> more) {
    return new Circuits(design, review, isolation, further.withWorksheets(more));
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
    return further.checks();
  }

  /**
   * The working of further checks.
   *
   * @return in the order given
   */
  public List<Worksheet> furtherWorksheets() {
    return further.worksheets();
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
    checks.addAll(further.checks());
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
