package org.wattwright.conductor;

import static org.wattwright.units.WorkshopUnits.MILLIMETRE;

import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.wattwright.internal.Require;
import org.wattwright.units.InductancePerLength;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;

/**
 * Inductance of a go-and-return pair, per metre of its length (not per metre of conductor).
 *
 * <p>Round pair: L′ = (μ₀/π)·[ln(D/a) + 1/4], D between axes, a the conductor's radius; 1/4 is the
 * flux inside solid round conductors carrying direct current, and falls to nothing for fast fronts.
 * Flat pair face to face: L′ = μ₀·g/w. Source: F. W. Grover, Inductance Calculations; Handbook of
 * Electric Power Calculations.
 */
public final class LoopInductance {
  private static final double MAGNETIC_CONSTANT_H_PER_M = 4e-7 * Math.PI;
  private static final double INSIDE_SHARE = 0.25;

  private LoopInductance() {}

  /**
   * Two parallel round conductors, direct current.
   *
   * @param conductorDiameter of the metal, &gt; 0
   * @param axisSpacing between axes, at least the diameter; never the gap between the cables
   * @return in µH/m
   * @throws InvalidInputException if the conductors overlap or an argument is not positive
   */
  public static Quantity<InductancePerLength> ofRoundPair(
      Quantity<Length> conductorDiameter, Quantity<Length> axisSpacing) {
    return roundPair(conductorDiameter, axisSpacing, INSIDE_SHARE);
  }

  /**
   * Two parallel round conductors, fast fronts: only the flux between them.
   *
   * @param conductorDiameter of the metal, &gt; 0
   * @param axisSpacing between axes, at least the diameter
   * @return in µH/m
   * @throws InvalidInputException if the conductors overlap or an argument is not positive
   */
  public static Quantity<InductancePerLength> ofRoundPairForFastFronts(
      Quantity<Length> conductorDiameter, Quantity<Length> axisSpacing) {
    return roundPair(conductorDiameter, axisSpacing, 0);
  }

  private static Quantity<InductancePerLength> roundPair(
      Quantity<Length> diameter, Quantity<Length> spacing, double insideShare) {
    double diameterM =
        Require.quantity("LoopInductance.conductorDiameter", diameter, MILLIMETRE).positive();
    double spacingM =
        Require.quantity("LoopInductance.axisSpacing", spacing, MILLIMETRE).positive();
    if (!(spacingM >= diameterM)) {
      throw InvalidInputException.of(
          "LoopInductance.axisSpacing", "≥ conductor diameter " + diameter, spacing.toString());
    }
    double logarithm = Math.log(spacingM / (diameterM / 2));
    return Kind.INDUCTANCE_PER_LENGTH.ofSi(
        MAGNETIC_CONSTANT_H_PER_M / Math.PI * (logarithm + insideShare));
  }

  /**
   * Two flat bars face to face.
   *
   * @param width of the faces, &gt; 0
   * @param spacing between the bars' centre planes, &gt; 0, at most half the width
   * @return in µH/m
   * @throws InvalidInputException if an argument is outside its range
   */
  public static Quantity<InductancePerLength> ofFlatPair(
      Quantity<Length> width, Quantity<Length> spacing) {
    double widthM = Require.quantity("LoopInductance.width", width, MILLIMETRE).positive();
    double spacingM = Require.quantity("LoopInductance.spacing", spacing, MILLIMETRE).positive();
    if (!(spacingM <= widthM / 2)) {
      throw InvalidInputException.of(
          "LoopInductance.spacing", "≤ half the width " + width, spacing.toString());
    }
    return Kind.INDUCTANCE_PER_LENGTH.ofSi(MAGNETIC_CONSTANT_H_PER_M * spacingM / widthM);
  }
}
