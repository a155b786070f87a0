package org.wattwright.charging;

/** Why a charge ended. */
public enum ChargeEnd {
  /** The state of charge asked for is reached. */
  TARGET("state of charge reached"),
  /** The taper fell to the end current. */
  END_CURRENT("end current reached"),
  /** The time allowed is over. */
  TIME("time is over"),
  /** No current can flow: the limit named beside it forbids it. */
  BLOCKED("no current");

  private final String label;

  ChargeEnd(String label) {
    this.label = label;
  }

  /**
   * The end in words.
   *
   * @return for example {@code end current reached}
   */
  @Override
  public String toString() {
    return label;
  }
}
