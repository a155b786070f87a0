package org.wattwright.protection;

/**
 * Shape of the electric field across a clearance.
 *
 * <p>Source: IEC 60664-1:2020 Table F.2, cases A and B.
 */
public enum ElectricField {
  /** Case A, any shape of the parts: what counts unless a test shows better. */
  INHOMOGENEOUS,
  /** Case B, even field; to be shown by an impulse test. */
  HOMOGENEOUS
}
