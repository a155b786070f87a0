package org.wattwright.drive;

/** Surface under car tyres, as far as it tells the rolling resistance. */
public enum RoadSurface {
  /** Concrete or asphalt. */
  ASPHALT("asphalt", 0.010, 0.012, 0.015),

  /** Rolled gravel. */
  ROLLED_GRAVEL("rolled gravel", 0.018, 0.020, 0.022),

  /** Earth, unpaved. */
  UNPAVED("unpaved", 0.045, 0.050, 0.055);

  private final String text;
  private final double low;
  private final double typical;
  private final double high;

  RoadSurface(String text, double low, double typical, double high) {
    this.text = text;
    this.low = low;
    this.typical = typical;
    this.high = high;
  }

  double low() {
    return low;
  }

  double typical() {
    return typical;
  }

  double high() {
    return high;
  }

  /**
   * The surface in words.
   *
   * @return for example {@code rolled gravel}
   */
  @Override
  public String toString() {
    return text;
  }
}
