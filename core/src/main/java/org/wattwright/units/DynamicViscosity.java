package org.wattwright.units;

import javax.measure.Quantity;

/** Viscosity; SI unit Pa·s, shown in mPa·s. */
public interface DynamicViscosity extends Quantity<DynamicViscosity> {}
