package org.wattwright.examples.sheet;

import java.util.Arrays;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.wattwright.conversion.PlainText;

/** HTML out of plain text. */
final class HtmlText {
  private static final int LONGEST_RUN = 24;

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

  /** Escaped, with places to break inside words that would not fit into a column. */
  static String breakable(String text) {
    StringBuilder out = new StringBuilder(text.length());
    int run = 0;
    for (int codePoint : PlainText.clean(text).codePoints().toArray()) {
      run = codePoint == ' ' ? 0 : run + 1;
      append(out, codePoint);
      if (run == LONGEST_RUN) {
        out.append("<wbr>");
        run = 0;
      }
    }
    return out.toString();
  }

  private static final Pattern BREAKS = Pattern.compile("(?<=,) | (?=[≤≥])");

  /**
   * A cell of figures: a value stays with its unit, a line may break before a limit and after a
   * comma.
   */
  static String figures(String cssClass, String text) {
    String[] pieces = BREAKS.split(text);
    if (pieces.length == 1) {
      return element("td" + (cssClass.isEmpty() ? "" : " class=\"" + cssClass + "\""), text);
    }
    String spans =
        Arrays.stream(pieces).map(piece -> element("span", piece)).collect(Collectors.joining(" "));
    return "<td class=\"" + (cssClass + " split").strip() + "\">" + spans + "</td>";
  }

  /** An element with escaped text inside; the start tag is ours. */
  static String element(String startTag, String text) {
    int nameEnd = startTag.indexOf(' ');
    String name = nameEnd < 0 ? startTag : startTag.substring(0, nameEnd);
    return "<" + startTag + ">" + breakable(text) + "</" + name + ">";
  }
}
