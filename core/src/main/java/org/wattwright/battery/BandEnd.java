package org.wattwright.battery;

/** Which end of an estimate's band to compute with. */
public enum BandEnd {
  /** The low end: the highest fault current. */
  LOW,
  /** The high end: the lowest fault current, the deepest voltage sag. */
  HIGH
}
