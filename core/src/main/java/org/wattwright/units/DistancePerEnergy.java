package org.wattwright.units;

import javax.measure.Quantity;

/** Distance per energy, the reciprocal of consumption; SI unit m/J, shown in km/(kW·h). */
public interface DistancePerEnergy extends Quantity<DistancePerEnergy> {}
