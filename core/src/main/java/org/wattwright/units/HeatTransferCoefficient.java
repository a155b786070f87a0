package org.wattwright.units;

import javax.measure.Quantity;

/** Heat flow per area and kelvin, in W/(m²·K). */
public interface HeatTransferCoefficient extends Quantity<HeatTransferCoefficient> {}
