package org.wattwright.examples.job;

/** Yes or no, as a file says it. */
enum YesNo {
  YES("yes"),
  NO("no");

  private final String label;

  YesNo(String label) {
    this.label = label;
  }

  @Override
  public String toString() {
    return label;
  }
}
