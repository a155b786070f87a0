package org.wattwright.check;

/** Who can answer an open question of a conversion. */
public enum Party {
  /** Who ordered the conversion. */
  CUSTOMER("customer"),
  /** Who does the conversion. */
  WORKSHOP("workshop"),
  /** Who makes or sells a part. */
  PARTS_SUPPLIER("parts supplier"),
  /** Who may work on the electrical installation. */
  ELECTRICIAN("electrician"),
  /** Who approves the converted vehicle for the road. */
  APPROVING_ENGINEER("approving engineer");

  private final String label;

  Party(String label) {
    this.label = label;
  }

  /**
   * The label as reports print it.
   *
   * @return for example {@code parts supplier}
   */
  @Override
  public String toString() {
    return label;
  }
}
