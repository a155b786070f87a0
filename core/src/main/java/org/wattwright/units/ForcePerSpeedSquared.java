package org.wattwright.units;

import javax.measure.Quantity;

/** Force that grows with speed squared; SI unit N·s²/m², shown in N/(km/h)². */
public interface ForcePerSpeedSquared extends Quantity<ForcePerSpeedSquared> {}
