package org.wattwright.battery;

/** Cell chemistry, as far as it decides voltages, temperatures and estimates. */
public enum Chemistry {
  /** Lithium iron phosphate against graphite. */
  LFP("lithium iron phosphate"),
  /** Lithium nickel manganese cobalt oxide against graphite. */
  NMC("lithium nickel manganese cobalt oxide"),
  /** Lithium nickel cobalt aluminium oxide against graphite. */
  NCA("lithium nickel cobalt aluminium oxide"),
  /** Lithium manganese oxide against graphite. */
  LMO("lithium manganese oxide"),
  /** Lithium titanate anode. */
  LTO("lithium titanate"),
  /** Lead-acid. */
  LEAD_ACID("lead-acid");

  private final String description;

  Chemistry(String description) {
    this.description = description;
  }

  /**
   * The chemistry in words.
   *
   * @return for example {@code lithium iron phosphate}
   */
  public String description() {
    return description;
  }

  /**
   * The usual short name.
   *
   * @return for example {@code LFP} or {@code lead-acid}
   */
  @Override
  public String toString() {
    return this == LEAD_ACID ? "lead-acid" : name();
  }
}
