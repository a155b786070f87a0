package org.wattwright.units;

import javax.measure.Quantity;

/** Current per conductor area; SI unit A/m², shown in A/mm². */
public interface CurrentDensity extends Quantity<CurrentDensity> {}
