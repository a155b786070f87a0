package org.wattwright.protection;

import static org.wattwright.units.WorkshopUnits.SECOND;
import static org.wattwright.units.WorkshopUnits.VOLT;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricPotential;
import javax.measure.quantity.ElectricResistance;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import org.jspecify.annotations.Nullable;
import org.wattwright.battery.Ageing;
import org.wattwright.battery.BandEnd;
import org.wattwright.battery.CellProperty;
import org.wattwright.battery.Direction;
import org.wattwright.battery.Pack;
import org.wattwright.battery.PackState;
import org.wattwright.battery.SeriesString;
import org.wattwright.battery.TemperatureRange;
import org.wattwright.check.Basis;
import org.wattwright.check.Given;
import org.wattwright.check.Source;
import org.wattwright.internal.Require;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;
import org.wattwright.units.StateOfCharge;

/**
 * A battery as the source of a short circuit: the highest and the lowest current that it can drive.
 *
 * <p>Highest: every cell at its highest voltage (charging; its polarisation still drives), all
 * strings, resistance for milliseconds, the low end of every estimate, the near end of the circuit,
 * and the capacitors of other devices. Lowest: empty and cold, aged, resistance after the
 * polarisation time, one string missing where there are several, the high end of every estimate,
 * the far end of the circuit, less the voltage of an arc.
 *
 * <p>The ohmic resistance of a cell has no temperature in its data: state that of a warm, new cell.
 *
 * <pre>{@code
 * FaultSource source = FaultSource.of(pack)
 *     .withCellTemperatures(TemperatureRange.between(celsius(-20), celsius(45)));
 * FaultRange faults = source.range(near, far);
 * source.lowest(far).worksheet().toText();
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 */
public final class FaultSource implements Serializable {
  private static final long serialVersionUID = 1L;

  /** Resistance of an aged pack against a new one: 1.5 to 2, common practice; the higher end. */
  private static final Given<Ageing> USUAL_AGE =
      Given.estimated(
          Ageing.of(1, 2), Source.commonPractice("aged pack has 1.5 to 2 times its resistance"));

  /** Least voltage at which an arc of direct current burns; common practice. */
  private static final Given<Quantity<ElectricPotential>> USUAL_ARC =
      Given.estimated(
          Kind.VOLTAGE.ofSi(20),
          Source.commonPractice("a short arc of direct current burns at 20 V"));

  private static final double POLARISED_AFTER_S = 10;

  private static final String PACK = "pack";
  private static final Source MILLISECONDS =
      Source.commonPractice("ohmic resistance, low end, all strings");
  private static final Source POLARISED =
      Source.commonPractice("empty, cold, aged, polarised, one string missing if several");

  private final Pack pack;
  private final TemperatureRange cells;
  private final Given<Ageing> age;
  private final Given<Quantity<ElectricPotential>> arc;
  private final double polarisedAfterS;
  private final List<CapacitorDischarge> capacitors;

  private FaultSource(
      Pack pack,
      TemperatureRange cells,
      Given<Ageing> age,
      Given<Quantity<ElectricPotential>> arc,
      double polarisedAfterS,
      List<CapacitorDischarge> capacitors) {
    this.pack = pack;
    this.cells = cells;
    this.age = age;
    this.arc = arc;
    this.polarisedAfterS = polarisedAfterS;
    this.capacitors = List.copyOf(capacitors);
  }

  /**
   * A pack with the usual assumptions: cells within their discharge temperatures, resistance
   * doubled by age, an arc of 20 V, polarised after 10 s; age and arc count as estimates.
   *
   * @param pack the pack, new
   * @return the source
   */
  public static FaultSource of(Pack pack) {
    return new FaultSource(
        pack, dischargeTemperatures(pack), USUAL_AGE, USUAL_ARC, POLARISED_AFTER_S, List.of());
  }

  private static TemperatureRange dischargeTemperatures(Pack pack) {
    List<TemperatureRange> all =
        pack.strings().stream()
            .flatMap(string -> string.groups().stream())
            .map(group -> group.module().cell().temperatures(Direction.DISCHARGE))
            .toList();
    Comparator<Quantity<Temperature>> byKelvin =
        Comparator.comparingDouble(Kind.TEMPERATURE::siValueOf);
    return TemperatureRange.between(
        all.stream().map(TemperatureRange::coldest).min(byKelvin).orElseThrow(),
        all.stream().map(TemperatureRange::hottest).max(byKelvin).orElseThrow());
  }

  /**
   * The same source with cells between two temperatures.
   *
   * @param range coldest for the lowest fault and for cold cables in the highest
   * @return a new source
   */
  public FaultSource withCellTemperatures(TemperatureRange range) {
    return new FaultSource(pack, range, age, arc, polarisedAfterS, capacitors);
  }

  /**
   * The same source with another age for the lowest fault.
   *
   * @param oldest on top of the age the cells have, with its basis
   * @return a new source
   */
  public FaultSource withAge(Given<Ageing> oldest) {
    return new FaultSource(pack, cells, oldest, arc, polarisedAfterS, capacitors);
  }

  /**
   * The same source with another arc in the lowest fault.
   *
   * @param voltage ≥ 0 V, with its basis; 0 V for a bolted fault
   * @return a new source
   * @throws InvalidInputException if negative
   */
  public FaultSource withArcVoltage(Given<Quantity<ElectricPotential>> voltage) {
    Require.quantity("FaultSource.arcVoltage", voltage.value(), VOLT).nonNegative();
    return new FaultSource(pack, cells, age, voltage, polarisedAfterS, capacitors);
  }

  /**
   * The same source, whose lowest fault is taken this long after it began.
   *
   * @param time ≥ 0 s
   * @return a new source
   * @throws InvalidInputException if negative
   */
  public FaultSource withPolarisationTime(Quantity<Time> time) {
    double timeS = Require.quantity("FaultSource.polarisationTime", time, SECOND).nonNegative();
    return new FaultSource(pack, cells, age, arc, timeS, capacitors);
  }

  /**
   * The same source with a capacitor that empties into the highest fault.
   *
   * @param capacitor such as an inverter's
   * @return a new source
   */
  public FaultSource withCapacitor(CapacitorDischarge capacitor) {
    List<CapacitorDischarge> all = new ArrayList<>(capacitors);
    all.add(Objects.requireNonNull(capacitor, "capacitor"));
    return new FaultSource(pack, cells, age, arc, polarisedAfterS, all);
  }

  /**
   * The strings that feed a fault inside one string, through that string's fuse: all the others.
   *
   * @param faulted index of the faulted string, from 0
   * @return a source without it
   * @throws InvalidInputException if there is no such string, or no other one
   */
  public FaultSource intoString(int faulted) {
    int count = pack.strings().size();
    Require.count("FaultSource.strings", count, 2, Integer.MAX_VALUE);
    Require.count("FaultSource.string", faulted, 0, count - 1);
    return new FaultSource(without(faulted), cells, age, arc, polarisedAfterS, capacitors);
  }

  private Pack without(int index) {
    List<SeriesString> rest = new ArrayList<>(pack.strings());
    rest.remove(index);
    return Pack.of(rest).withLeadResistance(pack.leadResistance());
  }

  /**
   * The loop of the highest fault, without capacitors.
   *
   * @param near way to the nearest place of a fault
   * @return empty if the ohmic resistance of a cell is not known
   */
  public Optional<FaultLoop> highest(FaultPath near) {
    return highestAtTerminals().map(loop -> near.addTo(loop, BandEnd.LOW, cells.coldest()));
  }

  private Optional<FaultLoop> highestAtTerminals() {
    Given<Quantity<ElectricPotential>> voltage =
        new Given<>(
            pack.maximumVoltage(),
            pack.basis(CellProperty.VOLTAGE),
            Source.commonPractice("full, at the end of charging"));
    return pack.atBandEnd(BandEnd.LOW)
        .ohmicResistance()
        .map(ohm -> new Given<>(ohm, pack.basis(CellProperty.OHMIC_RESISTANCE), MILLISECONDS))
        .map(ohm -> FaultLoop.of(voltage).with(PACK, ohm));
  }

  /**
   * The loop of the lowest fault.
   *
   * @param far way to the farthest place of a fault
   * @return the loop
   * @throws InvalidInputException if the arc voltage is not below that of the empty pack; a lower
   *     one, or none, can be stated
   */
  public FaultLoop lowest(FaultPath far) {
    FaultLoop weakest = lowestOf(pack, far);
    for (int i = 0; i < pack.strings().size() && pack.strings().size() > 1; i++) {
      FaultLoop loop = lowestOf(without(i), far);
      boolean weaker = loop.current().prospectiveA() < weakest.current().prospectiveA();
      weakest = weaker ? loop : weakest;
    }
    return weakest;
  }

  private FaultLoop lowestOf(Pack left, FaultPath far) {
    Pack aged = left.atBandEnd(BandEnd.HIGH).aged(age.value());
    PackState state = PackState.of(StateOfCharge.ofPercent(0), cells.coldest());
    Quantity<ElectricResistance> ohm =
        aged.resistance(state, Direction.DISCHARGE, Kind.TIME.ofSi(polarisedAfterS));
    Given<Quantity<ElectricPotential>> voltage =
        new Given<>(
            aged.openCircuitVoltage(state),
            left.basis(CellProperty.VOLTAGE),
            Source.commonPractice("empty and cold, at rest"));
    Basis basis = left.basis(CellProperty.RESISTANCE).and(age.basis());
    FaultLoop loop =
        FaultLoop.of(voltage).withArcVoltage(arc).with(PACK, new Given<>(ohm, basis, POLARISED));
    return far.addTo(loop, BandEnd.HIGH, cells.coldest());
  }

  /**
   * The faults of a circuit.
   *
   * @param near way to the nearest place of a fault, such as just behind the fuse
   * @param far way to the farthest place of a fault, such as the device's terminals
   * @return from the lowest to the highest; what is not known is named
   * @throws InvalidInputException if the arc voltage is not below that of the empty pack
   */
  public FaultRange range(FaultPath near, FaultPath far) {
    @Nullable FaultCurrent high = highest(near).map(FaultLoop::current).orElse(null);
    boolean known = near.isInductanceKnown() && far.isInductanceKnown();
    @Nullable Double longestS = known && high != null ? longestS(near, far) : null;
    return new FaultRange(
        high, lowest(far).current(), capacitors, longestS, missing(high != null, known));
  }

  private static List<String> missing(boolean hasHighest, boolean hasInductance) {
    List<String> names = new ArrayList<>();
    if (!hasHighest) {
      names.add("cell.ohmicResistance");
    }
    if (!hasInductance) {
      names.add("path.inductance");
    }
    return names;
  }

  /** Most inductance by least resistance; the way between the ends lies between the two. */
  private double longestS(FaultPath near, FaultPath far) {
    return Math.max(longestS(near), longestS(far));
  }

  private double longestS(FaultPath path) {
    FaultLoop low =
        path.withResistances(highestAtTerminals().orElseThrow(), BandEnd.LOW, cells.coldest());
    return path.withInductances(low, BandEnd.HIGH).current().timeConstantS();
  }

  /**
   * The pack.
   *
   * @return as given
   */
  public Pack pack() {
    return pack;
  }

  /**
   * Capacitors of other devices.
   *
   * @return may be empty
   */
  public List<CapacitorDischarge> capacitors() {
    return capacitors;
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof FaultSource that
        && pack.equals(that.pack)
        && cells.equals(that.cells)
        && age.equals(that.age)
        && arc.equals(that.arc)
        && polarisedAfterS == that.polarisedAfterS
        && capacitors.equals(that.capacitors);
  }

  @Override
  public int hashCode() {
    return Objects.hash(pack, cells, age, arc, polarisedAfterS, capacitors);
  }

  /**
   * The pack and its temperatures.
   *
   * @return one line
   */
  @Override
  public String toString() {
    return "faults fed by " + pack + ", cells " + cells;
  }
}
