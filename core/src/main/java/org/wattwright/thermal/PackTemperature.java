package org.wattwright.thermal;

import static org.wattwright.units.WorkshopUnits.AMPERE;
import static org.wattwright.units.WorkshopUnits.SECOND;

import java.io.Serializable;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.DoubleStream;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Power;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import org.jspecify.annotations.Nullable;
import org.wattwright.battery.BandEnd;
import org.wattwright.battery.Direction;
import org.wattwright.battery.Pack;
import org.wattwright.battery.PackState;
import org.wattwright.check.Basis;
import org.wattwright.check.Check;
import org.wattwright.check.Worksheet;
import org.wattwright.internal.MissingFields;
import org.wattwright.internal.Require;
import org.wattwright.profile.Profile;
import org.wattwright.units.HeatCapacity;
import org.wattwright.units.Kind;
import org.wattwright.units.SpecificHeatCapacity;
import org.wattwright.units.StateOfCharge;
import org.wattwright.units.ThermalConductance;
import org.wattwright.units.WorkshopUnits;

/**
 * A pack as one lump that heats under current and is cooled by its surroundings and by a stream.
 *
 * <p>C·dT/dt = I·(OCV − U) − I·T·dU/dT − G_a·(T − T_a) − G_c·(T − T_in). The loss follows state of
 * charge and temperature through the pack's own resistance table, for current that has flowed for
 * long; the reversible part counts where it is known. Sources: energy balance; D. Bernardi, E.
 * Pawlikowski, J. Newman, J. Electrochem. Soc. 132 (1985) 5.
 *
 * <pre>{@code
 * PackTemperature model = PackTemperature.of(pack)
 *     .surroundings(celsius(30), wattsPerKelvin(12))
 *     .estimatedSpecificHeat()
 *     .build();
 * model.course(PackState.of(percentCharge(90), celsius(30)), drive).peak();
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 */
public final class PackTemperature implements Serializable {
  private static final long serialVersionUID = 1L;

  private final PackHeatModel model;
  private final PackCapacity capacity;
  private final @Nullable PackCooling cooling;

  private PackTemperature(
      PackHeatModel model, PackCapacity capacity, @Nullable PackCooling cooling) {
    this.model = model;
    this.capacity = capacity;
    this.cooling = cooling;
  }

  /**
   * Starts to describe how a pack is heated and cooled.
   *
   * @param pack the pack; an aged one heats more
   * @return a builder; surroundings are required, and the heat capacity unless the pack knows it
   */
  public static Builder of(Pack pack) {
    return new Builder(Objects.requireNonNull(pack, "pack"));
  }

  /** Describes how a pack is heated and cooled. */
  public static final class Builder {
    private final Pack pack;
    private @Nullable Double airK;
    private @Nullable Double airWPerK;
    private @Nullable PackCapacity capacity;
    private double housingJPerK;
    private @Nullable PackCooling cooling;

    private Builder(Pack pack) {
      this.pack = pack;
      this.capacity = PackCapacity.known(pack);
    }

    /**
     * What the pack stands in, and how well its walls pass heat; required.
     *
     * @param temperature −60 °C to 100 °C
     * @param conductance from cells to surroundings, ≥ 0 W/K; 0 for the warmest pack
     * @return this builder
     * @throws org.wattwright.units.InvalidInputException if a value is outside its range
     */
    public Builder surroundings(
        Quantity<Temperature> temperature, Quantity<ThermalConductance> conductance) {
      airK = Surroundings.temperatureK("PackTemperature.surroundings", temperature);
      airWPerK =
          Require.quantity(
                  "PackTemperature.conductance", conductance, WorkshopUnits.WATT_PER_KELVIN)
              .nonNegative();
      return this;
    }

    /**
     * A stream of air or coolant; none unless told.
     *
     * @param value the cooling
     * @return this builder
     */
    public Builder cooledBy(PackCooling value) {
      cooling = Objects.requireNonNull(value, "cooling");
      return this;
    }

    /**
     * Heat capacity of all cells, in place of that which follows from the cells' data.
     *
     * @param value &gt; 0
     * @param basis what it rests on
     * @return this builder
     * @throws org.wattwright.units.InvalidInputException if the value is not positive
     */
    public Builder heatCapacity(Quantity<HeatCapacity> value, Basis basis) {
      double joulePerK =
          Require.quantity("PackTemperature.heatCapacity", value, WorkshopUnits.JOULE_PER_KELVIN)
              .positive();
      capacity = new PackCapacity(joulePerK, joulePerK, joulePerK, basis);
      return this;
    }

    /**
     * Specific heat of every cell by its chemistry; checks take the worse end of the band.
     *
     * @return this builder
     */
    public Builder estimatedSpecificHeat() {
      capacity = PackCapacity.byChemistry(pack);
      return this;
    }

    /**
     * More that warms up with the cells, such as housings and plates; may be told several times.
     *
     * @param mass &gt; 0 kg
     * @param specificHeat &gt; 0 J/(kg·K); aluminium about 897
     * @return this builder
     * @throws org.wattwright.units.InvalidInputException if a value is not positive
     */
    public Builder housing(Quantity<Mass> mass, Quantity<SpecificHeatCapacity> specificHeat) {
      housingJPerK += LumpedBody.heatCapacityJPerK(mass, specificHeat);
      return this;
    }

    /**
     * The model.
     *
     * @return the model
     * @throws org.wattwright.units.InvalidInputException if something required is missing
     */
    public PackTemperature build() {
      new MissingFields("PackTemperature")
          .field("surroundings", airK)
          .field("heatCapacity (or specific heat of the cells, or an estimate of it)", capacity)
          .rejectIfAny();
      PackCapacity all = MissingFields.present(capacity).plus(housingJPerK);
      PackHeatModel model =
          new PackHeatModel(
              pack,
              all.joulePerK(),
              MissingFields.present(airWPerK),
              MissingFields.present(airK),
              cooling == null ? 0 : cooling.conductanceWPerK(),
              cooling == null ? 0 : cooling.inletK());
      return new PackTemperature(model, all, cooling);
    }

    /**
     * The pack that is described.
     *
     * @return one line
     */
    @Override
    public String toString() {
      return "temperature of " + pack + ", not built yet";
    }
  }

  /**
   * The pack.
   *
   * @return the pack
   */
  public Pack pack() {
    return model.pack();
  }

  /**
   * Heat capacity of cells and housing, and the conductance of surroundings and stream together.
   *
   * @return the lump
   */
  public LumpedBody body() {
    return LumpedBody.of(
        Kind.HEAT_CAPACITY.ofSi(model.capacityJPerK()),
        Kind.THERMAL_CONDUCTANCE.ofSi(model.conductanceWPerK()));
  }

  /**
   * Temperature over one pass of a current profile.
   *
   * @param start state of charge and temperature at the start, −60 °C to 100 °C
   * @param current of the pack, positive on discharge; a repeating profile is passed once
   * @return the course
   * @throws org.wattwright.units.InvalidInputException if the start is outside its range
   */
  public PackTemperatureCourse course(PackState start, Profile<ElectricCurrent> current) {
    return course(model, start, current);
  }

  private static PackTemperatureCourse course(
      PackHeatModel model, PackState start, Profile<ElectricCurrent> current) {
    double startK = Surroundings.temperatureK("PackTemperature.start", start.temperature());
    double soc = start.stateOfCharge().fraction();
    double totalS = Kind.TIME.siValueOf(current.duration());
    CoursePieces pieces =
        new CourseSolver(model, soc, totalS)
            .run(
                startK,
                current.durationsIn(SECOND),
                current.startValuesIn(AMPERE),
                current.endValuesIn(AMPERE));
    boolean reversibleKnown = model.heat(soc, startK, 0).reversible().isPresent();
    return new PackTemperatureCourse(model, pieces, soc, reversibleKnown);
  }

  /**
   * Courses between which the real one lies: resistances at one end of their bands, the heat
   * capacity at both; a single course if the heat capacity is not estimated.
   */
  List<PackTemperatureCourse> bracket(
      PackState start, Profile<ElectricCurrent> current, BandEnd resistances) {
    PackHeatModel ended = model.withPack(model.pack().atBandEnd(resistances));
    return DoubleStream.of(capacity.lowJPerK(), capacity.highJPerK())
        .distinct()
        .mapToObj(joulePerK -> course(ended.withCapacity(joulePerK), start, current))
        .toList();
  }

  /**
   * Highest current that holds the pack at or below a temperature for good: the heat then equals
   * the loss.
   *
   * @param state the temperature to hold, −60 °C to 100 °C, and the state of charge whose
   *     resistance counts
   * @param direction charge or discharge
   * @return its size, ≥ 0 A; empty if the pack takes up heat at that temperature without current
   * @throws org.wattwright.units.InvalidInputException if the temperature is outside its range
   */
  public Optional<Quantity<ElectricCurrent>> continuousCurrent(
      PackState state, Direction direction) {
    Surroundings.temperatureK("PackTemperature.held", state.temperature());
    double currentA = SteadyPack.of(model).continuousA(state, direction);
    return Double.isNaN(currentA) ? Optional.empty() : Optional.of(Kind.CURRENT.ofSi(currentA));
  }

  /**
   * Temperature at which a steady current keeps the pack, if it lasted.
   *
   * @param current positive on discharge
   * @param stateOfCharge whose resistance counts
   * @return the one nearest to that without current; empty if there is none up to 200 °C
   */
  public Optional<Quantity<Temperature>> steadyTemperature(
      Quantity<ElectricCurrent> current, StateOfCharge stateOfCharge) {
    double currentA = Kind.CURRENT.siValueOf(current);
    double steadyK = SteadyPack.of(model).steadyK(currentA, stateOfCharge.fraction());
    return Double.isNaN(steadyK) ? Optional.empty() : Optional.of(Kind.TEMPERATURE.ofSi(steadyK));
  }

  /**
   * Time for a heater to bring the pack to a temperature, without current.
   *
   * @param heater power that reaches the cells
   * @param start temperature at the start
   * @param target temperature to reach
   * @return empty if it is never reached
   */
  public Optional<Quantity<Time>> timeToWarm(
      Quantity<Power> heater, Quantity<Temperature> start, Quantity<Temperature> target) {
    return body().timeTo(target, start, Kind.TEMPERATURE.ofSi(model.sinkK()), heater);
  }

  /**
   * The temperatures of a course against the cells' limits. What is estimated is taken at the worse
   * end of its band: high resistances for the hottest, low for the coldest, either end of the heat
   * capacity.
   *
   * @param start state of charge and temperature at the start
   * @param current of the pack, positive on discharge
   * @return {@code thermal.pack-hottest-discharge}, {@code thermal.pack-coldest-discharge}, {@code
   *     thermal.pack-hottest-charge}, {@code thermal.pack-coldest-charge} as far as the profile
   *     does that, and {@code thermal.pack-charge}
   */
  public List<Check> checks(PackState start, Profile<ElectricCurrent> current) {
    return new PackTemperatureChecks(
            this, bracket(start, current, BandEnd.HIGH), bracket(start, current, BandEnd.LOW))
        .all();
  }

  /**
   * The working of a course: heat capacity, conductances, time constant, heat by part, peak.
   *
   * @param start state of charge and temperature at the start
   * @param current of the pack, positive on discharge
   * @return the steps
   */
  public Worksheet worksheet(PackState start, Profile<ElectricCurrent> current) {
    return new PackTemperatureSteps(this).of(course(start, current));
  }

  /**
   * The working of the current that holds a temperature.
   *
   * @param state the temperature to hold and the state of charge
   * @param direction charge or discharge
   * @return the steps
   */
  public Worksheet continuousWorksheet(PackState state, Direction direction) {
    return new PackTemperatureSteps(this).ofContinuous(state, direction);
  }

  PackHeatModel model() {
    return model;
  }

  Basis capacityBasis() {
    return capacity.basis();
  }

  Optional<PackCooling> cooling() {
    return Optional.ofNullable(cooling);
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof PackTemperature that
        && model.equals(that.model)
        && capacity.equals(that.capacity)
        && Objects.equals(cooling, that.cooling);
  }

  @Override
  public int hashCode() {
    return Objects.hash(model, capacity, cooling);
  }

  /**
   * The lump and its cooling.
   *
   * @return for example {@code 429.6 kJ/K, losing 12 W/K}
   */
  @Override
  public String toString() {
    return body() + cooling().map(stream -> ", cooled by " + stream).orElse("");
  }
}
