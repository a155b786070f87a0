package org.wattwright.charging;

import static org.wattwright.units.WorkshopUnits.AMPERE;
import static org.wattwright.units.WorkshopUnits.MILLIAMPERE;
import static org.wattwright.units.WorkshopUnits.SECOND;
import static org.wattwright.units.WorkshopUnits.WATT;

import java.io.Serializable;
import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.Power;
import javax.measure.quantity.Time;
import org.jspecify.annotations.Nullable;
import org.wattwright.check.Basis;
import org.wattwright.check.Figure;
import org.wattwright.check.Given;
import org.wattwright.internal.Require;
import org.wattwright.units.Kind;
import org.wattwright.units.Measure;

/**
 * A load of the low-voltage system: what it draws while it is on, for what share of the time, at
 * its peak, and with the key off.
 *
 * <pre>{@code
 * LowVoltageLoad.of("dipped beam", amperes(8.5)).essential();
 * LowVoltageLoad.of("wipers", amperes(4.5)).duty(0.5).peak(amperes(12)).essential();
 * LowVoltageLoad.ofPower("coolant pump", watts(50)).duty(0.6);
 * LowVoltageLoad.keyOff("battery management", milliamperes(12)).awake(milliamperes(300), minutes(10));
 * }</pre>
 *
 * <p>Each call returns a new load; immutable and thread-safe.
 */
public final class LowVoltageLoad implements Serializable {
  private static final long serialVersionUID = 1L;

  private final String name;
  private final @Nullable Quantity<ElectricCurrent> current;
  private final @Nullable Quantity<Power> power;
  private final double duty;
  private final @Nullable Quantity<ElectricCurrent> peak;
  private final boolean essential;
  private final Quantity<ElectricCurrent> asleep;
  private final Awake awake;
  private final Basis basis;

  /** What a device draws before it falls asleep, and how long. */
  private record Awake(Quantity<ElectricCurrent> current, Quantity<Time> time)
      implements Serializable {
    static final Awake NOT_AT_ALL = new Awake(Kind.CURRENT.ofSi(0), Kind.TIME.ofSi(0));

    double chargeC() {
      return Kind.CURRENT.siValueOf(current) * Kind.TIME.siValueOf(time);
    }
  }

  private LowVoltageLoad(Draft draft) {
    name = draft.name;
    current = draft.current;
    power = draft.power;
    duty = draft.duty;
    peak = draft.peak;
    essential = draft.essential;
    asleep = draft.asleep;
    awake = draft.awake;
    basis = draft.basis;
  }

  /** The fields of a load that is being changed. */
  private static final class Draft {
    private final String name;
    private @Nullable Quantity<ElectricCurrent> current;
    private @Nullable Quantity<Power> power;
    private double duty = 1;
    private @Nullable Quantity<ElectricCurrent> peak;
    private boolean essential;
    private Quantity<ElectricCurrent> asleep = Kind.CURRENT.ofSi(0);
    private Awake awake = Awake.NOT_AT_ALL;
    private Basis basis = Basis.DATA_SHEET;

    Draft(String name) {
      this.name = Require.text("LowVoltageLoad.name", name);
    }

    Draft(LowVoltageLoad load) {
      name = load.name;
      current = load.current;
      power = load.power;
      duty = load.duty;
      peak = load.peak;
      essential = load.essential;
      asleep = load.asleep;
      awake = load.awake;
      basis = load.basis;
    }
  }

  /**
   * A load by the current it draws while on.
   *
   * @param name as reports print it
   * @param current ≥ 0 A
   * @return a load that is on all the time
   * @throws org.wattwright.units.InvalidInputException if the name is blank or the current negative
   */
  public static LowVoltageLoad of(String name, Quantity<ElectricCurrent> current) {
    Draft draft = new Draft(name);
    draft.current = nonNegative("LowVoltageLoad.current", current);
    return new LowVoltageLoad(draft);
  }

  /**
   * A load by a current and what it rests on, such as one of {@link TypicalLoad}.
   *
   * @param name as reports print it
   * @param current ≥ 0 A
   * @return a load that is on all the time
   * @throws org.wattwright.units.InvalidInputException if the name is blank or the current negative
   */
  public static LowVoltageLoad of(String name, Given<Quantity<ElectricCurrent>> current) {
    Draft draft = new Draft(of(name, current.value()));
    draft.basis = current.basis();
    return new LowVoltageLoad(draft);
  }

  /**
   * A load by the power it takes while on.
   *
   * @param name as reports print it
   * @param power ≥ 0 W
   * @return a load that is on all the time
   * @throws org.wattwright.units.InvalidInputException if the name is blank or the power negative
   */
  public static LowVoltageLoad ofPower(String name, Quantity<Power> power) {
    Require.quantity("LowVoltageLoad.power", power, WATT).nonNegative();
    Draft draft = new Draft(name);
    draft.power = Measure.from(power, Kind.POWER);
    return new LowVoltageLoad(draft);
  }

  /**
   * A load that draws with the key off alone.
   *
   * @param name as reports print it
   * @param current asleep, ≥ 0 mA
   * @return the load
   * @throws org.wattwright.units.InvalidInputException if the name is blank or the current negative
   */
  public static LowVoltageLoad keyOff(String name, Quantity<ElectricCurrent> current) {
    return of(name, Kind.CURRENT.ofSi(0)).asleep(current);
  }

  private static Quantity<ElectricCurrent> nonNegative(
      String field, Quantity<ElectricCurrent> current) {
    Require.quantity(field, current, AMPERE).nonNegative();
    return Measure.from(current, Kind.CURRENT);
  }

  /**
   * Share of the time it is on; always unless told.
   *
   * @param share 0 to 1
   * @return a new load
   * @throws org.wattwright.units.InvalidInputException if outside its range
   */
  public LowVoltageLoad duty(double share) {
    Draft draft = new Draft(this);
    draft.duty = Require.fraction("LowVoltageLoad.duty", share);
    return new LowVoltageLoad(draft);
  }

  /**
   * Largest current for a moment, such as a motor that starts; that of the steady load unless told.
   *
   * @param value ≥ 0 A
   * @return a new load
   * @throws org.wattwright.units.InvalidInputException if negative
   */
  public LowVoltageLoad peak(Quantity<ElectricCurrent> value) {
    Draft draft = new Draft(this);
    draft.peak = nonNegative("LowVoltageLoad.peak", value);
    return new LowVoltageLoad(draft);
  }

  /**
   * Needed to bring the vehicle safely to a stop when the converter fails: lights, wipers, hazard
   * warning, brake vacuum, contactor coils.
   *
   * @return a new load
   */
  public LowVoltageLoad essential() {
    Draft draft = new Draft(this);
    draft.essential = true;
    return new LowVoltageLoad(draft);
  }

  /**
   * Current with the key off, asleep; none unless told.
   *
   * @param value ≥ 0 mA
   * @return a new load
   * @throws org.wattwright.units.InvalidInputException if negative
   */
  public LowVoltageLoad asleep(Quantity<ElectricCurrent> value) {
    Require.quantity("LowVoltageLoad.asleep", value, MILLIAMPERE).nonNegative();
    Draft draft = new Draft(this);
    draft.asleep = Measure.from(value, Kind.CURRENT);
    return new LowVoltageLoad(draft);
  }

  /**
   * What it draws after the key is turned off, until it falls asleep; nothing unless told.
   *
   * @param value ≥ 0 A
   * @param time how long, ≥ 0 s
   * @return a new load
   * @throws org.wattwright.units.InvalidInputException if a value is negative
   */
  public LowVoltageLoad awake(Quantity<ElectricCurrent> value, Quantity<Time> time) {
    Require.quantity("LowVoltageLoad.awakeTime", time, SECOND).nonNegative();
    Draft draft = new Draft(this);
    draft.awake =
        new Awake(nonNegative("LowVoltageLoad.awake", value), Measure.from(time, Kind.TIME));
    return new LowVoltageLoad(draft);
  }

  /**
   * Name as reports print it.
   *
   * @return the name
   */
  public String name() {
    return name;
  }

  /**
   * Share of the time it is on.
   *
   * @return 0 to 1
   */
  public double duty() {
    return duty;
  }

  /**
   * Whether it is needed to bring the vehicle to a stop.
   *
   * @return false unless told
   */
  public boolean isEssential() {
    return essential;
  }

  /**
   * Largest current for a moment.
   *
   * @return empty if not told
   */
  public Optional<Quantity<ElectricCurrent>> peak() {
    return Optional.ofNullable(peak);
  }

  /**
   * What its current rests on.
   *
   * @return data sheet unless told
   */
  public Basis basis() {
    return basis;
  }

  /** Current while on, at the voltage of the system. */
  double onA(double systemV) {
    if (current != null) {
      return Kind.CURRENT.siValueOf(current);
    }
    return power == null ? 0 : Kind.POWER.siValueOf(power) / systemV;
  }

  double peakA(double systemV) {
    return peak == null ? onA(systemV) : Math.max(onA(systemV), Kind.CURRENT.siValueOf(peak));
  }

  double asleepA() {
    return Kind.CURRENT.siValueOf(asleep);
  }

  double awakeC() {
    return awake.chargeC();
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof LowVoltageLoad that
        && name.equals(that.name)
        && Objects.equals(current, that.current)
        && Objects.equals(power, that.power)
        && Double.compare(duty, that.duty) == 0
        && Objects.equals(peak, that.peak)
        && essential == that.essential
        && asleep.equals(that.asleep)
        && awake.equals(that.awake)
        && basis == that.basis;
  }

  @Override
  public int hashCode() {
    return Objects.hash(name, current, power, duty, peak, essential, asleep, awake, basis);
  }

  /**
   * Name, draw and duty.
   *
   * @return for example {@code wipers, 4.5 A, 50 % of the time}
   */
  @Override
  public String toString() {
    String draw = power != null ? power.toString() : String.valueOf(current);
    String on = duty == 1 ? "" : ", " + Figure.share(duty) + " of the time";
    String off = asleepA() > 0 ? ", " + asleep + " asleep" : "";
    return name + ", " + draw + on + off;
  }
}
