package org.wattwright.units;

import javax.measure.Quantity;

/** Force that grows with speed; SI unit N·s/m, shown in N/(km/h). */
public interface ForcePerSpeed extends Quantity<ForcePerSpeed> {}
