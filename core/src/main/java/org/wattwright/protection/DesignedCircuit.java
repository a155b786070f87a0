package org.wattwright.protection;

import static org.wattwright.units.WorkshopUnits.AMPERE;
import static org.wattwright.units.WorkshopUnits.AMPERE_SQUARED_SECOND;
import static org.wattwright.units.WorkshopUnits.MILLIOHM;
import static org.wattwright.units.WorkshopUnits.SECOND;
import static org.wattwright.units.WorkshopUnits.VOLT;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.ElectricPotential;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import org.wattwright.check.Check;
import org.wattwright.check.Recorder;
import org.wattwright.check.Source;
import org.wattwright.check.Step;
import org.wattwright.check.Worksheet;
import org.wattwright.conductor.Cable;
import org.wattwright.conductor.ConductorRun;
import org.wattwright.conductor.ConductorSizer;
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
    return parts.of().supplies().stream()
        .map(supply -> parts.lowestFault(supply).prospectiveA())
        .min(Double::compare)
        .map(Kind.CURRENT::ofSi);
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
    return lowestFault()
        .map(
            lowest ->
                CoverKernel.clearingS(
                    Kind.CURRENT.siValueOf(lowest),
                    parts.rules(),
                    CircuitCase.lineOf(parts.fuseInCharge())))
        .map(Kind.TIME::ofSi);
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
    double toA = parts.of().numbers().highestA();
    List<CoverCurve> curves = new ArrayList<>();
    FuseCase fuse = parts.fuseInCharge();
    if (fuse != null && fuse.line() != null) {
      curves.add(CoverCurve.of("fuse " + fuse.fuse().name(), fuse.line().clearing(), toA));
    }
    curves.add(
        CoverCurve.of("cable " + parts.cable().label(), parts.cable().withstand().curve(), toA));
    if (parts.contactor() != null) {
      String name = "contactor " + parts.contactor().contactor().name();
      for (TimeCurve each : parts.contactor().line().withstands()) {
        curves.add(CoverCurve.of(name, each, toA));
      }
    }
    return curves;
  }

  /**
   * The currents to mark on its plot.
   *
   * @return operating maximum, trip, break limit and faults, as far as there are any
   */
  public List<CoverMark> marks() {
    List<CoverMark> marks = new ArrayList<>();
    circuit()
        .highestOperatingCurrent()
        .ifPresent(current -> marks.add(new CoverMark("highest operating current", current)));
    circuit().trips().forEach(trip -> marks.add(new CoverMark("trip", trip.current())));
    if (parts.contactor() != null && parts.contactor().line().breakA() > 0) {
      marks.add(
          new CoverMark(
              "contactor may break", Kind.CURRENT.ofSi(parts.contactor().line().breakA())));
    }
    lowestFault().ifPresent(current -> marks.add(new CoverMark("lowest fault", current)));
    marks.add(new CoverMark("highest fault", highestFault()));
    return marks;
  }

  /**
   * Its symbols for the single-line diagram, from the source to the load.
   *
   * @return at least cable and load
   */
  public List<LineElement> elements() {
    List<LineElement> elements = new ArrayList<>();
    fuse().ifPresent(f -> elements.add(new LineElement(LineElement.Type.FUSE, f.name())));
    circuit()
        .serviceDisconnectVoltage()
        .ifPresent(v -> elements.add(new LineElement(LineElement.Type.DISCONNECT, v + " DC")));
    contactor().ifPresent(k -> elements.add(new LineElement(LineElement.Type.CONTACTOR, k.name())));
    precharge()
        .ifPresent(
            p ->
                elements.add(new LineElement(LineElement.Type.PRECHARGE, p.resistor().toString())));
    elements.add(new LineElement(LineElement.Type.CABLE, parts.cable().label()));
    elements.add(new LineElement(LineElement.Type.LOAD, circuit().name()));
    return elements;
  }

  /**
   * The working: the cable's steps, then faults and clearing.
   *
   * @return the steps of the kernels that chose
   */
  public Worksheet worksheet() {
    Worksheet.Recording recording = Worksheet.record("Circuit " + circuit().name());
    recordCable(recording);
    for (CircuitSupply supply : parts.of().supplies()) {
      record(recording, supply);
    }
    return recording.toWorksheet();
  }

  /** A single cable is sized again with its working; parallel ones as the sizer would take them. */
  private void recordCable(Recorder recorder) {
    ConductorSizer sizer =
        circuit()
            .sizer(ConductorSizer.over(List.of(cable())))
            .circuitVoltage(Kind.VOLTAGE.ofSi(parts.of().numbers().highestV()))
            .parallelRunsUpTo(parallelRuns())
            .allowProvisional();
    List<Step> steps =
        sizer
            .run()
            .fold(
                sized ->
                    sized.parallelRuns() == parallelRuns()
                        ? sized.worksheet().steps()
                        : List.<Step>of(),
                none -> List.<Step>of());
    steps.forEach(recorder::add);
  }

  private void record(Recorder recorder, CircuitSupply supply) {
    FaultCurrent lowest = parts.lowestFault(supply);
    String of = parts.of().supplies().size() == 1 ? "" : " of " + supply.name();
    recorder
        .step("I_min", "lowest fault" + of + " at the far end, cables at their limit")
        .formula("U/(R_s + R_n + R_c)")
        .with("U", supply.lowestV(), VOLT)
        .with("R_s", supply.lowestOhm(), MILLIOHM)
        .with("R_n", parts.nearerOhm(), MILLIOHM)
        .with("R_c", parts.cable().loopOhm(), MILLIOHM)
        .basis(lowest.basis())
        .gives(lowest.prospectiveA(), AMPERE);
    recorder
        .step("I_need", "lowest current from which every fault is cleared in time")
        .formula("start of t_clear(I) ≤ t_max − 1.5·τ")
        .with("t_max", parts.of().numbers().clearingS(), SECOND)
        .with("1.5·τ", parts.of().numbers().riseS(), SECOND)
        .source(CableWithstand.SOURCE)
        .gives(parts.neededA(), AMPERE);
    recordHighest(recorder, supply);
  }

  private void recordHighest(Recorder recorder, CircuitSupply supply) {
    FaultCurrent highest = supply.faults().highest().orElseThrow();
    FuseCase fuse = parts.fuseInCharge();
    if (fuse != null && fuse.clearing(highest) instanceof Clearing.Cleared cleared) {
      recorder
          .step("I²t", "let through by " + fuse.fuse().name() + " at the highest fault")
          .formula("total I²t of the slowest link")
          .with("I_max", highest.prospectiveA(), AMPERE)
          .basis(fuse.fuse().basis())
          .source(Source.dataSheet(fuse.fuse().name()))
          .gives(Kind.JOULE_INTEGRAL.siValueOf(cleared.letThrough()), AMPERE_SQUARED_SECOND);
    }
    recorder
        .step("k²S²", "joule integral that one cable withstands, from its continuous limit")
        .formula("K²·S²·ln[(θ_f + β)/(θ_i + β)]")
        .basis(parts.cable().withstand().basis())
        .source(CableWithstand.SOURCE)
        .gives(parts.cable().withstand().withstandA2S(), AMPERE_SQUARED_SECOND);
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
