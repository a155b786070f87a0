package org.wattwright.examples.sheet;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import org.wattwright.conversion.CalculationSheet;
import org.wattwright.conversion.Section;

/** Writes a calculation sheet as one HTML page: styles and drawings inside, no scripts, A4. */
public final class HtmlSheet {
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
        .append("\n</header>\n");
    contents(out, sheet.sections());
    HtmlBlocks blocks = new HtmlBlocks(out);
    for (int i = 0; i < sheet.sections().size(); i++) {
      blocks.section(sheet.sections().get(i), Integer.toString(i + 1), 2);
    }
    return out.append("</body>\n</html>\n").toString();
  }

  private static void contents(StringBuilder out, List<Section> sections) {
    out.append("<nav aria-label=\"Contents\">\n<ol>\n");
    for (int i = 0; i < sections.size(); i++) {
      out.append("<li><a href=\"#section-")
          .append(i + 1)
          .append("\">")
          .append(HtmlText.escaped(sections.get(i).title()))
          .append("</a></li>\n");
    }
    out.append("</ol>\n</nav>\n");
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
