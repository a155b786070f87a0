package org.wattwright.units;

import javax.measure.Quantity;

/** Volume per time; SI unit m³/s, shown in L/min. */
public interface VolumeFlow extends Quantity<VolumeFlow> {}
