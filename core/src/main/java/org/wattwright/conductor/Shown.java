package org.wattwright.conductor;

import static org.wattwright.units.WorkshopUnits.MILLIMETRE;

import javax.measure.Quantity;
import javax.measure.quantity.Length;

/** Results in the unit in which the trade reads them, where that is not the customary unit. */
final class Shown {
  private Shown() {}

  static Quantity<Length> millimetres(double lengthM) {
    return MILLIMETRE.of(lengthM * 1e3);
  }
}
