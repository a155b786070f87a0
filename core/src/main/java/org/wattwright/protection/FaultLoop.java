package org.wattwright.protection;

import static org.wattwright.units.WorkshopUnits.HENRY;
import static org.wattwright.units.WorkshopUnits.OHM;
import static org.wattwright.units.WorkshopUnits.VOLT;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricInductance;
import javax.measure.quantity.ElectricPotential;
import javax.measure.quantity.ElectricResistance;
import org.jspecify.annotations.Nullable;
import org.wattwright.check.Basis;
import org.wattwright.check.Given;
import org.wattwright.check.Recorder;
import org.wattwright.check.Source;
import org.wattwright.check.Worksheet;
import org.wattwright.internal.Require;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;

/**
 * The loop that a short circuit closes: a voltage, and the resistances and inductances in its way,
 * part by part.
 *
 * <p>I∞ = (U₀ − U_arc)/ΣR; τ = ΣL/ΣR. Where the parts are known only within a band, {@link
 * FaultSource} takes the ends of the band.
 *
 * <pre>{@code
 * FaultLoop loop = FaultLoop.of(volts(403.2))
 *     .with("pack", milliohms(60))
 *     .with("cable", milliohms(3.1))
 *     .withInductance("loop", microhenries(20));
 * loop.current();              // 6.39 kA, τ = 317 µs
 * loop.worksheet().toText();
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 */
public final class FaultLoop implements Serializable {
  private static final long serialVersionUID = 1L;

  private final Given<Quantity<ElectricPotential>> openCircuit;
  private final Given<Quantity<ElectricPotential>> arc;
  private final List<Part<ElectricResistance>> resistances;
  private final List<Part<ElectricInductance>> inductances;

  /**
   * One part in the way of the fault.
   *
   * @param <Q> resistance or inductance
   * @param name as reports print it
   * @param value with its basis
   */
  public record Part<Q extends Quantity<Q>>(String name, Given<Quantity<Q>> value)
      implements Serializable {
    /**
     * Rejects a blank name.
     *
     * @param name as reports print it
     * @param value with its basis
     */
    public Part {
      name = Require.text("FaultLoop.part", name);
      Objects.requireNonNull(value, "value");
    }
  }

  private FaultLoop(
      Given<Quantity<ElectricPotential>> openCircuit,
      Given<Quantity<ElectricPotential>> arc,
      List<Part<ElectricResistance>> resistances,
      List<Part<ElectricInductance>> inductances) {
    this.openCircuit = openCircuit;
    this.arc = arc;
    this.resistances = List.copyOf(resistances);
    this.inductances = List.copyOf(inductances);
  }

  /**
   * A loop with nothing in it yet but its source.
   *
   * @param openCircuitVoltage &gt; 0 V
   * @return the loop
   * @throws InvalidInputException if not positive
   */
  public static FaultLoop of(Quantity<ElectricPotential> openCircuitVoltage) {
    return of(asGiven(openCircuitVoltage));
  }

  /**
   * A loop with nothing in it yet but its source.
   *
   * @param openCircuitVoltage &gt; 0 V, with its basis
   * @return the loop
   * @throws InvalidInputException if not positive
   */
  public static FaultLoop of(Given<Quantity<ElectricPotential>> openCircuitVoltage) {
    Require.quantity("FaultLoop.openCircuitVoltage", openCircuitVoltage.value(), VOLT).positive();
    Given<Quantity<ElectricPotential>> noArc = asGiven(Kind.VOLTAGE.ofSi(0));
    return new FaultLoop(openCircuitVoltage, noArc, List.of(), List.of());
  }

  /**
   * The same loop with a further resistance in series.
   *
   * @param name as reports print it
   * @param resistance ≥ 0 Ω
   * @return a new loop
   * @throws InvalidInputException if negative
   */
  public FaultLoop with(String name, Quantity<ElectricResistance> resistance) {
    return with(name, asGiven(resistance));
  }

  /**
   * The same loop with a further resistance in series.
   *
   * @param name as reports print it
   * @param resistance ≥ 0 Ω, with its basis
   * @return a new loop
   * @throws InvalidInputException if negative
   */
  public FaultLoop with(String name, Given<Quantity<ElectricResistance>> resistance) {
    Require.quantity("FaultLoop." + name, resistance.value(), OHM).nonNegative();
    return new FaultLoop(
        openCircuit, arc, plus(resistances, new Part<>(name, resistance)), inductances);
  }

  /**
   * The same loop with a further inductance in series.
   *
   * @param name as reports print it
   * @param inductance ≥ 0 H
   * @return a new loop
   * @throws InvalidInputException if negative
   */
  public FaultLoop withInductance(String name, Quantity<ElectricInductance> inductance) {
    return withInductance(name, asGiven(inductance));
  }

  /**
   * The same loop with a further inductance in series.
   *
   * @param name as reports print it
   * @param inductance ≥ 0 H, with its basis
   * @return a new loop
   * @throws InvalidInputException if negative
   */
  public FaultLoop withInductance(String name, Given<Quantity<ElectricInductance>> inductance) {
    Require.quantity("FaultLoop." + name, inductance.value(), HENRY).nonNegative();
    return new FaultLoop(
        openCircuit, arc, resistances, plus(inductances, new Part<>(name, inductance)));
  }

  /**
   * The same loop with an arc at the place of the fault.
   *
   * @param voltage ≥ 0 V and below the open-circuit voltage
   * @return a new loop
   * @throws InvalidInputException if outside its range
   */
  public FaultLoop withArcVoltage(Quantity<ElectricPotential> voltage) {
    return withArcVoltage(asGiven(voltage));
  }

  /**
   * The same loop with an arc at the place of the fault.
   *
   * @param voltage ≥ 0 V and below the open-circuit voltage, with its basis
   * @return a new loop
   * @throws InvalidInputException if outside its range
   */
  public FaultLoop withArcVoltage(Given<Quantity<ElectricPotential>> voltage) {
    double arcV = Require.quantity("FaultLoop.arcVoltage", voltage.value(), VOLT).nonNegative();
    if (!(arcV < Kind.VOLTAGE.siValueOf(openCircuit.value()))) {
      throw InvalidInputException.of(
          "FaultLoop.arcVoltage",
          "< open-circuit voltage " + openCircuit.value(),
          voltage.value().toString());
    }
    return new FaultLoop(openCircuit, voltage, resistances, inductances);
  }

  private static <T> Given<T> asGiven(T value) {
    return new Given<>(value, Basis.DATA_SHEET, Source.AS_GIVEN);
  }

  private static <T> List<T> plus(List<T> before, T next) {
    List<T> all = new ArrayList<>(before);
    all.add(next);
    return all;
  }

  /**
   * The resistances in the loop.
   *
   * @return in the order in which they were added
   */
  public List<Part<ElectricResistance>> resistances() {
    return resistances;
  }

  /**
   * The inductances in the loop.
   *
   * @return in the order in which they were added; empty counts as 0 H
   */
  public List<Part<ElectricInductance>> inductances() {
    return inductances;
  }

  /**
   * The fault current.
   *
   * @return the current against time
   * @throws InvalidInputException if the loop has no resistance
   */
  public FaultCurrent current() {
    return solve(Recorder.OFF);
  }

  /**
   * The working of the fault current.
   *
   * @return the steps as computed
   * @throws InvalidInputException if the loop has no resistance
   */
  public Worksheet worksheet() {
    Worksheet.Recording recording = Worksheet.record("Fault current");
    solve(recording);
    return recording.toWorksheet();
  }

  private FaultCurrent solve(Recorder recorder) {
    double drivingV =
        Kind.VOLTAGE.siValueOf(openCircuit.value()) - Kind.VOLTAGE.siValueOf(arc.value());
    double ohm = sumSi(resistances, Kind.RESISTANCE);
    if (!(ohm > 0)) {
      throw InvalidInputException.of(
          "FaultLoop.resistance", "> 0 Ω", Kind.RESISTANCE.ofSi(ohm).toString());
    }
    FaultCurrent.Loop loop =
        new FaultCurrent.Loop(drivingV, ohm, sumSi(inductances, Kind.INDUCTANCE));
    LoopBasis basis = new LoopBasis(this);
    FaultCurrent current = new FaultCurrent(loop, basis.weakest(), basis.estimates());
    if (recorder.isOn()) {
      new FaultLoopSheet(recorder, this).describe(current);
    }
    return current;
  }

  private static <Q extends Quantity<Q>> double sumSi(List<Part<Q>> parts, Kind<Q> kind) {
    double sum = 0;
    for (Part<Q> part : parts) {
      sum += kind.siValueOf(part.value().value());
    }
    return sum;
  }

  Given<Quantity<ElectricPotential>> openCircuit() {
    return openCircuit;
  }

  Given<Quantity<ElectricPotential>> arc() {
    return arc;
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof FaultLoop that
        && openCircuit.equals(that.openCircuit)
        && arc.equals(that.arc)
        && resistances.equals(that.resistances)
        && inductances.equals(that.inductances);
  }

  @Override
  public int hashCode() {
    return Objects.hash(openCircuit, arc, resistances, inductances);
  }

  /**
   * Voltage and parts.
   *
   * @return for example {@code 403.2 V through pack 60 mΩ, cable 3.1 mΩ, loop 20 µH}
   */
  @Override
  public String toString() {
    List<String> parts = new ArrayList<>();
    for (Part<?> part : resistances) {
      parts.add(part.name() + " " + part.value().value());
    }
    for (Part<?> part : inductances) {
      parts.add(part.name() + " " + part.value().value());
    }
    String through = parts.isEmpty() ? "nothing yet" : String.join(", ", parts);
    return openCircuit.value() + " through " + through;
  }
}
