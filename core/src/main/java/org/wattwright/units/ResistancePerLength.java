package org.wattwright.units;

import javax.measure.Quantity;

/** Electrical resistance of a conductor per length; SI unit Ω/m, shown in Ω/km. */
public interface ResistancePerLength extends Quantity<ResistancePerLength> {}
