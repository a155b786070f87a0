package org.wattwright.conductor;

import static org.wattwright.units.WorkshopUnits.AMPERE;
import static org.wattwright.units.WorkshopUnits.CELSIUS;
import static org.wattwright.units.WorkshopUnits.KELVIN_PER_WATT;
import static org.wattwright.units.WorkshopUnits.WATT;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.Temperature;
import org.wattwright.check.Basis;
import org.wattwright.check.Figure;
import org.wattwright.check.Recorder;
import org.wattwright.check.Source;
import org.wattwright.internal.Require;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;

/**
 * Steady temperature of a cable or busbar from its heat balance.
 *
 * <p>q = I²·R′(θ_c) flows through the insulation, θ_c = θ_s + q·T₁, and leaves the surface by
 * convection and radiation, q = π·D·h·(θ_s − θ_a) + ε·σ·π·D·(T_s⁴ − T_r⁴), h by Churchill and Chu,
 * see {@link Convection}. Range: horizontal, still air at 1 atm, −50 °C to 200 °C, surface up to
 * 400 °C. Against DIN VDE 0298-4 free-air currents the balance lies within 15 %. With neighbours
 * the current is raised to I/f, f from {@link Arrangement}. A cable with estimated geometry is
 * worked out thin and thick, and the hotter counts. Immutable and thread-safe.
 */
public final class SteadyHeating {
  /** Source of the balance, for worksheets. */
  public static final Source BALANCE =
      Source.literature(
          "S. W. Churchill, H. H. S. Chu, Int. J. Heat Mass Transfer 18 (1975) 1049",
          "with radiation; insulation to IEC 60287-2-1");

  private final List<HeatedConductor> conductors;
  private final double currentFactor;
  private final Basis basis;
  private final double limitK;

  SteadyHeating(
      List<HeatedConductor> conductors, Installation installation, Basis basis, double limitK) {
    this.conductors = List.copyOf(conductors);
    this.currentFactor = installation.currentFactor();
    this.basis = basis.and(installation.basis());
    this.limitK = limitK;
  }

  /**
   * A cable in its place.
   *
   * @param cable with its diameters, given or estimated
   * @param installation where it lies
   * @return the balance
   * @throws InvalidInputException if a diameter is missing; {@link Cable#withGenericGeometry()}
   *     estimates it
   */
  public static SteadyHeating of(Cable cable, Installation installation) {
    if (cable.geometries().isEmpty()) {
      throw InvalidInputException.of(
          cable.missingGeometry().get(0),
          "given, or estimated by withGenericGeometry()",
          "missing");
    }
    List<HeatedConductor> conductors =
        cable.geometries().stream().map(g -> HeatedConductor.of(cable, g, installation)).toList();
    return new SteadyHeating(conductors, installation, cable.basis(), cable.data().limitK());
  }

  /**
   * A busbar in its place.
   *
   * @param busbar the bar
   * @param installation where it lies; no factor is published for busbars beside each other, so
   *     only {@link Arrangement#SINGLE} is accepted
   * @return the balance
   * @throws InvalidInputException if the installation has loaded neighbours
   */
  public static SteadyHeating of(Busbar busbar, Installation installation) {
    if (installation.arrangement() != Arrangement.SINGLE) {
      throw InvalidInputException.of(
          "Installation.arrangement", "alone in free air for a busbar", installation.toString());
    }
    return new SteadyHeating(
        List.of(busbar.heated(installation)), installation, busbar.heatingBasis(), busbar.limitK());
  }

  /**
   * What a steady current does.
   *
   * @param current direct or RMS current in one conductor, ≥ 0 A
   * @return the steady state, or that there is none
   * @throws InvalidInputException if the current is negative
   */
  public HeatingResult at(Quantity<ElectricCurrent> current) {
    return at(current, Recorder.OFF);
  }

  /**
   * What a steady current does, with its working.
   *
   * @param current direct or RMS current in one conductor, ≥ 0 A
   * @param recorder takes down the steps
   * @return the steady state, or that there is none
   * @throws InvalidInputException if the current is negative
   */
  public HeatingResult at(Quantity<ElectricCurrent> current, Recorder recorder) {
    return atSi(Require.quantity("SteadyHeating.current", current, AMPERE).nonNegative(), recorder);
  }

  HeatingResult atSi(double currentA, Recorder recorder) {
    double comparedA = currentA / currentFactor;
    HeatedConductor hottest = conductors.get(0);
    double surfaceK = hottest.surfaceK(comparedA);
    double conductorK = conductorK(hottest, comparedA, surfaceK);
    for (int i = 1; i < conductors.size(); i++) {
      HeatedConductor other = conductors.get(i);
      double otherSurfaceK = other.surfaceK(comparedA);
      double otherK = conductorK(other, comparedA, otherSurfaceK);
      if (otherK > conductorK) {
        hottest = other;
        surfaceK = otherSurfaceK;
        conductorK = otherK;
      }
    }
    if (!(conductorK < Double.POSITIVE_INFINITY)) {
      return new NoSteadyState(currentA);
    }
    double heatWPerM = hottest.inflowWPerM(comparedA, surfaceK);
    double radiationWPerM = hottest.kernel().loss().radiationWPerM(surfaceK);
    SteadyState state =
        new SteadyState(
            currentA, conductorK, surfaceK, new SteadyState.HeatFlow(heatWPerM, radiationWPerM));
    if (recorder.isOn()) {
      record(recorder, comparedA, state, hottest);
    }
    return state;
  }

  private static double conductorK(HeatedConductor conductor, double currentA, double surfaceK) {
    return surfaceK < Double.POSITIVE_INFINITY
        ? surfaceK + conductor.inflowWPerM(currentA, surfaceK) * conductor.thermalResistanceKmPerW()
        : surfaceK;
  }

  private void record(
      Recorder recorder, double comparedA, SteadyState state, HeatedConductor conductor) {
    Figure air = Figure.ofSi(conductor.kernel().loss().airK(), CELSIUS);
    Figure surface = Figure.ofSi(state.surfaceK(), CELSIUS);
    if (currentFactor != 1) {
      recorder
          .step("I_f", "current compared with one cable alone in free air")
          .formula("I/f")
          .with("I", Figure.of(state.current(), AMPERE))
          .with("f", Figure.number(currentFactor))
          .basis(basis)
          .source(Source.standard("IEC 60364-5-52", "grouping, Table B.52.17"))
          .gives(comparedA, AMPERE);
    }
    recorder
        .step("q_c", "convection of one metre at the surface temperature found")
        .formula("π·λ·Nu·(θ_s − θ_a)")
        .with("θ_s", surface)
        .with("θ_a", air)
        .basis(basis)
        .source(BALANCE)
        .gives(conductor.kernel().loss().convectionWPerM(state.surfaceK()), WATT);
    recorder
        .step("q_r", "radiation of one metre")
        .formula("ε·σ·π·D·(T_s⁴ − T_r⁴)")
        .basis(basis)
        .source(Source.PHYSICS)
        .gives(conductor.kernel().loss().radiationWPerM(state.surfaceK()), WATT);
    recorder
        .step("q", "heat of one metre, which is q_c + q_r")
        .formula("I²·R′(θ_c)")
        .with("I", Figure.ofSi(comparedA, AMPERE))
        .basis(basis)
        .source(Source.PHYSICS)
        .gives(state.heatWPerM(), WATT);
    recorder
        .step("θ_c", "steady conductor temperature")
        .formula("θ_s + q·T₁")
        .with("θ_s", surface)
        .with("q", state.heatWPerM(), WATT)
        .with("T₁", conductor.thermalResistanceKmPerW(), KELVIN_PER_WATT)
        .basis(basis)
        .source(BALANCE)
        .gives(state.conductorK(), CELSIUS);
  }

  /**
   * Steady current that holds the conductor at a temperature.
   *
   * @param conductor conductor temperature, above the air's, at most 400 °C
   * @return in A; 0 A where the surroundings alone heat it so far
   * @throws InvalidInputException if the temperature is outside its range
   */
  public Quantity<ElectricCurrent> ampacityAt(Quantity<Temperature> conductor) {
    double conductorK =
        Require.quantity("SteadyHeating.conductor", conductor, CELSIUS).between(-50, 400);
    return AMPERE.of(ampacityA(conductorK));
  }

  /**
   * Steady current at the temperature limit of the conductor.
   *
   * @return in A
   */
  public Quantity<ElectricCurrent> ampacity() {
    return AMPERE.of(ampacityA(limitK));
  }

  double ampacityA(double conductorK) {
    double leastA = Double.POSITIVE_INFINITY;
    for (HeatedConductor conductor : conductors) {
      leastA = Math.min(leastA, conductor.currentA(conductorK));
    }
    return currentFactor * leastA;
  }

  /**
   * What the result rests on: the weakest of resistance, geometry and factor.
   *
   * @return the basis
   */
  public Basis basis() {
    return basis;
  }

  /** Least of the geometries: how well a metre of cable holds down a local rise. */
  double localConductanceWPerMK(double currentA, double conductorK) {
    double least = Double.POSITIVE_INFINITY;
    for (HeatedConductor conductor : conductors) {
      double own = conductor.localConductanceWPerMK(currentA / currentFactor, conductorK);
      least = Math.min(least, own);
    }
    return least;
  }

  List<HeatedConductor> conductors() {
    return conductors;
  }

  double currentFactor() {
    return currentFactor;
  }

  /**
   * Ampacity and limit.
   *
   * @return for example {@code 158 A at 70 °C}
   */
  @Override
  public String toString() {
    return Figure.of(ampacity(), AMPERE) + " at " + Kind.TEMPERATURE.ofSi(limitK);
  }
}
