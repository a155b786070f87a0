package org.wattwright.units;

import javax.measure.Quantity;

/** Torque per roll angle; SI unit N·m/rad, shown in N·m/°. */
public interface RollStiffness extends Quantity<RollStiffness> {}
