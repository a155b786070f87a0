package org.wattwright.protection;

import static org.wattwright.units.WorkshopUnits.SECOND;
import static org.wattwright.units.WorkshopUnits.VOLT;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricPotential;
import javax.measure.quantity.Time;
import org.jspecify.annotations.Nullable;
import org.wattwright.battery.Ageing;
import org.wattwright.battery.BandEnd;
import org.wattwright.battery.CellProperty;
import org.wattwright.battery.Pack;
import org.wattwright.battery.SeriesString;
import org.wattwright.battery.TemperatureRange;
import org.wattwright.check.Basis;
import org.wattwright.check.Given;
import org.wattwright.check.Source;
import org.wattwright.internal.Require;
import org.wattwright.units.InvalidInputException;

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

  private static final String PACK = "pack";
  private static final Source MILLISECONDS =
      Source.commonPractice("ohmic resistance, low end, all strings");

  private final Pack pack;
  private final FaultAssumptions assumptions;
  private final List<CapacitorDischarge> capacitors;

  private FaultSource(
      Pack pack, FaultAssumptions assumptions, List<CapacitorDischarge> capacitors) {
    this.pack = pack;
    this.assumptions = assumptions;
    this.capacitors = List.copyOf(capacitors);
  }

  /**
   * A pack with the usual assumptions: cells within their discharge temperatures, resistance
   * doubled by age, an arc of 20 V, polarised after 10 s; the last three count as estimates.
   *
   * @param pack the pack, new
   * @return the source
   */
  public static FaultSource of(Pack pack) {
    Objects.requireNonNull(pack, "pack");
    return new FaultSource(pack, FaultAssumptions.usual(pack), List.of());
  }

  /**
   * The same source with cells between two temperatures.
   *
   * @param range coldest for the lowest fault and for cold cables in the highest
   * @return a new source
   */
  public FaultSource withCellTemperatures(TemperatureRange range) {
    return with(new FaultAssumptions(range, assumptions.age(), arc(), assumptions.polarised()));
  }

  /**
   * The same source with another age for the lowest fault.
   *
   * @param oldest on top of the age the cells have, with its basis
   * @return a new source
   */
  public FaultSource withAge(Given<Ageing> oldest) {
    return with(new FaultAssumptions(cells(), oldest, arc(), assumptions.polarised()));
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
    return with(new FaultAssumptions(cells(), assumptions.age(), voltage, assumptions.polarised()));
  }

  /**
   * The same source, whose lowest fault is taken this long after it began.
   *
   * @param time ≥ 0 s
   * @return a new source
   * @throws InvalidInputException if negative
   */
  public FaultSource withPolarisationTime(Quantity<Time> time) {
    return withPolarisationTime(new Given<>(time, Basis.DATA_SHEET, Source.AS_GIVEN));
  }

  /**
   * The same source, whose lowest fault is taken this long after it began.
   *
   * @param time ≥ 0 s, with its basis
   * @return a new source
   * @throws InvalidInputException if negative
   */
  public FaultSource withPolarisationTime(Given<Quantity<Time>> time) {
    Require.quantity("FaultSource.polarisationTime", time.value(), SECOND).nonNegative();
    return with(new FaultAssumptions(cells(), assumptions.age(), arc(), time));
  }

  private FaultSource with(FaultAssumptions other) {
    return new FaultSource(pack, other, capacitors);
  }

  private TemperatureRange cells() {
    return assumptions.cells();
  }

  private Given<Quantity<ElectricPotential>> arc() {
    return assumptions.arc();
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
    return new FaultSource(pack, assumptions, all);
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
    return new FaultSource(without(faulted), assumptions, capacitors);
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
    return highestAtTerminals().map(loop -> near.addTo(loop, BandEnd.LOW, cells().coldest()));
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
    return far.addTo(assumptions.lowest(left, PACK), BandEnd.HIGH, cells().coldest());
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
        path.withResistances(highestAtTerminals().orElseThrow(), BandEnd.LOW, cells().coldest());
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
        && assumptions.equals(that.assumptions)
        && capacitors.equals(that.capacitors);
  }

  @Override
  public int hashCode() {
    return Objects.hash(pack, assumptions, capacitors);
  }

  /**
   * The pack and its temperatures.
   *
   * @return one line
   */
  @Override
  public String toString() {
    return "faults fed by " + pack + ", cells " + cells();
  }
}
