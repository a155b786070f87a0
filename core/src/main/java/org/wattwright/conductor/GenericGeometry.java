package org.wattwright.conductor;

import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.wattwright.check.Estimate;
import org.wattwright.check.Source;
import org.wattwright.units.Kind;
import org.wattwright.units.MassPerLength;

/**
 * Estimates of a single-core cable's diameters and mass, for when the data sheet is not at hand.
 *
 * <p>Fitted to typical single-core cables of 1.5 mm² to 240 mm²; common practice. Use them by name
 * only, see {@link Cable#withGenericGeometry()}.
 */
public final class GenericGeometry {
  private static final Source RULE =
      Source.commonPractice(
          "typical single-core cable: d = k·√A, wall = 0.6 mm + 0.21 mm·√(A/mm²)");

  private static final Estimate.Band CONDUCTOR_BAND = new Estimate.Band(0.95, 1.05);

  /**
   * Thick rubber sheaths are up to a fifth wider than the rule, thin-wall cable a tenth thinner.
   */
  private static final Estimate.Band OUTER_BAND = new Estimate.Band(0.9, 1.2);

  /**
   * Both ends at 16 mm², where the wall weighs most. Low: outer diameter at the low end of its band
   * (−7 %) and metal 14 % below the nominal area, as IEC 60228 allows (−11 %). High: outer diameter
   * at the high end (+16 %) and a mineral-filled compound a quarter denser than the plain one (+9
   * %).
   */
  private static final Estimate.Band MASS_BAND = new Estimate.Band(0.82, 1.25);

  private GenericGeometry() {}

  /**
   * Diameter of the bare conductor: d = k·√A, k = 1.128 solid, 1.29 class 2, 1.33 flexible.
   *
   * @param size the conductor
   * @return estimate in m, −5 % to +5 %
   */
  public static Estimate<Length> conductorDiameter(ConductorSize size) {
    return lengthEstimate("conductor diameter", conductorM(size), CONDUCTOR_BAND);
  }

  /**
   * Outer diameter: D = d + 2·(0.6 mm + 0.21 mm·√(A/mm²)).
   *
   * @param size the conductor
   * @return estimate in m, −10 % to +20 %
   */
  public static Estimate<Length> outerDiameter(ConductorSize size) {
    return lengthEstimate("outer diameter", outerM(size), OUTER_BAND);
  }

  /**
   * Mass per length: metal of the nominal area and insulation of the generic wall.
   *
   * @param size the conductor
   * @param insulation insulation and sheath
   * @return estimate in kg/m, −18 % to +25 %: thin wall and least metal, to thick wall of a
   *     mineral-filled compound
   */
  public static Estimate<MassPerLength> massPerLength(
      ConductorSize size, InsulationMaterial insulation) {
    double conductorM = conductorM(size);
    double outerM = outerM(size);
    double wallM2 = Math.PI / 4 * (outerM * outerM - conductorM * conductorM);
    double kgPerM =
        size.areaM2() * size.material().thermal().densityKgPerM3()
            + wallM2 * insulation.properties().densityKgPerM3();
    return Estimate.of(
        "mass per length",
        Kind.MASS_PER_LENGTH.ofSi(kgPerM),
        Kind.MASS_PER_LENGTH,
        MASS_BAND,
        RULE);
  }

  private static Estimate<Length> lengthEstimate(String name, double lengthM, Estimate.Band band) {
    Quantity<Length> typical = Shown.millimetres(lengthM);
    return Estimate.of(name, typical, Kind.LENGTH, band, RULE);
  }

  private static double conductorM(ConductorSize size) {
    double factor =
        switch (size.strandClass()) {
          case SOLID -> 2 / Math.sqrt(Math.PI);
          case STRANDED -> 1.29;
          case FLEXIBLE, ROAD_VEHICLE -> 1.33;
        };
    return factor * Math.sqrt(size.areaM2());
  }

  private static double outerM(ConductorSize size) {
    return conductorM(size) + 2 * (0.6e-3 + 0.21 * Math.sqrt(size.areaM2()));
  }
}
