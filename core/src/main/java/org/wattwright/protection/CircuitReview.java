package org.wattwright.protection;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.wattwright.check.Check;
import org.wattwright.check.CheckBuilder;
import org.wattwright.check.Source;
import org.wattwright.internal.Require;

/**
 * Whether the list of circuits is whole: those that are often forgotten, and what each lacks.
 *
 * <p>Asked for: traction main, motor phases, charger and its mains inlet, the converter to the
 * low-voltage battery on both sides, and sense wires; inter-bay links in a split battery; a fuse
 * for each of parallel strings. What the vehicle does not have is said by {@link #without}.
 * Immutable.
 */
public final class CircuitReview {
  private static final Source PRACTICE = Source.commonPractice("circuits of an electric vehicle");

  private static final List<CircuitRole> ASKED =
      List.of(
          CircuitRole.TRACTION_MAIN,
          CircuitRole.MOTOR_PHASE,
          CircuitRole.CHARGER,
          CircuitRole.AC_INLET,
          CircuitRole.DCDC_INPUT,
          CircuitRole.DCDC_OUTPUT,
          CircuitRole.SENSE_WIRE);

  private final List<Circuit> circuits;
  private final Set<CircuitRole> absent;
  private final int bays;
  private final int strings;

  private CircuitReview(List<Circuit> circuits, Set<CircuitRole> absent, int bays, int strings) {
    this.circuits = List.copyOf(circuits);
    this.absent = Set.copyOf(absent);
    this.bays = bays;
    this.strings = strings;
  }

  /**
   * Of a job with one bay and one string.
   *
   * @param circuits all of the job
   * @return the review
   */
  public static CircuitReview of(List<Circuit> circuits) {
    return new CircuitReview(circuits, Set.of(), 1, 1);
  }

  /**
   * A role that this vehicle does not have.
   *
   * @param role such as {@link CircuitRole#AC_INLET} in a vehicle charged with direct current only
   * @return a new review
   */
  public CircuitReview without(CircuitRole role) {
    Set<CircuitRole> more = EnumSet.of(role);
    more.addAll(absent);
    return new CircuitReview(circuits, more, bays, strings);
  }

  /**
   * Bays over which the battery is split.
   *
   * @param count 1 to 20
   * @return a new review
   * @throws org.wattwright.units.InvalidInputException if outside its range
   */
  public CircuitReview bays(int count) {
    return new CircuitReview(
        circuits, absent, Require.count("CircuitReview.bays", count, 1, 20), strings);
  }

  /**
   * Strings in parallel.
   *
   * @param count 1 to 1000
   * @return a new review
   * @throws org.wattwright.units.InvalidInputException if outside its range
   */
  public CircuitReview parallelStrings(int count) {
    return new CircuitReview(
        circuits, absent, bays, Require.count("CircuitReview.strings", count, 1, 1000));
  }

  /**
   * The verdicts: one for each role asked for, then the traps of each circuit.
   *
   * @return codes {@code protection.circuit-listed}, {@code protection.link-count}, {@code
   *     protection.string-fuse}, {@code protection.circuit-data}, {@code protection.branch-fuse},
   *     {@code protection.low-voltage-fuse}, {@code protection.fed-backwards}
   */
  public List<Check> checks() {
    List<Check> checks = new ArrayList<>();
    for (CircuitRole role : ASKED) {
      if (!absent.contains(role)) {
        checks.add(listed(role, 1));
      }
    }
    if (bays > 1) {
      checks.add(listed(CircuitRole.INTER_BAY_LINK, bays - 1));
    }
    if (strings > 1) {
      checks.add(listed(CircuitRole.STRING, strings));
    }
    circuits.forEach(circuit -> addTraps(checks, circuit));
    return checks;
  }

  private Check listed(CircuitRole role, int least) {
    long count = circuits.stream().filter(circuit -> circuit.role() == role).count();
    CheckBuilder check =
        Check.named("protection.circuit-listed", role + " among the circuits").source(PRACTICE);
    if (count >= least) {
      return check.holds(true);
    }
    String missing = least == 1 ? "circuit" : (least - count) + " of " + least + " circuits";
    return check.safety().notChecked(missing + " of role " + role);
  }

  private void addTraps(List<Check> checks, Circuit circuit) {
    List<String> missing = circuit.missing();
    if (!missing.isEmpty()) {
      checks.add(
          named("protection.circuit-data", "data of " + circuit.name())
              .notChecked(missing.toArray(String[]::new)));
    }
    if (circuit.upstream().isPresent() && circuit.role().isFedByTractionBattery()) {
      checks.add(
          named("protection.branch-fuse", "fuse where " + circuit.name() + " is tapped off")
              .note("a branch without its own fuse is left to one that is sized for more")
              .recommends(circuit.isFused()));
    }
    addByRole(checks, circuit);
  }

  private void addByRole(List<Check> checks, Circuit circuit) {
    if (circuit.role() == CircuitRole.DCDC_OUTPUT) {
      checks.add(
          named(
                  "protection.low-voltage-fuse",
                  "fuse at the low-voltage battery of " + circuit.name())
              .note("the battery feeds a fault on this cable, not the converter")
              .holds(circuit.isFused()));
    }
    if (circuit.role() == CircuitRole.STRING && strings > 1) {
      checks.add(
          named("protection.string-fuse", "fuse of " + circuit.name() + ", one of " + strings)
              .note("the other strings feed a fault in this one")
              .holds(circuit.isFused()));
    }
    if (circuit.role() == CircuitRole.CHARGER && circuit.loadCapacitance().isEmpty()) {
      checks.add(
          named("protection.fed-backwards", "output capacitors of " + circuit.name())
              .note("the battery charges them when the contactor closes, and they feed a fault")
              .notChecked("Circuit.loadCapacitance of " + circuit.name()));
    }
  }

  private static CheckBuilder named(String code, String what) {
    return Check.named(code, what).source(PRACTICE).safety();
  }

  /**
   * Number of circuits and bays.
   *
   * @return for example {@code 7 circuits, 3 bays, 1 string}
   */
  @Override
  public String toString() {
    return circuits.size() + " circuits, " + bays + " bays, " + strings + " strings";
  }
}
