package org.wattwright.conductor;

/** How a conductor is stranded, which sets its resistance and its stiffness. */
public enum StrandClass {
  /** One solid wire. */
  SOLID("solid"),
  /** Stranded for fixed installation, IEC 60228 class 2. */
  STRANDED("class 2"),
  /** Flexible, fine wires, IEC 60228 class 5. */
  FLEXIBLE("class 5"),
  /** Fine-stranded road-vehicle cable, ISO 6722-1. */
  ROAD_VEHICLE("road vehicle");

  private final String label;

  StrandClass(String label) {
    this.label = label;
  }

  /**
   * The label as reports print it.
   *
   * @return for example {@code class 5}
   */
  @Override
  public String toString() {
    return label;
  }
}
