package org.wattwright.units;

/**
 * Brings the many ways to type a unit to one: {@code mm2}, {@code Ohm}, {@code uF}, {@code N m}.
 */
final class UnitSpelling {
  private static final char MICRO_SIGN = '\u00B5';
  private static final char GREEK_MU = '\u03BC';
  private static final char OHM_SIGN = '\u2126';
  private static final char GREEK_OMEGA = '\u03A9';

  private UnitSpelling() {}

  static String normalised(String symbol) {
    String plain =
        symbol
            .replace("ohm", String.valueOf(GREEK_OMEGA))
            .replace("Ohm", String.valueOf(GREEK_OMEGA))
            .replace(OHM_SIGN, GREEK_OMEGA)
            .replace(GREEK_MU, MICRO_SIGN)
            .replace('²', '2')
            .replace('³', '3')
            .replace("^", "")
            .replace("·", "")
            .replace("*", "")
            .replace(" ", "");
    boolean asciiMicro = plain.length() > 1 && plain.charAt(0) == 'u';
    return asciiMicro ? MICRO_SIGN + plain.substring(1) : plain;
  }
}
