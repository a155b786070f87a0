package org.wattwright.charging;

/** The two standards of the control pilot, which differ at the ends of its bands. */
public enum PilotEdition {
  /** IEC 61851-1: 6 A from 8 % on, 80 A up to 97 %. */
  IEC_61851_1("IEC 61851-1", 0.08, 0.97),
  /** SAE J1772 (October 2017): 6 A from 9.5 % on, 80 A up to 96.5 %. */
  SAE_J1772("SAE J1772", 0.095, 0.965);

  private final String label;
  private final double lowestShare;
  private final double highestShare;

  PilotEdition(String label, double lowestShare, double highestShare) {
    this.label = label;
    this.lowestShare = lowestShare;
    this.highestShare = highestShare;
  }

  /**
   * Smallest duty cycle that offers a current.
   *
   * @return share of the time, 0 to 1
   */
  public double lowestDutyCycle() {
    return lowestShare;
  }

  /**
   * Largest duty cycle that offers a current.
   *
   * @return share of the time, 0 to 1
   */
  public double highestDutyCycle() {
    return highestShare;
  }

  /**
   * The standard.
   *
   * @return for example {@code IEC 61851-1}
   */
  @Override
  public String toString() {
    return label;
  }
}
