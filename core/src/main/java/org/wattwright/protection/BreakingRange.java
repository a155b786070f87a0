package org.wattwright.protection;

/**
 * Which over-currents a fuse link may be left alone with; first letter of its class, IEC 60269-1,
 * 5.7.1.
 */
public enum BreakingRange {
  /** Every current that melts it, up to its breaking capacity: g, as in gG, gPV, gR. */
  FULL("full range"),
  /**
   * Only currents above a stated one: a, as in aR, aM. A lower over-current melts it without being
   * interrupted, and another device must clear it.
   */
  PARTIAL("partial range");

  private final String label;

  BreakingRange(String label) {
    this.label = label;
  }

  /**
   * The range in words.
   *
   * @return {@code full range} or {@code partial range}
   */
  @Override
  public String toString() {
    return label;
  }
}
