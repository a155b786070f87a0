package org.wattwright.protection;

import static org.wattwright.units.WorkshopUnits.AMPERE;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricCapacitance;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.ElectricPotential;
import javax.measure.quantity.Length;
import javax.measure.quantity.Time;
import org.jspecify.annotations.Nullable;
import org.wattwright.check.Given;
import org.wattwright.check.Source;
import org.wattwright.conductor.ConductorSizer;
import org.wattwright.conductor.Installation;
import org.wattwright.conductor.Joint;
import org.wattwright.conductor.Wiring;
import org.wattwright.profile.Profile;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;

/**
 * What one circuit of the vehicle asks of its cable, fuse, contactor and pre-charge.
 *
 * <p>Circuits form a tree: each is fed from another or from the source. A role that the traction
 * battery feeds needs a fuse unless told otherwise. Whatever is missing is named by {@link
 * #missing()}; nothing is guessed. Immutable and thread-safe.
 *
 * <pre>{@code
 * Circuit.of("traction", CircuitRole.TRACTION_MAIN)
 *     .continuousCurrent(amperes(140)).highestOperatingCurrent(amperes(300)).length(metres(3.2))
 *     .installation(Installation.freeAir(celsius(45)))
 *     .precharged().loadCapacitance(microfarads(600))
 *     .trip(OvercurrentTrip.at(amperes(400), seconds(0.2), "battery management"))
 *     .build()
 * }</pre>
 */
public final class Circuit implements Serializable {
  private static final long serialVersionUID = 1L;

  /**
   * How far the capacitance of a bus may lie from what is stated, where nothing else is known: 20
   * %.
   */
  public static final Given<Double> USUAL_CAPACITANCE_TOLERANCE =
      Given.estimated(
          0.2, Source.commonPractice("bus capacitors are sold to ±5 % to ±20 % of their value"));

  private final String name;
  private final CircuitRole role;
  private final CircuitFeed feed;
  private final CircuitLoad load;
  private final CircuitRoute route;
  private final CircuitGuard guard;

  private Circuit(CircuitBuilder builder) {
    name = builder.name;
    role = builder.role;
    feed = builder.feed();
    load = builder.load();
    route = builder.route();
    guard = builder.guard();
  }

  static Circuit from(CircuitBuilder builder) {
    Circuit circuit = new Circuit(builder);
    Double operatingA = circuit.load.operatingA();
    if (operatingA != null) {
      circuit.requireAtLeast("highestOperatingCurrent", operatingA, circuit.load.leastPeakA());
    }
    for (OvercurrentTrip trip : circuit.guard.trips()) {
      boolean isDelayed = trip.delayS() > 0;
      double leastA = isDelayed ? circuit.continuousA() : circuit.operatingA();
      circuit.requireAtLeast("trip", trip.currentA(), leastA);
    }
    return circuit;
  }

  private void requireAtLeast(String field, double valueA, double leastA) {
    if (!(valueA >= leastA)) {
      throw InvalidInputException.of(
          "Circuit." + field + " of " + name,
          "≥ " + AMPERE.of(leastA) + " of normal operation",
          AMPERE.of(valueA).toString());
    }
  }

  /**
   * A circuit.
   *
   * @param name as the shop calls it, unique within a job
   * @param role what it does
   * @return a builder
   * @throws InvalidInputException if the name is blank
   */
  public static CircuitBuilder of(String name, CircuitRole role) {
    return new CircuitBuilder(name, role);
  }

  /**
   * The name.
   *
   * @return unique within a job
   */
  public String name() {
    return name;
  }

  /**
   * What it does.
   *
   * @return the role
   */
  public CircuitRole role() {
    return role;
  }

  /**
   * The circuit that feeds it.
   *
   * @return empty at the source
   */
  public Optional<Circuit> upstream() {
    return Optional.ofNullable(feed.upstream());
  }

  /**
   * Continuous current; the profile's RMS without one.
   *
   * @return empty if neither is known
   */
  public Optional<Quantity<ElectricCurrent>> continuousCurrent() {
    return Optional.ofNullable(load.heatingA()).map(Kind.CURRENT::ofSi);
  }

  /**
   * Current against time.
   *
   * @return empty if not known
   */
  public Optional<Profile<ElectricCurrent>> profile() {
    return Optional.ofNullable(load.profile());
  }

  /**
   * Highest current in normal operation.
   *
   * @return as told; else the profile's peak or the continuous current; empty if none is known
   */
  public Optional<Quantity<ElectricCurrent>> highestOperatingCurrent() {
    double highestA = operatingA();
    return highestA > 0 ? Optional.of(Kind.CURRENT.ofSi(highestA)) : Optional.empty();
  }

  /**
   * Length out.
   *
   * @return empty if not known
   */
  public Optional<Quantity<Length>> length() {
    return Optional.ofNullable(route.outM()).map(Kind.LENGTH::ofSi);
  }

  /**
   * Length back; of three phases as long as the way out.
   *
   * @return empty if not known
   */
  public Optional<Quantity<Length>> returnLength() {
    return Optional.ofNullable(route.backM()).map(Kind.LENGTH::ofSi);
  }

  /**
   * How many conductors it has and how the current comes back.
   *
   * @return three phases of a motor, else a pair, unless told
   */
  public Wiring wiring() {
    return route.wiring();
  }

  /**
   * Most cables in parallel for each conductor.
   *
   * @return empty if the number of the whole design counts
   */
  public OptionalInt parallelRunsUpTo() {
    Integer most = route.mostRuns();
    return most == null ? OptionalInt.empty() : OptionalInt.of(most);
  }

  /**
   * Where the cables lie.
   *
   * @return empty if not known
   */
  public Optional<Installation> installation() {
    return Optional.ofNullable(route.installation());
  }

  /**
   * Joints of both polarities, or of two of three phases.
   *
   * @return empty if there are none
   */
  public List<Joint> joints() {
    return route.joints();
  }

  /**
   * Whether it has a fuse of its own.
   *
   * @return true if one is to be chosen
   */
  public boolean isFused() {
    return guard.isFused();
  }

  /**
   * Whether it has a contactor.
   *
   * @return true if one is to be chosen
   */
  public boolean isSwitched() {
    return guard.isSwitched();
  }

  /**
   * Whether the contactor closes only after pre-charge.
   *
   * @return true if a resistor is to be chosen
   */
  public boolean isPrecharged() {
    return guard.isPrecharged();
  }

  /**
   * Rated voltage of its service disconnect.
   *
   * @return empty without one
   */
  public Optional<Quantity<ElectricPotential>> serviceDisconnectVoltage() {
    return Optional.ofNullable(guard.disconnectV()).map(Kind.VOLTAGE::ofSi);
  }

  /**
   * What feeds it, where it is not the supply of the whole design.
   *
   * @return empty for that supply
   */
  public Optional<CircuitSupply> supply() {
    return Optional.ofNullable(feed.supply());
  }

  /**
   * Segments of a split battery whose own fault its devices must also clear.
   *
   * @return empty if the battery is not split
   */
  public List<CircuitSupply> segments() {
    return feed.segments();
  }

  /**
   * Whether the capacitors at its load end empty into a fault on it.
   *
   * @return true if they are fed backwards
   */
  public boolean isFedBackwards() {
    return load.bus().isFedBackwards();
  }

  /**
   * The settings that open its contactor.
   *
   * @return by delay, the quickest first; empty without one
   */
  public List<OvercurrentTrip> trips() {
    return guard.trips();
  }

  /**
   * Capacitance at the load end.
   *
   * @return empty if not known
   */
  public Optional<Quantity<ElectricCapacitance>> loadCapacitance() {
    return Optional.ofNullable(load.bus().capacitanceF()).map(Kind.CAPACITANCE::ofSi);
  }

  /**
   * By which share the capacitance may be more or less.
   *
   * @return as told, else {@link #USUAL_CAPACITANCE_TOLERANCE}
   */
  public Given<Double> loadCapacitanceTolerance() {
    return load.bus().tolerance();
  }

  /**
   * What takes current while the capacitors are pre-charged.
   *
   * @return as told, and the bleed resistor if there is one
   */
  public List<PrechargeLoad> runningLoads() {
    return load.bus().runningLoads();
  }

  /**
   * Current to which its source holds itself.
   *
   * @return empty if the source is not limited
   */
  public Optional<Quantity<ElectricCurrent>> currentLimit() {
    return Optional.ofNullable(feed.limitA()).map(Kind.CURRENT::ofSi);
  }

  /**
   * Who holds down the current.
   *
   * @return empty if the source is not limited
   */
  public Optional<String> currentLimitedBy() {
    return Optional.ofNullable(feed.limitedBy());
  }

  /**
   * Time within which every fault must be cleared.
   *
   * @return in s
   */
  public Quantity<Time> faultClearedWithin() {
    return Kind.TIME.ofSi(guard.clearingS());
  }

  /**
   * What stands in the way of a design because it was not told.
   *
   * @return names of the fields, such as {@code Circuit.length of heater}; empty if all is there
   */
  public List<String> missing() {
    List<String> missing = new ArrayList<>();
    addIfMissing(missing, "continuousCurrent or profile", load.heatingA());
    addIfMissing(missing, "length", route.outM());
    addIfMissing(missing, "installation", route.installation());
    if (!role.isFedByTractionBattery() && feed.supply() == null && feed.upstream() == null) {
      addIfMissing(missing, "currentLimit or supply", feed.limitA());
    }
    if (isPrecharged() || isFedBackwards()) {
      addIfMissing(missing, "loadCapacitance", load.bus().capacitanceF());
    }
    return missing;
  }

  private void addIfMissing(List<String> missing, String field, @Nullable Object value) {
    if (value == null) {
      missing.add("Circuit." + field + " of " + name);
    }
  }

  /** The sizer that asks of a cable what this circuit asks; the circuit misses nothing. */
  ConductorSizer sizer(ConductorSizer empty) {
    ConductorSizer sizer = route.sizer(empty);
    if (load.continuousA() != null) {
      sizer = sizer.continuousCurrent(Kind.CURRENT.ofSi(load.continuousA()));
    }
    return load.profile() == null ? sizer : sizer.profile(load.profile());
  }

  /** Highest current in normal operation; 0 if none is known. */
  double operatingA() {
    return load.highestA();
  }

  double continuousA() {
    Double heatingA = load.heatingA();
    return heatingA == null ? 0 : heatingA;
  }

  CircuitBus bus() {
    return load.bus();
  }

  CircuitRoute route() {
    return route;
  }

  CircuitGuard guard() {
    return guard;
  }

  /** Infinite if the source does not limit itself. */
  double limitA() {
    Double limitA = feed.limitA();
    return limitA == null ? Double.POSITIVE_INFINITY : limitA;
  }

  @Nullable Circuit upstreamOrNull() {
    return feed.upstream();
  }

  @Nullable OvercurrentTrip quickestTrip() {
    return guard.trips().isEmpty() ? null : guard.trips().get(0);
  }

  /**
   * Name, role, current and length.
   *
   * @return for example {@code traction: traction main, 140 A, 3.2 m}
   */
  @Override
  public String toString() {
    return text(name, role, load, route.outM());
  }

  static String text(String name, CircuitRole role, CircuitLoad load, @Nullable Double outM) {
    Double heatingA = load.heatingA();
    String current = heatingA == null ? "" : ", " + Kind.CURRENT.ofSi(heatingA);
    return name + ": " + role + current + (outM == null ? "" : ", " + Kind.LENGTH.ofSi(outM));
  }
}
