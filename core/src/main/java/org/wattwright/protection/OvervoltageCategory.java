package org.wattwright.protection;

/**
 * Overvoltage category of equipment fed from the mains.
 *
 * <p>Source: IEC 60664-1. Category IV is not carried. A traction circuit isolated from the mains
 * has none: its transients need an assessment of their own, except while it charges.
 */
public enum OvervoltageCategory {
  /** Transients held low by other means. */
  I,
  /** Equipment fed from the fixed installation, such as an on-board charger. */
  II,
  /** In the fixed installation, such as a wall box. */
  III
}
