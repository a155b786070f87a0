package org.wattwright.conversion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatNullPointerException;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.wattwright.check.Check;
import org.wattwright.check.Figure;
import org.wattwright.check.Source;
import org.wattwright.check.Worksheet;
import org.wattwright.units.InvalidInputException;

/** Blocks and sections: copied on the way in, closed afterwards, handed to the right method. */
class BlockTest {
  private static final Check CHECK =
      Check.named("a.b", "mass of the pack")
          .source(Source.requirement("job"))
          .note("dry")
          .atMost(Figure.number(1), Figure.number(2));
  private static final Drawing DRAWING = new Drawing("<svg></svg>", "caption", "description");

  /** Writes down which method was called with what. */
  private static final class Calls implements BlockWriter {
    private final List<Object> calls = new ArrayList<>();

    @Override
    public void paragraph(Paragraph paragraph) {
      calls.add(List.of("paragraph", paragraph));
    }

    @Override
    public void bulletList(BulletList list) {
      calls.add(List.of("bulletList", list));
    }

    @Override
    public void cautions(Cautions cautions) {
      calls.add(List.of("cautions", cautions));
    }

    @Override
    public void dataTable(DataTable table) {
      calls.add(List.of("dataTable", table));
    }

    @Override
    public void working(Working working) {
      calls.add(List.of("working", working));
    }

    @Override
    public void checkList(CheckList checks) {
      calls.add(List.of("checkList", checks));
    }

    @Override
    public void drawing(Drawing drawing) {
      calls.add(List.of("drawing", drawing));
    }
  }

  @Test
  void everyBlockGoesToItsOwnMethod() {
    Paragraph paragraph = new Paragraph("text");
    BulletList list = new BulletList(List.of("item"));
    Cautions cautions = new Cautions(List.of("hot"));
    DataTable table = DataTable.of("", "a");
    Working working = new Working(Worksheet.record("sheet").toWorksheet());
    CheckList checks = new CheckList(List.of(CHECK));
    Calls calls = new Calls();
    for (Block block : List.of(paragraph, list, cautions, table, working, checks, DRAWING)) {
      block.accept(calls);
    }
    assertThat(calls.calls)
        .containsExactly(
            List.of("paragraph", paragraph),
            List.of("bulletList", list),
            List.of("cautions", cautions),
            List.of("dataTable", table),
            List.of("working", working),
            List.of("checkList", checks),
            List.of("drawing", DRAWING));
  }

  @Test
  void listsGivenAreCopied() {
    List<String> items = new ArrayList<>(List.of("one"));
    List<Check> given = new ArrayList<>(List.of(CHECK));
    BulletList list = new BulletList(items);
    Cautions cautions = new Cautions(items);
    CheckList checks = new CheckList(given);
    items.add("two");
    given.clear();
    assertThat(list.items()).containsExactly("one");
    assertThat(cautions.items()).containsExactly("one");
    assertThat(checks.checks()).containsExactly(CHECK);
  }

  @Test
  void tablesCopyColumnsAndRows() {
    List<DataTable.Column> columns = new ArrayList<>(List.of(new DataTable.Column("a", false)));
    List<String> row = new ArrayList<>(List.of("1"));
    List<List<String>> rows = new ArrayList<>(List.of(row));
    DataTable table = new DataTable("", columns, rows);
    columns.clear();
    row.set(0, "2");
    rows.clear();
    assertThat(table).isEqualTo(DataTable.of("", "a").row("1"));
    assertClosed(table.columns());
    assertClosed(table.rows());
    assertClosed(table.rows().get(0));
  }

  @Test
  void sectionsAndSheetsCopyTheirLists() {
    List<Block> blocks = new ArrayList<>(List.of(DRAWING));
    List<Section> parts = new ArrayList<>(List.of(Section.of("part")));
    Section section = new Section("A", blocks, parts);
    CalculationSheet sheet = new CalculationSheet("title", "", parts);
    blocks.clear();
    parts.clear();
    assertThat(section.blocks()).containsExactly(DRAWING);
    assertThat(section.parts()).containsExactly(Section.of("part"));
    assertThat(sheet.sections()).containsExactly(Section.of("part"));
    assertClosed(section.blocks());
    assertClosed(section.parts());
    assertClosed(sheet.sections());
  }

  @Test
  void listsHandedOutAreClosed() {
    assertClosed(new BulletList(List.of("one")).items());
    assertClosed(new Cautions(List.of("one")).items());
    assertClosed(new CheckList(List.of(CHECK)).checks());
  }

  private static void assertClosed(List<?> list) {
    assertThatExceptionOfType(UnsupportedOperationException.class).isThrownBy(list::clear);
  }

  @Test
  void aSectionGrowsByCopies() {
    Section empty = Section.of("A");
    Section longer =
        empty.with(DRAWING).with(new Paragraph("1"), new Paragraph("2")).withParts(empty);
    assertThat(empty.blocks()).isEmpty();
    assertThat(longer.title()).isEqualTo("A");
    assertThat(longer.blocks()).containsExactly(DRAWING, new Paragraph("1"), new Paragraph("2"));
    assertThat(longer.parts()).containsExactly(empty);
    assertThat(longer.withParts(longer).with(DRAWING).parts()).containsExactly(empty, longer);
  }

  @Test
  void aTableGrowsByCopies() {
    DataTable empty = DataTable.of("caption", "name", ">mass");
    DataTable longer = empty.row("box", "3 kg").row("lid", "1 kg");
    assertThat(empty.rows()).isEmpty();
    assertThat(longer.caption()).isEqualTo("caption");
    assertThat(longer.columns())
        .containsExactly(new DataTable.Column("name", false), new DataTable.Column("mass", true));
    assertThat(longer.rows()).containsExactly(List.of("box", "3 kg"), List.of("lid", "1 kg"));
  }

  @Test
  void rejectsARowThatDoesNotFit() {
    DataTable table = DataTable.of("", "a", "b");
    assertThatExceptionOfType(InvalidInputException.class)
        .isThrownBy(() -> table.row("1", "2", "3"))
        .withMessage("DataTable.row must have 2 cells, but had 3")
        .satisfies(
            e -> {
              assertThat(e.field()).isEqualTo("DataTable.row");
              assertThat(e.bound()).isEqualTo("2 cells");
              assertThat(e.value()).isEqualTo("3 cells");
            });
    assertThatExceptionOfType(InvalidInputException.class).isThrownBy(() -> table.row());
  }

  @Test
  void rejectsATableWithoutColumns() {
    assertThatExceptionOfType(InvalidInputException.class)
        .isThrownBy(() -> DataTable.of(""))
        .withMessageStartingWith("DataTable.columns must be a list with at least one element");
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "<script>alert(1)</script>", "<?xml version=\"1.0\"?><svg></svg>"})
  void rejectsADrawingThatIsNone(String svg) {
    assertThatExceptionOfType(InvalidInputException.class)
        .isThrownBy(() -> new Drawing(svg, "", ""))
        .withMessageStartingWith("Drawing.svg must be one <svg> element, but was ");
  }

  @Test
  void namesTheNullComponent() {
    assertThatNullPointerException().isThrownBy(() -> new Paragraph(null)).withMessage("text");
    assertThatNullPointerException().isThrownBy(() -> new Working(null)).withMessage("worksheet");
    assertThatNullPointerException()
        .isThrownBy(() -> new Drawing("<svg></svg>", null, ""))
        .withMessage("caption");
    assertThatNullPointerException()
        .isThrownBy(() -> new Drawing("<svg></svg>", "", null))
        .withMessage("description");
    assertThatNullPointerException().isThrownBy(() -> Section.of(null)).withMessage("title");
    assertThatNullPointerException()
        .isThrownBy(() -> new CalculationSheet(null, "", List.of()))
        .withMessage("title");
    assertThatNullPointerException()
        .isThrownBy(() -> new CalculationSheet("", null, List.of()))
        .withMessage("subtitle");
    assertThatNullPointerException()
        .isThrownBy(() -> DataTable.of(null, "a"))
        .withMessage("caption");
    assertThatNullPointerException()
        .isThrownBy(() -> new DataTable.Column(null, false))
        .withMessage("heading");
  }

  @Test
  void aCheckHasOneCellAColumn() {
    assertThat(CheckList.headings())
        .containsExactly(
            "Verdict",
            "Check",
            "Actual and limit",
            "Margin",
            "Basis",
            "Source",
            "Remark",
            "Area",
            "Code");
    assertThat(CheckList.cells(CHECK))
        .containsExactly(
            "PASS",
            "mass of the pack",
            "1 ≤ 2",
            "1",
            CHECK.basis().toString(),
            CHECK.source().toString(),
            "dry",
            "other",
            "a.b");
  }

  @Test
  void aCheckWithoutFiguresHasEmptyCells() {
    Check open =
        Check.named("a.b", "mass").source(Source.requirement("job")).notChecked("pack.mass");
    assertThat(CheckList.cells(open).subList(0, 4)).containsExactly("NOT CHECKED", "mass", "", "");
    assertThat(CheckList.cells(open)).hasSameSizeAs(CheckList.headings());
  }

  @Test
  void textsAreShort() {
    DataTable table = DataTable.of("List", "a", "b").row("1", "2");
    Section section = Section.of("Pack").with(table).withParts(Section.of("x"), Section.of("y"));
    assertThat(section).hasToString("Pack (1 block, 2 parts)");
    assertThat(new CalculationSheet("van", "bakery", List.of(section, Section.of("Checks"))))
        .hasToString("van: Pack, Checks");
    assertThat(table).hasToString("table \"List\", columns: 2, rows: 1");
    assertThat(DataTable.of("", "a")).hasToString("table, columns: 1, rows: 0");
    assertThat(new CheckList(List.of(CHECK))).hasToString("1 PASS");
    assertThat(DRAWING).hasToString("drawing \"caption\"");
  }
}
