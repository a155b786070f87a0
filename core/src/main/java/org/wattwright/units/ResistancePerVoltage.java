package org.wattwright.units;

import javax.measure.Quantity;

/** Isolation resistance referred to working voltage, in Ω/V. */
public interface ResistancePerVoltage extends Quantity<ResistancePerVoltage> {}
