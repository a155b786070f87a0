package org.wattwright.voltage;

import org.wattwright.battery.PowerLimit;

/**
 * The peak load in one state, or the largest load that the pack carries if that is less.
 *
 * @param available whether the pack carries the peak load
 * @param maximum the largest load in that state, and what limits it
 */
record PeakLoad(double currentA, double voltageV, boolean available, PowerLimit maximum) {}
