package org.wattwright.units;

import javax.measure.Quantity;

/** Integral of current squared over time (I²t), in A²·s. */
public interface JouleIntegral extends Quantity<JouleIntegral> {}
