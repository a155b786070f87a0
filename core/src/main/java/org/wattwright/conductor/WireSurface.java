package org.wattwright.conductor;

/** Whether the wires of a conductor are coated, which raises the resistance limit by 2 to 3 %. */
public enum WireSurface {
  /** Bare metal. */
  PLAIN("plain"),
  /** Tinned or otherwise metal-coated copper. */
  TINNED("tinned");

  private final String label;

  WireSurface(String label) {
    this.label = label;
  }

  /**
   * The label as reports print it.
   *
   * @return {@code plain} or {@code tinned}
   */
  @Override
  public String toString() {
    return label;
  }
}
