package org.wattwright.conversion;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.wattwright.check.Basis;
import org.wattwright.check.Check;
import org.wattwright.check.Given;
import org.wattwright.internal.Require;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;
import org.wattwright.vehicle.AxleLimits;
import org.wattwright.vehicle.BrakeBalance;
import org.wattwright.vehicle.BrakeComparison;
import org.wattwright.vehicle.Descent;
import org.wattwright.vehicle.LoadCase;
import org.wattwright.vehicle.LoadState;
import org.wattwright.vehicle.MassLedger;
import org.wattwright.vehicle.RuleSubject;
import org.wattwright.vehicle.Stance;
import org.wattwright.vehicle.Understeer;

/**
 * The masses of the converted vehicle against its axles, tyres, brakes and springs, in every load
 * case, with the state before the conversion beside it.
 *
 * <pre>{@code
 * VehicleReview review = VehicleReview.of(ledger, List.of(LoadCase.KERB, laden), limits, chassis);
 * review.states().forEach(state -> System.out.println(state.axles() + ", was " + state.before().axles()));
 * review.checks().forEach(System.out::println);
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 */
public final class VehicleReview {
  private final MassLedger ledger;
  private final List<LoadState> states;
  private final AxleLimits limits;
  private final Chassis chassis;
  private final List<List<Check>> inCase;
  private final List<Check> overall;

  private VehicleReview(
      MassLedger ledger, List<LoadCase> loadCases, AxleLimits limits, Chassis chassis) {
    this.ledger = ledger;
    this.states = loadCases.stream().map(ledger::after).toList();
    this.limits = limits;
    this.chassis = chassis;
    this.inCase = states.stream().map(state -> VehicleChecks.inCase(this, state)).toList();
    this.overall = VehicleChecks.overall(this);
  }

  /**
   * Reviews a vehicle.
   *
   * @param ledger what leaves the weighed vehicle and what goes in
   * @param loadCases the cases to look at, at least one, no name twice
   * @param limits plates, gross mass and tyres; what is not given is NOT_CHECKED
   * @param chassis brakes, springs and the like; what is not known is NOT_CHECKED
   * @return the review
   * @throws InvalidInputException if there is no load case, or two of one name
   */
  public static VehicleReview of(
      MassLedger ledger, List<LoadCase> loadCases, AxleLimits limits, Chassis chassis) {
    Require.nonEmpty("VehicleReview.loadCases", loadCases);
    Set<String> names = new HashSet<>();
    for (LoadCase loadCase : loadCases) {
      if (!names.add(loadCase.name())) {
        throw InvalidInputException.of(
            "VehicleReview.loadCases", "of different names", '"' + loadCase.name() + "\" twice");
      }
    }
    return new VehicleReview(
        Objects.requireNonNull(ledger, "ledger"),
        loadCases,
        Objects.requireNonNull(limits, "limits"),
        Objects.requireNonNull(chassis, "chassis"));
  }

  /**
   * What leaves the vehicle and what goes in.
   *
   * @return the ledger
   */
  public MassLedger ledger() {
    return ledger;
  }

  /**
   * The converted vehicle in each load case; {@link LoadState#before()} is the vehicle before.
   *
   * @return in the order of the load cases
   */
  public List<LoadState> states() {
    return states;
  }

  /**
   * Plates, gross mass and tyres.
   *
   * @return the limits
   */
  public AxleLimits limits() {
    return limits;
  }

  /**
   * Brakes, springs and the like.
   *
   * @return as far as known
   */
  public Chassis chassis() {
    return chassis;
  }

  /**
   * The brakes before and after, in one load case.
   *
   * @param state one of {@link #states()}
   * @return empty if the brake split or the height of the centre of gravity is not known
   */
  public Optional<BrakeComparison> brakes(LoadState state) {
    Optional<Given<Double>> share = chassis.rearBrakeShare();
    Optional<Stance> before = state.before().stance();
    Optional<Stance> after = state.stance();
    if (share.isEmpty() || before.isEmpty() || after.isEmpty()) {
      return Optional.empty();
    }
    double rear = share.get().value();
    Basis basis = share.get().basis();
    return Optional.of(
        new BrakeComparison(
            BrakeBalance.of(before.get(), rear, basis), BrakeBalance.of(after.get(), rear, basis)));
  }

  /**
   * The steering of the converted vehicle in one load case.
   *
   * @param state one of {@link #states()}
   * @return empty if the stiffness of the axles or the height of the centre of gravity is not known
   */
  public Optional<Understeer> understeer(LoadState state) {
    return chassis
        .handling()
        .flatMap(
            known ->
                state.stance().map(stance -> Understeer.of(stance, known.front(), known.rear())));
  }

  /**
   * The long descent of the heaviest load case.
   *
   * @return empty if none was given
   */
  public Optional<Descent> descent() {
    return chassis.descent().map(road -> road.withMass(heaviest().total()));
  }

  /**
   * What the national rules look at.
   *
   * @return ledger and load cases
   */
  RuleSubject ruleSubject() {
    return new RuleSubject(ledger, states.stream().map(LoadState::loadCase).toList());
  }

  /**
   * Every check: axles, tyres and gross mass, steering share, brakes, springs, stability and
   * critical speed in each load case; then plates, parking brake, a long descent, tyre pressures
   * and rules.
   *
   * <p>Brakes: the order in which the axles lock and the grip that can be used, each against UN
   * R13-H; whether the rear axle newly locks first; and, as advice that gives at most a caution,
   * whether as much of the grip is used as before. Who demands that adds the check {@code
   * brake.efficiency.change} of {@link BrakeComparison#check} as a requirement.
   *
   * @return an immutable list in a fixed order
   */
  public List<Check> checks() {
    List<Check> all = new ArrayList<>();
    inCase.forEach(all::addAll);
    all.addAll(overall);
    return List.copyOf(all);
  }

  /**
   * The checks of one load case.
   *
   * @param index of the load case, in the order of {@link #states()}
   * @return an immutable list; the codes and their order are the same in every case
   */
  List<Check> checksInCase(int index) {
    return inCase.get(index);
  }

  /**
   * The checks that are not of one load case.
   *
   * @return an immutable list
   */
  List<Check> overallChecks() {
    return overall;
  }

  /**
   * The heaviest load case.
   *
   * @return one of {@link #states()}
   */
  public LoadState heaviest() {
    return states.stream().max((a, b) -> Kind.MASS.compare(a.total(), b.total())).orElseThrow();
  }

  /**
   * The ledger and the number of load cases.
   *
   * @return for example {@code front 560 kg, rear 470 kg, …; 5 removed, 5 added; 4 load cases}
   */
  @Override
  public String toString() {
    return ledger + "; load cases: " + states.size();
  }
}
