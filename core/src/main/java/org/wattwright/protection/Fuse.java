package org.wattwright.protection;

import static org.wattwright.units.WorkshopUnits.AMPERE;
import static org.wattwright.units.WorkshopUnits.VOLT;

import java.io.Serializable;
import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.ElectricPotential;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Power;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import org.jspecify.annotations.Nullable;
import org.wattwright.check.Basis;
import org.wattwright.check.Check;
import org.wattwright.check.Source;
import org.wattwright.internal.Require;
import org.wattwright.units.JouleIntegral;
import org.wattwright.units.Kind;
import org.wattwright.units.Price;

/**
 * A fuse link as its data sheet describes it: what it carries, which faults it interrupts, and what
 * it lets through meanwhile.
 *
 * <p>Direct current is the harder duty: a rating holds for the direct voltage and the time constant
 * at which it was tested, and a rating for alternating current does not count. What the data sheet
 * leaves out is not guessed: the check that needs it is NOT_CHECKED and names the field.
 *
 * <pre>{@code
 * Fuse fuse = Fuse.of("F-200", amperes(200))
 *     .directVoltage(volts(500)).testTimeConstant(milliseconds(5))
 *     .breakingCapacity(kiloamperes(20)).partialRange(amperes(1000))
 *     .preArcingCurve(curve)
 *     .preArcingJouleIntegral(ampereSquaredSeconds(20000))
 *     .totalJouleIntegral(ampereSquaredSeconds(90000), volts(500))
 *     .build();
 * fuse.clearing(loop.current(), volts(403.2));
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 */
public final class Fuse implements Serializable {
  private static final long serialVersionUID = 1L;

  private final FuseData data;

  Fuse(FuseData data) {
    this.data = data;
  }

  /**
   * Starts a fuse.
   *
   * @param name as the catalogue has it
   * @param ratedCurrent &gt; 0 A
   * @return a builder whose other fields are all optional
   * @throws org.wattwright.units.InvalidInputException if the name is blank or the current not
   *     positive
   */
  public static FuseBuilder of(String name, Quantity<ElectricCurrent> ratedCurrent) {
    return new FuseBuilder(name, ratedCurrent);
  }

  /**
   * A builder that holds the data of this fuse.
   *
   * @return for a variant of it
   */
  public FuseBuilder toBuilder() {
    return new FuseBuilder(data);
  }

  /**
   * Clears a fault, or says why not.
   *
   * <p>The element melts when ∫i²dt has reached I∞²·t of the pre-arcing curve (virtual time, IEC
   * 60269-1), with the rise of the current taken into account. Above the curve, in the range below
   * 10 ms, the stated pre-arcing I²t counts instead; without it nothing is claimed. Then the
   * arcing: by the curve of total times; else by total less pre-arcing I²t as stated for the
   * voltage (common practice); from 0.1 s on it does not count (common practice).
   *
   * @param fault the fault current
   * @param circuitVoltage highest voltage of the circuit, &gt; 0 V
   * @return times, let-through and peak at the ends of the band; or why not
   * @throws org.wattwright.units.InvalidInputException if the voltage is not positive
   */
  public Clearing clearing(FaultCurrent fault, Quantity<ElectricPotential> circuitVoltage) {
    double voltageV = Require.quantity("Fuse.circuitVoltage", circuitVoltage, VOLT).positive();
    return new ClearingSolver(data, voltageV).solve(fault);
  }

  /**
   * Clears a fault that capacitors feed too, or says why not.
   *
   * <p>Time, let-through and peak are upper bounds: with W of the battery's fault alone and W_C =
   * (Σ√(½CU²/R))² of the capacitors, at most the stated total I²t, (√W + √W_C)² passes, and the sum
   * of all peaks. Source: superposition and Minkowski's inequality.
   *
   * @param fault battery and capacitors
   * @param circuitVoltage highest voltage of the circuit, &gt; 0 V
   * @return times, let-through and peak at the ends of the band; or why not, such as a sum of all
   *     peaks above the breaking capacity
   * @throws org.wattwright.units.InvalidInputException if the voltage is not positive
   */
  public Clearing clearing(CombinedFault fault, Quantity<ElectricPotential> circuitVoltage) {
    double voltageV = Require.quantity("Fuse.circuitVoltage", circuitVoltage, VOLT).positive();
    return new CombinedClearing(data, voltageV, fault.infeed()).solve(fault.battery());
  }

  /**
   * Continuous current in air of a temperature: In·A1(T)·cooling·continuous factor.
   *
   * @param air around the fuse, absolute
   * @return in A; empty if the ambient derating is not stated
   */
  public Optional<Quantity<ElectricCurrent>> continuousCurrentAt(Quantity<Temperature> air) {
    AmbientDerating ambient = data.derating().ambient();
    if (ambient == null) {
      return Optional.empty();
    }
    double factor = ambient.factorAt(air) * data.derating().cooling() * data.derating().load();
    return Optional.of(Kind.CURRENT.ofSi(data.ratedA() * factor));
  }

  /**
   * The checks that it must pass in a circuit.
   *
   * @param duty what the circuit asks
   * @return one check each for continuous and cyclic current, voltage, time constant, breaking
   *     capacity, minimum breaking current, clearing time and let-through
   */
  public List<Check> checks(FuseDuty duty) {
    return new FuseChecks(this, duty).all();
  }

  /**
   * The name.
   *
   * @return as the catalogue has it
   */
  public String name() {
    return data.name();
  }

  /**
   * Rated current.
   *
   * @return In in A
   */
  public Quantity<ElectricCurrent> ratedCurrent() {
    return Kind.CURRENT.ofSi(data.ratedA());
  }

  /**
   * Rated voltage on direct current.
   *
   * @return in V; empty if not stated
   */
  public Optional<Quantity<ElectricPotential>> directVoltage() {
    return Optional.ofNullable(data.directV()).map(Kind.VOLTAGE::ofSi);
  }

  /**
   * Rated voltage on alternating current.
   *
   * @return in V; empty if not stated
   */
  public Optional<Quantity<ElectricPotential>> alternatingVoltage() {
    return Optional.ofNullable(data.alternatingV()).map(Kind.VOLTAGE::ofSi);
  }

  /**
   * Time constant of the circuit in which it was tested.
   *
   * @return in s; empty if not stated
   */
  public Optional<Quantity<Time>> testTimeConstant() {
    return Optional.ofNullable(data.testTimeConstantS()).map(Kind.TIME::ofSi);
  }

  /**
   * Highest prospective current that it interrupts.
   *
   * @return in A; empty if not stated
   */
  public Optional<Quantity<ElectricCurrent>> breakingCapacity() {
    return Optional.ofNullable(data.breakingCapacityA()).map(Kind.CURRENT::ofSi);
  }

  /**
   * Whether it may be left alone with every over-current.
   *
   * @return full or partial; empty if not stated
   */
  public Optional<BreakingRange> breakingRange() {
    return Optional.ofNullable(data.breakingRange());
  }

  /**
   * Lowest current that a partial-range link interrupts.
   *
   * @return in A; empty if not stated
   */
  public Optional<Quantity<ElectricCurrent>> minimumBreakingCurrent() {
    return Optional.ofNullable(data.minimumBreakingA()).map(Kind.CURRENT::ofSi);
  }

  /**
   * Time until the element has melted.
   *
   * @return against current; empty if not stated
   */
  public Optional<TimeCurrentCurve> preArcingCurve() {
    return Optional.ofNullable(data.preArcing());
  }

  /**
   * Time until the current is off.
   *
   * @return against current; empty if not stated
   */
  public Optional<TimeCurrentCurve> totalCurve() {
    return Optional.ofNullable(data.total());
  }

  /**
   * Smallest I²t that melts the element when no heat is lost.
   *
   * @return in A²s; empty if not stated
   */
  public Optional<Quantity<JouleIntegral>> preArcingJouleIntegral() {
    return Optional.ofNullable(data.preArcingA2S()).map(Kind.JOULE_INTEGRAL::ofSi);
  }

  /**
   * Largest I²t until the current is off, as stated for the next voltage above the circuit's.
   *
   * @param circuitVoltage &gt; 0 V
   * @return in A²s; empty if not stated for a voltage as high
   * @throws org.wattwright.units.InvalidInputException if not positive
   */
  public Optional<Quantity<JouleIntegral>> totalJouleIntegralAt(
      Quantity<ElectricPotential> circuitVoltage) {
    double voltageV = Require.quantity("Fuse.circuitVoltage", circuitVoltage, VOLT).positive();
    return Optional.ofNullable(data.totalA2S(voltageV)).map(Kind.JOULE_INTEGRAL::ofSi);
  }

  /**
   * Highest current that passes at any fault up to the breaking capacity.
   *
   * @return in A; empty if not stated
   */
  public Optional<Quantity<ElectricCurrent>> peakLetThrough() {
    return Optional.ofNullable(data.peakLetThroughA()).map(Kind.CURRENT::ofSi);
  }

  /**
   * Share of the continuous current that a swinging load may have as its RMS.
   *
   * @return 0 to 1; empty if not stated
   */
  public Optional<Double> cyclicFactor() {
    return Optional.ofNullable(data.derating().cyclic());
  }

  /**
   * How much less it carries in warm air.
   *
   * @return the maker's law; empty if not stated
   */
  public Optional<AmbientDerating> ambientDerating() {
    return Optional.ofNullable(data.derating().ambient());
  }

  /**
   * Mass with its holder.
   *
   * @return in kg; empty if not stated
   */
  public Optional<Quantity<Mass>> mass() {
    return Optional.ofNullable(data.trade().massKg()).map(Kind.MASS::ofSi);
  }

  /**
   * Price of one.
   *
   * @return empty if not stated
   */
  public Optional<Price> price() {
    return Optional.ofNullable(data.trade().price());
  }

  /**
   * Heat at the rated current.
   *
   * @return in W; empty if not stated
   */
  public Optional<Quantity<Power>> loss() {
    return Optional.ofNullable(data.trade().lossW()).map(Kind.POWER::ofSi);
  }

  /**
   * What the data rest on.
   *
   * @return data sheet unless told
   */
  public Basis basis() {
    return data.trade().basis();
  }

  /**
   * Where the data come from.
   *
   * @return the source
   */
  public Source source() {
    return data.trade().source();
  }

  FuseData data() {
    return data;
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Fuse that && data.equals(that.data);
  }

  @Override
  public int hashCode() {
    return data.hashCode();
  }

  /**
   * Name, current, voltage and range.
   *
   * @return for example {@code F-200, 200 A, 500 V DC, partial range}
   */
  @Override
  public String toString() {
    StringBuilder text = new StringBuilder(data.name() + ", " + AMPERE.of(data.ratedA()));
    directVoltage().ifPresent(v -> text.append(", ").append(v).append(" DC"));
    if (data.directV() == null) {
      alternatingVoltage().ifPresent(v -> text.append(", ").append(v).append(" AC only"));
    }
    breakingRange().ifPresent(range -> text.append(", ").append(range));
    return text.toString();
  }
}
