package org.wattwright.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class MainTest {
  @TempDir Path folder;

  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private final ByteArrayOutputStream err = new ByteArrayOutputStream();
  private Path job;
  private Path sheet;

  @BeforeEach
  void copyTheDemonstration() throws IOException {
    job = Files.createDirectory(folder.resolve("job"));
    sheet = folder.resolve("sheet");
    DemonstrationFolder.copyTo(job);
  }

  private int run(Object... arguments) {
    String[] args = new String[arguments.length];
    for (int i = 0; i < args.length; i++) {
      args[i] = arguments[i].toString();
    }
    return Main.run(
        args,
        new PrintStream(out, true, StandardCharsets.UTF_8),
        new PrintStream(err, true, StandardCharsets.UTF_8));
  }

  private void assertOneErrorLineAndNothingWritten(int status, String message) {
    assertThat(status).isEqualTo(1);
    assertThat(err.toString(StandardCharsets.UTF_8))
        .startsWith("error: ")
        .contains(message)
        .endsWith(System.lineSeparator())
        .hasLineCount(1);
    assertThat(out.toString(StandardCharsets.UTF_8)).isEmpty();
    assertThat(sheet).doesNotExist();
  }

  /** Without the spaces that line up the columns. */
  private static String tight(String markdown) {
    return markdown.replaceAll(" {2,}", " ");
  }

  private void replace(String file, String find, String replacement) throws IOException {
    String text = Files.readString(job.resolve(file));
    assertThat(text).contains(find);
    Files.writeString(job.resolve(file), text.replace(find, replacement));
  }

  @Test
  void printsTheSheetAndWritesThePage() throws IOException {
    assertThat(run(job, sheet)).isZero();
    String markdown = out.toString(StandardCharsets.UTF_8);
    assertThat(tight(markdown)).contains("| usable energy | 28 kWh | data sheet |");
    assertThat(tight(markdown)).contains("| resistance of salvaged cell 120 |");
    assertThat(err.toString(StandardCharsets.UTF_8)).isEmpty();
    assertThat(markdown).startsWith("# Electric conversion of a 1961 half-ton delivery van\n");
    assertThat(Files.readString(sheet.resolve("calculation-sheet.md"))).isEqualTo(markdown);
    assertThat(Files.readString(sheet.resolve("index.html")))
        .contains("plate cell 105")
        .endsWith("</html>\n");
  }

  @Test
  void tenLinesWithCautionsComeFirstThenAllCautions() {
    run(job, sheet);
    String markdown = out.toString(StandardCharsets.UTF_8);
    assertThat(markdown.indexOf("\n## Cautions\n"))
        .isLessThan(markdown.indexOf("\n## Appendix A: Inputs\n"));
    assertThat(markdown.indexOf("## ")).isEqualTo(markdown.indexOf("## In ten lines"));
    String firstPage = markdown.substring(0, markdown.indexOf("\n## Cautions\n"));
    assertThat(firstPage).contains("High voltage kills").contains("licensed engineer");
  }

  @Test
  void showsMassesAndAxles() throws IOException {
    assertThat(run(job, sheet)).isZero();
    String markdown = tight(out.toString(StandardCharsets.UTF_8));
    assertThat(markdown.substring(markdown.indexOf("## Masses and axles")))
        .contains("| kerb | before | 555 kg | 390 kg | 945 kg | 58.73 % |")
        .contains("| front axle load against its plate | ≤ 760 kg |")
        .contains("### Parts removed and added")
        .contains("| out | engine with clutch and ancillaries | 131 kg |")
        .contains("### Modules in the bays")
        .contains("### Height of the centre of gravity");
    assertThat(Files.readString(sheet.resolve("index.html")))
        .contains("id=\"side-view-plot\"")
        .contains("Masses and axles");
  }

  @Test
  void theFirstPageAnswersTheCustomer() {
    run(job, sheet);
    String markdown = tight(out.toString(StandardCharsets.UTF_8));
    assertThat(markdown.substring(0, markdown.indexOf("\n## Cautions\n")))
        .containsSubsequence(
            "| Verdict | Open: no limit is broken as far as known, but data are missing (",
            "| What goes in | 18 × tall module B (6 in series, 3 strings), 194.4 kg; rear drive",
            "| Energy | Usable energy at 8 kW from 100 % to 10 %: 29.29 kW·h ≥ 28 kW·h. ",
            "| Range | new 2",
            "| Charging | ",
            "| Performance | Top speed 80 km/h, limited by motor speed; 0–50 km/h in 4.3 s; laden",
            "| Weight and axles | kerb 1063 kg (+117.7 kg): front 558.2 kg (+3.24 kg), rear 504.5 kg",
            "| Load space | Modules lie ",
            "| What is missing | ",
            "| What to do next | ");
  }

  @Test
  void theNextBestPackStandsBesideTheOneChosen() {
    run(job, sheet);
    String markdown = tight(out.toString(StandardCharsets.UTF_8));
    assertThat(markdown.substring(markdown.indexOf("### Against the next best")))
        .contains("6s3p tall module B against ")
        .contains("| mass of the modules | 194.4 kg | ")
        .contains("| strings in parallel | 3 | 3 | 0 |")
        .contains("| range when new, first cycle | ")
        .contains("more checks changed their margin alone");
  }

  /** The part to read is short; catalogues, workings and passes stand behind. */
  @Test
  void cataloguesWorkingsAndPassesAreAppendices() throws IOException {
    assertThat(run(job, sheet)).isZero();
    String markdown = tight(out.toString(StandardCharsets.UTF_8));
    int behind = markdown.indexOf("\n## Appendix A: Inputs\n");
    assertThat(markdown.substring(0, behind))
        .doesNotContain("#### ")
        .doesNotContain("\n| PASS |")
        .contains("\n| CAUTION | ");
    assertThat(markdown.substring(behind))
        .containsSubsequence(
            "## Appendix B: Catalogues",
            "invented data sheet, vehicle cable",
            "| fast link 10 | 16: 3000, 20: 120, 25: 6,",
            "| C100 | 150: 120, 300: 20, 1000: 1 |",
            "| resistor 22R | 22 | 5 |",
            "## Appendix C: Cell tables",
            "## Appendix D: Working",
            "#### Circuit traction main",
            "#### Pre-charge",
            "#### Isolation budget",
            "#### Highest fault, battery",
            "#### Lowest fault into one string, from the others",
            "#### Discharge, ",
            "## Appendix E: Checks passed",
            "| PASS | ");
  }

  @Test
  void showsVacuumSettingsAndControls() throws IOException {
    assertThat(run(job, sheet)).isZero();
    String markdown = tight(out.toString(StandardCharsets.UTF_8));
    assertThat(markdown.substring(markdown.indexOf("## Brake vacuum")))
        .contains("| 7 ≥ 4 | 3 |")
        .contains("## Settings")
        .contains("| charger | charger end, pack | 99.96 V | ± 0.2 % |")
        .contains("| 3 | remote unit behind the axle, behind the axle |")
        .contains("## Controls and gauges")
        .contains("| 50 % | 44.44 % | 118.2 Ω |")
        .contains("missing: signature for touch protection of live parts");
    Files.delete(job.resolve("controls.csv"));
    out.reset();
    assertThat(run(job, sheet)).isZero();
    assertThat(out.toString(StandardCharsets.UTF_8)).doesNotContain("## Brake vacuum");
  }

  @Test
  void aJobAboutThePackAloneHasNoMasses() throws IOException {
    for (String file :
        List.of(
            "vehicle.csv",
            "masses.csv",
            "bays.csv",
            "bay-room.csv",
            "bay-links.csv",
            "seats.csv")) {
      Files.delete(job.resolve(file));
    }
    replace("job.csv", "link cable resistance per length,0.315,Ω/km", "link cable resistance,1,mΩ");
    replace("job.csv", "link joint resistance", "# link joint resistance");
    assertThat(run(job, sheet)).isZero();
    assertThat(out.toString(StandardCharsets.UTF_8))
        .contains("The vehicle was not weighed: nothing is said about axles, tyres and brakes.")
        .doesNotContain("### Modules in the bays");
  }

  @Test
  void anEstimatedPartIsAskedFor() throws IOException {
    replace("masses.csv", "springs,measured,weighed on the crane", "springs,estimated,by eye");
    run(job, sheet);
    String markdown = tight(out.toString(StandardCharsets.UTF_8));
    assertThat(markdown.substring(markdown.indexOf("## Estimated inputs")))
        .contains("| mass and place of engine with clutch and ancillaries | 131 kg | by eye |");
    assertThat(markdown).contains("558.2 kg, CAUTION");
  }

  @Test
  void saysTheSameTwice() {
    run(job, sheet);
    String first = out.toString(StandardCharsets.UTF_8);
    out.reset();
    run(job, sheet);
    assertThat(out.toString(StandardCharsets.UTF_8)).isEqualTo(first);
  }

  @Test
  void theFingerprintShowsAChangedInputAndNoChangedComment() throws IOException {
    String first = imprint();
    assertThat(first).startsWith("Calculated with Wattwright ").contains("fingerprint");
    Files.writeString(job.resolve("notes.txt"), "no input");
    replace("devices.csv", "# Invented devices.", "# Invented devices, as ever.\n");
    assertThat(imprint()).isEqualTo(first);
    replace("devices.csv", "on-board charger,charger,140,", "on-board charger,charger,141,");
    assertThat(imprint()).isNotEqualTo(first);
  }

  private String imprint() {
    out.reset();
    assertThat(run(job, sheet)).isZero();
    return out.toString(StandardCharsets.UTF_8).lines().skip(4).findFirst().orElseThrow();
  }

  @Test
  void listsWhatIsEstimated() throws IOException {
    replace("devices.csv", "9.5,data sheet,", "9.5,estimated,");
    replace("cells.csv", "1000,data sheet,", "1000,estimated,");
    run(job, sheet);
    String markdown = tight(out.toString(StandardCharsets.UTF_8));
    int start = markdown.indexOf("## Estimated inputs");
    assertThat(markdown.substring(start, markdown.indexOf("## Appendix", start)))
        .contains("| cruising power | 8 kW |")
        .contains("| all data of on-board charger |")
        .contains("| all data of plate cell 105 |")
        .contains("| capacity of plate cell 105 | 105 A·h |")
        .contains("| resistance of plate cell 105 | | resistance.csv |")
        .contains("| resistance of salvaged cell 120 | | chemistry, capacity and age |")
        .doesNotContain("pouch cell 60");
  }

  @Test
  void badInputOfEverySortIsOneLine() throws IOException {
    replace("modules.csv", ",8.8,", ",-8.8,");
    assertOneErrorLineAndNothingWritten(
        run(job, sheet),
        "modules.csv line 3, column \"mass [kg]\": must be > 0 kg, but was -8.8 kg");
  }

  @Test
  void textWithLineBreaksAndEscapesStillGivesOneLine() throws IOException {
    replace("modules.csv", ",8.8,", ",\"8\n.\u001b[31m8\",");
    assertOneErrorLineAndNothingWritten(run(job, sheet), "not a number: \"8 . [31m8\"");
  }

  @Test
  void aMillionLinesGiveOneLine() throws IOException {
    Files.writeString(
        job.resolve("ocv.csv"),
        "cell,state of charge [%],temperature [°C],voltage [V]\n" + "a,1,1,1\n".repeat(1_000_000));
    assertOneErrorLineAndNothingWritten(run(job, sheet), "ocv.csv is larger than 8 MB");
  }

  @Test
  void anEmptyFolderGivesOneLine() throws IOException {
    Path empty = Files.createDirectory(folder.resolve("empty"));
    assertOneErrorLineAndNothingWritten(run(empty, sheet), " is empty; expected job.csv");
  }

  @Test
  void aMissingFolderGivesOneLine() {
    assertOneErrorLineAndNothingWritten(run(folder.resolve("nowhere"), sheet), "does not exist");
    err.reset();
    assertOneErrorLineAndNothingWritten(run("\0", sheet), "not a path");
  }

  @Test
  void tooManyArgumentsGiveOneLine() {
    assertOneErrorLineAndNothingWritten(run(job, sheet, "more"), "but got 3 arguments");
  }

  @Test
  void anOutputFolderThatIsAFileGivesOneLine() throws IOException {
    Path file = Files.createFile(folder.resolve("file"));
    assertOneErrorLineAndNothingWritten(run(job, file), "the sheet cannot be written: ");
    assertThat(file).isEmptyFile();
  }

  @Test
  void aFailedRunLeavesTheOldSheet() throws IOException {
    run(job, sheet);
    String before = Files.readString(sheet.resolve("index.html"));
    replace("job.csv", "usable energy,28,kWh", "usable energy,abc,kWh");
    out.reset();
    assertThat(run(job, sheet)).isEqualTo(1);
    assertThat(out.toString(StandardCharsets.UTF_8)).isEmpty();
    assertThat(Files.readString(sheet.resolve("index.html"))).isEqualTo(before);
  }

  @Test
  void markupInTheJobStaysText() throws IOException {
    replace("modules.csv", "flat module A,", "<script>alert(1)</script>,");
    replace("bay-room.csv", "flat module A,", "<script>alert(1)</script>,");
    assertThat(run(job, sheet)).isZero();
    assertThat(Files.readString(sheet.resolve("index.html")))
        .contains("&lt;script&gt;")
        .doesNotContain("<script");
  }
}
