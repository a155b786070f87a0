package org.wattwright.conductor;

import static org.wattwright.units.WorkshopUnits.CELSIUS;
import static org.wattwright.units.WorkshopUnits.SECOND;
import static org.wattwright.units.WorkshopUnits.SQUARE_METRE;

import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Area;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import org.wattwright.check.Source;
import org.wattwright.internal.Require;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.JouleIntegral;
import org.wattwright.units.Kind;

/**
 * Heating of a conductor by a short circuit in which no heat is lost: I²t = K²·S²·ln[(θ_f + β)/(θ_i
 * + β)].
 *
 * <p>Exact enough up to 5 s, and on the safe side beyond, since heat is lost then. K and β belong
 * to the {@link ConductorMaterial}; S is the nominal area. Source: IEC 60949; IEC 60364-5-54.
 */
public final class ShortCircuit {
  /** Source of the formula, for worksheets. */
  static final Source ADIABATIC = Source.standard("IEC 60949", "adiabatic");

  /** Adiabatic up to here; beyond, the answer is on the safe side. */
  static final double LONGEST_ADIABATIC_S = 5;

  private final ConductorMaterial material;
  private final double constantSi;
  private final double betaC;

  private ShortCircuit(ConductorMaterial material) {
    this.material = material;
    this.constantSi = material.adiabatic().constantSi();
    this.betaC = material.adiabatic().betaK();
  }

  /**
   * For a metal.
   *
   * @param material the metal
   * @return the formula with its constants
   */
  public static ShortCircuit of(ConductorMaterial material) {
    return new ShortCircuit(material);
  }

  /**
   * Joule integral that heats a conductor from one temperature to another: k²·S².
   *
   * @param area nominal area, &gt; 0
   * @param initial temperature when the fault starts, −100 °C to the melting point
   * @param end temperature at its end, above the initial one, at most the melting point
   * @return in A²s
   * @throws InvalidInputException if an argument is outside its range
   */
  public Quantity<JouleIntegral> withstand(
      Quantity<Area> area, Quantity<Temperature> initial, Quantity<Temperature> end) {
    double areaM2 = areaM2(area);
    double initialC = celsius("ShortCircuit.initial", initial);
    double endC = celsius("ShortCircuit.end", end);
    requireAbove(initial, end, initialC, endC);
    return Kind.JOULE_INTEGRAL.ofSi(withstandA2S(areaM2, initialC, endC));
  }

  /**
   * Steady current that heats a conductor from one temperature to another in a time: I = k·S/√t.
   *
   * @param area nominal area, &gt; 0
   * @param duration &gt; 0 s
   * @param initial temperature when the fault starts, −100 °C to the melting point
   * @param end temperature at its end, above the initial one, at most the melting point
   * @return in A
   * @throws InvalidInputException if an argument is outside its range
   */
  public Quantity<ElectricCurrent> current(
      Quantity<Area> area,
      Quantity<Time> duration,
      Quantity<Temperature> initial,
      Quantity<Temperature> end) {
    double durationS = Require.quantity("ShortCircuit.duration", duration, SECOND).positive();
    double integral = Kind.JOULE_INTEGRAL.siValueOf(withstand(area, initial, end));
    return Kind.CURRENT.ofSi(Math.sqrt(integral / durationS));
  }

  /**
   * Smallest area that a fault heats from one temperature to another: S = √(I²t)/k.
   *
   * @param duty the fault
   * @param initial temperature when the fault starts, −100 °C to the melting point
   * @param end temperature at its end, above the initial one, at most the melting point
   * @return in mm²
   * @throws InvalidInputException if a temperature is outside its range
   */
  public Quantity<Area> minimumArea(
      FaultDuty duty, Quantity<Temperature> initial, Quantity<Temperature> end) {
    double initialC = celsius("ShortCircuit.initial", initial);
    double endC = celsius("ShortCircuit.end", end);
    requireAbove(initial, end, initialC, endC);
    return Kind.AREA.ofSi(Math.sqrt(duty.jouleIntegralA2S() / withstandA2S(1, initialC, endC)));
  }

  /**
   * Temperature at the end of a fault: θ_f = (θ_i + β)·exp[I²t/(K·S)²] − β.
   *
   * @param area nominal area, &gt; 0
   * @param duty the fault
   * @param initial temperature when the fault starts, −100 °C to the melting point
   * @return absolute; empty if the conductor melts
   * @throws InvalidInputException if an argument is outside its range
   */
  public Optional<Quantity<Temperature>> finalTemperature(
      Quantity<Area> area, FaultDuty duty, Quantity<Temperature> initial) {
    double initialC = celsius("ShortCircuit.initial", initial);
    double endC = finalC(areaM2(area), duty.jouleIntegralA2S(), initialC);
    return endC <= meltingC() ? Optional.of(CELSIUS.of(endC)) : Optional.empty();
  }

  double finalC(double areaM2, double jouleIntegralA2S, double initialC) {
    double product = constantSi * areaM2;
    return (initialC + betaC) * Math.exp(jouleIntegralA2S / (product * product)) - betaC;
  }

  double withstandA2S(double areaM2, double initialC, double endC) {
    double product = constantSi * areaM2;
    return product * product * Math.log((endC + betaC) / (initialC + betaC));
  }

  /**
   * How much more current than the adiabatic one a conductor bears, since its insulation takes up
   * heat: ε = √(1 + X·√(t/S) + Y·t/S).
   *
   * <p>X and Y of IEC 60949, from memory, for copper and aluminium in PVC (up to 3 kV) and XLPE.
   *
   * @param insulation PVC or XLPE
   * @param area nominal area, &gt; 0
   * @param duration &gt; 0 s
   * @return ε ≥ 1; empty if no constants are known for the pair of materials
   * @throws InvalidInputException if an argument is outside its range
   */
  public Optional<Double> nonAdiabaticFactor(
      InsulationMaterial insulation, Quantity<Area> area, Quantity<Time> duration) {
    double areaMm2 = areaM2(area) * 1e6;
    double durationS = Require.quantity("ShortCircuit.duration", duration, SECOND).positive();
    double ratio = durationS / areaMm2;
    return NonAdiabatic.find(material, insulation)
        .map(c -> Math.sqrt(1 + c.x() * Math.sqrt(ratio) + c.y() * ratio));
  }

  private static double areaM2(Quantity<Area> area) {
    return Require.quantity("ShortCircuit.area", area, SQUARE_METRE).positive();
  }

  private double meltingC() {
    return CELSIUS.valueOf(material.meltingPoint());
  }

  private double celsius(String field, Quantity<Temperature> temperature) {
    Require.quantity(field, temperature, CELSIUS).between(ConductorMaterial.LOWEST_C, meltingC());
    return CELSIUS.valueOf(temperature);
  }

  private static void requireAbove(
      Quantity<Temperature> initial, Quantity<Temperature> end, double initialC, double endC) {
    if (!(endC > initialC)) {
      throw InvalidInputException.of(
          "ShortCircuit.end", "> initial temperature " + initial, end.toString());
    }
  }
}
