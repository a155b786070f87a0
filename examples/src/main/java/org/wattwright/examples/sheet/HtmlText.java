package org.wattwright.examples.sheet;

/** HTML out of plain text. */
final class HtmlText {
  private HtmlText() {}

  static String escaped(String text) {
    StringBuilder out = new StringBuilder(text.length());
    PlainText.clean(text).codePoints().forEach(c -> append(out, c));
    return out.toString();
  }

  private static void append(StringBuilder out, int codePoint) {
    switch (codePoint) {
      case '&' -> out.append("&amp;");
      case '<' -> out.append("&lt;");
      case '>' -> out.append("&gt;");
      case '"' -> out.append("&quot;");
      case '\'' -> out.append("&#39;");
      default -> out.appendCodePoint(codePoint);
    }
  }

  /** An element with escaped text inside; the start tag is ours. */
  static String element(String startTag, String text) {
    int nameEnd = startTag.indexOf(' ');
    String name = nameEnd < 0 ? startTag : startTag.substring(0, nameEnd);
    return "<" + startTag + ">" + escaped(text) + "</" + name + ">";
  }
}
