package org.wattwright.installation;

/** The ways a fixing may give. */
public enum FixingMode {
  /** The bolt shears. */
  BOLT_SHEAR("bolt-shear", "shear of the bolt"),
  /** The bolt tears. */
  BOLT_TENSION("bolt-tension", "tension of the bolt"),
  /** Shear and tension of the bolt together. */
  BOLT_COMBINED("bolt-combined", "shear and tension of the bolt together"),
  /** The panel tears out at the edge of the hole. */
  PANEL_BEARING("panel-bearing", "bearing of the panel on the bolt"),
  /** Washer or spreader plate comes through the panel. */
  PANEL_PULL_OUT("panel-pull-out", "pull-out through the panel");

  private final String code;
  private final String label;

  FixingMode(String code, String label) {
    this.code = code;
    this.label = label;
  }

  /**
   * The stable code of its check.
   *
   * @return for example {@code installation.bolt-shear}
   */
  public String code() {
    return "installation." + code;
  }

  boolean isOfPanel() {
    return this == PANEL_BEARING || this == PANEL_PULL_OUT;
  }

  /**
   * The label as reports print it.
   *
   * @return for example {@code shear of the bolt}
   */
  @Override
  public String toString() {
    return label;
  }
}
