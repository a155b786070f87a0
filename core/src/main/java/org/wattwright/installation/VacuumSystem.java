package org.wattwright.installation;

import static org.wattwright.units.WorkshopUnits.KILOPASCAL;
import static org.wattwright.units.WorkshopUnits.LITRE;
import static org.wattwright.units.WorkshopUnits.SECOND;

import java.io.Serializable;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import javax.measure.quantity.Pressure;
import javax.measure.quantity.Time;
import javax.measure.quantity.Volume;
import org.jspecify.annotations.Nullable;
import org.wattwright.charging.LowVoltageLoad;
import org.wattwright.check.Basis;
import org.wattwright.check.Check;
import org.wattwright.check.Worksheet;
import org.wattwright.internal.Require;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;
import org.wattwright.units.Measure;

/**
 * Vacuum of a brake servo in a vehicle whose engine, and its manifold vacuum, are gone: servo,
 * reservoir, pump, and the air around them.
 *
 * <p>A full application lets air in: p′ = p + (p_atm·V_s − p·V_r)/V, never above p_atm, with V the
 * volume of servo, hose and reservoir (V_s and V_r: see {@link BrakeServo}). In a closed rigid
 * volume an ideal gas has the same pressure after mixing whether the gas keeps its temperature or
 * its heat, so one formula serves quick and slow stops; as it cools the pressure falls, on the safe
 * side. Source: law of ideal gases. A partial application takes less.
 *
 * <p>Immutable and thread-safe.
 */
public final class VacuumSystem implements Serializable {
  private static final long serialVersionUID = 1L;

  private static final int MOST_STOPS = 100_000;
  private static final double ROUNDING = 1e-12;

  private final Fields fields;

  record Fields(
      BrakeServo servo,
      double reservoirM3,
      double ambientPa,
      @Nullable VacuumPump pump,
      @Nullable VacuumLevel restart,
      @Nullable VacuumLevel stop,
      @Nullable VacuumLevel warning,
      Basis basis)
      implements Serializable {}

  private VacuumSystem(Fields fields) {
    this.fields = fields;
  }

  /**
   * A servo with its hose alone, at sea level.
   *
   * @param servo the consumer
   * @return the system, no reservoir, no pump
   */
  public static VacuumSystem of(BrakeServo servo) {
    Objects.requireNonNull(servo, "servo");
    return new VacuumSystem(
        new Fields(servo, 0, AirPressure.SEA_LEVEL_PA, null, null, null, null, Basis.DATA_SHEET));
  }

  /**
   * With a reservoir.
   *
   * @param volume ≥ 0 L
   * @return a new system
   * @throws InvalidInputException if negative
   */
  public VacuumSystem reservoir(Quantity<Volume> volume) {
    double m3 = Require.quantity("VacuumSystem.reservoir", volume, LITRE).nonNegative();
    return new VacuumSystem(
        new Fields(
            fields.servo,
            m3,
            fields.ambientPa,
            fields.pump,
            fields.restart,
            fields.stop,
            fields.warning,
            fields.basis));
  }

  /**
   * At an altitude, in the standard atmosphere.
   *
   * @param height −1000 m to 11 000 m
   * @return a new system
   * @throws InvalidInputException if outside its range
   */
  public VacuumSystem altitude(Quantity<Length> height) {
    return ambient(AirPressure.atAltitude(height));
  }

  /**
   * In air of a stated pressure.
   *
   * @param pressure absolute, 20 kPa to 115 kPa
   * @return a new system
   * @throws InvalidInputException if outside its range
   */
  public VacuumSystem ambient(Quantity<Pressure> pressure) {
    double pa = Require.quantity("VacuumSystem.ambient", pressure, KILOPASCAL).between(20, 115);
    return new VacuumSystem(
        new Fields(
            fields.servo,
            fields.reservoirM3,
            pa,
            fields.pump,
            fields.restart,
            fields.stop,
            fields.warning,
            fields.basis));
  }

  /**
   * With a pump.
   *
   * @param value the pump
   * @return a new system
   */
  public VacuumSystem pump(VacuumPump value) {
    Objects.requireNonNull(value, "pump");
    return new VacuumSystem(
        new Fields(
            fields.servo,
            fields.reservoirM3,
            fields.ambientPa,
            value,
            fields.restart,
            fields.stop,
            fields.warning,
            fields.basis));
  }

  /**
   * Where the pump starts again: the weakest vacuum of a sound system, from which the reserve
   * counts.
   *
   * @param level of its switch
   * @return a new system
   */
  public VacuumSystem pumpRestartsAt(VacuumLevel level) {
    return levels(Objects.requireNonNull(level, "level"), fields.stop, fields.warning);
  }

  /**
   * Where the pump stops.
   *
   * @param level of its switch
   * @return a new system
   */
  public VacuumSystem pumpStopsAt(VacuumLevel level) {
    return levels(fields.restart, Objects.requireNonNull(level, "level"), fields.warning);
  }

  /**
   * Where the driver is warned.
   *
   * @param level of its switch
   * @return a new system
   */
  public VacuumSystem warnsAt(VacuumLevel level) {
    return levels(fields.restart, fields.stop, Objects.requireNonNull(level, "level"));
  }

  private VacuumSystem levels(
      @Nullable VacuumLevel restart, @Nullable VacuumLevel stop, @Nullable VacuumLevel warning) {
    return new VacuumSystem(
        new Fields(
            fields.servo,
            fields.reservoirM3,
            fields.ambientPa,
            fields.pump,
            restart,
            stop,
            warning,
            fields.basis));
  }

  /**
   * The same with another basis.
   *
   * @param value the weakest that volumes, pump and levels rest on; data sheet unless told
   * @return a new system
   */
  public VacuumSystem withBasis(Basis value) {
    Objects.requireNonNull(value, "basis");
    return new VacuumSystem(
        new Fields(
            fields.servo,
            fields.reservoirM3,
            fields.ambientPa,
            fields.pump,
            fields.restart,
            fields.stop,
            fields.warning,
            value));
  }

  /**
   * Servo, hose and reservoir together.
   *
   * @return in L
   */
  public Quantity<Volume> totalVolume() {
    return LITRE.of(totalM3() * 1000);
  }

  double totalM3() {
    return fields.servo.heldM3() + fields.reservoirM3;
  }

  /**
   * Pressure of the air around.
   *
   * @return absolute, in kPa
   */
  public Quantity<Pressure> ambient() {
    return KILOPASCAL.of(fields.ambientPa / 1000);
  }

  /**
   * Difference that drives the servo at a pressure of its vacuum side.
   *
   * @param pressure absolute, &gt; 0 kPa
   * @return in kPa, not below 0
   * @throws InvalidInputException if the pressure is not positive
   */
  public Quantity<Pressure> differenceAt(Quantity<Pressure> pressure) {
    double pa = Require.quantity("VacuumSystem.pressure", pressure, KILOPASCAL).positive();
    return KILOPASCAL.of(Math.max(0, fields.ambientPa - pa) / 1000);
  }

  /**
   * Pressure after full applications with the pump off.
   *
   * @param applications 0 to 100 000
   * @param start absolute pressure before the first, &gt; 0 kPa
   * @return absolute, in kPa
   * @throws InvalidInputException if a value is outside its range
   */
  public Quantity<Pressure> pressureAfter(int applications, Quantity<Pressure> start) {
    Require.count("VacuumSystem.applications", applications, 0, MOST_STOPS);
    double pa = Require.quantity("VacuumSystem.start", start, KILOPASCAL).positive();
    for (int i = 0; i < applications; i++) {
      pa = afterOnePa(pa);
    }
    return KILOPASCAL.of(pa / 1000);
  }

  double afterOnePa(double pa) {
    BrakeServo servo = fields.servo;
    double added =
        Math.max(0, fields.ambientPa * servo.strokeM3() - pa * servo.restM3()) / totalM3();
    return Math.max(pa, Math.min(fields.ambientPa, pa + added));
  }

  /**
   * Full applications with the pump off until the difference asked for would be lost.
   *
   * @param start absolute pressure before the first, &gt; 0 kPa
   * @param reserve states the least difference
   * @return after so many the difference is still there, after one more it is not; 100 000 at most
   * @throws InvalidInputException if the start is not positive
   */
  public int stops(Quantity<Pressure> start, VacuumReserve reserve) {
    double startPa = Require.quantity("VacuumSystem.start", start, KILOPASCAL).positive();
    return stops(startPa, limitPa(reserve));
  }

  double limitPa(VacuumReserve reserve) {
    return fields.ambientPa - reserve.differencePa();
  }

  int stops(double startPa, double limitPa) {
    int stops = 0;
    double pa = afterOnePa(startPa);
    while (stops < MOST_STOPS && pa <= limitPa * (1 + ROUNDING)) {
      stops++;
      pa = afterOnePa(pa);
    }
    return stops;
  }

  /**
   * Volume of servo, hose and reservoir that gives a reserve.
   *
   * <p>V = V_r/(1 − ((p* − p_lim)/(p* − p₀))^(1/n)) with p* = p_atm·V_s/V_r, and V =
   * n·p_atm·V_s/(p_lim − p₀) where V_r = 0.
   *
   * @param start absolute pressure before the first application, &gt; 0 kPa
   * @param reserve number of applications and least difference
   * @return in L; empty if the start leaves less than the difference asked for
   * @throws InvalidInputException if the start is not positive
   */
  public Optional<Quantity<Volume>> volumeFor(Quantity<Pressure> start, VacuumReserve reserve) {
    double startPa = Require.quantity("VacuumSystem.start", start, KILOPASCAL).positive();
    double limitPa = limitPa(reserve);
    if (!(limitPa > startPa)) {
      return Optional.empty();
    }
    double airPaM3 = fields.ambientPa * fields.servo.strokeM3();
    double restM3 = fields.servo.restM3();
    if (restM3 == 0) {
      return Optional.of(LITRE.of(reserve.stops() * airPaM3 / (limitPa - startPa) * 1000));
    }
    double endPa = airPaM3 / restM3;
    double logarithm = Math.log((endPa - limitPa) / (endPa - startPa)) / reserve.stops();
    return Optional.of(LITRE.of(restM3 / -Math.expm1(logarithm) * 1000));
  }

  /**
   * Reservoir that gives a reserve, beside what servo and hose hold.
   *
   * @param start absolute pressure before the first application, &gt; 0 kPa
   * @param reserve number of applications and least difference
   * @return in L, not below 0; empty if no reservoir does
   * @throws InvalidInputException if the start is not positive
   */
  public Optional<Quantity<Volume>> reservoirFor(Quantity<Pressure> start, VacuumReserve reserve) {
    return volumeFor(start, reserve)
        .map(v -> Math.max(0, Kind.VOLUME.siValueOf(v) - fields.servo.heldM3()))
        .map(m3 -> LITRE.of(m3 * 1000));
  }

  /**
   * Time of the pump from one pressure to another.
   *
   * @param fall absolute pressures
   * @return in s; empty without a pump, or if the pump does not get there
   */
  public Optional<Quantity<Time>> pumpDownTime(PressureFall fall) {
    return pump().flatMap(pump -> pump.evacuationTime(totalVolume(), fall));
  }

  /**
   * Time of the pump after one full application, back to where it stops.
   *
   * @return in s; empty if pump or its stop level is missing or out of reach
   */
  public Optional<Quantity<Time>> recoveryTime() {
    Optional<Double> stopPa = stopPa();
    if (stopPa.isEmpty() || !(stopPa.get() > 0)) {
      return Optional.empty();
    }
    double lowPa = stopPa.get();
    return pumpDownTime(PressureFall.ofPa(Math.max(lowPa, afterOnePa(lowPa)), lowPa));
  }

  /**
   * The pump as a load of the low-voltage system: on for the recovery time in each interval.
   *
   * @param interval between two full applications, &gt; 0 s
   * @return an essential load; empty if current or recovery time are not known
   * @throws InvalidInputException if the interval is not positive
   */
  public Optional<LowVoltageLoad> load(Quantity<Time> interval) {
    double intervalS = Require.quantity("VacuumSystem.interval", interval, SECOND).positive();
    VacuumPump pump = fields.pump;
    Optional<Quantity<Time>> recovery = recoveryTime();
    if (pump == null || pump.current().isEmpty() || recovery.isEmpty()) {
      return Optional.empty();
    }
    double duty = Math.min(1, Kind.TIME.siValueOf(recovery.get()) / intervalS);
    LowVoltageLoad load =
        LowVoltageLoad.of(pump.name(), pump.current().get()).duty(duty).essential();
    return Optional.of(pump.startingCurrent().map(load::peak).orElse(load));
  }

  /**
   * The verdicts: {@code installation.vacuum-stops}, {@code installation.vacuum-pump-reach}, {@code
   * installation.vacuum-build-up}, {@code installation.vacuum-warning}. What is not known is
   * NOT_CHECKED.
   *
   * @param reserve what is asked for
   * @return four checks
   */
  public List<Check> checks(VacuumReserve reserve) {
    return new VacuumChecks(this, Objects.requireNonNull(reserve, "reserve")).all();
  }

  /**
   * The working: each application from the restart level, volume asked for, pump times.
   *
   * @param reserve what is asked for
   * @return the worksheet
   */
  public Worksheet worksheet(VacuumReserve reserve) {
    return new VacuumSheet(this, Objects.requireNonNull(reserve, "reserve")).toWorksheet();
  }

  /**
   * The pump.
   *
   * @return empty if none is told
   */
  public Optional<VacuumPump> pump() {
    return Optional.ofNullable(fields.pump);
  }

  Optional<Double> restartPa() {
    return Optional.ofNullable(fields.restart).map(level -> level.absolutePa(fields.ambientPa));
  }

  Optional<Double> stopPa() {
    return Optional.ofNullable(fields.stop).map(level -> level.absolutePa(fields.ambientPa));
  }

  Optional<Double> warningPa() {
    return Optional.ofNullable(fields.warning).map(level -> level.absolutePa(fields.ambientPa));
  }

  Fields fields() {
    return fields;
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof VacuumSystem that && fields.equals(that.fields);
  }

  @Override
  public int hashCode() {
    return fields.hashCode();
  }

  /**
   * Servo, volume, air and pump.
   *
   * @return in one line
   */
  @Override
  public String toString() {
    String pumped = fields.pump == null ? "no pump" : fields.pump.toString();
    return fields.servo
        + ", "
        + totalVolume()
        + " in all, air at "
        + Measure.from(ambient(), Kind.PRESSURE)
        + ", "
        + pumped;
  }
}
