package org.wattwright.examples.sheet;

import java.util.List;
import java.util.Locale;
import org.wattwright.check.Basis;
import org.wattwright.check.Check;
import org.wattwright.check.Figure;
import org.wattwright.check.Outcome;
import org.wattwright.check.Step;
import org.wattwright.conversion.BlockWriter;
import org.wattwright.conversion.BulletList;
import org.wattwright.conversion.Cautions;
import org.wattwright.conversion.CheckList;
import org.wattwright.conversion.DataTable;
import org.wattwright.conversion.Drawing;
import org.wattwright.conversion.Paragraph;
import org.wattwright.conversion.ReviewArea;
import org.wattwright.conversion.Section;
import org.wattwright.conversion.Working;

/** Appends sections and blocks as HTML. */
final class HtmlBlocks implements BlockWriter {
  private static final int DEEPEST_HEADING = 6;

  /** A table with more rows than these may be split over two pages. */
  private static final int MOST_ROWS_UNBROKEN = 14;

  private final StringBuilder out;
  private int figures;

  HtmlBlocks(StringBuilder out) {
    this.out = out;
  }

  void section(Section section, String number, int level) {
    String heading = "h" + Math.min(level, DEEPEST_HEADING);
    boolean isAppendix = number.length() == 1 && Character.isLetter(number.charAt(0));
    out.append("<section id=\"section-").append(number.replace('.', '-'));
    out.append(isAppendix ? "\" class=\"appendix\">\n<" : "\">\n<");
    out.append(heading).append("><span class=\"number\">").append(number).append("</span> ");
    out.append(HtmlText.escaped(section.title())).append("</").append(heading).append(">\n");
    section.blocks().forEach(block -> block.accept(this));
    for (int i = 0; i < section.parts().size(); i++) {
      section(section.parts().get(i), number + "." + (i + 1), level + 1);
    }
    out.append("</section>\n");
  }

  private void line(String html) {
    out.append(html).append('\n');
  }

  @Override
  public void paragraph(Paragraph paragraph) {
    line(HtmlText.element("p", paragraph.text()));
  }

  @Override
  public void bulletList(BulletList list) {
    items(list.items());
  }

  @Override
  public void cautions(Cautions cautions) {
    line("<div class=\"cautions\" role=\"note\">");
    items(cautions.items());
    line("</div>");
  }

  private void items(List<String> items) {
    line("<ul>");
    items.forEach(item -> line(HtmlText.element("li", item)));
    line("</ul>");
  }

  @Override
  public void dataTable(DataTable table) {
    line(table.rows().size() <= MOST_ROWS_UNBROKEN ? "<table class=\"whole\">" : "<table>");
    if (!table.caption().isEmpty()) {
      line(HtmlText.element("caption", table.caption()));
    }
    out.append("<thead><tr>");
    table.columns().forEach(c -> out.append(HtmlText.element("th" + styleOf(c), c.heading())));
    line("</tr></thead>\n<tbody>");
    for (List<String> row : table.rows()) {
      out.append("<tr>");
      for (int i = 0; i < row.size(); i++) {
        DataTable.Column column = table.columns().get(i);
        out.append(
            column.isNumeric()
                ? HtmlText.figures("number", row.get(i))
                : HtmlText.element("td", together(row.get(i))));
      }
      line("</tr>");
    }
    line("</tbody>\n</table>");
  }

  /** A basis of two words stays on one line. */
  private static String together(String text) {
    return text.equals(Basis.DATA_SHEET.toString()) ? text.replace(' ', '\u00a0') : text;
  }

  private static String styleOf(DataTable.Column column) {
    return column.isNumeric() ? " class=\"number\"" : "";
  }

  private void head(List<String> headings) {
    out.append("<thead><tr>");
    headings.forEach(heading -> out.append(HtmlText.element("th", heading)));
    line("</tr></thead>\n<tbody>");
  }

  @Override
  public void working(Working working) {
    line("<table class=\"working\">");
    line(HtmlText.element("caption", working.worksheet().title()));
    head(List.of("What", "Formula, numbers", "Result", "Basis", "Source"));
    working.worksheet().steps().forEach(this::step);
    line("</tbody>\n</table>");
  }

  private void step(Step step) {
    out.append("<tr>").append(HtmlText.element("td", step.meaning())).append("<td>");
    String formula = step.formula().isEmpty() ? "" : " = " + step.formula();
    out.append(HtmlText.element("span class=\"formula\"", step.symbol() + formula));
    if (!step.substituted().isEmpty()) {
      out.append("<br>")
          .append(HtmlText.element("span class=\"formula\"", "= " + step.substituted()));
    }
    out.append("</td>").append(HtmlText.element("td class=\"number\"", step.result().toString()));
    out.append(HtmlText.element("td", together(step.basis().toString())));
    line(HtmlText.element("td", step.source().toString()) + "</tr>");
  }

  /** Remark and code stand below what is checked, so that a row stays low on upright paper. */
  @Override
  public void checkList(CheckList checks) {
    line("<table class=\"checks\">");
    head(List.of("Verdict", "Check", "Actual and limit", "Margin", "Basis", "Source"));
    checks.checks().forEach(this::check);
    line("</tbody>\n</table>");
  }

  private void check(Check check) {
    out.append("<tr>");
    String verdict = "td class=\"verdict " + styleOf(check.outcome()) + "\"";
    out.append(HtmlText.element(verdict, check.outcome().toString()));
    out.append("<td>").append(HtmlText.breakable(check.what()));
    if (!check.remark().isEmpty()) {
      out.append("; ").append(HtmlText.element("span class=\"remark\"", check.remark()));
    }
    out.append(' ')
        .append(HtmlText.element("span class=\"code\"", ReviewArea.of(check) + ": " + check.code()))
        .append("</td>");
    out.append(HtmlText.figures("", check.comparison()));
    out.append(HtmlText.element("td", check.margin().map(Figure::toString).orElse("")));
    out.append(HtmlText.element("td", together(check.basis().toString())));
    line(HtmlText.element("td", check.source().toString()) + "</tr>");
  }

  private static String styleOf(Outcome outcome) {
    return outcome.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  @Override
  public void drawing(Drawing drawing) {
    figures++;
    out.append("<figure role=\"group\" aria-label=\"");
    line(HtmlText.escaped(drawing.description()) + "\">");
    line(drawing.svg());
    line(HtmlText.element("figcaption", "Figure " + figures + ": " + drawing.caption()));
    line("</figure>");
  }
}
