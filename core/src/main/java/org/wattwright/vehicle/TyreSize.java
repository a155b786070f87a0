package org.wattwright.vehicle;

import java.io.Serializable;

/**
 * What the size of a tyre says: width, aspect ratio, construction, rim.
 *
 * @param width in mm, or in inches for an inch size
 * @param inch whether the width is in inches
 * @param aspectPercent 0 if not marked
 * @param construction {@code R}, {@code SR}, {@code HR}, {@code VR}, {@code ZR}; {@code -} for
 *     cross-ply, {@code B} for bias-belted
 * @param rimCode nominal rim diameter in inches
 * @param commercial whether {@code C} follows the rim
 */
record TyreSize(
    double width,
    boolean inch,
    int aspectPercent,
    String construction,
    int rimCode,
    boolean commercial)
    implements Serializable {
  /** Radial tyre without a marked aspect ratio: 80 to 84 %; ETRTO "82 series", common practice. */
  private static final int UNMARKED_RADIAL_PERCENT = 82;

  /**
   * Cross-ply in the older, rounder sections; common practice, fits UN R30 diameters within 1 %.
   */
  private static final int OLDER_CROSS_PLY_PERCENT = 95;

  /** Cross-ply low sections of the 1960s; common practice, fits UN R30 diameters within 1 %. */
  private static final int LOW_CROSS_PLY_PERCENT = 88;

  /** Widths of the low sections end in .00 or .50; on larger rims those are still older tyres. */
  private static final int LARGEST_LOW_SECTION_RIM = 14;

  boolean isRadial() {
    return construction.endsWith("R");
  }

  double widthM() {
    return inch ? width * 0.0254 : width / 1000;
  }

  int effectiveAspectPercent() {
    if (aspectPercent > 0) {
      return aspectPercent;
    }
    if (isRadial()) {
      return UNMARKED_RADIAL_PERCENT;
    }
    boolean halves = inch && Math.rint(width * 2) == width * 2;
    return halves && rimCode <= LARGEST_LOW_SECTION_RIM
        ? LOW_CROSS_PLY_PERCENT
        : OLDER_CROSS_PLY_PERCENT;
  }

  @Override
  public String toString() {
    String section = inch ? twoDecimals(width) : Long.toString(Math.round(width));
    String aspect = aspectPercent > 0 ? "/" + aspectPercent : "";
    String join = construction.equals("-") ? "-" : " " + construction;
    return section + aspect + join + rimCode + (commercial ? "C" : "");
  }

  private static String twoDecimals(double inches) {
    long hundredths = Math.round(inches * 100);
    return hundredths / 100 + "." + hundredths / 10 % 10 + hundredths % 10;
  }
}
