package org.wattwright.examples.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.wattwright.units.Measures.volts;
import static org.wattwright.units.WorkshopUnits.VOLT;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wattwright.check.Check;
import org.wattwright.check.Figure;
import org.wattwright.check.Source;
import org.wattwright.check.Worksheet;
import org.wattwright.conversion.CalculationSheet;
import org.wattwright.conversion.CheckList;
import org.wattwright.conversion.DataTable;
import org.wattwright.conversion.Drawing;
import org.wattwright.conversion.Fingerprint;
import org.wattwright.conversion.Paragraph;
import org.wattwright.conversion.Section;
import org.wattwright.conversion.Working;

class SheetTest {
  @TempDir Path folder;

  private static CalculationSheet sheet(Section... sections) {
    return new CalculationSheet("Van", "A bakery", List.of(sections));
  }

  private static Check check(double actual, double limit) {
    return Check.named("voltage.maximum", "pack full against inverter")
        .source(Source.dataSheet("inverter"))
        .atMost(Figure.of(volts(actual), VOLT), Figure.of(volts(limit), VOLT));
  }

  @Test
  void numbersSectionsAndLinksThemFromTheContents() {
    String page =
        HtmlSheet.render(
            sheet(Section.of("Cautions"), Section.of("Inputs").withParts(Section.of("Cells"))));
    assertThat(page)
        .contains("<a href=\"#section-2\">Inputs</a>")
        .contains("<section id=\"section-2\">")
        .contains("<section id=\"section-2-1\">\n<h3><span class=\"number\">2.1</span> Cells</h3>");
  }

  @Test
  void saysTheVerdictInWordsAndStylesIt() {
    Check open =
        Check.named("a.b", "axle load")
            .source(Source.requirement("plate"))
            .notChecked("vehicle.rearAxleLimit");
    String page =
        HtmlSheet.render(
            sheet(
                Section.of("Checks")
                    .with(
                        new CheckList(
                            List.of(check(100, 135), check(131.4, 118.8), check(99, 100), open)))));
    assertThat(page)
        .contains("<td class=\"verdict pass\">PASS</td>")
        .contains("<td class=\"verdict fail\">FAIL</td>")
        .contains("<td class=\"verdict caution\">CAUTION</td>")
        .contains("<td class=\"verdict not-checked\">NOT CHECKED</td>")
        .contains("<td>131.4 V &gt; 118.8 V</td><td>-12.6 V</td>")
        .contains("missing: vehicle.rearAxleLimit");
  }

  @Test
  void showsEachStepWithFormulaNumbersResultAndSource() {
    Worksheet.Recording working = Worksheet.record("Pack full");
    working
        .step("U", "pack full")
        .formula("S·u")
        .with("S", Figure.count(32))
        .with("u", Figure.of(volts(3.65), VOLT))
        .gives(Figure.of(volts(116.8), VOLT));
    CalculationSheet sheet = sheet(Section.of("Pack").with(new Working(working.toWorksheet())));
    assertThat(HtmlSheet.render(sheet))
        .contains("<span class=\"formula\">U = S·u</span>")
        .contains("<span class=\"formula\">= 32 · 3.65 V</span>")
        .contains("<td class=\"number\">116.8 V</td>")
        .contains("<td>law of physics</td>");
  }

  @Test
  void aLineBreaksBetweenAFigureAndItsVerdictAndNowhereElse() {
    DataTable table = DataTable.of("", "Check", ">kerb").row("front", "556 kg ≤ 760 kg, PASS");
    assertThat(HtmlSheet.render(sheet(Section.of("A").with(table))))
        .contains(
            "<td class=\"number split\"><span>556 kg</span> <span>≤ 760 kg,</span>"
                + " <span>PASS</span></td>");
  }

  @Test
  void setsNumbersFlushRightAndNumbersTheFigures() {
    Drawing drawing = new Drawing("<svg></svg>", "Windows", "From 74 V to 101 V");
    String page =
        HtmlSheet.render(
            sheet(
                Section.of("A").with(DataTable.of("", "Part", ">Mass").row("box", "3 kg"), drawing),
                Section.of("B").with(drawing)));
    assertThat(page)
        .contains("<th>Part</th><th class=\"number\">Mass</th>")
        .contains("<td>box</td><td class=\"number\">3 kg</td>")
        .contains("aria-label=\"From 74 V to 101 V\">\n<svg></svg>")
        .contains("<figcaption>Figure 1: Windows</figcaption>")
        .contains("<figcaption>Figure 2: Windows</figcaption>");
  }

  @Test
  void thePageNeedsNothingFromOutside() {
    String page = HtmlSheet.render(sheet(Section.of("A")));
    assertThat(page)
        .contains("<meta charset=\"utf-8\">")
        .contains("default-src 'none'")
        .contains("@page { size: A4;")
        .doesNotContain("<link")
        .doesNotContain("<script")
        .doesNotContain("@import")
        .doesNotContain("url(");
  }

  @Test
  void longWordsMayBreak() {
    String page = HtmlSheet.render(sheet(Section.of("A").with(new Paragraph("x".repeat(50)))));
    assertThat(page).contains("x".repeat(24) + "<wbr>" + "x".repeat(24) + "<wbr>xx</p>");
  }

  @Test
  void writesBothFilesAndLeavesNothingElse() throws IOException {
    Files.writeString(folder.resolve("index.html"), "old");
    Files.writeString(folder.resolve("other.txt"), "mine");
    SheetFiles.write(sheet(Section.of("Ω")), folder);
    assertThat(names()).containsExactly("calculation-sheet.md", "index.html", "other.txt");
    assertThat(Files.readString(folder.resolve("index.html"))).contains("Ω").endsWith("</html>\n");
    assertThat(Files.readString(folder.resolve("calculation-sheet.md"))).contains("## Ω");
  }

  @Test
  void changesNothingIfAFileCannotTakeItsPlace() throws IOException {
    Files.writeString(folder.resolve("index.html"), "old");
    Files.createDirectory(folder.resolve("calculation-sheet.md"));
    assertThatThrownBy(() -> SheetFiles.write(sheet(Section.of("A")), folder))
        .isInstanceOf(IOException.class);
    assertThat(names()).containsExactly("calculation-sheet.md", "index.html");
    assertThat(Files.readString(folder.resolve("index.html"))).isEqualTo("old");
  }

  private List<String> names() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(file -> file.getFileName().toString()).sorted().toList();
    }
  }

  @Test
  void appendicesHaveLettersAndStandInTheContents() {
    String page =
        HtmlSheet.render(
            sheet(Section.of("Pack"))
                .withAppendix(Section.of("Inputs").withParts(Section.of("Cells")))
                .withAppendix(Section.of("Working")));
    assertThat(page)
        .contains("<span class=\"number\">A</span> <a href=\"#section-A\">Inputs</a>")
        .contains("<section id=\"section-A\" class=\"appendix\">")
        .contains("<section id=\"section-A-1\">\n<h3><span class=\"number\">A.1</span> Cells</h3>")
        .contains("<section id=\"section-B\" class=\"appendix\">");
  }

  @Test
  void carriesVersionAndTheWholeFingerprint() {
    Fingerprint print = Fingerprint.ofText("abc");
    assertThat(HtmlSheet.render(sheet().withInputs(print)))
        .contains("<p class=\"imprint\">Calculated with Wattwright ")
        .contains(print.toString())
        .contains("(SHA-256 ");
    assertThat(HtmlSheet.render(sheet())).contains("no fingerprint of the inputs taken.");
  }
}
