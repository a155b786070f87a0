package org.wattwright.protection;

import org.wattwright.internal.Require;

/**
 * Material group of an insulating surface by its comparative tracking index (CTI).
 *
 * <p>Source: IEC 60664-1:2020.
 */
public enum MaterialGroup {
  /** CTI of 600 or more. */
  I(600),
  /** CTI from 400 to below 600. */
  II(400),
  /** CTI from 175 to below 400. */
  IIIa(175),
  /** CTI from 100 to below 175. */
  IIIb(100);

  private final int leastIndex;

  MaterialGroup(int leastIndex) {
    this.leastIndex = leastIndex;
  }

  /**
   * Group of a material.
   *
   * @param index comparative tracking index, 100 to 1000; below 100 no group exists
   * @return the group
   * @throws org.wattwright.units.InvalidInputException if outside its range
   */
  public static MaterialGroup ofTrackingIndex(int index) {
    Require.count("MaterialGroup.trackingIndex", index, 100, 1000);
    for (MaterialGroup group : values()) {
      if (index >= group.leastIndex) {
        return group;
      }
    }
    throw new IllegalStateException("no group for " + index);
  }

  /**
   * IIIb is not for pollution degree 3 above 630 V; footnote of the creepage table, from memory.
   */
  double lastInDirtV(double lastRowV) {
    return this == IIIb ? Math.min(630, lastRowV) : lastRowV;
  }

  /** As the creepage table has it, which does not tell IIIa from IIIb. */
  String tableName() {
    return this == IIIa || this == IIIb ? "III" : name();
  }
}
