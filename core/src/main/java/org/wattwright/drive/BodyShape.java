package org.wattwright.drive;

/** Shape of a body, as far as it tells the drag coefficient. */
public enum BodyShape {
  /** Open car, top down. */
  OPEN_CONVERTIBLE("open convertible", 0.5, 0.7),

  /** Two boxes: estate, small van. */
  TWO_BOX("two boxes", 0.5, 0.6),

  /** Three boxes: saloon with bonnet and boot. */
  THREE_BOX("three boxes", 0.4, 0.55),

  /** Wedge with lamps and bumpers faired in. */
  WEDGE("wedge", 0.3, 0.4);

  private final String text;
  private final double low;
  private final double high;

  BodyShape(String text, double low, double high) {
    this.text = text;
    this.low = low;
    this.high = high;
  }

  double low() {
    return low;
  }

  double high() {
    return high;
  }

  /**
   * The shape in words.
   *
   * @return for example {@code three boxes}
   */
  @Override
  public String toString() {
    return text;
  }
}
