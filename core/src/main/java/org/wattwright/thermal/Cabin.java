package org.wattwright.thermal;

import static org.wattwright.units.WorkshopUnits.CELSIUS;
import static org.wattwright.units.WorkshopUnits.CUBIC_METRE_PER_HOUR;
import static org.wattwright.units.WorkshopUnits.JOULE_PER_KELVIN;
import static org.wattwright.units.WorkshopUnits.SECOND;
import static org.wattwright.units.WorkshopUnits.WATT;
import static org.wattwright.units.WorkshopUnits.WATT_PER_KELVIN;

import java.io.Serializable;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Power;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import org.jspecify.annotations.Nullable;
import org.wattwright.check.Check;
import org.wattwright.check.CheckBuilder;
import org.wattwright.check.Figure;
import org.wattwright.check.Recorder;
import org.wattwright.check.Source;
import org.wattwright.check.Worksheet;
import org.wattwright.internal.MissingFields;
import org.wattwright.internal.Require;
import org.wattwright.units.HeatCapacity;
import org.wattwright.units.Kind;
import org.wattwright.units.MassFlow;
import org.wattwright.units.ThermalConductance;
import org.wattwright.units.VolumeFlow;

/**
 * A passenger cabin that loses heat through its body and with the air that leaves it.
 *
 * <p>P = UA·ΔT + x·V̇·p/(R·T_a)·c_p·ΔT − n·104.76 W: heat through the body, for fresh air, less
 * what occupants give off if they are counted (1 met of 58.2 W/m² on 1.8 m²). The fan's flow is
 * measured at the outside temperature. Sun and moisture are left out. Source: heat balance;
 * metabolic unit: ASHRAE, Metabolic Rates for Typical Tasks. Immutable and thread-safe.
 */
public final class Cabin implements Serializable {
  private static final long serialVersionUID = 1L;

  private static final double METABOLIC_W_PER_M2 = 58.2;
  private static final double BODY_SURFACE_M2 = 1.8;
  private static final double OCCUPANT_W = METABOLIC_W_PER_M2 * BODY_SURFACE_M2;
  private static final int MOST_OCCUPANTS = 100;

  static final Source BALANCE = Source.literature("heat balance", "body, fresh air, occupants");
  private static final Source METABOLIC =
      Source.literature("ASHRAE", "metabolic rates for typical tasks, 1 met, 1.8 m²");

  private final double bodyWPerK;
  private final double fanM3PerS;
  private final double freshShare;
  private final int occupants;
  private final double capacityJPerK;

  private Cabin(Builder builder) {
    bodyWPerK = MissingFields.present(builder.bodyWPerK);
    fanM3PerS = MissingFields.present(builder.fanM3PerS);
    freshShare = builder.freshShare;
    occupants = builder.occupants;
    capacityJPerK = MissingFields.present(builder.capacityJPerK);
  }

  /**
   * Starts to describe a cabin.
   *
   * @return a builder
   */
  public static Builder builder() {
    return new Builder();
  }

  /** Describes a cabin; body, fan and interior are required. */
  public static final class Builder {
    private @Nullable Double bodyWPerK;
    private @Nullable Double fanM3PerS;
    private @Nullable Double capacityJPerK;
    private double freshShare = 1;
    private int occupants;

    private Builder() {}

    /**
     * Heat through roof, glass, floor and doors; required.
     *
     * @param conductance UA, ≥ 0 W/K
     * @return this builder
     * @throws org.wattwright.units.InvalidInputException if it is negative
     */
    public Builder body(Quantity<ThermalConductance> conductance) {
      bodyWPerK = Require.quantity("Cabin.body", conductance, WATT_PER_KELVIN).nonNegative();
      return this;
    }

    /**
     * Air that the fan moves; required.
     *
     * @param flow ≥ 0
     * @return this builder
     * @throws org.wattwright.units.InvalidInputException if it is negative
     */
    public Builder fan(Quantity<VolumeFlow> flow) {
      fanM3PerS = Require.quantity("Cabin.fan", flow, CUBIC_METRE_PER_HOUR).nonNegative();
      return this;
    }

    /**
     * Share of the fan's air that comes from outside; all of it unless told.
     *
     * @param share 0 to 1
     * @return this builder
     * @throws org.wattwright.units.InvalidInputException if it is outside its range
     */
    public Builder freshShare(double share) {
      freshShare = Require.fraction("Cabin.freshShare", share);
      return this;
    }

    /**
     * Seats, trim, glass and air that warm up with the cabin; required. The air alone stores
     * little.
     *
     * @param heatCapacity &gt; 0
     * @return this builder
     * @throws org.wattwright.units.InvalidInputException if it is not positive
     */
    public Builder interior(Quantity<HeatCapacity> heatCapacity) {
      capacityJPerK = Require.quantity("Cabin.interior", heatCapacity, JOULE_PER_KELVIN).positive();
      return this;
    }

    /**
     * Counts the heat of occupants against the steady load; none unless told. Warm-up never counts
     * it.
     *
     * @param count 0 to 100
     * @return this builder
     * @throws org.wattwright.units.InvalidInputException if it is outside its range
     */
    public Builder creditOccupants(int count) {
      occupants = Require.count("Cabin.occupants", count, 0, MOST_OCCUPANTS);
      return this;
    }

    /**
     * The cabin.
     *
     * @return the cabin
     * @throws org.wattwright.units.InvalidInputException if something required is missing
     */
    public Cabin build() {
      new MissingFields("Cabin")
          .field("body", bodyWPerK)
          .field("fan", fanM3PerS)
          .field("interior", capacityJPerK)
          .rejectIfAny();
      return new Cabin(this);
    }

    /**
     * Marks a builder.
     *
     * @return one line
     */
    @Override
    public String toString() {
      return "cabin, not built yet";
    }
  }

  /**
   * Fresh air by mass.
   *
   * @param outside −60 °C to 100 °C
   * @return in kg/s
   * @throws org.wattwright.units.InvalidInputException if the temperature is outside its range
   */
  public Quantity<MassFlow> freshAir(Quantity<Temperature> outside) {
    double outsideK = Surroundings.temperatureK("Cabin.outside", outside);
    return Kind.MASS_FLOW.ofSi(freshShare * fanM3PerS * Air.densityKgPerM3(outsideK));
  }

  /**
   * Heating power that holds a temperature.
   *
   * @param outside −60 °C to 100 °C
   * @param inside temperature to hold, −60 °C to 100 °C
   * @return ≥ 0; 0 W if occupants or the weather suffice
   * @throws org.wattwright.units.InvalidInputException if a temperature is outside its range
   */
  public Quantity<Power> steadyLoad(Quantity<Temperature> outside, Quantity<Temperature> inside) {
    return Kind.POWER.ofSi(loadW(outside, inside, Recorder.OFF));
  }

  /**
   * Temperature that a heater holds: T_a + (P + occupants)/(UA + fresh air).
   *
   * @param heater heat into the cabin, ≥ 0 W
   * @param outside −60 °C to 100 °C
   * @return empty if the cabin loses nothing
   * @throws org.wattwright.units.InvalidInputException if an argument is outside its range
   */
  public Optional<Quantity<Temperature>> temperatureHeldBy(
      Quantity<Power> heater, Quantity<Temperature> outside) {
    double heaterW = Require.quantity("Cabin.heater", heater, WATT).nonNegative();
    double outsideK = Surroundings.temperatureK("Cabin.outside", outside);
    double lossWPerK = lossWPerK(outsideK);
    return lossWPerK > 0
        ? Optional.of(Kind.TEMPERATURE.ofSi(outsideK + (heaterW + creditW()) / lossWPerK))
        : Optional.empty();
  }

  /**
   * Time and heat to warm the cabin from the outside temperature, one lump: −C/G·ln((T∞ − T)/(T∞ −
   * T_a)). The air feels warm earlier than seats and glass.
   *
   * @param heater heat into the cabin, ≥ 0 W
   * @param outside where it starts too, −60 °C to 100 °C
   * @param target temperature to reach, −60 °C to 100 °C
   * @return empty if the heater never gets there
   * @throws org.wattwright.units.InvalidInputException if an argument is outside its range
   */
  public Optional<WarmUp> warmUp(
      Quantity<Power> heater, Quantity<Temperature> outside, Quantity<Temperature> target) {
    double heaterW = Require.quantity("Cabin.heater", heater, WATT).nonNegative();
    double lossWPerK = lossWPerK(Surroundings.temperatureK("Cabin.outside", outside));
    Surroundings.temperatureK("Cabin.target", target);
    LumpedBody body =
        LumpedBody.of(
            Kind.HEAT_CAPACITY.ofSi(capacityJPerK), Kind.THERMAL_CONDUCTANCE.ofSi(lossWPerK));
    Quantity<Power> power = Kind.POWER.ofSi(heaterW);
    double holdW = lossWPerK * differenceK(outside, target);
    return body.timeTo(target, outside, outside, power)
        .map(time -> WarmUp.of(time, power, Kind.POWER.ofSi(Math.max(0, holdW))));
  }

  private static double differenceK(Quantity<Temperature> low, Quantity<Temperature> high) {
    return Kind.TEMPERATURE.siValueOf(high) - Kind.TEMPERATURE.siValueOf(low);
  }

  /**
   * A heater against the steady load, and the advice for clear windows.
   *
   * @param heater heat into the cabin, ≥ 0 W
   * @param outside coldest day
   * @param inside temperature to hold
   * @return {@code thermal.cabin-heater} and {@code thermal.cabin-demist}
   * @throws org.wattwright.units.InvalidInputException if an argument is outside its range
   */
  public List<Check> checks(
      Quantity<Power> heater, Quantity<Temperature> outside, Quantity<Temperature> inside) {
    double heaterW = Require.quantity("Cabin.heater", heater, WATT).nonNegative();
    double loadW = loadW(outside, inside, Recorder.OFF);
    CheckBuilder power =
        Check.named("thermal.cabin-heater", "heater against the steady load")
            .source(BALANCE)
            .note("holds " + Figure.of(inside, CELSIUS) + " at " + Figure.of(outside, CELSIUS));
    return List.of(
        power.atLeast(Figure.ofSi(heaterW, WATT), Figure.ofSi(loadW, WATT)),
        demist(outside, inside));
  }

  private Check demist(Quantity<Temperature> outside, Quantity<Temperature> inside) {
    double outsideK = Surroundings.temperatureK("Cabin.outside", outside);
    double allFreshW =
        (bodyWPerK + Air.capacityRateWPerK(fanM3PerS, outsideK)) * differenceK(outside, inside);
    return Check.named("thermal.cabin-demist", "load reckoned with fresh air alone")
        .source(
            Source.commonPractice(
                "cold fresh air is dry and clears windows, recirculated air fogs them"))
        .note(
            "clearing the windscreen takes "
                + Figure.ofSi(Math.max(0, allFreshW), WATT)
                + " with all air fresh and no occupants counted; local rules may ask for a"
                + " defroster")
        .recommends(freshShare == 1);
  }

  /**
   * Warm-up against the time that is asked for.
   *
   * @param warmUp what {@link #warmUp} answered
   * @param longest longest time, &gt; 0 s
   * @return the check {@code thermal.cabin-warm-up}; a heater that never gets there fails
   * @throws org.wattwright.units.InvalidInputException if the time is not positive
   */
  public static Check warmUpCheck(Optional<WarmUp> warmUp, Quantity<Time> longest) {
    double longestS = Require.quantity("Cabin.longest", longest, SECOND).positive();
    CheckBuilder check =
        Check.named("thermal.cabin-warm-up", "warm-up of the cabin")
            .source(Source.requirement("warm-up time"));
    return warmUp
        .map(found -> check.atMost(Figure.of(found.time(), SECOND), Figure.ofSi(longestS, SECOND)))
        .orElseGet(() -> check.note("the heater never gets there").holds(false));
  }

  /**
   * The working of the steady load.
   *
   * @param outside −60 °C to 100 °C
   * @param inside temperature to hold
   * @return the steps as computed
   * @throws org.wattwright.units.InvalidInputException if a temperature is outside its range
   */
  public Worksheet worksheet(Quantity<Temperature> outside, Quantity<Temperature> inside) {
    Worksheet.Recording recording =
        Worksheet.record("Cabin heating, " + inside + " inside at " + outside);
    loadW(outside, inside, recording);
    return recording.toWorksheet();
  }

  private double loadW(
      Quantity<Temperature> outside, Quantity<Temperature> inside, Recorder recorder) {
    double outsideK = Surroundings.temperatureK("Cabin.outside", outside);
    double insideK = Surroundings.temperatureK("Cabin.inside", inside);
    double riseK = insideK - outsideK;
    double bodyW = bodyWPerK * riseK;
    double airW = airWPerK(outsideK) * riseK;
    double loadW = Math.max(0, bodyW + airW - creditW());
    if (recorder.isOn()) {
      new CabinSteps(recorder, riseK).body(bodyWPerK, bodyW);
      new CabinSteps(recorder, riseK).air(freshShare * fanM3PerS, outsideK, airW);
      new CabinSteps(recorder, riseK).occupants(occupants, METABOLIC, OCCUPANT_W);
      new CabinSteps(recorder, riseK).load(new double[] {bodyW, airW, creditW()}, loadW);
    }
    return loadW;
  }

  private double airWPerK(double outsideK) {
    return Air.capacityRateWPerK(freshShare * fanM3PerS, outsideK);
  }

  private double lossWPerK(double outsideK) {
    return bodyWPerK + airWPerK(outsideK);
  }

  private double creditW() {
    return occupants * OCCUPANT_W;
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Cabin that
        && Double.compare(bodyWPerK, that.bodyWPerK) == 0
        && Double.compare(fanM3PerS, that.fanM3PerS) == 0
        && Double.compare(freshShare, that.freshShare) == 0
        && occupants == that.occupants
        && Double.compare(capacityJPerK, that.capacityJPerK) == 0;
  }

  @Override
  public int hashCode() {
    return Objects.hash(bodyWPerK, fanM3PerS, freshShare, occupants, capacityJPerK);
  }

  /**
   * Body, air and interior.
   *
   * @return for example {@code cabin 60 W/K, 60 m³/h of which 100 % fresh, 70 kJ/K}
   */
  @Override
  public String toString() {
    return "cabin "
        + Figure.ofSi(bodyWPerK, WATT_PER_KELVIN)
        + ", "
        + Figure.ofSi(fanM3PerS, CUBIC_METRE_PER_HOUR)
        + " of which "
        + Figure.share(freshShare)
        + " fresh, "
        + Figure.of(Kind.HEAT_CAPACITY.ofSi(capacityJPerK), Kind.HEAT_CAPACITY);
  }
}
