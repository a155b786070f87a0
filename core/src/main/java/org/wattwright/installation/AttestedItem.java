package org.wattwright.installation;

/** What no calculation can show: a person looks and signs. */
public enum AttestedItem {
  /** No live part can be touched with covers in place; finger and wire probes. */
  TOUCH_PROTECTION("touch-protection", "touch protection of live parts"),
  /** High-voltage labels on boxes and covers, orange cables. */
  LABELS("labels", "warning labels and cable colour"),
  /** Cables clipped, away from edges, heat and moving parts. */
  ROUTING_AND_CLIPS("routing", "routing and clips of cables"),
  /** The crash sensor opens the contactors, tried. */
  CRASH_CUT_OFF("crash-cut-off", "crash cut-off, tried"),
  /** Opening a cover or connector opens the contactors, tried. */
  INTERLOCK("interlock-loop", "high-voltage interlock, tried"),
  /** Every cable passes sheet metal through a gland or grommet. */
  GLANDS_AND_GROMMETS("glands", "glands and grommets"),
  /** Hoses of coolant and vacuum: supported, no kink, right way round. */
  HOSE_ROUTING("hoses", "hose routing");

  private final String code;
  private final String label;

  AttestedItem(String code, String label) {
    this.code = code;
    this.label = label;
  }

  /**
   * Code of its check.
   *
   * @return for example {@code installation.attested-labels}
   */
  public String code() {
    return "installation.attested-" + code;
  }

  /**
   * What is looked at, in words.
   *
   * @return for example {@code glands and grommets}
   */
  @Override
  public String toString() {
    return label;
  }
}
