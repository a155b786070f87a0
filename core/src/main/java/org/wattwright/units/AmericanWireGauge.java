package org.wattwright.units;

import javax.measure.Quantity;
import javax.measure.quantity.Area;

/** Wire diameters by ASTM B258. */
final class AmericanWireGauge {
  /** Gauge number of size 4/0. */
  private static final int THICKEST = -3;

  private static final int THINNEST = 40;

  private AmericanWireGauge() {}

  static Quantity<Area> area(int gauge) {
    if (gauge < THICKEST || gauge > THINNEST) {
      throw InvalidInputException.of("awg", "from -3 (4/0) to 40", Integer.toString(gauge));
    }
    double diameterMm = 0.127 * Math.pow(92, (36.0 - gauge) / 39);
    return WorkshopUnits.SQUARE_MILLIMETRE.of(Math.PI * diameterMm * diameterMm / 4);
  }
}
