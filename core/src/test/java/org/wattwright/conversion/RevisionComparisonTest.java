package org.wattwright.conversion;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.wattwright.battery.Pack;
import org.wattwright.check.Check;
import org.wattwright.check.Figure;
import org.wattwright.check.Source;
import org.wattwright.check.Worksheet;

class RevisionComparisonTest {
  private static CalculationSheet sheet(Section... sections) {
    return new CalculationSheet("van", "bakery", List.of(sections));
  }

  private static Section section(Block... blocks) {
    return Section.of("S").with(blocks);
  }

  private static RevisionComparison compare(Block before, Block after) {
    return RevisionComparison.of(sheet(section(before)), sheet(section(after)));
  }

  @Test
  void formPlaysNoPart() {
    CalculationSheet one =
        sheet(Section.of("A").with(new Paragraph("one  \u00ad two")), Section.of("B"));
    CalculationSheet other =
        sheet(Section.of("B"), Section.of("A").with(new Paragraph(" one two ")));
    assertThat(RevisionComparison.of(one, other).isSame()).isTrue();
    assertThat(compare(new Drawing("<svg a/>", "c", "d"), new Drawing("<svg b/>", "c", "d")))
        .hasToString("0 lines changed, 0 added, 0 removed");
    assertThat(RevisionComparison.of(one, other).toSection().blocks())
        .containsExactly(new Paragraph("Nothing changed."));
  }

  @Test
  void aFigureInASentenceIsAChangeAndOtherWordsAreAnotherSentence() {
    RevisionComparison figure =
        compare(new Paragraph("It weighs 3.5 kg."), new Paragraph("It weighs 4 kg."));
    assertThat(figure.changed())
        .containsExactly(
            new LineChange("S", "It weighs # kg.", "It weighs 3.5 kg.", "It weighs 4 kg."));
    RevisionComparison words = compare(new Paragraph("Hot."), new Paragraph("Cold."));
    assertThat(words.changed()).isEmpty();
    assertThat(words.added()).containsExactly(new SheetLine("S", "Cold.", "Cold."));
    assertThat(words.removed()).containsExactly(new SheetLine("S", "Hot.", "Hot."));
    assertThat(words.toText())
        .isEqualTo("0 lines changed, 1 added, 1 removed\n+ S › Cold.: Cold.\n- S › Hot.: Hot.\n");
  }

  @Test
  void rowsAreKnownByTheirFirstCellAndContinuedRowsByTheSecond() {
    DataTable before =
        DataTable.of("Loads", "Case", "", "kg").row("kerb", "before", "5").row("", "after", "6");
    DataTable after =
        DataTable.of("Loads", "Case", "", "kg")
            .row("kerb", "before", "5")
            .row("", "after", "7")
            .row("laden", "before", "8");
    RevisionComparison revision = compare(before, after);
    assertThat(revision.changed())
        .containsExactly(new LineChange("S › Loads", "kerb, after", "after | 6", "after | 7"));
    assertThat(revision.added()).containsExactly(new SheetLine("S › Loads", "laden", "before | 8"));
    assertThat(revision.changed().get(0))
        .hasToString("S › Loads › kerb, after: after | 6 → after | 7");
  }

  @Test
  void rowsOfOneNameArePairedInTheirOrder() {
    DataTable before = DataTable.of("", "A", "B").row("x", "1").row("x", "2");
    DataTable after = DataTable.of("", "A", "B").row("x", "1").row("x", "3").row("x", "4");
    RevisionComparison revision = compare(before, after);
    assertThat(revision.changed()).containsExactly(new LineChange("S", "x", "2", "3"));
    assertThat(revision.added()).containsExactly(new SheetLine("S", "x", "4"));
  }

  private static Working working(int cells) {
    Worksheet.Recording sheet = Worksheet.record("Full");
    sheet
        .step("U", "pack full")
        .formula("S·u")
        .with("S", Figure.count(cells))
        .gives(Figure.count(9));
    return new Working(sheet.toWorksheet());
  }

  @Test
  void stepsAreKnownByMeaningAndSymbol() {
    assertThat(compare(working(30), working(32)).changed())
        .singleElement()
        .satisfies(
            change -> {
              assertThat(change.place()).isEqualTo("S › Full");
              assertThat(change.name()).isEqualTo("pack full, U");
              assertThat(change.before()).startsWith("S·u | 30 · u | 9 | data sheet");
              assertThat(change.after()).startsWith("S·u | 32 · u | 9 | data sheet");
            });
  }

  private static CheckList check(double actual) {
    return new CheckList(
        List.of(
            Check.named("own.a", "own")
                .source(Source.PHYSICS)
                .atMost(Figure.number(actual), Figure.number(10))));
  }

  @Test
  void checksAreKnownByCodeAndWords() {
    assertThat(compare(check(5), check(11)).changed())
        .containsExactly(
            new LineChange(
                "S",
                "own [own.a]",
                "PASS | 5 ≤ 10 | 5 | data sheet | law of physics |",
                "FAIL | 11 > 10 | -1 | data sheet | law of physics |"));
  }

  @Test
  void listsCautionsPartsAndAppendicesCount() {
    CalculationSheet before =
        sheet(
                Section.of("A")
                    .with(new BulletList(List.of("one", "two")), new Cautions(List.of("hot 1")))
                    .withParts(Section.of("P").with(new Paragraph("p 1"))))
            .withAppendix(Section.of("X").with(new Paragraph("x 1")));
    CalculationSheet after =
        sheet(
                Section.of("A")
                    .with(new BulletList(List.of("one")), new Cautions(List.of("hot 2")))
                    .withParts(Section.of("P").with(new Paragraph("p 2"))))
            .withAppendix(Section.of("X").with(new Paragraph("x 2")));
    RevisionComparison revision = RevisionComparison.of(before, after);
    assertThat(revision.changed()).extracting(LineChange::place).containsExactly("A", "A › P", "X");
    assertThat(revision.removed()).containsExactly(new SheetLine("A", "two", "two"));
  }

  @Test
  void titleAndFingerprintCount() {
    CalculationSheet plain = sheet();
    CalculationSheet other =
        new CalculationSheet("truck", "bakery", List.of()).withInputs(Fingerprint.ofText("abc"));
    assertThat(RevisionComparison.of(plain, other).changed())
        .containsExactly(
            new LineChange("Sheet", "title", "van", "truck"),
            new LineChange(
                "Sheet", "fingerprint of the inputs", "none", Fingerprint.ofText("abc").hex()));
  }

  /** From eight modules to nine: the sheet as a whole. */
  @Test
  void twoRevisionsOfAVanAreToldLineByLine() {
    Conversion eight = InventedVan.conversion().build();
    Conversion nine =
        InventedVan.conversion()
            .pack(Pack.of(InventedVan.module(InventedVan.cell().build()), 9, 1))
            .build();
    RevisionComparison revision = RevisionComparison.of(eight.toSheet(), nine.toSheet());
    assertThat(revision.isSame()).isFalse();
    assertThat(revision.changed())
        .contains(
            new LineChange(
                "Pack", "mass of the modules", "64 kg | data sheet", "72 kg | data sheet"))
        .anyMatch(change -> change.name().equals("fingerprint of the inputs"));
    assertThat(revision.added())
        .anyMatch(line -> line.place().equals("Checks") && line.name().contains("charger-reach"));
    assertThat(revision.removed())
        .anyMatch(
            line ->
                line.place().startsWith("Checks passed › ")
                    && line.name().contains("charger-reach"));
    assertThat(RevisionComparison.of(eight.toSheet(), eight.toSheet()).isSame()).isTrue();
    assertThat(revision.toSection().blocks()).hasSize(3);
  }
}
