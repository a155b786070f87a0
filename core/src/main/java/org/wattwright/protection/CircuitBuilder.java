package org.wattwright.protection;

import static org.wattwright.units.WorkshopUnits.AMPERE;
import static org.wattwright.units.WorkshopUnits.CELSIUS;
import static org.wattwright.units.WorkshopUnits.FARAD;
import static org.wattwright.units.WorkshopUnits.HENRY;
import static org.wattwright.units.WorkshopUnits.METRE;
import static org.wattwright.units.WorkshopUnits.MILLIMETRE;
import static org.wattwright.units.WorkshopUnits.OHM;
import static org.wattwright.units.WorkshopUnits.SECOND;
import static org.wattwright.units.WorkshopUnits.SQUARE_METRE;
import static org.wattwright.units.WorkshopUnits.VOLT;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Area;
import javax.measure.quantity.ElectricCapacitance;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.ElectricInductance;
import javax.measure.quantity.ElectricPotential;
import javax.measure.quantity.ElectricResistance;
import javax.measure.quantity.Length;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import org.jspecify.annotations.Nullable;
import org.wattwright.check.Given;
import org.wattwright.conductor.Installation;
import org.wattwright.conductor.Joint;
import org.wattwright.conductor.Wiring;
import org.wattwright.internal.Require;
import org.wattwright.profile.Profile;
import org.wattwright.units.InvalidInputException;

/** Collects what a {@link Circuit} asks for; whatever is not told stays an open question. */
public final class CircuitBuilder {
  final String name;
  final CircuitRole role;
  private @Nullable Circuit upstream;
  private @Nullable CircuitSupply supply;
  private List<CircuitSupply> segments = List.of();
  private @Nullable Double limitA;
  private @Nullable String limitedBy;
  private @Nullable Double continuousA;
  private @Nullable Profile<ElectricCurrent> profile;
  private @Nullable Double operatingA;
  private CircuitBus bus = CircuitBus.EMPTY;
  private @Nullable Double outM;
  private @Nullable Double backM;
  private Wiring wiring;
  private @Nullable Joint bodyReturn;
  private @Nullable Installation installation;
  private @Nullable Double terminalK;
  private @Nullable Double dropV;
  private @Nullable Double bendM;
  private @Nullable Double areaM2;
  private List<Joint> joints = List.of();
  private @Nullable Integer mostRuns;
  private boolean isFused;
  private boolean isSwitched;
  private boolean isPrecharged;
  private PrechargeWish precharge = PrechargeWish.NONE;
  private @Nullable Double disconnectV;
  private List<OvercurrentTrip> trips = List.of();
  private double clearingS = CircuitGuard.USUAL_CLEARING_S;

  CircuitBuilder(String name, CircuitRole role) {
    this.name = Require.text("Circuit.name", name);
    this.role = Objects.requireNonNull(role, "role");
    this.isFused = role.isFedByTractionBattery();
    this.wiring = role == CircuitRole.MOTOR_PHASE ? Wiring.THREE_PHASE : Wiring.PAIR;
  }

  CircuitFeed feed() {
    return new CircuitFeed(upstream, supply, segments, limitA, limitedBy);
  }

  CircuitLoad load() {
    return new CircuitLoad(continuousA, profile, operatingA, bus);
  }

  CircuitGuard guard() {
    return new CircuitGuard(
        isFused, isSwitched, isPrecharged, precharge, disconnectV, trips, clearingS);
  }

  CircuitRoute route() {
    CircuitRoute.Fit fit = new CircuitRoute.Fit(terminalK, dropV, bendM, areaM2);
    return new CircuitRoute(
        outM, wayBackM(), wiring, bodyReturn, installation, fit, joints, mostRuns);
  }

  /** Three phases are equally long; through the body there is no cable back. */
  private @Nullable Double wayBackM() {
    if (outM == null || backM == null || wiring == Wiring.PAIR) {
      return backM;
    }
    if (!(backM == 0 || backM.equals(outM))) {
      throw InvalidInputException.of(
          field("lengthBack") + " of " + name,
          "0 m or that of the way out, with " + wiring,
          METRE.of(backM).toString());
    }
    return wiring == Wiring.THREE_PHASE ? outM : Double.valueOf(0);
  }

  private static String field(String name) {
    return "Circuit." + name;
  }

  /**
   * The circuit that feeds this one; without it the circuit starts at the source.
   *
   * @param value nearer to the source
   * @return this builder
   */
  public CircuitBuilder fedFrom(Circuit value) {
    upstream = Objects.requireNonNull(value, "upstream");
    return this;
  }

  /**
   * What feeds this circuit and those behind it, where it is not the supply of the whole design.
   *
   * @param value such as the low-voltage battery
   * @return this builder
   */
  public CircuitBuilder suppliedBy(CircuitSupply value) {
    supply = Objects.requireNonNull(value, "supply");
    return this;
  }

  /**
   * Segments of a split battery whose own fault this circuit's devices must also clear; besides,
   * each device sees the whole voltage if it opens first.
   *
   * @param value each segment on its own
   * @return this builder
   */
  public CircuitBuilder segments(List<CircuitSupply> value) {
    segments = List.copyOf(value);
    return this;
  }

  /**
   * Continuous current.
   *
   * @param value &gt; 0 A
   * @return this builder
   * @throws InvalidInputException if not positive
   */
  public CircuitBuilder continuousCurrent(Quantity<ElectricCurrent> value) {
    continuousA = Require.quantity(field("continuousCurrent"), value, AMPERE).positive();
    return this;
  }

  /**
   * Current against time, repeated for ever, such as a drive cycle.
   *
   * @param value the profile
   * @return this builder
   */
  public CircuitBuilder profile(Profile<ElectricCurrent> value) {
    profile = Objects.requireNonNull(value, "profile");
    return this;
  }

  /**
   * Highest current in normal operation, from which on protection must answer; the profile's peak
   * or the continuous current unless told.
   *
   * @param value &gt; 0 A
   * @return this builder
   * @throws InvalidInputException if not positive
   */
  public CircuitBuilder highestOperatingCurrent(Quantity<ElectricCurrent> value) {
    operatingA = Require.quantity(field("highestOperatingCurrent"), value, AMPERE).positive();
    return this;
  }

  /**
   * Length from terminal to terminal, the same out and back.
   *
   * @param oneWay &gt; 0
   * @return this builder
   * @throws InvalidInputException if not positive
   */
  public CircuitBuilder length(Quantity<Length> oneWay) {
    return lengths(oneWay, oneWay);
  }

  /**
   * Lengths of both polarities.
   *
   * @param out &gt; 0
   * @param back ≥ 0; zero where the return is another conductor
   * @return this builder
   * @throws InvalidInputException if outside its range
   */
  public CircuitBuilder lengths(Quantity<Length> out, Quantity<Length> back) {
    outM = Require.quantity(field("length"), out, METRE).positive();
    backM = Require.quantity(field("lengthBack"), back, METRE).nonNegative();
    return this;
  }

  /**
   * How many conductors it has: three of a motor, else a pair, unless told. Of three phases each is
   * as long as the way out, the joints are those of two of them, and the voltage lost is that
   * between two.
   *
   * @param value pair or three phases; a return through the body has a resistance of its own, see
   *     {@link #returningThroughBody}
   * @return this builder
   * @throws InvalidInputException if the return is through the body
   */
  public CircuitBuilder wiring(Wiring value) {
    if (value == Wiring.CHASSIS_RETURN) {
      throw InvalidInputException.of(
          field("wiring") + " of " + name, "a pair or three phases", value.toString());
    }
    wiring = Objects.requireNonNull(value, "wiring");
    bodyReturn = null;
    return this;
  }

  /**
   * One conductor out, and back through the body, which only low voltage may do.
   *
   * @param most highest resistance of the body between the two earth points, ≥ 0 Ω, with its basis
   * @return this builder
   * @throws InvalidInputException if negative, or the circuit is not of low voltage
   */
  public CircuitBuilder returningThroughBody(Given<Quantity<ElectricResistance>> most) {
    if (role != CircuitRole.DCDC_OUTPUT && role != CircuitRole.LOW_VOLTAGE_FEED) {
      throw InvalidInputException.of(
          field("wiring") + " of " + name,
          "a pair: only low voltage returns through the body",
          Wiring.CHASSIS_RETURN.toString());
    }
    Require.quantity(field("bodyResistance"), most.value(), OHM).nonNegative();
    wiring = Wiring.CHASSIS_RETURN;
    bodyReturn = CircuitRoute.body(most);
    return this;
  }

  /**
   * Allows parallel cables in this circuit, whatever the whole design allows.
   *
   * @param most 1 to 8 for each conductor
   * @return this builder
   * @throws InvalidInputException if outside its range
   */
  public CircuitBuilder parallelRunsUpTo(int most) {
    mostRuns = Require.count(field("parallelRuns"), most, 1, 8);
    return this;
  }

  /**
   * Where the cables lie; the air is that of the hottest day.
   *
   * @param value the installation
   * @return this builder
   */
  public CircuitBuilder installation(Installation value) {
    installation = Objects.requireNonNull(value, "installation");
    return this;
  }

  /**
   * Highest temperature that the terminals of both ends allow.
   *
   * @param value 40 °C to 300 °C
   * @return this builder
   * @throws InvalidInputException if outside its range
   */
  public CircuitBuilder terminalTemperatureAtMost(Quantity<Temperature> value) {
    terminalK = Require.quantity(field("terminalTemperature"), value, CELSIUS).between(40, 300);
    return this;
  }

  /**
   * Voltage that may be lost at the continuous current.
   *
   * @param value &gt; 0 V
   * @return this builder
   * @throws InvalidInputException if not positive
   */
  public CircuitBuilder voltageDropAtMost(Quantity<ElectricPotential> value) {
    dropV = Require.quantity(field("voltageDrop"), value, VOLT).positive();
    return this;
  }

  /**
   * Bend radius that the route has room for.
   *
   * @param value &gt; 0
   * @return this builder
   * @throws InvalidInputException if not positive
   */
  public CircuitBuilder bendRadiusAvailable(Quantity<Length> value) {
    bendM = Require.quantity(field("bendRadius"), value, MILLIMETRE).positive();
    return this;
  }

  /**
   * Least area for mechanical strength.
   *
   * @param value &gt; 0
   * @return this builder
   * @throws InvalidInputException if not positive
   */
  public CircuitBuilder areaAtLeast(Quantity<Area> value) {
    areaM2 = Require.quantity(field("area"), value, SQUARE_METRE).positive();
    return this;
  }

  /**
   * Joints of both polarities, or of two of three phases.
   *
   * @param value lugs, joints, plugs
   * @return this builder
   */
  public CircuitBuilder joints(List<Joint> value) {
    joints = List.copyOf(value);
    return this;
  }

  /**
   * A branch without a fuse of its own: the next fuse nearer to the source must protect it.
   *
   * @return this builder
   */
  public CircuitBuilder withoutFuse() {
    isFused = false;
    return this;
  }

  /**
   * Needs a fuse of its own, where the role does not ask for one anyway.
   *
   * @return this builder
   */
  public CircuitBuilder fused() {
    isFused = true;
    return this;
  }

  /**
   * Needs a contactor.
   *
   * @return this builder
   */
  public CircuitBuilder switched() {
    isSwitched = true;
    return this;
  }

  /**
   * Needs a contactor that closes only after pre-charge.
   *
   * @return this builder
   */
  public CircuitBuilder precharged() {
    isSwitched = true;
    isPrecharged = true;
    return this;
  }

  /**
   * How long pre-charge may take, and after which time it is given up.
   *
   * @param within wanted time of the slowest pre-charge, &gt; 0 s
   * @param timeOut how long a shorted load burdens the resistor, at least the wanted time
   * @return this builder
   * @throws InvalidInputException if a time is outside its range
   */
  public CircuitBuilder prechargeTimes(Quantity<Time> within, Quantity<Time> timeOut) {
    double withinS = Require.quantity(field("prechargeWithin"), within, SECOND).positive();
    double timeOutS = Require.quantity(field("prechargeTimeOut"), timeOut, SECOND).positive();
    if (!(timeOutS >= withinS)) {
      throw InvalidInputException.of(
          field("prechargeTimeOut"), "≥ the wanted " + within, timeOut.toString());
    }
    precharge = precharge.withTimes(withinS, timeOutS);
    return this;
  }

  /**
   * How often pre-charge may be repeated.
   *
   * @param shots at least 1
   * @param period in which they fall, &gt; 0 s
   * @return this builder
   * @throws InvalidInputException if an argument is outside its range
   */
  public CircuitBuilder prechargeRepeats(int shots, Quantity<Time> period) {
    int count = Require.positiveCount(field("prechargeShots"), shots);
    double periodS = Require.quantity(field("prechargePeriod"), period, SECOND).positive();
    precharge = precharge.withRepeats(count, periodS);
    return this;
  }

  /**
   * Has a service disconnect in series.
   *
   * @param rated its rated direct voltage, &gt; 0 V
   * @return this builder
   * @throws InvalidInputException if not positive
   */
  public CircuitBuilder withServiceDisconnect(Quantity<ElectricPotential> rated) {
    disconnectV = Require.quantity(field("serviceDisconnect"), rated, VOLT).positive();
    return this;
  }

  /**
   * A setting that opens the contactor, or stops a source that limits its own current.
   *
   * @param value the setting
   * @return this builder
   */
  public CircuitBuilder trip(OvercurrentTrip value) {
    return trips(List.of(value));
  }

  /**
   * Settings that open the contactor, or stop a source that limits its own current, such as one at
   * once and one below the peaks of operation that waits for longer than they last.
   *
   * @param value the settings, in any order; those set before no longer count
   * @return this builder
   */
  public CircuitBuilder trips(List<OvercurrentTrip> value) {
    List<OvercurrentTrip> all = new ArrayList<>(value);
    all.sort(
        Comparator.comparingDouble(OvercurrentTrip::delayS)
            .thenComparingDouble(OvercurrentTrip::currentA));
    trips = List.copyOf(all);
    return this;
  }

  /**
   * Capacitance of the devices at the load end, with that of all circuits behind this one.
   *
   * @param value ≥ 0 F; zero where there is none
   * @return this builder
   * @throws InvalidInputException if negative
   */
  public CircuitBuilder loadCapacitance(Quantity<ElectricCapacitance> value) {
    bus =
        bus.withCapacitance(Require.quantity(field("loadCapacitance"), value, FARAD).nonNegative());
    return this;
  }

  /**
   * By which share the capacitance may be more or less; ±20 % as an estimate unless told ({@link
   * Circuit#USUAL_CAPACITANCE_TOLERANCE}). Time, energy and inrush count with the most, the
   * quickest course with the least.
   *
   * @param share 0 to 0.5, such as 0.1 for ±10 %, as the data sheets state
   * @return this builder
   * @throws InvalidInputException if outside its range
   */
  public CircuitBuilder loadCapacitanceTolerance(double share) {
    double stated = Require.between(field("loadCapacitanceTolerance"), share, 0, 0.5);
    bus = bus.withTolerance(Given.dataSheet(stated, "bus capacitors"));
    return this;
  }

  /**
   * Adds a load that runs while the capacitors are pre-charged: it leaves a voltage missing for
   * good, and pre-charge may never complete.
   *
   * @param value the load
   * @return this builder
   */
  public CircuitBuilder runsDuringPrecharge(PrechargeLoad value) {
    bus = bus.withLoad(Objects.requireNonNull(value, "load"));
    return this;
  }

  /**
   * A resistor across the capacitors that empties them for good; it loads them during pre-charge.
   *
   * @param resistance &gt; 0 Ω
   * @param tolerance of the resistor, 0 to 0.5
   * @return this builder
   * @throws InvalidInputException if an argument is outside its range
   */
  public CircuitBuilder bleedResistor(Quantity<ElectricResistance> resistance, double tolerance) {
    double ohm = Require.quantity(field("bleedResistor"), resistance, OHM).positive();
    double share = Require.between(field("bleedResistorTolerance"), tolerance, 0, 0.5);
    bus = bus.withBleed(new CircuitBus.Bleed(ohm, share));
    return this;
  }

  /**
   * The capacitors at the load end are charged by the battery through this circuit, and empty into
   * a fault on it, such as the output capacitors of a charger without a blocking diode.
   *
   * @return this builder
   */
  public CircuitBuilder fedBackwards() {
    bus = bus.fedBackwards(bus.backwardOhm(), bus.backwardHenry());
    return this;
  }

  /**
   * As {@link #fedBackwards()}, with what the capacitors have in their own way: without it a fault
   * at the load end, and in circuits that begin there, is not checked, since no cable lies between.
   *
   * @param resistance from the capacitors to the load end, in series, &gt; 0 Ω
   * @param inductance of the same way, ≥ 0 H
   * @return this builder
   * @throws InvalidInputException if an argument is outside its range
   */
  public CircuitBuilder fedBackwards(
      Quantity<ElectricResistance> resistance, Quantity<ElectricInductance> inductance) {
    double ohm = Require.quantity(field("capacitorResistance"), resistance, OHM).positive();
    double henry = Require.quantity(field("capacitorInductance"), inductance, HENRY).nonNegative();
    bus = bus.fedBackwards(ohm, henry);
    return this;
  }

  /**
   * The source holds down its own current, such as an inverter or a converter; no fault is higher.
   * A circuit with a fuse is judged by its supply all the same: the fuse is there for what the
   * device lets pass when it fails.
   *
   * @param current &gt; 0 A
   * @param by who limits, such as {@code inverter}
   * @return this builder
   * @throws InvalidInputException if an argument is outside its range
   */
  public CircuitBuilder currentLimitedTo(Quantity<ElectricCurrent> current, String by) {
    limitA = Require.quantity(field("currentLimit"), current, AMPERE).positive();
    limitedBy = Require.text(field("currentLimitedBy"), by);
    return this;
  }

  /**
   * Time within which every fault must be cleared; 5 s unless told, up to which the short-circuit
   * limits of insulation hold (IEC 60364-4-43, 434.5.2).
   *
   * @param value 1 ms to 5 s
   * @return this builder
   * @throws InvalidInputException if outside its range
   */
  public CircuitBuilder faultClearedWithin(Quantity<Time> value) {
    clearingS = Require.quantity(field("clearingTime"), value, SECOND).between(0.001, 5);
    return this;
  }

  /**
   * The circuit.
   *
   * @return immutable
   * @throws InvalidInputException if the highest operating current is below the continuous one or
   *     the profile's peak; a trip is set below the continuous current, or below the highest
   *     operating current without a delay; or the way back does not suit the wiring
   */
  public Circuit build() {
    return Circuit.from(this);
  }

  /**
   * What has been told so far.
   *
   * @return name, role, current and length, as those of the circuit
   */
  @Override
  public String toString() {
    return Circuit.text(name, role, load(), outM);
  }
}
