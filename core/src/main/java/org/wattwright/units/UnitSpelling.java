package org.wattwright.units;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/**
 * Brings the many ways to type a unit to one: {@code mm2}, {@code Ohm}, {@code uF}, {@code N m},
 * {@code ft-lb}.
 */
final class UnitSpelling {
  private static final char DOT = '·';

  private static final Pattern OHM = Pattern.compile("[oO]hms?");

  /** How ft-lb and kW-h are typed. */
  private static final Pattern HYPHEN_BETWEEN_LETTERS = Pattern.compile("(?<=\\p{L})-(?=\\p{L})");

  private static final Pattern CARET_BEFORE_EXPONENT = Pattern.compile("\\^(?=[-0-9−⁻])");
  private static final Pattern DOTS = Pattern.compile("·+");
  private static final Pattern DOT_BESIDE_BRACKET = Pattern.compile("·?([/()])·?");

  private UnitSpelling() {}

  /** The one spelling under which the table files a unit; factors stay apart by {@code ·}. */
  static String normalised(String symbol) {
    String words = symbol.replace("℃", "°C").replace("℉", "°F");
    words = OHM.matcher(words).replaceAll("Ω");
    words = HYPHEN_BETWEEN_LETTERS.matcher(words).replaceAll("·");
    words = CARET_BEFORE_EXPONENT.matcher(words).replaceAll("");
    StringBuilder plain = new StringBuilder(words.length());
    words.chars().forEach(c -> plain.append(plainCharacter((char) c)));
    String spaced = DOTS.matcher(plain).replaceAll("·");
    spaced = DOT_BESIDE_BRACKET.matcher(spaced).replaceAll("$1");
    boolean asciiMicro = spaced.length() > 1 && spaced.charAt(0) == 'u';
    return asciiMicro ? "µ" + spaced.substring(1) : spaced;
  }

  private static char plainCharacter(char typed) {
    if (isSpace(typed)) {
      return DOT;
    }
    return switch (typed) {
      case '*', '\u22C5', '\u2219', '\u2022' -> DOT;
      case '¹' -> '1';
      case '²' -> '2';
      case '³' -> '3';
      case '⁻', '−' -> '-';
      case '\u2126' -> 'Ω'; // the ohm sign, for the Greek letter
      case '\u03BC' -> 'µ'; // the Greek letter, for the micro sign
      case '\u00BA', '\u02DA' -> '°'; // the ordinal and the ring beside it on some keyboards
      default -> typed;
    };
  }

  /** Any space, the unbroken ones too. */
  static boolean isSpace(char typed) {
    return Character.isSpaceChar(typed) || Character.isWhitespace(typed);
  }

  /** The normalised spelling, and all that leave out some of its dots: {@code A·h}, {@code Ah}. */
  static List<String> variants(String symbol) {
    List<String> variants = new ArrayList<>(List.of(""));
    for (char c : normalised(symbol).toCharArray()) {
      List<String> longer = new ArrayList<>();
      for (String variant : variants) {
        longer.add(variant + c);
        if (c == DOT) {
          longer.add(variant);
        }
      }
      variants = longer;
    }
    return variants;
  }
}
