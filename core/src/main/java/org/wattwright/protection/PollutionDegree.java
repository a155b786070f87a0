package org.wattwright.protection;

/**
 * Pollution degree of the place where an insulation stands.
 *
 * <p>Source: IEC 60664-1. Degrees 1 and 4 are not carried.
 */
public enum PollutionDegree {
  /** Dry dirt only, with condensation at times: inside a closed box. */
  TWO,
  /** Conducting dirt, or dry dirt that condensation makes conducting: under a vehicle. */
  THREE
}
