package org.wattwright.examples.job;

/** Text from input inside a message: on one line, not too long, no control characters. */
final class Quoted {
  private static final int LONGEST = 60;

  private Quoted() {}

  static String of(String text) {
    String line = oneLine(text.strip());
    boolean tooLong = line.length() > LONGEST;
    return '"' + (tooLong ? line.substring(0, LONGEST) + "…" : line) + '"';
  }

  static String oneLine(String text) {
    StringBuilder out = new StringBuilder(text.length());
    text.codePoints().forEach(c -> out.appendCodePoint(isHarmless(c) ? c : ' '));
    return out.toString();
  }

  /** Line breaks, terminal escapes and marks that turn the reading direction are not. */
  private static boolean isHarmless(int codePoint) {
    return switch (Character.getType(codePoint)) {
      case Character.CONTROL,
          Character.FORMAT,
          Character.SURROGATE,
          Character.LINE_SEPARATOR,
          Character.PARAGRAPH_SEPARATOR ->
          false;
      default -> true;
    };
  }
}
