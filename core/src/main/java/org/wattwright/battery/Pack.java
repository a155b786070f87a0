package org.wattwright.battery;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
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

  private final List<SeriesString> strings;
  private final Quantity<ElectricResistance> leadResistance;
  private transient List<StringModel> models;

  private Pack(List<SeriesString> strings, Quantity<ElectricResistance> leadResistance) {
    this.strings = List.copyOf(strings);
    this.leadResistance = leadResistance;
    this.models = this.strings.stream().map(StringModel::new).toList();
  }

  private Object readResolve() {
    return new Pack(strings, leadResistance);
  }

  /**
   * A pack of one module type in one place.
   *
   * @param module the type
   * @param series modules in series in each string, ≥ 1
   * @param parallel strings in parallel, ≥ 1
   * @return the pack
   * @throws InvalidInputException if a count is less than 1
   */
  public static Pack of(BatteryModule module, int series, int parallel) {
    Require.positiveCount("Pack.parallel", parallel);
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
   * Energy at rest voltage from full to empty.
   *
   * @param temperature absolute cell temperature
   * @return in kW·h
   */
  public Quantity<Energy> nominalEnergy(Quantity<Temperature> temperature) {
    double energyJ = 0;
    for (SeriesString string : strings) {
      for (SeriesString.Group group : string.groups()) {
        // A string ends with its smallest module; the rest of a larger one stays unused.
        double share = string.capacityC() / group.module().capacityC();
        energyJ +=
            share
                * group.count()
                * Kind.ENERGY.siValueOf(group.module().nominalEnergy(temperature));
      }
    }
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
    return Kind.VOLTAGE.ofSi(PackSolver.of(this, state).openCircuitV());
  }

  /**
   * Resistance for seconds, leads included.
   *
   * @param state state of charge and temperature
   * @param direction discharge or charge
   * @return in Ω
   */
  public Quantity<ElectricResistance> resistance(PackState state, Direction direction) {
    return Kind.RESISTANCE.ofSi(PackSolver.of(this, state).resistanceOhm(new Load(direction, 0)));
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
   * Terminal voltage under a current, some seconds after it began: U = OCV − I·R.
   *
   * @param state state of charge and temperature
   * @param current positive on discharge, negative on charge; limits are not applied
   * @return in V
   */
  public Quantity<ElectricPotential> terminalVoltage(
      PackState state, Quantity<ElectricCurrent> current) {
    return Kind.VOLTAGE.ofSi(
        PackSolver.of(this, state).terminalV(Kind.CURRENT.siValueOf(current), 0));
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
    Load load = Load.of(direction, duration);
    PackSolver solver = PackSolver.of(this, state);
    PackSolver.Bound bound = solver.bound(load, Recorder.OFF);
    // Rounding must not refuse the very power that the limit itself names.
    if (Math.abs(powerW) > bound.powerW() * (1 + 1e-12)) {
      return new PowerResult.AboveMaximum(
          Kind.POWER.ofSi(Math.abs(powerW)), limitOf(direction, bound));
    }
    double currentA = solver.currentA(powerW, load.durationS());
    return new PowerResult.OperatingPoint(
        Kind.CURRENT.ofSi(currentA),
        Kind.VOLTAGE.ofSi(solver.terminalV(currentA, load.durationS())),
        Kind.POWER.ofSi(solver.heatW(currentA, load.durationS())));
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
    return maximumPower(state, Load.of(Direction.DISCHARGE, duration), Recorder.OFF);
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
    return maximumPower(state, Load.of(Direction.CHARGE, duration), Recorder.OFF);
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
    maximumPower(state, Load.of(direction, duration), recording);
    return recording.toWorksheet();
  }

  private PowerLimit maximumPower(PackState state, Load load, Recorder recorder) {
    return limitOf(load.direction(), PackSolver.of(this, state).bound(load, recorder));
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
   * Energy that comes out at a constant power between two states of charge.
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
    return new EnergySolver(this, Kind.TEMPERATURE.siValueOf(temperature))
        .atPower(powerW, from, to);
  }

  /**
   * Energy that comes out at a constant current between two states of charge.
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
    return new EnergySolver(this, Kind.TEMPERATURE.siValueOf(temperature))
        .atCurrent(currentA, from, to);
  }

  /**
   * Heat under a current, strings sharing it as they do.
   *
   * @param state state of charge and temperature
   * @param current positive on discharge, negative on charge
   * @return the loss, and the reversible part where every cell's entropic coefficient is known
   */
  public Heat heat(PackState state, Quantity<ElectricCurrent> current) {
    double currentA = Kind.CURRENT.siValueOf(current);
    PackSolver solver = PackSolver.of(this, state);
    Node node = solver.node(0);
    double nodeV = node.voltageAt(currentA);
    double reversibleW = 0;
    for (int k = 0; k < strings.size(); k++) {
      Double coefficientVPerK = entropicVPerK(strings.get(k));
      if (coefficientVPerK == null) {
        return new Heat(solver.heatW(currentA, 0), null);
      }
      reversibleW -= node.stringCurrentAt(k, nodeV) * state.temperatureK() * coefficientVPerK;
    }
    return new Heat(solver.heatW(currentA, 0), reversibleW);
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
    double currentA = Kind.CURRENT.siValueOf(current);
    Node node = node(states);
    double nodeV = node.voltageAt(currentA);
    List<Quantity<ElectricCurrent>> currents = new ArrayList<>();
    for (int k = 0; k < strings.size(); k++) {
      currents.add(Kind.CURRENT.ofSi(node.stringCurrentAt(k, nodeV)));
    }
    return new StringSharing(
        Kind.VOLTAGE.ofSi(nodeV), currents, Kind.POWER.ofSi(node.heatAt(nodeV)));
  }

  private Node node(List<PackState> states) {
    int count = strings.size();
    double[] sourceV = new double[count];
    double[] dischargeOhm = new double[count];
    double[] chargeOhm = new double[count];
    for (int k = 0; k < count; k++) {
      double soc = states.get(k).soc();
      double temperatureK = states.get(k).temperatureK();
      StringModel model = models.get(k);
      sourceV[k] = model.openCircuitV(soc, temperatureK);
      dischargeOhm[k] = model.resistanceOhm(soc, temperatureK, new Load(Direction.DISCHARGE, 0));
      chargeOhm[k] = model.resistanceOhm(soc, temperatureK, new Load(Direction.CHARGE, 0));
    }
    return new Node(sourceV, dischargeOhm, chargeOhm);
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
        int cells = group.count() * group.module().series() * group.module().parallel();
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
      for (SeriesString.Group group : string.groups()) {
        weakest = weakest.and(group.module().basis(property));
      }
    }
    return weakest;
  }

  List<StringModel> models() {
    return models;
  }

  double capacityC() {
    return strings.stream().mapToDouble(SeriesString::capacityC).sum();
  }

  /** Whether all strings have the same modules and links, so that they share equally. */
  boolean hasEqualStrings() {
    SeriesString first = strings.get(0);
    return strings.stream()
        .allMatch(
            s ->
                s.groups().equals(first.groups())
                    && s.linkResistance().equals(first.linkResistance()));
  }

  String describe(double soc, double temperatureK) {
    return String.format(Locale.ROOT, "%.0f %% and %.0f °C", soc * 100, temperatureK - 273.15);
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
