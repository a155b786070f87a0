package org.wattwright.charging;

import static org.wattwright.units.WorkshopUnits.AMPERE;
import static org.wattwright.units.WorkshopUnits.AMPERE_HOUR;
import static org.wattwright.units.WorkshopUnits.HOUR;
import static org.wattwright.units.WorkshopUnits.MINUTE;

import java.io.Serializable;
import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricCharge;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.ElectricPotential;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import org.jspecify.annotations.Nullable;
import org.wattwright.battery.PeukertLaw;
import org.wattwright.internal.Require;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;
import org.wattwright.units.Measure;
import org.wattwright.units.Measures;

/**
 * The battery of the low-voltage system: it covers peaks, carries what the vehicle needs when the
 * converter stops, and feeds what draws with the key off.
 *
 * <pre>{@code
 * LowVoltageBattery.of(ampereHours(45)).usable(0.6).peukert(hours(20), 1.15).peakCurrent(amperes(200));
 * }</pre>
 *
 * <p>Each call returns a new battery; immutable and thread-safe.
 */
public final class LowVoltageBattery implements Serializable {
  private static final long serialVersionUID = 1L;

  /** Current at which the reserve capacity is counted. Source: SAE J537, BCI battery ratings. */
  public static final Quantity<ElectricCurrent> RESERVE_CURRENT = Measures.amperes(25);

  /** Voltage at which it ends, of a 12 V battery. Source: SAE J537, BCI battery ratings. */
  public static final Quantity<ElectricPotential> RESERVE_END_VOLTAGE = Measures.volts(10.5);

  /** Temperature at which it is counted. Source: SAE J537, BCI battery ratings. */
  public static final Quantity<Temperature> RESERVE_TEMPERATURE = Measures.celsius(27);

  /** Share of the capacity that is counted on unless told; common practice for lead-acid. */
  private static final double USUAL_USABLE = 0.5;

  private final Quantity<ElectricCharge> capacity;
  private final double usable;
  private final @Nullable PeukertLaw peukert;
  private final @Nullable Quantity<ElectricCurrent> peakCurrent;

  private LowVoltageBattery(
      Quantity<ElectricCharge> capacity,
      double usable,
      @Nullable PeukertLaw peukert,
      @Nullable Quantity<ElectricCurrent> peakCurrent) {
    this.capacity = capacity;
    this.usable = usable;
    this.peukert = peukert;
    this.peakCurrent = peakCurrent;
  }

  /**
   * A battery by its rated capacity; half of it counts as usable unless told.
   *
   * @param capacity &gt; 0 A·h
   * @return the battery
   * @throws InvalidInputException if not positive
   */
  public static LowVoltageBattery of(Quantity<ElectricCharge> capacity) {
    Require.quantity("LowVoltageBattery.capacity", capacity, AMPERE_HOUR).positive();
    return new LowVoltageBattery(Measure.from(capacity, Kind.CHARGE), USUAL_USABLE, null, null);
  }

  /**
   * A battery by its reserve capacity: Q = 25 A·t. That is the charge at 25 A, less than the
   * capacity over 20 hours.
   *
   * @param time reserve capacity, &gt; 0 min
   * @return the battery
   * @throws InvalidInputException if not positive
   */
  public static LowVoltageBattery ofReserveCapacity(Quantity<Time> time) {
    double timeS = Require.quantity("LowVoltageBattery.reserve", time, MINUTE).positive();
    return of(Kind.CHARGE.ofSi(Kind.CURRENT.siValueOf(RESERVE_CURRENT) * timeS));
  }

  /**
   * Share of the capacity that is counted on.
   *
   * @param share &gt; 0 and ≤ 1
   * @return a new battery
   * @throws InvalidInputException if outside its range
   */
  public LowVoltageBattery usable(double share) {
    if (!(share > 0 && share <= 1)) {
      throw InvalidInputException.of(
          "LowVoltageBattery.usable", "> 0 and ≤ 1", Double.toString(share));
    }
    return new LowVoltageBattery(capacity, share, peukert, peakCurrent);
  }

  /**
   * Lets the capacity shrink with the current, by {@link PeukertLaw}.
   *
   * @param time of the capacity rating, &gt; 0 h
   * @param exponent 1 to 2
   * @return a new battery
   * @throws InvalidInputException if a value is outside its range
   */
  public LowVoltageBattery peukert(Quantity<Time> time, double exponent) {
    Require.quantity("LowVoltageBattery.ratingTime", time, HOUR).positive();
    return new LowVoltageBattery(
        capacity, usable, PeukertLaw.of(capacity, time, exponent), peakCurrent);
  }

  /**
   * Largest current it may give for a moment.
   *
   * @param value &gt; 0 A
   * @return a new battery
   * @throws InvalidInputException if not positive
   */
  public LowVoltageBattery peakCurrent(Quantity<ElectricCurrent> value) {
    Require.quantity("LowVoltageBattery.peakCurrent", value, AMPERE).positive();
    return new LowVoltageBattery(capacity, usable, peukert, Measure.from(value, Kind.CURRENT));
  }

  /**
   * Rated capacity.
   *
   * @return in A·h
   */
  public Quantity<ElectricCharge> capacity() {
    return capacity;
  }

  /**
   * Share of the capacity that is counted on.
   *
   * @return &gt; 0 and ≤ 1
   */
  public double usable() {
    return usable;
  }

  /**
   * Largest current for a moment.
   *
   * @return empty if not known
   */
  public Optional<Quantity<ElectricCurrent>> peakCurrent() {
    return Optional.ofNullable(peakCurrent);
  }

  /**
   * Time it carries a current, from full: the usable share of Q/I, shortened by Peukert's law where
   * that is told. A current below that of the rating is not rewarded with a longer time than Q/I.
   *
   * @param current &gt; 0 A
   * @return in s
   * @throws InvalidInputException if not positive
   */
  public Quantity<Time> holds(Quantity<ElectricCurrent> current) {
    double currentA = Require.quantity("LowVoltageBattery.current", current, AMPERE).positive();
    double plainS = Kind.CHARGE.siValueOf(capacity) / currentA;
    double lawS = peukert == null ? plainS : Kind.TIME.siValueOf(peukert.dischargeTime(current));
    return Kind.TIME.ofSi(usable * Math.min(plainS, lawS));
  }

  double usableC() {
    return usable * Kind.CHARGE.siValueOf(capacity);
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof LowVoltageBattery that
        && capacity.equals(that.capacity)
        && Double.compare(usable, that.usable) == 0
        && Objects.equals(peukert, that.peukert)
        && Objects.equals(peakCurrent, that.peakCurrent);
  }

  @Override
  public int hashCode() {
    return Objects.hash(capacity, usable, peukert, peakCurrent);
  }

  /**
   * Capacity and usable share.
   *
   * @return for example {@code 45 A·h, 60 % usable}
   */
  @Override
  public String toString() {
    return capacity + ", " + org.wattwright.check.Figure.share(usable) + " usable";
  }
}
