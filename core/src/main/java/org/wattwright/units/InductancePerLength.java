package org.wattwright.units;

import javax.measure.Quantity;

/** Loop inductance per length; SI unit H/m, shown in µH/m. */
public interface InductancePerLength extends Quantity<InductancePerLength> {}
