package org.wattwright.examples.sheet;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import org.wattwright.conversion.CalculationSheet;
import org.wattwright.conversion.Imprint;
import org.wattwright.conversion.Section;

/** Writes a calculation sheet as one HTML page: styles and drawings inside, no scripts, A4. */
public final class HtmlSheet {
  private static final int LETTERS = 26;

  private HtmlSheet() {}

  /**
   * The whole page.
   *
   * @param sheet the sheet
   * @return HTML in Unicode, to be written as UTF-8
   */
  public static String render(CalculationSheet sheet) {
    StringBuilder out = new StringBuilder();
    out.append("<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n")
        .append("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n")
        .append("<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; ")
        .append("style-src 'unsafe-inline'\">\n")
        .append("<title>" + HtmlText.escaped(sheet.title()) + "</title>")
        .append("\n<style>\n")
        .append(styles())
        .append("</style>\n</head>\n<body>\n<header>\n")
        .append(HtmlText.element("h1", sheet.title()))
        .append('\n')
        .append(HtmlText.element("p class=\"subtitle\"", sheet.subtitle()))
        .append('\n')
        .append(HtmlText.element("p class=\"imprint\"", imprint(sheet.imprint())))
        .append("\n</header>\n");
    Map<String, Section> numbered = numbered(sheet);
    contents(out, numbered);
    HtmlBlocks blocks = new HtmlBlocks(out);
    numbered.forEach((number, section) -> blocks.section(section, number, 2));
    return out.append("</body>\n</html>\n").toString();
  }

  private static String imprint(Imprint imprint) {
    String inputs = imprint.inputs().map(print -> " (SHA-256 " + print.hex() + ")").orElse("");
    return imprint + inputs + ".";
  }

  /** Sections by number, appendices by letter. */
  private static Map<String, Section> numbered(CalculationSheet sheet) {
    Map<String, Section> numbered = new LinkedHashMap<>();
    sheet.sections().forEach(s -> numbered.put(Integer.toString(numbered.size() + 1), s));
    int first = numbered.size();
    for (Section appendix : sheet.appendices()) {
      numbered.put(letter(numbered.size() - first), appendix);
    }
    return numbered;
  }

  /** A to Z, then AA and so on. */
  private static String letter(int index) {
    String last = String.valueOf((char) ('A' + index % LETTERS));
    return index < LETTERS ? last : letter(index / LETTERS - 1) + last;
  }

  private static void contents(StringBuilder out, Map<String, Section> numbered) {
    out.append("<nav aria-label=\"Contents\">\n<ul>\n");
    numbered.forEach(
        (number, section) ->
            out.append("<li><span class=\"number\">")
                .append(number)
                .append("</span> <a href=\"#section-")
                .append(number)
                .append("\">")
                .append(HtmlText.escaped(section.title()))
                .append("</a></li>\n"));
    out.append("</ul>\n</nav>\n");
  }

  private static String styles() {
    try (InputStream stream =
        Objects.requireNonNull(HtmlSheet.class.getResourceAsStream("sheet.css"), "sheet.css")) {
      return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
