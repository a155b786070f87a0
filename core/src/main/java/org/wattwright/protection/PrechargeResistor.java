package org.wattwright.protection;

import static org.wattwright.units.WorkshopUnits.JOULE;
import static org.wattwright.units.WorkshopUnits.KILOGRAM;
import static org.wattwright.units.WorkshopUnits.OHM;
import static org.wattwright.units.WorkshopUnits.SECOND;
import static org.wattwright.units.WorkshopUnits.VOLT;
import static org.wattwright.units.WorkshopUnits.WATT;

import java.io.Serializable;
import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricPotential;
import javax.measure.quantity.ElectricResistance;
import javax.measure.quantity.Energy;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Power;
import javax.measure.quantity.Time;
import org.jspecify.annotations.Nullable;
import org.wattwright.internal.LogLogTable;
import org.wattwright.internal.Require;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;
import org.wattwright.units.Price;

/**
 * A pre-charge resistor as a catalogue lists it.
 *
 * <p>Only name and resistance are required; what is missing makes the checks that need it
 * NOT_CHECKED, and they name the field. Each setter returns a new part. Immutable and thread-safe.
 */
public final class PrechargeResistor implements Serializable {
  private static final long serialVersionUID = 1L;

  private final String name;
  private final double ohm;
  private final ResistorRatings ratings;
  private final Trade trade;

  /** What the parts list wants to know; null where the catalogue does not say. */
  private record Trade(@Nullable Double massKg, @Nullable Price price) implements Serializable {}

  private PrechargeResistor(String name, double ohm, ResistorRatings ratings, Trade trade) {
    this.name = name;
    this.ohm = ohm;
    this.ratings = ratings;
    this.trade = trade;
  }

  private PrechargeResistor with(ResistorRatings changed) {
    return new PrechargeResistor(name, ohm, changed, trade);
  }

  /**
   * A resistor of which nothing else is known.
   *
   * @param name as the catalogue has it
   * @param resistance &gt; 0 Ω
   * @return the part
   * @throws InvalidInputException if the name is blank or the resistance not positive
   */
  public static PrechargeResistor of(String name, Quantity<ElectricResistance> resistance) {
    return new PrechargeResistor(
        Require.text("PrechargeResistor.name", name),
        Require.quantity("PrechargeResistor.resistance", resistance, OHM).positive(),
        ResistorRatings.UNKNOWN,
        new Trade(null, null));
  }

  /**
   * With its tolerance.
   *
   * @param share 0 to 0.5, such as 0.05 for ±5 %
   * @return the part
   * @throws InvalidInputException if outside its range
   */
  public PrechargeResistor tolerance(double share) {
    double value = Require.between("PrechargeResistor.tolerance", share, 0, 0.5);
    return with(ratings.withTolerance(value));
  }

  /**
   * With the power that it stands for any time, as mounted.
   *
   * @param value &gt; 0 W
   * @return the part
   * @throws InvalidInputException if not positive
   */
  public PrechargeResistor continuousPower(Quantity<Power> value) {
    double watt = Require.quantity("PrechargeResistor.continuousPower", value, WATT).positive();
    return with(ratings.withContinuousW(watt));
  }

  /**
   * With the energy that it stands in one pulse.
   *
   * @param value &gt; 0 J
   * @return the part
   * @throws InvalidInputException if not positive
   */
  public PrechargeResistor pulseEnergy(Quantity<Energy> value) {
    double joule = Require.quantity("PrechargeResistor.pulseEnergy", value, JOULE).positive();
    return with(ratings.withPulseJ(joule));
  }

  /**
   * A power and how long it may last.
   *
   * @param power &gt; 0 W
   * @param duration &gt; 0 s
   */
  public record Overload(Quantity<Power> power, Quantity<Time> duration) {
    /**
     * Checks the fields.
     *
     * @param power &gt; 0 W
     * @param duration &gt; 0 s
     * @throws InvalidInputException if a field is not positive
     */
    public Overload {
      Require.quantity("PrechargeResistor.overload.power", power, WATT).positive();
      Require.quantity("PrechargeResistor.overload.duration", duration, SECOND).positive();
    }
  }

  /**
   * With its overload curve, straight between its points on log–log paper and unknown beyond.
   *
   * @param points at least two, power rising, duration falling
   * @return the part
   * @throws InvalidInputException if there are too few or out of order
   */
  public PrechargeResistor overload(Overload... points) {
    double[] watts = new double[points.length];
    double[] seconds = new double[points.length];
    for (int i = 0; i < points.length; i++) {
      watts[i] = Kind.POWER.siValueOf(points[i].power());
      seconds[i] = Kind.TIME.siValueOf(points[i].duration());
    }
    LogLogTable table = LogLogTable.of("PrechargeResistor.overload", watts, seconds);
    if (!(table.y(1) < table.y(0))) {
      throw InvalidInputException.of(
          "PrechargeResistor.overload.duration", "falling as power rises", "rising");
    }
    return with(ratings.withOverload(table));
  }

  /**
   * With the highest voltage that it may bear.
   *
   * @param value &gt; 0 V
   * @return the part
   * @throws InvalidInputException if not positive
   */
  public PrechargeResistor voltage(Quantity<ElectricPotential> value) {
    double volt = Require.quantity("PrechargeResistor.voltage", value, VOLT).positive();
    return with(ratings.withVoltageV(volt));
  }

  /**
   * With its mass.
   *
   * @param value &gt; 0 kg
   * @return the part
   * @throws InvalidInputException if not positive
   */
  public PrechargeResistor mass(Quantity<Mass> value) {
    double kg = Require.quantity("PrechargeResistor.mass", value, KILOGRAM).positive();
    return new PrechargeResistor(name, ohm, ratings, new Trade(kg, trade.price()));
  }

  /**
   * With its price.
   *
   * @param value of one
   * @return the part
   */
  public PrechargeResistor price(Price value) {
    return new PrechargeResistor(name, ohm, ratings, new Trade(trade.massKg(), value));
  }

  /**
   * Name as the catalogue has it.
   *
   * @return the name
   */
  public String name() {
    return name;
  }

  /**
   * Nominal resistance.
   *
   * @return in Ω
   */
  public Quantity<ElectricResistance> resistance() {
    return Kind.RESISTANCE.ofSi(ohm);
  }

  /**
   * Power that it stands for any time.
   *
   * @return in kW; empty if not stated
   */
  public Optional<Quantity<Power>> continuousPower() {
    return Optional.ofNullable(ratings.continuousW()).map(Kind.POWER::ofSi);
  }

  /**
   * Energy that it stands in one pulse.
   *
   * @return in J; empty if not stated
   */
  public Optional<Quantity<Energy>> pulseEnergy() {
    return Optional.ofNullable(ratings.pulseJ()).map(JOULE::of);
  }

  /**
   * Highest voltage that it may bear.
   *
   * @return in V; empty if not stated
   */
  public Optional<Quantity<ElectricPotential>> voltage() {
    return Optional.ofNullable(ratings.voltageV()).map(Kind.VOLTAGE::ofSi);
  }

  /**
   * Mass.
   *
   * @return in kg; empty if not stated
   */
  public Optional<Quantity<Mass>> mass() {
    return Optional.ofNullable(trade.massKg()).map(Kind.MASS::ofSi);
  }

  /**
   * Price of one.
   *
   * @return empty if not stated
   */
  public Optional<Price> price() {
    return Optional.ofNullable(trade.price());
  }

  /**
   * How long it bears a power.
   *
   * <p>By the overload curve; where that does not reach, by the pulse energy, t = W/P, in which no
   * heat is lost.
   *
   * @param power &gt; 0 W
   * @return in s; empty if not known, or if it bears the power for any time
   * @throws InvalidInputException if not positive
   */
  public Optional<Quantity<Time>> bears(Quantity<Power> power) {
    double timeS = bearsS(Require.quantity("PrechargeResistor.power", power, WATT).positive());
    return Double.isFinite(timeS) ? Optional.of(SECOND.of(timeS)) : Optional.empty();
  }

  /** Infinite if for any time; NaN if not known. */
  double bearsS(double powerW) {
    return ratings.bearsS(powerW);
  }

  double ohm() {
    return ohm;
  }

  /** 0 if not stated; then the corners are not known either. */
  double toleranceOrZero() {
    Double tolerance = ratings.tolerance();
    return tolerance == null ? 0 : tolerance;
  }

  boolean hasTolerance() {
    return ratings.tolerance() != null;
  }

  @Nullable Double continuousW() {
    return ratings.continuousW();
  }

  @Nullable Double pulseJ() {
    return ratings.pulseJ();
  }

  @Nullable Double voltageV() {
    return ratings.voltageV();
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof PrechargeResistor that
        && name.equals(that.name)
        && ohm == that.ohm
        && ratings.equals(that.ratings)
        && trade.equals(that.trade);
  }

  @Override
  public int hashCode() {
    return Objects.hash(name, ohm, ratings, trade);
  }

  /**
   * Name and resistance.
   *
   * @return for example {@code W-50 (47 Ω)}
   */
  @Override
  public String toString() {
    return name() + " (" + resistance() + ")";
  }
}
