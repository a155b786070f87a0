package org.wattwright.check;

import java.util.ArrayList;
import java.util.List;

/** Plain text for a terminal: lines of at most 100 characters, no trailing space. */
final class TextLayout {
  static final int WIDTH = 100;

  /** No line ends behind a number: its unit stays with it. */
  private static final String BREAK = "(?<![0-9]) +";

  private TextLayout() {}

  /**
   * Words on lines; the lead stands before the first, as it is, and an indent before the others.
   */
  static List<String> wrap(String lead, String text, int indent) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder(lead);
    boolean empty = true;
    for (String word : plain(text).split(BREAK)) {
      if (!empty && line.length() + 1 + word.length() > WIDTH) {
        lines.add(line.toString());
        line = new StringBuilder(" ".repeat(indent));
        empty = true;
      }
      line.append(empty ? "" : " ").append(word);
      empty = false;
    }
    lines.add(line.toString());
    return lines;
  }

  /** Without line breaks, tabs and control characters, which would break the layout. */
  static String plain(String text) {
    StringBuilder out = new StringBuilder();
    text.codePoints().forEach(c -> out.appendCodePoint(isLayout(c) ? ' ' : c));
    return out.toString().strip();
  }

  /** Characters that move text about instead of standing for themselves, and broken ones. */
  static boolean isLayout(int codePoint) {
    return switch (Character.getType(codePoint)) {
      case Character.CONTROL,
          Character.LINE_SEPARATOR,
          Character.PARAGRAPH_SEPARATOR,
          Character.SURROGATE ->
          true;
      case Character.FORMAT -> isDirectionMark(codePoint);
      default -> false;
    };
  }

  /** Marks that turn the reading direction round and make text show what it does not say. */
  private static boolean isDirectionMark(int codePoint) {
    return (codePoint >= 0x202A && codePoint <= 0x202E)
        || (codePoint >= 0x2066 && codePoint <= 0x2069);
  }

  static String padded(String text, int width) {
    return text + " ".repeat(Math.max(0, width - text.length()));
  }
}
