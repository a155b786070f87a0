package org.wattwright.units;

import javax.measure.Quantity;

/** Turning moment, in N·m; has the dimension of energy but is not an energy. */
public interface Torque extends Quantity<Torque> {}
