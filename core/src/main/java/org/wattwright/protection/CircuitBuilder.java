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
import org.wattwright.conductor.Installation;
import org.wattwright.conductor.Joint;
import org.wattwright.internal.Require;
import org.wattwright.profile.Profile;
import org.wattwright.units.InvalidInputException;

/** Collects what a {@link Circuit} asks for; whatever is not told stays an open question. */
public final class CircuitBuilder {
  final String name;
  final CircuitRole role;
  @Nullable Circuit upstream;
  @Nullable Double continuousA;
  @Nullable Profile<ElectricCurrent> profile;
  @Nullable Double operatingA;
  @Nullable Double outM;
  @Nullable Double backM;
  @Nullable Installation installation;
  @Nullable Double terminalK;
  @Nullable Double dropV;
  @Nullable Double bendM;
  @Nullable Double areaM2;
  List<Joint> joints = List.of();
  boolean isFused = true;
  boolean isSwitched;
  boolean isPrecharged;
  @Nullable Double disconnectV;
  PrechargeWish precharge = PrechargeWish.NONE;
  @Nullable CircuitSupply supply;
  List<CircuitSupply> segments = List.of();
  boolean isFedBackwards;
  double capacitorOhm;
  double capacitorHenry;
  List<OvercurrentTrip> trips = List.of();
  @Nullable Double capacitanceF;
  @Nullable Double limitA;
  @Nullable String limitedBy;
  double clearingS = Circuit.USUAL_CLEARING_S;

  CircuitBuilder(String name, CircuitRole role) {
    this.name = Require.text("Circuit.name", name);
    this.role = Objects.requireNonNull(role, "role");
    this.isFused = role.isFedByTractionBattery();
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
   * Joints of both polarities.
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
    capacitanceF = Require.quantity(field("loadCapacitance"), value, FARAD).nonNegative();
    return this;
  }

  /**
   * The capacitors at the load end are charged by the battery through this circuit, and empty into
   * a fault on it, such as the output capacitors of a charger without a blocking diode.
   *
   * @return this builder
   */
  public CircuitBuilder fedBackwards() {
    isFedBackwards = true;
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
    capacitorOhm = Require.quantity(field("capacitorResistance"), resistance, OHM).positive();
    capacitorHenry =
        Require.quantity(field("capacitorInductance"), inductance, HENRY).nonNegative();
    return fedBackwards();
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
   *     the profile's peak, or a trip is set below the continuous current, or below the highest
   *     operating current without a delay
   */
  public Circuit build() {
    return Circuit.from(this);
  }
}
