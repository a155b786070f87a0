package org.wattwright.conversion;

import java.util.ArrayList;
import java.util.List;
import org.wattwright.check.MarkdownTable;

/** Writes a calculation sheet as Markdown. */
public final class MarkdownSheet {
  private static final String STARTS_MARKUP = "#+-=";

  /** Below the sections, whatever their depth. */
  private static final int WORKING_LEVEL = 4;

  private static final int LETTERS = 26;

  private MarkdownSheet() {}

  /**
   * The whole sheet.
   *
   * @param sheet the sheet
   * @return Markdown, ending with a line feed
   */
  public static String render(CalculationSheet sheet) {
    Writer writer = new Writer();
    writer.line("# " + inline(sheet.title()));
    writer.line(inline(sheet.subtitle()));
    writer.line(inline(sheet.imprint().toString()) + ".");
    sheet.sections().forEach(section -> writer.section(section, 2));
    for (int i = 0; i < sheet.appendices().size(); i++) {
      Section appendix = sheet.appendices().get(i);
      writer.section(named(appendix, "Appendix " + letter(i) + ": " + appendix.title()), 2);
    }
    return String.join("\n\n", writer.parts) + "\n";
  }

  private static Section named(Section section, String title) {
    return new Section(title, section.blocks(), section.parts());
  }

  /** A to Z, then AA and so on. */
  private static String letter(int index) {
    char last = (char) ('A' + index % LETTERS);
    return index < LETTERS ? String.valueOf(last) : letter(index / LETTERS - 1) + last;
  }

  private static String inline(String text) {
    String escaped = MarkdownTable.escaped(PlainText.clean(text));
    boolean startsMarkup = !escaped.isEmpty() && STARTS_MARKUP.indexOf(escaped.charAt(0)) >= 0;
    String safe = startsMarkup ? "\\" + escaped : escaped;
    // "1. " at the start would become a numbered list.
    return safe.replaceFirst("^(\\d+)([.)])(?=\\s|$)", "$1\\\\$2");
  }

  private static final class Writer implements BlockWriter {
    private final List<String> parts = new ArrayList<>();

    void line(String text) {
      if (!text.isEmpty()) {
        parts.add(text);
      }
    }

    void section(Section section, int level) {
      line("#".repeat(level) + " " + inline(section.title()));
      section.blocks().forEach(block -> block.accept(this));
      section.parts().forEach(part -> section(part, level + 1));
    }

    @Override
    public void paragraph(Paragraph paragraph) {
      line(inline(paragraph.text()));
    }

    @Override
    public void bulletList(BulletList list) {
      bullets(list.items(), "- ");
    }

    @Override
    public void cautions(Cautions cautions) {
      bullets(cautions.items(), "> - ");
    }

    private void bullets(List<String> items, String mark) {
      line(String.join("\n", items.stream().map(item -> mark + inline(item)).toList()));
    }

    @Override
    public void dataTable(DataTable table) {
      if (!table.caption().isEmpty()) {
        line("**" + inline(table.caption()) + "**");
      }
      MarkdownTable markdown =
          MarkdownTable.withColumns(
              table.columns().stream().map(DataTable.Column::heading).toArray(String[]::new));
      table.rows().forEach(row -> markdown.row(cleaned(row)));
      line(markdown.toText().strip());
    }

    private static String[] cleaned(List<String> cells) {
      return cells.stream().map(PlainText::clean).toArray(String[]::new);
    }

    @Override
    public void working(Working working) {
      line(working.worksheet().toMarkdown(WORKING_LEVEL).strip());
    }

    @Override
    public void checkList(CheckList checks) {
      MarkdownTable table = MarkdownTable.withColumns(CheckList.headings().toArray(String[]::new));
      checks.checks().forEach(check -> table.row(cleaned(CheckList.cells(check))));
      line(table.toText().strip());
    }

    @Override
    public void drawing(Drawing drawing) {
      line("*Figure: " + inline(drawing.caption()) + "* " + inline(drawing.description()));
    }
  }
}
