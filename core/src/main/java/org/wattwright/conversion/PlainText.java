package org.wattwright.conversion;

/** Text from outside, cleaned of characters that show nothing or turn the reading direction. */
public final class PlainText {
  private PlainText() {}

  /**
   * A text on one line, safe to encode.
   *
   * @param text any text
   * @return without control, format and direction characters, and without space at either end
   */
  public static String clean(String text) {
    StringBuilder out = new StringBuilder(text.length());
    text.codePoints().forEach(c -> append(out, c));
    return out.toString().strip();
  }

  private static void append(StringBuilder out, int codePoint) {
    switch (Character.getType(codePoint)) {
      case Character.CONTROL, Character.LINE_SEPARATOR, Character.PARAGRAPH_SEPARATOR ->
          out.append(' ');
      case Character.FORMAT -> {
        // Soft hyphens, zero-width and direction marks: a reader could not see them.
      }
      case Character.SURROGATE -> out.append('\uFFFD');
      default -> out.appendCodePoint(codePoint);
    }
  }
}
