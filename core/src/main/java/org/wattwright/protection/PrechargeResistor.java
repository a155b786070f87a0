package org.wattwright.protection;

import static org.wattwright.units.WorkshopUnits.JOULE;
import static org.wattwright.units.WorkshopUnits.KILOGRAM;
import static org.wattwright.units.WorkshopUnits.OHM;
import static org.wattwright.units.WorkshopUnits.SECOND;
import static org.wattwright.units.WorkshopUnits.VOLT;
import static org.wattwright.units.WorkshopUnits.WATT;

import java.io.Serializable;
import java.util.Optional;
import java.util.function.Consumer;
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

  private final Data data;

  /** Fields in SI; null where the catalogue does not say. */
  private record Data(
      String name,
      double ohm,
      @Nullable Double tolerance,
      @Nullable Double continuousW,
      @Nullable Double pulseJ,
      @Nullable LogLogTable overload,
      @Nullable Double voltageV,
      @Nullable Double massKg,
      @Nullable Price price)
      implements Serializable {}

  /** The fields while a setter changes one of them. */
  private static final class Draft {
    @Nullable Double tolerance;
    @Nullable Double continuousW;
    @Nullable Double pulseJ;
    @Nullable LogLogTable overload;
    @Nullable Double voltageV;
    @Nullable Double massKg;
    @Nullable Price price;

    Draft(Data data) {
      tolerance = data.tolerance;
      continuousW = data.continuousW;
      pulseJ = data.pulseJ;
      overload = data.overload;
      voltageV = data.voltageV;
      massKg = data.massKg;
      price = data.price;
    }
  }

  private PrechargeResistor(Data data) {
    this.data = data;
  }

  private PrechargeResistor with(Consumer<Draft> change) {
    Draft d = new Draft(data);
    change.accept(d);
    return new PrechargeResistor(
        new Data(
            data.name,
            data.ohm,
            d.tolerance,
            d.continuousW,
            d.pulseJ,
            d.overload,
            d.voltageV,
            d.massKg,
            d.price));
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
        new Data(
            Require.text("PrechargeResistor.name", name),
            Require.quantity("PrechargeResistor.resistance", resistance, OHM).positive(),
            null,
            null,
            null,
            null,
            null,
            null,
            null));
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
    return with(d -> d.tolerance = value);
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
    return with(d -> d.continuousW = watt);
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
    return with(d -> d.pulseJ = joule);
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
    return with(d -> d.overload = table);
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
    return with(d -> d.voltageV = volt);
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
    return with(d -> d.massKg = kg);
  }

  /**
   * With its price.
   *
   * @param value of one
   * @return the part
   */
  public PrechargeResistor price(Price value) {
    return with(d -> d.price = value);
  }

  /**
   * Name as the catalogue has it.
   *
   * @return the name
   */
  public String name() {
    return data.name();
  }

  /**
   * Nominal resistance.
   *
   * @return in Ω
   */
  public Quantity<ElectricResistance> resistance() {
    return Kind.RESISTANCE.ofSi(data.ohm());
  }

  /**
   * Power that it stands for any time.
   *
   * @return in kW; empty if not stated
   */
  public Optional<Quantity<Power>> continuousPower() {
    return Optional.ofNullable(data.continuousW()).map(Kind.POWER::ofSi);
  }

  /**
   * Energy that it stands in one pulse.
   *
   * @return in J; empty if not stated
   */
  public Optional<Quantity<Energy>> pulseEnergy() {
    return Optional.ofNullable(data.pulseJ()).map(JOULE::of);
  }

  /**
   * Highest voltage that it may bear.
   *
   * @return in V; empty if not stated
   */
  public Optional<Quantity<ElectricPotential>> voltage() {
    return Optional.ofNullable(data.voltageV()).map(Kind.VOLTAGE::ofSi);
  }

  /**
   * Mass.
   *
   * @return in kg; empty if not stated
   */
  public Optional<Quantity<Mass>> mass() {
    return Optional.ofNullable(data.massKg()).map(Kind.MASS::ofSi);
  }

  /**
   * Price of one.
   *
   * @return empty if not stated
   */
  public Optional<Price> price() {
    return Optional.ofNullable(data.price());
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
    Double continuousW = data.continuousW();
    if (continuousW != null && powerW <= continuousW) {
      return Double.POSITIVE_INFINITY;
    }
    LogLogTable overload = data.overload();
    if (overload != null && overload.covers(powerW)) {
      return overload.at(powerW);
    }
    Double pulseJ = data.pulseJ();
    return pulseJ == null ? Double.NaN : pulseJ / powerW;
  }

  double ohm() {
    return data.ohm();
  }

  /** 0 if not stated; then the corners are not known either. */
  double toleranceOrZero() {
    Double tolerance = data.tolerance();
    return tolerance == null ? 0 : tolerance;
  }

  boolean hasTolerance() {
    return data.tolerance() != null;
  }

  @Nullable Double continuousW() {
    return data.continuousW();
  }

  @Nullable Double pulseJ() {
    return data.pulseJ();
  }

  @Nullable Double voltageV() {
    return data.voltageV();
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof PrechargeResistor that && data.equals(that.data);
  }

  @Override
  public int hashCode() {
    return data.hashCode();
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
