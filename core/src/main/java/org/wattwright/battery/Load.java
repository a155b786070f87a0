package org.wattwright.battery;

/** A direction and how long current flows that way; infinite for continuous. */
record Load(Direction direction, double durationS) {}
