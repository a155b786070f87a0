package org.wattwright.protection;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.ElectricPotential;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import org.wattwright.check.Check;
import org.wattwright.check.Worksheet;
import org.wattwright.conductor.Cable;
import org.wattwright.conductor.ConductorRun;
import org.wattwright.units.Kind;

/** The parts chosen for one circuit, with every check they pass. Immutable. */
public final class DesignedCircuit {
  private final DesignTree tree;
  private final PartsOption[] chosen;
  private final int index;
  private final CircuitAssembly parts;
  private final List<Check> checks;

  DesignedCircuit(DesignTree tree, PartsOption[] chosen, int index) {
    this.tree = tree;
    this.chosen = chosen.clone();
    this.index = index;
    this.parts = tree.assembly(chosen, index);
    this.checks = List.copyOf(parts.checks());
  }

  /**
   * What was asked for.
   *
   * @return the circuit
   */
  public Circuit circuit() {
    return parts.of().circuit();
  }

  /**
   * The cable of both polarities.
   *
   * @return as the catalogue has it
   */
  public Cable cable() {
    return parts.cable().cable();
  }

  /**
   * Cables in parallel in each polarity.
   *
   * @return ≥ 1
   */
  public int parallelRuns() {
    return parts.cable().runs();
  }

  /**
   * The conductors, for resistance, mass and the commissioning sheet.
   *
   * @return the run
   */
  public ConductorRun conductors() {
    return parts.cable().run();
  }

  /**
   * Its own fuse.
   *
   * @return empty if it has none
   */
  public Optional<Fuse> fuse() {
    return circuit().isFused() ? protectingFuse() : Optional.empty();
  }

  /**
   * The fuse that clears a fault on it: its own or one nearer to the source.
   *
   * @return empty if there is none
   */
  public Optional<Fuse> protectingFuse() {
    return Optional.ofNullable(parts.fuseInCharge()).map(FuseCase::fuse);
  }

  /**
   * Its contactor.
   *
   * @return empty if it has none
   */
  public Optional<Contactor> contactor() {
    return Optional.ofNullable(parts.contactor()).map(SwitchCase::contactor);
  }

  /**
   * Its pre-charge, with resistor, course and checks.
   *
   * @return empty if it has none
   */
  public Optional<PrechargeResult> precharge() {
    return Optional.ofNullable(parts.contactor())
        .flatMap(SwitchCase::precharge)
        .map(PrechargeCase::result);
  }

  /**
   * The parts, as the list of parts has them.
   *
   * @return cable, fuse, contactor, resistor, as far as it has them
   */
  public List<CircuitPart> parts() {
    List<CircuitPart> all = new ArrayList<>(List.of(parts.cable().asPart()));
    if (circuit().isFused() && parts.fuseInCharge() != null) {
      all.add(parts.fuseInCharge().asPart());
    }
    if (parts.contactor() != null) {
      all.addAll(parts.contactor().asParts());
    }
    return all;
  }

  /**
   * Hottest the conductor becomes in normal operation.
   *
   * @return absolute
   */
  public Quantity<Temperature> operatingTemperature() {
    return parts.cable().operatingTemperature().orElseThrow();
  }

  /**
   * Voltage lost at the continuous current, both polarities, joints at typical values.
   *
   * @return in V
   */
  public Quantity<ElectricPotential> voltageDrop() {
    return conductors().dropAt(Kind.CURRENT.ofSi(circuit().continuousA()), operatingTemperature());
  }

  /**
   * Lowest fault at its far end; of several supplies the lowest.
   *
   * @return in A; empty if the source limits itself
   */
  public Optional<Quantity<ElectricCurrent>> lowestFault() {
    return parts.lowestFaultA().map(Kind.CURRENT::ofSi);
  }

  /**
   * Highest fault, at its near end.
   *
   * @return in A
   */
  public Quantity<ElectricCurrent> highestFault() {
    return Kind.CURRENT.ofSi(parts.of().numbers().highestA());
  }

  /**
   * Longest time in which the lowest fault is cleared, by fuse or trip.
   *
   * @return in s; empty if the source limits itself
   */
  public Optional<Quantity<Time>> clearingTime() {
    return parts.lowestFaultA().map(parts::clearingS).map(Kind.TIME::ofSi);
  }

  /**
   * What deals with each current.
   *
   * @return from the highest operating current to the highest fault, without a gap
   */
  public CurrentCover cover() {
    return parts.cover();
  }

  /**
   * Every check; none fails.
   *
   * @return cable, contactor, fuse, and all of them together
   */
  public List<Check> checks() {
    return checks;
  }

  /**
   * Whether something could not be checked.
   *
   * @return true if data is missing
   */
  public boolean isProvisional() {
    return Verdict.of(checks) == Verdict.PROVISIONAL;
  }

  /**
   * The check that rules out the nearest cheaper choice, of those that differ in one part; for the
   * cheapest choice the check of which most is used.
   *
   * @return the check, of that cheaper choice or of this one
   */
  public Check governing() {
    return tree.governing(chosen, index);
  }

  /**
   * The next best: the cheapest other parts of this circuit that pass with those of the other
   * circuits as they are.
   *
   * @return empty if there are none
   */
  public Optional<DesignedCircuit> runnerUp() {
    return tree.runnerUp(chosen, index).map(other -> new DesignedCircuit(tree, other, index));
  }

  /**
   * The curves of its plot: the fuse's longest clearing time, what the cable bears, and what the
   * contactor bears.
   *
   * @return one to four curves, up to the highest fault
   */
  public List<CoverCurve> curves() {
    return new CircuitDrawing(parts).curves();
  }

  /**
   * The currents to mark on its plot.
   *
   * @return operating maximum, trip, break limit and faults, as far as there are any
   */
  public List<CoverMark> marks() {
    return new CircuitDrawing(parts).marks();
  }

  /**
   * Its symbols for the single-line diagram, from the source to the load.
   *
   * @return at least cable and load
   */
  public List<LineElement> elements() {
    return new CircuitDrawing(parts).elements();
  }

  /**
   * The workings, each with formulas, values and sources: cable (temperatures, drop, terminals),
   * short circuit, fuse, faults with clearing, pre-charge, discharge.
   *
   * @return one sheet a topic, as far as the circuit has it; titles end with its name
   */
  public List<Worksheet> worksheets() {
    return new CircuitSheets(parts).all();
  }

  /**
   * The working of cable, short circuit, fuse and faults in one.
   *
   * @return the steps of the kernels that chose
   */
  public Worksheet worksheet() {
    return new CircuitSheets(parts).joined();
  }

  /**
   * Name and parts.
   *
   * @return for example {@code traction: 35 mm² T, F-200, K-250}
   */
  @Override
  public String toString() {
    List<String> names = new ArrayList<>(List.of(parts.cable().label()));
    fuse().ifPresent(f -> names.add(f.name()));
    contactor().ifPresent(k -> names.add(k.name()));
    precharge().ifPresent(p -> names.add(p.resistor().toString()));
    return circuit().name() + ": " + String.join(", ", names);
  }
}
