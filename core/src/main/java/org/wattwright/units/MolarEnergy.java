package org.wattwright.units;

import javax.measure.Quantity;

/** Energy per amount of substance, such as an activation energy; SI unit J/mol, shown in kJ/mol. */
public interface MolarEnergy extends Quantity<MolarEnergy> {}
