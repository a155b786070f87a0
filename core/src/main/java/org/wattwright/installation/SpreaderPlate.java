package org.wattwright.installation;

import static org.wattwright.units.WorkshopUnits.MEGAPASCAL;
import static org.wattwright.units.WorkshopUnits.MILLIMETRE;

import java.io.Serializable;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import javax.measure.quantity.Pressure;
import org.wattwright.check.Source;
import org.wattwright.internal.Require;
import org.wattwright.units.Kind;
import org.wattwright.units.Measure;

/**
 * A plate behind thin sheet that spreads the pull of a bolt.
 *
 * <p>It helps as far as it does not fold: P = 2·π·M_p/(1 − 2·r/(3·R)) with M_p = f_y·t²/4, the
 * limit load of a round plate on its rim loaded over the radius r of the washer. Source: H. G.
 * Hopkins, W. Prager, The load carrying capacities of circular plates (1953), from memory.
 * Immutable and thread-safe.
 *
 * @param diameter of a round plate, or the shorter side of another; &gt; 0 mm
 * @param thickness &gt; 0 mm
 * @param yieldStrength of its steel, &gt; 0 MPa
 */
public record SpreaderPlate(
    Quantity<Length> diameter, Quantity<Length> thickness, Quantity<Pressure> yieldStrength)
    implements Serializable {
  /** Where the limit load comes from. */
  public static final Source SOURCE =
      Source.literature(
              "H. G. Hopkins, W. Prager, The load carrying capacities of circular plates",
              "J. Mech. Phys. Solids 2 (1953)")
          .fromMemory();

  /**
   * Checks the values.
   *
   * @param diameter &gt; 0 mm
   * @param thickness &gt; 0 mm
   * @param yieldStrength &gt; 0 MPa
   * @throws org.wattwright.units.InvalidInputException if a value is not positive
   */
  public SpreaderPlate {
    Require.quantity("SpreaderPlate.diameter", diameter, MILLIMETRE).positive();
    Require.quantity("SpreaderPlate.thickness", thickness, MILLIMETRE).positive();
    Require.quantity("SpreaderPlate.yieldStrength", yieldStrength, MEGAPASCAL).positive();
    diameter = Measure.from(diameter, Kind.LENGTH);
    thickness = Measure.from(thickness, Kind.LENGTH);
    yieldStrength = Measure.from(yieldStrength, Kind.PRESSURE);
  }

  double diameterM() {
    return Kind.LENGTH.siValueOf(diameter);
  }

  /**
   * Pull at which the plate folds about a washer; endless if the washer is as wide as the plate.
   */
  double foldingN(double washerM) {
    double rimM = diameterM() / 2;
    if (washerM / 2 >= rimM) {
      return Double.POSITIVE_INFINITY;
    }
    double thicknessM = Kind.LENGTH.siValueOf(thickness);
    double hingeN = Kind.PRESSURE.siValueOf(yieldStrength) * thicknessM * thicknessM / 4;
    return 2 * Math.PI * hingeN / (1 - 2 * (washerM / 2) / (3 * rimM));
  }
}
