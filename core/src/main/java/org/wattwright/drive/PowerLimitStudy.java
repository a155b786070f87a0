package org.wattwright.drive;

import static org.wattwright.units.Measures.kilometresPerHour;
import static org.wattwright.units.Measures.metresPerSecondSquared;
import static org.wattwright.units.Measures.seconds;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.Power;
import org.jspecify.annotations.Nullable;
import org.wattwright.check.Figure;
import org.wattwright.check.MarkdownTable;
import org.wattwright.internal.Require;
import org.wattwright.units.Kind;
import org.wattwright.units.StateOfCharge;

/**
 * What a limit on discharge current or power costs and brings: range, acceleration, top speed,
 * grades, following a trace; and the smallest limit that leaves stated abilities.
 *
 * <p>Following a trace, a limit changes little until the trace is lost; a driver who floors the
 * pedal at every start uses more with more power. Both are shown side by side.
 *
 * <pre>{@code
 * PowerLimitStudy study = PowerLimitStudy.of(van, StandardCycle.NEDC.cycle(), percentCharge(10), laden);
 * study.byCurrent(List.of(amperes(200), amperes(300), amperes(400)));
 * study.smallestCurrent(List.of(Ability.hold(kilometresPerHour(80), 0.05), Ability.startOn(0.2).with(laden)));
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 */
public final class PowerLimitStudy {
  private static final Quantity<javax.measure.quantity.Speed> GRADE_SPEED = kilometresPerHour(20);
  private static final double RELATIVE = 1e-10;
  private static final int MOST_HALVINGS = 200;

  /** A limit that leaves nothing of a drive. */
  private static final double NEXT_TO_NOTHING = 1e-3;

  private final ElectricVehicle vehicle;
  private final DriveCycle cycle;
  private final StateOfCharge reserve;
  private final Loading laden;
  private final DriveDemand demand;

  private PowerLimitStudy(
      ElectricVehicle vehicle,
      DriveCycle cycle,
      StateOfCharge reserve,
      Loading laden,
      DriveDemand demand) {
    this.vehicle = Objects.requireNonNull(vehicle, "vehicle");
    this.cycle = Objects.requireNonNull(cycle, "cycle");
    this.reserve = Objects.requireNonNull(reserve, "reserve");
    this.laden = Objects.requireNonNull(laden, "laden");
    this.demand = Objects.requireNonNull(demand, "demand");
  }

  /**
   * A study, with a demand of starts to 30, 50 and 70 km/h held for 20 s and braking at 1 m/s².
   *
   * @param vehicle the vehicle; a limit it has already stays on top
   * @param cycle to follow
   * @param reserve state of charge that stays in the pack
   * @param laden road load of the laden vehicle, for the grade it climbs; with the grip of the
   *     vehicle as it is
   * @return the study
   */
  public static PowerLimitStudy of(
      ElectricVehicle vehicle, DriveCycle cycle, StateOfCharge reserve, RoadLoad laden) {
    return of(vehicle, cycle, reserve, new Loading(laden, null));
  }

  /**
   * A study in which the laden vehicle is given whole, so that its grip is that of its own axles.
   *
   * @param vehicle the vehicle; a limit it has already stays on top
   * @param cycle to follow
   * @param reserve state of charge that stays in the pack
   * @param laden the laden vehicle, for the grade it climbs
   * @return the study
   */
  public static PowerLimitStudy of(
      ElectricVehicle vehicle, DriveCycle cycle, StateOfCharge reserve, ElectricVehicle laden) {
    return of(vehicle, cycle, reserve, Loading.of(laden));
  }

  private static PowerLimitStudy of(
      ElectricVehicle vehicle, DriveCycle cycle, StateOfCharge reserve, Loading laden) {
    DriveDemand demand =
        DriveDemand.braking(metresPerSecondSquared(1))
            .then(kilometresPerHour(30), seconds(20))
            .then(kilometresPerHour(50), seconds(20))
            .then(kilometresPerHour(70), seconds(20));
    return new PowerLimitStudy(vehicle, cycle, reserve, laden, demand);
  }

  /**
   * With another demand.
   *
   * @param other what the driver in a hurry asks for
   * @return a new study
   */
  public PowerLimitStudy withDemand(DriveDemand other) {
    return new PowerLimitStudy(vehicle, cycle, reserve, laden, other);
  }

  /**
   * Sweeps a limit on discharge current.
   *
   * @param limits each &gt; 0 A
   * @return one row each, in the order given
   * @throws org.wattwright.units.InvalidInputException if a limit is not positive or there is none
   */
  public List<LimitedDrive> byCurrent(List<Quantity<ElectricCurrent>> limits) {
    return Require.nonEmpty("PowerLimitStudy.limits", limits).stream()
        .map(a -> row(Figure.of(a, Kind.CURRENT), vehicle.withCurrentLimit(a)))
        .toList();
  }

  /**
   * Sweeps a limit on discharge power.
   *
   * @param limits each &gt; 0 kW
   * @return one row each, in the order given
   * @throws org.wattwright.units.InvalidInputException if a limit is not positive or there is none
   */
  public List<LimitedDrive> byPower(List<Quantity<Power>> limits) {
    return Require.nonEmpty("PowerLimitStudy.limits", limits).stream()
        .map(p -> row(Figure.of(p, Kind.POWER), vehicle.withPowerLimit(p)))
        .toList();
  }

  private LimitedDrive row(Figure limit, ElectricVehicle limited) {
    CycleRun run = CycleRun.of(limited);
    Performance performance = Performance.of(limited);
    return new LimitedDrive(
        limit,
        run.carryingOnBehind().range(cycle, reserve),
        run.once(cycle),
        demand.drive(DriveModel.of(limited), limited),
        performance.time(kilometresPerHour(0), kilometresPerHour(50)),
        performance.topSpeed(),
        Performance.of(laden.on(limited)).gradeAt(GRADE_SPEED));
  }

  /**
   * The headings of a table of limits.
   *
   * @return one a column, as {@link LimitedDrive#cells()} fills them
   */
  public static List<String> headings() {
    return List.of(
        "limit",
        "on the cycle",
        "range",
        "full-pedal starts",
        "0–50 km/h",
        "top speed",
        "grade laden, 20 km/h",
        "not followed");
  }

  /**
   * A sweep as a table.
   *
   * @param rows from {@link #byCurrent} or {@link #byPower}
   * @return Markdown, ending with a line feed
   */
  public static String toMarkdown(List<LimitedDrive> rows) {
    MarkdownTable table = MarkdownTable.withColumns(headings().toArray(String[]::new));
    rows.forEach(row -> table.row(row.cells().toArray(String[]::new)));
    return table.toText();
  }

  /**
   * The smallest limit on discharge current that leaves all abilities, by halving the interval down
   * to 1e-10 of it.
   *
   * @param abilities at least one
   * @return the limit and which ability governs, or which is lacking even without a limit
   * @throws org.wattwright.units.InvalidInputException if there is none
   */
  public SmallestLimit<ElectricCurrent> smallestCurrent(List<Ability> abilities) {
    double soc = vehicle.state().stateOfCharge().fraction();
    double mostA = vehicle.packTable().limitA(soc, true);
    return smallest(
        abilities, Kind.CURRENT, mostA, si -> vehicle.withCurrentLimit(Kind.CURRENT.ofSi(si)));
  }

  /**
   * The smallest limit on discharge power that leaves all abilities.
   *
   * @param abilities at least one
   * @return the limit and which ability governs, or which is lacking even without a limit
   * @throws org.wattwright.units.InvalidInputException if there is none
   */
  public SmallestLimit<Power> smallestPower(List<Ability> abilities) {
    double soc = vehicle.state().stateOfCharge().fraction();
    PackTable table = vehicle.packTable();
    double mostW = table.limitA(soc, true) * table.openCircuitV(soc);
    return smallest(
        abilities, Kind.POWER, mostW, si -> vehicle.withPowerLimit(Kind.POWER.ofSi(si)));
  }

  private <Q extends Quantity<Q>> SmallestLimit<Q> smallest(
      List<Ability> abilities,
      Kind<Q> kind,
      double most,
      Function<Double, ElectricVehicle> limited) {
    Map<Ability, Quantity<Q>> needs = new LinkedHashMap<>();
    @Nullable Ability lacking = null;
    Ability governing = Require.nonEmpty("PowerLimitStudy.abilities", abilities).get(0);
    double greatest = 0;
    for (Ability ability : abilities) {
      if (!ability.isMetBy(vehicle)) {
        lacking = lacking == null ? ability : lacking;
        continue;
      }
      double need = need(ability, most, limited);
      needs.put(ability, kind.ofSi(need));
      governing = need > greatest ? ability : governing;
      greatest = Math.max(greatest, need);
    }
    return lacking == null
        ? new SmallestLimit<>(kind, needs, governing, true)
        : new SmallestLimit<>(kind, needs, lacking, false);
  }

  private static double need(
      Ability ability, double most, Function<Double, ElectricVehicle> limited) {
    double low = NEXT_TO_NOTHING;
    double high = most;
    if (ability.isMetBy(limited.apply(low))) {
      return low;
    }
    for (int i = 0; i < MOST_HALVINGS && high - low > RELATIVE * high; i++) {
      double middle = (low + high) / 2;
      if (ability.isMetBy(limited.apply(middle))) {
        high = middle;
      } else {
        low = middle;
      }
    }
    return high;
  }

  /**
   * Vehicle and cycle.
   *
   * @return one line
   */
  @Override
  public String toString() {
    return "limits for " + vehicle + " on " + cycle.name();
  }
}
