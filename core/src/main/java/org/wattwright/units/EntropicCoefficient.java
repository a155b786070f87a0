package org.wattwright.units;

import javax.measure.Quantity;

/** Change of open-circuit voltage with temperature (dU/dT); SI unit V/K, shown in mV/K. */
public interface EntropicCoefficient extends Quantity<EntropicCoefficient> {}
