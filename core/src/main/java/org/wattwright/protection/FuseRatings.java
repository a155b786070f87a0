package org.wattwright.protection;

import static org.wattwright.units.WorkshopUnits.AMPERE;

import java.util.Arrays;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricCurrent;
import org.wattwright.internal.Require;
import org.wattwright.units.Kind;

/** Preferred rated currents of fuse links from 16 A to 630 A, IEC 60269-1. */
public final class FuseRatings {
  private static final double[] PREFERRED_A = {
    16, 20, 25, 32, 40, 50, 63, 80, 100, 125, 160, 200, 250, 315, 400, 500, 630
  };

  private FuseRatings() {}

  /**
   * The smallest preferred rating that is not below a current.
   *
   * @param current &gt; 0 A
   * @return in A; empty above 630 A
   * @throws org.wattwright.units.InvalidInputException if not positive
   */
  public static Optional<Quantity<ElectricCurrent>> atLeast(Quantity<ElectricCurrent> current) {
    double currentA = Require.quantity("FuseRatings.current", current, AMPERE).positive();
    return Arrays.stream(PREFERRED_A)
        .filter(ratedA -> ratedA >= currentA)
        .boxed()
        .findFirst()
        .map(Kind.CURRENT::ofSi);
  }
}
