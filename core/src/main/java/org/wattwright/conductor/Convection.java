package org.wattwright.conductor;

import static org.wattwright.units.WorkshopUnits.CELSIUS;
import static org.wattwright.units.WorkshopUnits.MILLIMETRE;

import javax.measure.Quantity;
import javax.measure.quantity.Length;
import javax.measure.quantity.Temperature;
import org.wattwright.internal.Require;
import org.wattwright.units.HeatTransferCoefficient;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;

/**
 * Free convection in still air at 1 atm, by Churchill and Chu.
 *
 * <p>Horizontal cylinder: Nu = {0.60 + 0.387·Ra^(1/6)/[1 + (0.559/Pr)^(9/16)]^(8/27)}², Ra ≤ 10¹².
 * Vertical face, laminar: Nu = 0.68 + 0.670·Ra^(1/4)/[1 + (0.492/Pr)^(9/16)]^(4/9), Ra ≤ 10⁹. Ra =
 * g·β·ΔT·L³·Pr/ν² with β = 1/T_f and air at the film temperature T_f = (T_s + T_a)/2.
 *
 * <p>Source: S. W. Churchill, H. H. S. Chu, Int. J. Heat Mass Transfer 18 (1975) 1049 and 1323.
 */
public final class Convection {
  private Convection() {}

  /**
   * Mean Nusselt number of a horizontal cylinder.
   *
   * @param rayleigh Rayleigh number on the diameter, 10⁻⁵ to 10¹²
   * @param prandtl Prandtl number, 0.1 to 1000
   * @return Nu
   * @throws InvalidInputException if an argument is outside the range of the formula
   */
  public static double cylinderNusselt(double rayleigh, double prandtl) {
    Require.between("Convection.rayleigh", rayleigh, 1e-5, 1e12);
    Require.between("Convection.prandtl", prandtl, 0.1, 1000);
    double group = Math.pow(1 + Math.pow(0.559 / prandtl, 9.0 / 16), 8.0 / 27);
    double root = 0.60 + 0.387 * Math.pow(rayleigh, 1.0 / 6) / group;
    return root * root;
  }

  /**
   * Rayleigh number of a horizontal cylinder in air.
   *
   * @param diameter &gt; 0 and at most 500 mm
   * @param surface temperature of the surface, −50 °C to 400 °C
   * @param air temperature of the air far away, −50 °C to 200 °C
   * @return Ra, ≥ 0
   * @throws InvalidInputException if an argument is outside its range
   */
  public static double cylinderRayleigh(
      Quantity<Length> diameter, Quantity<Temperature> surface, Quantity<Temperature> air) {
    double diameterM = diameterM(diameter);
    double surfaceK = surfaceK(surface);
    double airK = airK(air);
    double riseK = Math.abs(surfaceK - airK);
    double cube = diameterM * diameterM * diameterM;
    return AirProperties.buoyancy((surfaceK + airK) / 2) * riseK * cube;
  }

  /**
   * Heat transfer coefficient of a horizontal cylinder in air: h = Nu·λ/D.
   *
   * @param diameter &gt; 0 and at most 500 mm
   * @param surface temperature of the surface, −50 °C to 400 °C
   * @param air temperature of the air far away, −50 °C to 200 °C
   * @return in W/(m²·K)
   * @throws InvalidInputException if an argument is outside its range
   */
  public static Quantity<HeatTransferCoefficient> cylinderCoefficient(
      Quantity<Length> diameter, Quantity<Temperature> surface, Quantity<Temperature> air) {
    double diameterM = diameterM(diameter);
    double surfaceK = surfaceK(surface);
    double airK = airK(air);
    double sixthRoot = CylinderLoss.sixthRoot(Math.abs(surfaceK - airK)) * Math.sqrt(diameterM);
    double conductance = AirProperties.cylinderConductance((surfaceK + airK) / 2, sixthRoot);
    return Kind.HEAT_TRANSFER_COEFFICIENT.ofSi(conductance / diameterM);
  }

  private static double diameterM(Quantity<Length> diameter) {
    return Require.quantity("Convection.diameter", diameter, MILLIMETRE).positiveUpTo(500);
  }

  private static double surfaceK(Quantity<Temperature> surface) {
    return Require.quantity("Convection.surface", surface, CELSIUS).between(-50, 400);
  }

  private static double airK(Quantity<Temperature> air) {
    return Require.quantity("Convection.air", air, CELSIUS).between(-50, 200);
  }
}
