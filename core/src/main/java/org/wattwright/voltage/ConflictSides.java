package org.wattwright.voltage;

import javax.measure.Quantity;
import javax.measure.quantity.ElectricPotential;

/** The two sides of a conflict: what ends too low, and what begins too high. */
record ConflictSides(String upper, Quantity<ElectricPotential> upperEnd, int most, String lower) {}
