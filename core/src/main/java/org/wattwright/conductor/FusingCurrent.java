package org.wattwright.conductor;

import static org.wattwright.units.WorkshopUnits.AMPERE;
import static org.wattwright.units.WorkshopUnits.CELSIUS;
import static org.wattwright.units.WorkshopUnits.MILLIMETRE;
import static org.wattwright.units.WorkshopUnits.SECOND;
import static org.wattwright.units.WorkshopUnits.SQUARE_METRE;

import javax.measure.Quantity;
import javax.measure.quantity.Area;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.Length;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import org.wattwright.internal.Require;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;

/**
 * Current that melts a bare wire: what a fault leaves of a conductor, never what it may carry.
 *
 * <p>Preece: held for long, some 10 s and more, in free air. Onderdonk: up to 10 s, no heat lost.
 * Both are rules of thumb: rate a conductor with {@link SteadyHeating} and {@link ShortCircuit}.
 */
public final class FusingCurrent {
  private static final double INCH_M = 0.0254;
  private static final double CIRCULAR_MIL_M2 = Math.PI / 4 * 25.4e-6 * 25.4e-6;

  private static final double ONDERDONK = 33;
  private static final double ONDERDONK_BETA_C = 234;
  private static final double COPPER_MELTS_C = 1083;
  private static final double LONGEST_S = 10;

  private FusingCurrent() {}

  /**
   * Current that in time melts a wire in free air: I = a·d^1.5, a = 10 244 A/in^1.5 for copper,
   * 7585 A/in^1.5 for aluminium.
   *
   * <p>Source: W. H. Preece, 1884 to 1888, as quoted in handbooks.
   *
   * @param material copper or aluminium
   * @param diameter of the solid wire, &gt; 0 and at most 100 mm
   * @return in A
   * @throws InvalidInputException if the metal is another, or the diameter outside its range
   */
  public static Quantity<ElectricCurrent> preece(
      ConductorMaterial material, Quantity<Length> diameter) {
    double diameterM =
        Require.quantity("FusingCurrent.diameter", diameter, MILLIMETRE).positiveUpTo(100);
    return AMPERE.of(preeceConstant(material) * Math.pow(diameterM / INCH_M, 1.5));
  }

  /**
   * Diameter of the wire that a current melts in time: d = (I/a)^(2/3).
   *
   * @param material copper or aluminium
   * @param current &gt; 0 A
   * @return of the solid wire
   * @throws InvalidInputException if the metal is another, or the current not positive
   */
  public static Quantity<Length> preeceDiameter(
      ConductorMaterial material, Quantity<ElectricCurrent> current) {
    double currentA = Require.quantity("FusingCurrent.current", current, AMPERE).positive();
    double ratio = currentA / preeceConstant(material);
    return Kind.LENGTH.ofSi(Math.cbrt(ratio * ratio) * INCH_M);
  }

  private static double preeceConstant(ConductorMaterial material) {
    if (material.equals(ConductorMaterial.COPPER)) {
      return 10_244;
    }
    if (material.equals(ConductorMaterial.ALUMINIUM)) {
      return 7585;
    }
    throw InvalidInputException.of(
        "FusingCurrent.material", "copper or aluminium", material.name());
  }

  /**
   * Current that melts a copper conductor within a short time: 33·(I/A)²·t = lg[(1083 °C −
   * θ_i)/(234 °C + θ_i) + 1], A in circular mils, t in s.
   *
   * <p>Source: I. M. Onderdonk, in E. R. Stauffacher, General Electric Review, 1928.
   *
   * @param area of the copper, &gt; 0
   * @param duration &gt; 0 and at most 10 s
   * @param initial temperature when the current starts, −100 °C to 1000 °C
   * @return in A
   * @throws InvalidInputException if an argument is outside its range
   */
  public static Quantity<ElectricCurrent> onderdonk(
      Quantity<Area> area, Quantity<Time> duration, Quantity<Temperature> initial) {
    double areaM2 = Require.quantity("FusingCurrent.area", area, SQUARE_METRE).positive();
    double durationS =
        Require.quantity("FusingCurrent.duration", duration, SECOND).positiveUpTo(LONGEST_S);
    Require.quantity("FusingCurrent.initial", initial, CELSIUS).between(-100, 1000);
    double initialC = CELSIUS.valueOf(initial);
    double heat = Math.log10((COPPER_MELTS_C - initialC) / (ONDERDONK_BETA_C + initialC) + 1);
    return AMPERE.of(areaM2 / CIRCULAR_MIL_M2 * Math.sqrt(heat / (ONDERDONK * durationS)));
  }
}
