package org.wattwright.battery;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.UnaryOperator;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricCharge;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.ElectricPotential;
import javax.measure.quantity.ElectricResistance;
import javax.measure.quantity.Energy;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Power;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import javax.measure.quantity.Volume;
import org.jspecify.annotations.Nullable;
import org.wattwright.check.Basis;
import org.wattwright.check.Check;
import org.wattwright.check.Figure;
import org.wattwright.check.Recorder;
import org.wattwright.check.Worksheet;
import org.wattwright.internal.Require;
import org.wattwright.units.HeatCapacity;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;
import org.wattwright.units.Measures;
import org.wattwright.units.StateOfCharge;
import org.wattwright.units.WorkshopUnits;

/**
 * A traction pack: strings in parallel, each of modules in series that sit in named bays.
 *
 * <p>Asked in a {@link PackState} it answers voltage, current, power, energy and heat. Discharge
 * current is positive. Limits hold cell by cell: the voltage limit is that of the cells, without
 * interconnects and links. A power that is too high is an answer, never a NaN.
 *
 * <pre>{@code
 * Pack pack = Pack.of(module, 5, 2);
 * PackState cold = PackState.of(percentCharge(20), celsius(0));
 * pack.maximumDischargePower(cold, seconds(10));   // 61.2 kW discharge at …, limited by cell voltage
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 */
public final class Pack implements Serializable {
  private static final long serialVersionUID = 1L;

  private static final int MOST_STRINGS = 10_000;

  private final List<SeriesString> strings;
  private final Quantity<ElectricResistance> leadResistance;
  private final transient List<StringModel> models;

  private Pack(List<SeriesString> strings, Quantity<ElectricResistance> leadResistance) {
    this.strings = List.copyOf(strings);
    this.leadResistance = leadResistance;
    this.models = modelsOf(this.strings);
  }

  /** Neighbouring strings that are alike share one model, so that it is asked only once. */
  private static List<StringModel> modelsOf(List<SeriesString> strings) {
    List<StringModel> models = new ArrayList<>();
    for (int k = 0; k < strings.size(); k++) {
      boolean likePrevious = k > 0 && strings.get(k).isLike(strings.get(k - 1));
      models.add(likePrevious ? models.get(k - 1) : new StringModel(strings.get(k)));
    }
    return List.copyOf(models);
  }

  private Object readResolve() {
    return new Pack(strings, leadResistance);
  }

  /**
   * A pack of one module type in one place.
   *
   * @param module the type
   * @param series modules in series in each string, 1 to 10 000
   * @param parallel strings in parallel, 1 to 10 000
   * @return the pack
   * @throws InvalidInputException if a count is outside its range
   */
  public static Pack of(BatteryModule module, int series, int parallel) {
    Require.count("Pack.parallel", parallel, 1, MOST_STRINGS);
    List<SeriesString> strings = new ArrayList<>();
    for (int k = 1; k <= parallel; k++) {
      String name = parallel == 1 ? "string" : "string " + k;
      strings.add(SeriesString.of(name).group("one place", module, series).build());
    }
    return of(strings);
  }

  /**
   * A pack of strings in parallel.
   *
   * @param strings at least one
   * @return the pack
   * @throws InvalidInputException if there is none
   */
  public static Pack of(List<SeriesString> strings) {
    return new Pack(Require.nonEmpty("Pack.strings", strings), Kind.RESISTANCE.ofSi(0));
  }

  /**
   * This pack with the resistance of contactors and cables between the strings and its terminals.
   *
   * @param resistance ≥ 0 Ω, both poles together
   * @return a new pack
   * @throws InvalidInputException if negative
   */
  public Pack withLeadResistance(Quantity<ElectricResistance> resistance) {
    double ohm =
        Require.quantity("Pack.leadResistance", resistance, WorkshopUnits.MILLIOHM).nonNegative();
    return new Pack(strings, Kind.RESISTANCE.ofSi(ohm));
  }

  /**
   * This pack at a further age.
   *
   * @param further what comes on top of the age the cells have
   * @return a new pack
   */
  public Pack aged(Ageing further) {
    return withModules(module -> module.aged(further));
  }

  /**
   * This pack with every estimated resistance at one end of its band.
   *
   * @param end low for the highest fault current, high for the lowest
   * @return a new pack
   */
  public Pack atBandEnd(BandEnd end) {
    return withModules(module -> module.atBandEnd(end));
  }

  private Pack withModules(UnaryOperator<BatteryModule> change) {
    return new Pack(
        strings.stream().map(string -> string.withModules(change)).toList(), leadResistance);
  }

  /**
   * The strings in parallel.
   *
   * @return an immutable list
   */
  public List<SeriesString> strings() {
    return strings;
  }

  /**
   * Resistance between the strings and the terminals.
   *
   * @return in Ω
   */
  public Quantity<ElectricResistance> leadResistance() {
    return leadResistance;
  }

  /**
   * Number of modules.
   *
   * @return ≥ 1
   */
  public int moduleCount() {
    return strings.stream().mapToInt(SeriesString::moduleCount).sum();
  }

  /**
   * Capacity: the sum of the strings'.
   *
   * @return in A·h
   */
  public Quantity<ElectricCharge> capacity() {
    return Kind.CHARGE.ofSi(capacityC());
  }

  /**
   * Energy at rest voltage from full to empty. A string begins with all its modules full and ends
   * when the smallest is empty; the rest of a larger one stays unused.
   *
   * @param temperature absolute cell temperature
   * @return in kW·h
   */
  public Quantity<Energy> nominalEnergy(Quantity<Temperature> temperature) {
    double energyJ = strings.stream().mapToDouble(k -> k.nominalEnergyJ(temperature)).sum();
    return Kind.ENERGY.ofSi(energyJ);
  }

  /**
   * Highest voltage: every cell of the string with the fewest volts at its maximum.
   *
   * @return in V
   */
  public Quantity<ElectricPotential> maximumVoltage() {
    return Kind.VOLTAGE.ofSi(
        strings.stream().mapToDouble(s -> cellSumV(s, Cell::maximumVoltage)).min().orElseThrow());
  }

  /**
   * Lowest voltage: every cell of the string with the most volts at its minimum.
   *
   * @return in V
   */
  public Quantity<ElectricPotential> minimumVoltage() {
    return Kind.VOLTAGE.ofSi(
        strings.stream().mapToDouble(s -> cellSumV(s, Cell::minimumVoltage)).max().orElseThrow());
  }

  private static double cellSumV(
      SeriesString string, java.util.function.Function<Cell, Quantity<ElectricPotential>> voltage) {
    return string.groups().stream()
        .mapToDouble(
            g ->
                g.count()
                    * g.module().series()
                    * Kind.VOLTAGE.siValueOf(voltage.apply(g.module().cell())))
        .sum();
  }

  /**
   * Open-circuit voltage.
   *
   * @param state state of charge and temperature, the same for all strings
   * @return in V
   */
  public Quantity<ElectricPotential> openCircuitVoltage(PackState state) {
    return Kind.VOLTAGE.ofSi(solver(state, 0).openCircuitV());
  }

  /**
   * Resistance for seconds, leads included.
   *
   * @param state state of charge and temperature
   * @param direction discharge or charge
   * @return in Ω
   */
  public Quantity<ElectricResistance> resistance(PackState state, Direction direction) {
    return Kind.RESISTANCE.ofSi(solver(state, 0).strings().resistanceOhm(direction));
  }

  /**
   * Resistance some time after a current began, polarisation and leads included.
   *
   * @param state state of charge and temperature
   * @param direction discharge or charge
   * @param duration since the current began, ≥ 0 s
   * @return in Ω
   * @throws InvalidInputException if the duration is negative
   */
  public Quantity<ElectricResistance> resistance(
      PackState state, Direction direction, Quantity<Time> duration) {
    return Kind.RESISTANCE.ofSi(
        solver(state, durationS(duration)).strings().resistanceOhm(direction));
  }

  /**
   * Resistance for milliseconds, interconnects, links and leads included.
   *
   * @return empty if the ohmic resistance of a cell is not known
   */
  public Optional<Quantity<ElectricResistance>> ohmicResistance() {
    double conductanceS = 0;
    for (SeriesString string : strings) {
      double ohm = string.linkOhm();
      for (SeriesString.Group group : string.groups()) {
        BatteryModule module = group.module();
        Optional<Quantity<ElectricResistance>> cellOhm = module.cell().ohmicResistance();
        if (cellOhm.isEmpty()) {
          return Optional.empty();
        }
        double cellsOhm =
            Kind.RESISTANCE.siValueOf(cellOhm.get()) * module.series() / module.parallel();
        ohm += group.count() * (cellsOhm + module.interconnectOhm());
      }
      conductanceS += 1 / ohm;
    }
    return Optional.of(
        Kind.RESISTANCE.ofSi(1 / conductanceS + Kind.RESISTANCE.siValueOf(leadResistance)));
  }

  /**
   * Terminal voltage under a current before polarisation sets in: U = OCV − I·R.
   *
   * @param state state of charge and temperature
   * @param current positive on discharge, negative on charge; limits are not applied
   * @return in V
   */
  public Quantity<ElectricPotential> terminalVoltage(
      PackState state, Quantity<ElectricCurrent> current) {
    return Kind.VOLTAGE.ofSi(solver(state, 0).strings().terminalAt(currentA(current)));
  }

  /**
   * Terminal voltage some time after a current began, polarisation included: U = OCV − I·R.
   *
   * @param state state of charge and temperature, held
   * @param current positive on discharge, negative on charge; limits are not applied
   * @param duration since the current began, ≥ 0 s
   * @return in V
   * @throws InvalidInputException if the duration is negative
   */
  public Quantity<ElectricPotential> terminalVoltage(
      PackState state, Quantity<ElectricCurrent> current, Quantity<Time> duration) {
    return Kind.VOLTAGE.ofSi(
        solver(state, durationS(duration)).strings().terminalAt(currentA(current)));
  }

  /**
   * The working of a terminal voltage.
   *
   * @param state state of charge and temperature, held
   * @param current positive on discharge, negative on charge; limits are not applied
   * @param duration since the current began, ≥ 0 s
   * @return the steps as computed
   * @throws InvalidInputException if the duration is negative
   */
  public Worksheet voltageWorksheet(
      PackState state, Quantity<ElectricCurrent> current, Quantity<Time> duration) {
    Worksheet.Recording recording =
        Worksheet.record("Terminal voltage at " + Figure.of(current, Kind.CURRENT));
    PackSolver solver = solver(state, durationS(duration));
    double currentA = currentA(current);
    PowerSteps.recordVoltage(solver, currentA, solver.strings().terminalAt(currentA), recording);
    return recording.toWorksheet();
  }

  /**
   * Voltage and heat during and after a current pulse, state of charge held.
   *
   * @param state state of charge and temperature
   * @param current positive on discharge, negative on charge; limits are not applied
   * @param duration of the pulse, &gt; 0 s
   * @return the response
   * @throws InvalidInputException if the duration is not positive, or the pack has modules of more
   *     than one kind
   */
  public PulseResponse pulseResponse(
      PackState state, Quantity<ElectricCurrent> current, Quantity<Time> duration) {
    if (!isUniform()) {
      throw InvalidInputException.of(
          "Pack.strings", "alike, of one module type, for a pulse response", "mixed");
    }
    SeriesString first = strings.get(0);
    BatteryModule module = first.groups().get(0).module();
    double cells = (double) first.cellsInSeries() / (strings.size() * module.parallel());
    return PulseResponse.of(
        PulseResponse.Circuit.of(solver(state, 0).strings(), module.cell(), cells),
        current,
        duration);
  }

  /**
   * Current at a power, if the pack may deliver or take that power for that long.
   *
   * <p>I = 2·P/(OCV + √(OCV² − 4·R·P)).
   *
   * @param state state of charge and temperature
   * @param power at the terminals; positive on discharge, negative on charge
   * @param duration how long, ≥ 0 s; decides pulse or continuous rating and polarisation
   * @return the operating point, or that the power is above the maximum and what limits it
   * @throws InvalidInputException if the duration is negative
   */
  public PowerResult currentAtPower(
      PackState state, Quantity<Power> power, Quantity<Time> duration) {
    double powerW = Kind.POWER.siValueOf(power);
    Direction direction = powerW >= 0 ? Direction.DISCHARGE : Direction.CHARGE;
    PackSolver solver = solver(state, durationS(duration));
    PackSolver.Bound bound = solver.bound(direction, Recorder.OFF);
    // Rounding must not refuse the very power that the limit itself names.
    if (!(Math.abs(powerW) <= bound.powerW() * (1 + 1e-12))) {
      return new PowerResult.AboveMaximum(
          Kind.POWER.ofSi(Math.abs(powerW)), limitOf(direction, bound));
    }
    double currentA = solver.strings().currentAtPower(powerW);
    return new PowerResult.OperatingPoint(
        Kind.CURRENT.ofSi(currentA),
        Kind.VOLTAGE.ofSi(solver.strings().terminalAt(currentA)),
        Kind.POWER.ofSi(solver.strings().heatAt(currentA)));
  }

  private static double currentA(Quantity<ElectricCurrent> current) {
    return Kind.CURRENT.siValueOf(current);
  }

  private static double durationS(Quantity<Time> duration) {
    return Require.quantity("duration", duration, WorkshopUnits.SECOND).nonNegative();
  }

  private PackSolver solver(PackState state, double durationS) {
    return PackSolver.of(this, state, durationS);
  }

  /**
   * Largest discharge power, and whether cell voltage, cell current, temperature or the
   * power-transfer maximum limits it.
   *
   * @param state state of charge and temperature
   * @param duration how long, ≥ 0 s
   * @return power, current and voltage as magnitudes; 0 W where discharge is forbidden
   * @throws InvalidInputException if the duration is negative
   */
  public PowerLimit maximumDischargePower(PackState state, Quantity<Time> duration) {
    return maximumPower(solver(state, durationS(duration)), Direction.DISCHARGE, Recorder.OFF);
  }

  /**
   * Largest charge or regeneration power, and what limits it.
   *
   * @param state state of charge and temperature
   * @param duration how long, ≥ 0 s
   * @return power, current and voltage as magnitudes; 0 W where charging is forbidden
   * @throws InvalidInputException if the duration is negative
   */
  public PowerLimit maximumChargePower(PackState state, Quantity<Time> duration) {
    return maximumPower(solver(state, durationS(duration)), Direction.CHARGE, Recorder.OFF);
  }

  /**
   * The working of the largest power in one direction.
   *
   * @param state state of charge and temperature
   * @param direction discharge or charge
   * @param duration how long, ≥ 0 s
   * @return the steps as computed
   * @throws InvalidInputException if the duration is negative
   */
  public Worksheet powerWorksheet(PackState state, Direction direction, Quantity<Time> duration) {
    Worksheet.Recording recording = Worksheet.record("Largest " + direction + " power at " + state);
    maximumPower(solver(state, durationS(duration)), direction, recording);
    return recording.toWorksheet();
  }

  private static PowerLimit maximumPower(
      PackSolver solver, Direction direction, Recorder recorder) {
    return limitOf(direction, solver.bound(direction, recorder));
  }

  private static PowerLimit limitOf(Direction direction, PackSolver.Bound bound) {
    return new PowerLimit(
        direction,
        Kind.POWER.ofSi(bound.powerW()),
        Kind.CURRENT.ofSi(bound.currentA()),
        Kind.VOLTAGE.ofSi(bound.voltageV()),
        bound.limit());
  }

  /**
   * Energy that comes out at a constant power between two states of charge, all cells at the same
   * state of charge throughout, limits for continuous current applied.
   *
   * @param power at the terminals, &gt; 0 W
   * @param from the fuller end
   * @param to the emptier end
   * @param temperature absolute cell temperature, held
   * @return energy, time and where it ended, with an error bound
   * @throws InvalidInputException if the power is not positive or {@code to} is not below {@code
   *     from}
   */
  public EnergyResult usableEnergyAtPower(
      Quantity<Power> power,
      StateOfCharge from,
      StateOfCharge to,
      Quantity<Temperature> temperature) {
    double powerW = Require.quantity("power", power, WorkshopUnits.WATT).positive();
    return EnergySolver.atPower(this, Kind.TEMPERATURE.siValueOf(temperature), powerW)
        .between(from, to, Recorder.OFF);
  }

  /**
   * The working of the energy at a constant power.
   *
   * @param power at the terminals, &gt; 0 W
   * @param from the fuller end
   * @param to the emptier end
   * @param temperature absolute cell temperature, held
   * @return the steps as computed
   * @throws InvalidInputException if the power is not positive or {@code to} is not below {@code
   *     from}
   */
  public Worksheet energyWorksheet(
      Quantity<Power> power,
      StateOfCharge from,
      StateOfCharge to,
      Quantity<Temperature> temperature) {
    double powerW = Require.quantity("power", power, WorkshopUnits.WATT).positive();
    Worksheet.Recording recording =
        Worksheet.record("Energy at " + Figure.of(power, Kind.POWER) + ", " + temperature);
    EnergySolver.atPower(this, Kind.TEMPERATURE.siValueOf(temperature), powerW)
        .between(from, to, recording);
    return recording.toWorksheet();
  }

  /**
   * Energy that comes out at a constant current between two states of charge, all cells at the same
   * state of charge throughout, limits for continuous current applied.
   *
   * @param current at the terminals, &gt; 0 A
   * @param from the fuller end
   * @param to the emptier end
   * @param temperature absolute cell temperature, held
   * @return energy, time and where it ended, with an error bound
   * @throws InvalidInputException if the current is not positive or {@code to} is not below {@code
   *     from}
   */
  public EnergyResult usableEnergyAtCurrent(
      Quantity<ElectricCurrent> current,
      StateOfCharge from,
      StateOfCharge to,
      Quantity<Temperature> temperature) {
    double currentA = Require.quantity("current", current, WorkshopUnits.AMPERE).positive();
    return EnergySolver.atCurrent(this, Kind.TEMPERATURE.siValueOf(temperature), currentA)
        .between(from, to, Recorder.OFF);
  }

  /**
   * States of charge at which a table of open-circuit voltage or resistance has a point; between
   * neighbours all of them are smooth, which an integration should know.
   *
   * @return rising, without repetition
   */
  public List<StateOfCharge> tablePoints() {
    TreeSet<StateOfCharge> points = new TreeSet<>();
    for (SeriesString string : strings) {
      for (SeriesString.Group group : string.groups()) {
        Cell cell = group.module().cell();
        addAll(points, cell.openCircuit().table().rowAxis());
        for (Direction direction : Direction.values()) {
          addAll(points, cell.resistance(direction).table().rowAxis());
        }
      }
    }
    return List.copyOf(points);
  }

  private static void addAll(Set<StateOfCharge> points, double[] axis) {
    for (double soc : axis) {
      points.add(StateOfCharge.of(soc));
    }
  }

  /**
   * Heat under a current that has flowed for long (polarisation included), strings sharing it as
   * they do.
   *
   * @param state state of charge and temperature
   * @param current positive on discharge, negative on charge
   * @return the loss, and the reversible part where every cell's entropic coefficient is known
   */
  public Heat heat(PackState state, Quantity<ElectricCurrent> current) {
    double currentA = currentA(current);
    Node node = solver(state, Double.POSITIVE_INFINITY).strings();
    double nodeV = node.voltageAt(currentA);
    double reversibleW = 0;
    for (int k = 0; k < strings.size(); k++) {
      Double coefficientVPerK = entropicVPerK(strings.get(k));
      if (coefficientVPerK == null) {
        return new Heat(node.heatAt(currentA), null);
      }
      reversibleW -= node.stringCurrentAt(k, nodeV) * state.temperatureK() * coefficientVPerK;
    }
    return new Heat(node.heatAt(currentA), reversibleW);
  }

  private static @Nullable Double entropicVPerK(SeriesString string) {
    double sum = 0;
    for (SeriesString.Group group : string.groups()) {
      if (group.module().cell().entropicCoefficient().isEmpty()) {
        return null;
      }
      sum +=
          group.count()
              * group.module().series()
              * Kind.ENTROPIC_COEFFICIENT.siValueOf(
                  group.module().cell().entropicCoefficient().get());
    }
    return sum;
  }

  /**
   * Current of each string when all are in the same state.
   *
   * @param state state of charge and temperature
   * @param current at the terminals, positive on discharge
   * @return voltage, currents and heat
   */
  public StringSharing stringCurrents(PackState state, Quantity<ElectricCurrent> current) {
    return stringCurrents(java.util.Collections.nCopies(strings.size(), state), current);
  }

  /**
   * Current of each string when their states differ; with no load, the equalising currents.
   *
   * @param states one per string in the pack's order
   * @param current at the terminals, positive on discharge
   * @return voltage, currents and heat
   * @throws InvalidInputException if there are not as many states as strings
   */
  public StringSharing stringCurrents(List<PackState> states, Quantity<ElectricCurrent> current) {
    if (states.size() != strings.size()) {
      throw InvalidInputException.of(
          "states", strings.size() + " states, one per string", states.size() + " states");
    }
    Node node = node(states, 0);
    double nodeV = node.voltageAt(currentA(current));
    List<Quantity<ElectricCurrent>> currents = new ArrayList<>();
    for (int k = 0; k < strings.size(); k++) {
      currents.add(Kind.CURRENT.ofSi(node.stringCurrentAt(k, nodeV)));
    }
    return new StringSharing(
        Kind.VOLTAGE.ofSi(nodeV), currents, Kind.POWER.ofSi(node.stringHeatAt(nodeV)));
  }

  /**
   * Whether the cells stand the currents between strings in different states that are connected
   * with no load, with the low end of estimated resistances. For two strings {@link Equalisation}
   * tells also how long it lasts.
   *
   * @param states one per string in the pack's order
   * @return one check per string, code {@code battery.equalising-current}
   * @throws InvalidInputException if there are not as many states as strings
   */
  public List<Check> connectionChecks(List<PackState> states) {
    return new ConnectionChecks(this, List.copyOf(states)).all();
  }

  private Node node(List<PackState> states, double durationS) {
    return Node.of(
        models,
        states.stream().map(StringModel.State::of).toList(),
        durationS,
        Kind.RESISTANCE.siValueOf(leadResistance));
  }

  /**
   * Mass of the modules.
   *
   * @return in kg
   */
  public Quantity<Mass> mass() {
    return Kind.MASS.ofSi(strings.stream().mapToDouble(s -> Kind.MASS.siValueOf(s.mass())).sum());
  }

  /**
   * Volume of the modules' outer boxes.
   *
   * @return empty if the size of a module is not known
   */
  public Optional<Quantity<Volume>> volume() {
    double volumeM3 = 0;
    for (SeriesString string : strings) {
      for (SeriesString.Group group : string.groups()) {
        Optional<Quantity<Volume>> volume = group.module().volume();
        if (volume.isEmpty()) {
          return Optional.empty();
        }
        volumeM3 += group.count() * Kind.VOLUME.siValueOf(volume.get());
      }
    }
    return Optional.of(Kind.VOLUME.ofSi(volumeM3));
  }

  /**
   * Heat capacity of the cells: Σ m·c.
   *
   * @return in kJ/K; empty if the specific heat of a cell is not known
   */
  public Optional<Quantity<HeatCapacity>> heatCapacity() {
    double joulePerK = 0;
    for (SeriesString string : strings) {
      for (SeriesString.Group group : string.groups()) {
        Cell cell = group.module().cell();
        if (cell.specificHeat().isEmpty()) {
          return Optional.empty();
        }
        double cells = (double) group.count() * group.module().series() * group.module().parallel();
        joulePerK +=
            cells
                * Kind.MASS.siValueOf(cell.mass())
                * Kind.SPECIFIC_HEAT_CAPACITY.siValueOf(cell.specificHeat().get());
      }
    }
    return Optional.of(Kind.HEAT_CAPACITY.ofSi(joulePerK));
  }

  /**
   * What a property rests on: the weakest basis of all modules.
   *
   * @param property the property
   * @return the basis
   */
  public Basis basis(CellProperty property) {
    Basis weakest = Basis.MEASURED;
    for (SeriesString string : strings) {
      weakest = weakest.and(string.basis(property));
    }
    return weakest;
  }

  List<StringModel> models() {
    return models;
  }

  double capacityC() {
    return strings.stream().mapToDouble(SeriesString::capacityC).sum();
  }

  /** Whether all strings are alike and made of one module type. */
  boolean isUniform() {
    BatteryModule module = strings.get(0).groups().get(0).module();
    return models.stream().allMatch(model -> model == models.get(0))
        && strings.get(0).groups().stream().allMatch(group -> group.module().equals(module));
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return this == other
        || (other instanceof Pack that
            && strings.equals(that.strings)
            && leadResistance.equals(that.leadResistance));
  }

  @Override
  public int hashCode() {
    return Objects.hash(strings, leadResistance);
  }

  /**
   * Strings, capacity, voltage limits and mass.
   *
   * @return for example {@code 2 strings of 5 modules, 210 A·h, 75 V … 109.5 V, 124 kg}
   */
  @Override
  public String toString() {
    String arrangement =
        strings.size() == 1
            ? "1 string of " + strings.get(0).moduleCount() + " modules"
            : strings.size() + " strings, " + moduleCount() + " modules";
    return arrangement
        + ", "
        + Measures.format(capacity(), Kind.CHARGE)
        + ", "
        + Measures.format(minimumVoltage(), Kind.VOLTAGE)
        + " … "
        + Measures.format(maximumVoltage(), Kind.VOLTAGE)
        + ", "
        + Measures.format(mass(), Kind.MASS);
  }
}
