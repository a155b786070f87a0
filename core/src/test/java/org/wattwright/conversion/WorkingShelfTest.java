package org.wattwright.conversion;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.wattwright.check.Figure;
import org.wattwright.check.Worksheet;

class WorkingShelfTest {
  private static final Paragraph WORDS = new Paragraph("words");
  private static final DataTable TABLE = DataTable.of("", "A");

  private static Working working(String title) {
    Worksheet.Recording sheet = Worksheet.record(title);
    sheet.step("x", "x").gives(Figure.count(1));
    return new Working(sheet.toWorksheet());
  }

  private static CalculationSheet sheet(Section... sections) {
    return new CalculationSheet("van", "", List.of(sections));
  }

  @Test
  void aSheetWithoutWorkingStaysAsItIs() {
    CalculationSheet sheet = sheet(Section.of("A").with(WORDS).withParts(Section.of("P")));
    assertThat(sheet.withWorkingBehind()).isSameAs(sheet);
  }

  @Test
  void workingsMoveUnderTheTitlesTheyStoodUnder() {
    CalculationSheet sheet =
        sheet(
                Section.of("A").with(WORDS, working("one")),
                Section.of("B")
                    .with(WORDS)
                    .withParts(
                        Section.of("Working of it").with(WORDS, TABLE, working("two")),
                        Section.of("Height").with(WORDS, working("three")),
                        Section.of("Bays").with(TABLE, working("four"))),
                Section.of("C").with(TABLE))
            .withAppendix(Section.of("X"))
            .withWorkingBehind();
    assertThat(sheet.sections())
        .containsExactly(
            Section.of("A").with(WORDS),
            Section.of("B").with(WORDS).withParts(Section.of("Bays").with(TABLE)),
            Section.of("C").with(TABLE));
    assertThat(sheet.appendices()).extracting(Section::title).containsExactly("X", "Working");
    assertThat(sheet.appendices().get(1).parts())
        .containsExactly(
            Section.of("A").with(working("one")),
            Section.of("B")
                .withParts(
                    Section.of("Working of it").with(WORDS, TABLE, working("two")),
                    Section.of("Height").with(WORDS, working("three")),
                    Section.of("Bays").with(working("four"))));
  }
}
