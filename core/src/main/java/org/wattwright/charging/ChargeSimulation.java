package org.wattwright.charging;

import static org.wattwright.units.WorkshopUnits.AMPERE;
import static org.wattwright.units.WorkshopUnits.KILOWATT;
import static org.wattwright.units.WorkshopUnits.SECOND;
import static org.wattwright.units.WorkshopUnits.VOLT;
import static org.wattwright.units.WorkshopUnits.WATT;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.Consumer;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.ElectricPotential;
import javax.measure.quantity.Power;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import org.jspecify.annotations.Nullable;
import org.wattwright.battery.Pack;
import org.wattwright.internal.MissingFields;
import org.wattwright.internal.Require;
import org.wattwright.units.Kind;
import org.wattwright.units.Measure;
import org.wattwright.units.Measures;
import org.wattwright.units.StateOfCharge;

/**
 * Charges a pack from one state of charge to another and tells how long it takes, what is drawn,
 * what is lost, and what limits the current when.
 *
 * <p>At every moment the current is the least that supply, charger, settings and cells allow, with
 * U = E + I·R: constant power or current until a voltage limit, then the taper down to the end
 * current. Every change of limit is met exactly. All cells keep one state of charge and one
 * temperature; every ampere-hour that goes in stays in. Always bounded: by the target, the end
 * current, the time allowed, or a limit that forbids any current; the result says which.
 *
 * <pre>{@code
 * ChargeResult night = ChargeSimulation.of(pack).charger(charger).at(garage)
 *     .from(percentCharge(20)).to(percentCharge(90)).temperature(celsius(15)).run();
 * }</pre>
 *
 * <p>Each call returns a new simulation; immutable and thread-safe.
 */
public final class ChargeSimulation implements Serializable {
  private static final long serialVersionUID = 1L;

  /** Usual end of a taper, as a share of the capacity in A·h; common practice. */
  private static final double USUAL_END_SHARE = 1.0 / 20;

  private static final double S_PER_H = 3600;
  private static final Quantity<Time> USUAL_LONGEST = Measures.days(7);

  private final Pack pack;
  private final Draft draft;

  /** What has been told so far. */
  private static final class Draft implements Serializable {
    private static final long serialVersionUID = 1L;

    private List<Charger> chargers = List.of();
    private @Nullable ChargingPoint point;
    private @Nullable DcStation station;
    private @Nullable StateOfCharge from;
    private StateOfCharge to = StateOfCharge.FULL;
    private @Nullable Quantity<Temperature> temperature;
    private @Nullable Quantity<Temperature> chargerAmbient;
    private @Nullable AmbientCooling cooling;
    private @Nullable Quantity<ElectricCurrent> current;
    private @Nullable Quantity<Power> power;
    private @Nullable Quantity<ElectricPotential> voltage;
    private @Nullable Quantity<ElectricCurrent> endCurrent;
    private Quantity<Power> auxiliary = Kind.POWER.ofSi(0);
    private Quantity<Time> longest = USUAL_LONGEST;

    Draft copy() {
      Draft copy = new Draft();
      copy.chargers = chargers;
      copy.point = point;
      copy.station = station;
      copy.from = from;
      copy.to = to;
      copy.temperature = temperature;
      copy.chargerAmbient = chargerAmbient;
      copy.cooling = cooling;
      copy.current = current;
      copy.power = power;
      copy.voltage = voltage;
      copy.endCurrent = endCurrent;
      copy.auxiliary = auxiliary;
      copy.longest = longest;
      return copy;
    }
  }

  private ChargeSimulation(Pack pack, Draft draft) {
    this.pack = pack;
    this.draft = draft;
  }

  /**
   * A charge of a pack.
   *
   * @param pack the pack
   * @return a simulation that still needs a source, a start and a temperature
   */
  public static ChargeSimulation of(Pack pack) {
    return new ChargeSimulation(Objects.requireNonNull(pack, "pack"), new Draft());
  }

  private ChargeSimulation with(Consumer<Draft> change) {
    Draft changed = draft.copy();
    change.accept(changed);
    return new ChargeSimulation(pack, changed);
  }

  /**
   * Adds an on-board charger; several work in parallel.
   *
   * @param charger the charger
   * @return a new simulation
   */
  public ChargeSimulation charger(Charger charger) {
    Objects.requireNonNull(charger, "charger");
    return with(
        d -> {
          List<Charger> more = new ArrayList<>(d.chargers);
          more.add(charger);
          d.chargers = List.copyOf(more);
          d.station = null;
        });
  }

  /**
   * Where the chargers draw from.
   *
   * @param point the charging point
   * @return a new simulation
   */
  public ChargeSimulation at(ChargingPoint point) {
    Objects.requireNonNull(point, "point");
    return with(d -> d.point = point);
  }

  /**
   * Charges from a DC station, without the chargers on board.
   *
   * @param station the station
   * @return a new simulation
   */
  public ChargeSimulation station(DcStation station) {
    Objects.requireNonNull(station, "station");
    return with(
        d -> {
          d.station = station;
          d.chargers = List.of();
          d.point = null;
        });
  }

  /**
   * State of charge at the start.
   *
   * @param stateOfCharge of all cells
   * @return a new simulation
   */
  public ChargeSimulation from(StateOfCharge stateOfCharge) {
    Objects.requireNonNull(stateOfCharge, "from");
    return with(d -> d.from = stateOfCharge);
  }

  /**
   * State of charge to reach; full unless told.
   *
   * @param stateOfCharge of all cells; at or below the start there is nothing to do
   * @return a new simulation
   */
  public ChargeSimulation to(StateOfCharge stateOfCharge) {
    Objects.requireNonNull(stateOfCharge, "to");
    return with(d -> d.to = stateOfCharge);
  }

  /**
   * Cell temperature, at the start and all along unless {@link #cooling} is told.
   *
   * @param value absolute
   * @return a new simulation
   */
  public ChargeSimulation temperature(Quantity<Temperature> value) {
    Quantity<Temperature> ours = Measure.from(value, Kind.TEMPERATURE);
    return with(d -> d.temperature = ours);
  }

  /**
   * Temperature by which the chargers derate; that of the cells at the start unless told.
   *
   * @param value absolute, of air or coolant as the charger's table counts it
   * @return a new simulation
   */
  public ChargeSimulation chargerTemperature(Quantity<Temperature> value) {
    Quantity<Temperature> ours = Measure.from(value, Kind.TEMPERATURE);
    return with(d -> d.chargerAmbient = ours);
  }

  /**
   * Lets the pack warm by its losses and cool to its surroundings.
   *
   * @param value heat capacity, conductance and ambient temperature
   * @return a new simulation
   */
  public ChargeSimulation cooling(AmbientCooling value) {
    Objects.requireNonNull(value, "cooling");
    return with(d -> d.cooling = value);
  }

  /**
   * Largest current the vehicle asks for.
   *
   * @param value into the pack, ≥ 0 A
   * @return a new simulation
   * @throws org.wattwright.units.InvalidInputException if negative
   */
  public ChargeSimulation currentAtMost(Quantity<ElectricCurrent> value) {
    Require.quantity("ChargeSimulation.currentAtMost", value, AMPERE).nonNegative();
    Quantity<ElectricCurrent> ours = Measure.from(value, Kind.CURRENT);
    return with(d -> d.current = ours);
  }

  /**
   * Largest power the vehicle asks for.
   *
   * @param value into the pack, ≥ 0 kW
   * @return a new simulation
   * @throws org.wattwright.units.InvalidInputException if negative
   */
  public ChargeSimulation powerAtMost(Quantity<Power> value) {
    Require.quantity("ChargeSimulation.powerAtMost", value, KILOWATT).nonNegative();
    Quantity<Power> ours = Measure.from(value, Kind.POWER);
    return with(d -> d.power = ours);
  }

  /**
   * Voltage that is held in the taper; the pack's maximum unless told. The cells' own maximum holds
   * all the same.
   *
   * @param value at the pack's terminals, &gt; 0 V
   * @return a new simulation
   * @throws org.wattwright.units.InvalidInputException if not positive
   */
  public ChargeSimulation voltageAtMost(Quantity<ElectricPotential> value) {
    Require.quantity("ChargeSimulation.voltageAtMost", value, VOLT).positive();
    Quantity<ElectricPotential> ours = Measure.from(value, Kind.VOLTAGE);
    return with(d -> d.voltage = ours);
  }

  /**
   * Current at which the taper ends; a twentieth of the capacity (C/20, common practice) unless
   * told.
   *
   * @param value into the pack, &gt; 0 A
   * @return a new simulation
   * @throws org.wattwright.units.InvalidInputException if not positive
   */
  public ChargeSimulation endCurrent(Quantity<ElectricCurrent> value) {
    Require.quantity("ChargeSimulation.endCurrent", value, AMPERE).positive();
    Quantity<ElectricCurrent> ours = Measure.from(value, Kind.CURRENT);
    return with(d -> d.endCurrent = ours);
  }

  /**
   * Power that contactors, pumps, battery management and DC-DC converter take from the bus all the
   * while; none unless told.
   *
   * @param value ≥ 0 W
   * @return a new simulation
   * @throws org.wattwright.units.InvalidInputException if negative
   */
  public ChargeSimulation auxiliaryPower(Quantity<Power> value) {
    Require.quantity("ChargeSimulation.auxiliaryPower", value, WATT).nonNegative();
    Quantity<Power> ours = Measure.from(value, Kind.POWER);
    return with(d -> d.auxiliary = ours);
  }

  /**
   * Time allowed; 7 days unless told.
   *
   * @param value &gt; 0 s
   * @return a new simulation
   * @throws org.wattwright.units.InvalidInputException if not positive
   */
  public ChargeSimulation atMost(Quantity<Time> value) {
    Require.quantity("ChargeSimulation.atMost", value, SECOND).positive();
    Quantity<Time> ours = Measure.from(value, Kind.TIME);
    return with(d -> d.longest = ours);
  }

  /**
   * Charges.
   *
   * @return what came of it
   * @throws org.wattwright.units.InvalidInputException if source, start or temperature is missing
   */
  public ChargeResult run() {
    MissingFields missing = new MissingFields("ChargeSimulation");
    if (draft.station == null) {
      missing.field("charger", draft.chargers.isEmpty() ? null : draft.chargers);
      missing.field("at", draft.point);
    }
    missing.field("from", draft.from).field("temperature", draft.temperature).rejectIfAny();
    Quantity<Temperature> temperature = MissingFields.present(draft.temperature);
    double from = MissingFields.present(draft.from).fraction();
    ChargeKernel kernel =
        new ChargeKernel(PackModel.of(pack), source(temperature), settings(), draft.cooling);
    ChargeRun.Course course =
        new ChargeRun(kernel, draft.to.fraction(), Kind.TIME.siValueOf(draft.longest))
            .run(from, Kind.TEMPERATURE.siValueOf(temperature));
    return ChargeResult.of(this, kernel, course);
  }

  private SourceModel source(Quantity<Temperature> temperature) {
    if (draft.station != null) {
      return new SourceModel.Station(draft.station);
    }
    Quantity<Temperature> ambient =
        draft.chargerAmbient == null ? temperature : draft.chargerAmbient;
    return BankModel.of(draft.chargers, MissingFields.present(draft.point), ambient);
  }

  private ChargeKernel.Settings settings() {
    Quantity<ElectricPotential> held =
        draft.voltage == null ? pack.maximumVoltage() : draft.voltage;
    double endA =
        draft.endCurrent == null
            ? Kind.CHARGE.siValueOf(pack.capacity()) / S_PER_H * USUAL_END_SHARE
            : Kind.CURRENT.siValueOf(draft.endCurrent);
    return new ChargeKernel.Settings(
        draft.current == null ? Double.POSITIVE_INFINITY : Kind.CURRENT.siValueOf(draft.current),
        draft.power == null ? Double.POSITIVE_INFINITY : Kind.POWER.siValueOf(draft.power),
        Kind.VOLTAGE.siValueOf(held),
        endA,
        Kind.POWER.siValueOf(draft.auxiliary));
  }

  Pack pack() {
    return pack;
  }

  List<Charger> chargers() {
    return draft.chargers;
  }

  @Nullable ChargingPoint point() {
    return draft.point;
  }

  @Nullable DcStation station() {
    return draft.station;
  }

  StateOfCharge target() {
    return draft.to;
  }

  boolean asksForVoltage() {
    return draft.voltage != null;
  }

  @Nullable AmbientCooling cooling() {
    return draft.cooling;
  }

  /**
   * What is charged, from what.
   *
   * @return for example {@code charge of 2 strings, … from charger at 230 V, 32 A}
   */
  @Override
  public String toString() {
    if (draft.station != null) {
      return "charge of " + pack + " from " + draft.station;
    }
    String names = String.join(", ", draft.chargers.stream().map(Charger::name).toList());
    String at = draft.point == null ? "" : " at " + draft.point;
    return "charge of " + pack + (names.isEmpty() ? "" : " from " + names) + at;
  }
}
