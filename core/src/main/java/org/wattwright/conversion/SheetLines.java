package org.wattwright.conversion;

import java.util.ArrayList;
import java.util.List;
import org.wattwright.check.Check;
import org.wattwright.check.Step;

/** The lines of a calculation sheet, without anything that is form alone. */
final class SheetLines implements BlockWriter {
  private static final String IN = " › ";
  private static final String CELL = " | ";

  private final List<SheetLine> lines = new ArrayList<>();
  private String place = "";

  private SheetLines() {}

  static List<SheetLine> of(CalculationSheet sheet) {
    SheetLines all = new SheetLines();
    all.place = "Sheet";
    all.add("title", sheet.title());
    all.add("subtitle", sheet.subtitle());
    all.add("library version", sheet.imprint().libraryVersion());
    all.add(
        "fingerprint of the inputs", sheet.imprint().inputs().map(Fingerprint::hex).orElse("none"));
    sheet.sections().forEach(section -> all.add(section, ""));
    sheet.appendices().forEach(section -> all.add(section, ""));
    return all.lines;
  }

  private void add(Section section, String above) {
    String own = above + plain(section.title());
    for (Block block : section.blocks()) {
      place = own;
      block.accept(this);
    }
    section.parts().forEach(part -> add(part, own + IN));
  }

  private void add(String name, String value) {
    lines.add(new SheetLine(place, plain(name), plain(value)));
  }

  /** Runs of white space are form. */
  private static String plain(String text) {
    return PlainText.clean(text).replaceAll("\\s+", " ");
  }

  @Override
  public void paragraph(Paragraph paragraph) {
    sentence(paragraph.text());
  }

  /** Known again by its words, so that a figure in it may change. */
  private void sentence(String text) {
    add(text.replaceAll("[-+]?\\d[\\d.]*", "#"), text);
  }

  @Override
  public void bulletList(BulletList list) {
    list.items().forEach(this::sentence);
  }

  @Override
  public void cautions(Cautions cautions) {
    cautions.items().forEach(this::sentence);
  }

  /** Known again by the first cell; one that is empty continues the row above. */
  @Override
  public void dataTable(DataTable table) {
    if (!table.caption().isEmpty()) {
      place += IN + plain(table.caption());
    }
    String group = "";
    for (List<String> row : table.rows()) {
      boolean continues = row.get(0).isBlank() && row.size() > 1;
      group = continues ? group : row.get(0);
      String name = continues ? group + ", " + row.get(1) : row.get(0);
      List<String> cells = row.subList(1, row.size());
      add(name, String.join(CELL, cells.stream().map(SheetLines::plain).toList()));
    }
  }

  @Override
  public void working(Working working) {
    place += IN + plain(working.worksheet().title());
    for (Step step : working.worksheet().steps()) {
      add(
          step.meaning() + ", " + step.symbol(),
          String.join(
              CELL,
              step.formula(),
              step.substituted(),
              step.result().toString(),
              step.basis().toString(),
              step.source().toString()));
    }
  }

  /** Known again by code and words; its area is that of its code. */
  @Override
  public void checkList(CheckList checks) {
    for (Check check : checks.checks()) {
      List<String> cells = CheckList.cells(check);
      String value = cells.get(0) + CELL + String.join(CELL, cells.subList(2, cells.size() - 2));
      add(check.what() + " [" + check.code() + "]", value);
    }
  }

  /** Its points come from the figures, which stand in the sheet besides. */
  @Override
  public void drawing(Drawing drawing) {
    add("drawing " + drawing.caption(), drawing.description());
  }
}
