package org.wattwright.units;

import javax.measure.Quantity;

/** Angle turned per time; SI unit rad/s, shown in 1/min. */
public interface RotationalSpeed extends Quantity<RotationalSpeed> {}
