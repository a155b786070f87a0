package org.wattwright.examples.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.wattwright.units.Measures.ampereHours;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.wattwright.check.Basis;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;
import org.wattwright.units.Price;
import org.wattwright.units.StateOfCharge;

class CsvTableTest {
  private static final String HEADER = "name,capacity [Ah]\n";

  @TempDir Path folder;

  private Path write(String text) {
    return write(text, StandardCharsets.UTF_8);
  }

  private Path write(String text, Charset charset) {
    try {
      return Files.writeString(folder.resolve("modules.csv"), text, charset);
    } catch (IOException e) {
      throw new AssertionError(e);
    }
  }

  private static String capacityOf(CsvRow row) {
    return row.field("name").text() + "=" + row.field("capacity").positive(Kind.CHARGE);
  }

  private Object only(String header, String cell, Function<Field, ?> reader) {
    Path file = write("name," + header + "\nx," + cell + "\n");
    String column = header.replaceFirst("\\[.*", "").strip();
    List<?> values =
        CsvTable.read(file)
            .map(
                row -> {
                  row.field("name").text();
                  return reader.apply(row.field(column));
                });
    return values.get(0);
  }

  private void assertError(String text, String message) {
    assertThatThrownBy(() -> CsvTable.read(write(text)).map(CsvTableTest::capacityOf))
        .isInstanceOf(JobFileException.class)
        .hasMessage(message);
  }

  @Test
  void readsRowsInOrderAndInTheUnitOfTheHeader() {
    Path file = write("name, capacity [mAh] \nflat, 105000 \n tall ,60e3\n");
    assertThat(CsvTable.read(file).map(CsvTableTest::capacityOf))
        .containsExactly("flat=105000 mA·h", "tall=60000 mA·h");
  }

  @Test
  void theSameChargeInAnotherUnitIsEqual() {
    assertThat(only("capacity [mAh]", "105000", f -> f.positive(Kind.CHARGE)))
        .isEqualTo(ampereHours(105));
  }

  @Test
  void skipsCommentsEmptyLinesAndRowsOfEmptyCells() {
    Path file = write("# a remark\n\n" + HEADER + "\n# another, with a comma\na,1\n , \nb,2\n\n");
    assertThat(CsvTable.read(file).map(CsvTableTest::capacityOf))
        .containsExactly("a=1 A·h", "b=2 A·h");
  }

  @Test
  void acceptsAByteOrderMarkAndWindowsLineEnds() {
    Path file = write("\uFEFFname,capacity [Ah]\r\na,1\r\nb,2");
    assertThat(CsvTable.read(file).map(CsvTableTest::capacityOf))
        .containsExactly("a=1 A·h", "b=2 A·h");
  }

  @Test
  void namesFileLineAndColumnOfWhatIsNoNumber() {
    assertError(
        "# remark\n" + HEADER + "a,1\n\nb,1o5\n",
        "modules.csv line 5, column \"capacity [Ah]\": not a number: \"1o5\"");
  }

  @Test
  void countsLinesAcrossQuotedCells() {
    assertError(
        HEADER + "\"a\nb\nc\",1\n\"d\ne\",x\n",
        "modules.csv line 5, column \"capacity [Ah]\": not a number: \"x\"");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "NaN        | not a number: \"NaN\"",
        "Infinity   | not a number: \"Infinity\"",
        "0x10       | not a number: \"0x10\"",
        "1 000      | not a number: \"1 000\"",
        "105 Ah     | not a number: \"105 Ah\"",
        "5f         | not a number: \"5f\"",
        "-105       | must be > 0 Ah, but was -105 Ah",
        "−105       | must be > 0 Ah, but was −105 Ah",
        "0          | must be > 0 Ah, but was 0 Ah",
      })
  void rejectsWhatIsNoPositiveNumber(String cell, String message) {
    assertError(HEADER + "a," + cell, "modules.csv line 2, column \"capacity [Ah]\": " + message);
  }

  @Test
  void rejectsADecimalCommaWithAHint() {
    assertError(
        HEADER + "a,\"1,5\"\n",
        "modules.csv line 2, column \"capacity [Ah]\": not a number: \"1,5\""
            + " (use a decimal point, no grouping)");
  }

  @ParameterizedTest
  @ValueSource(strings = {"1e999", "1.1e12", "1e300", "1e-13", "1e-300"})
  void rejectsANumberBeyondAllBounds(String number) {
    assertError(
        "name,capacity [Ah]\na," + number + "\n",
        "modules.csv line 2, column \"capacity [Ah]\": must be from 1e-12 to 1e12 in size, or 0,"
            + " but was "
            + number
            + " Ah");
  }

  @Test
  void rejectsAUnitOfAnotherKind() {
    assertError(
        "name,capacity [kg]\na,1\n",
        "modules.csv line 1, column \"capacity [kg]\": not a unit of charge: \"kg\";"
            + " one of C, mA·h, A·h");
  }

  @Test
  void rejectsAMissingUnit() {
    assertError(
        "name,capacity\na,1\n",
        "modules.csv line 1, column \"capacity\": needs a unit of charge in brackets:"
            + " one of C, mA·h, A·h");
  }

  @Test
  void rejectsAUnitWhereThereIsNone() {
    assertError(
        "name [V],capacity [Ah]\na,1\n",
        "modules.csv line 1, column \"name [V]\": takes no unit, but has \"V\"");
  }

  @Test
  void rejectsAMissingColumn() {
    assertError(
        "name,capcity [Ah]\na,1\n",
        "modules.csv line 1: missing column \"capacity\"; columns are name, capcity [Ah]");
  }

  @Test
  void rejectsAnUnknownColumn() {
    assertError(
        "name,capacity [Ah],colour\na,1,red\n",
        "modules.csv line 1, column \"colour\": unknown column; known are capacity, name");
  }

  @Test
  void rejectsARepeatedColumnEvenInAnotherUnit() {
    assertError(
        "name,capacity [Ah],capacity [mAh]\na,1,1\n",
        "modules.csv line 1, column \"capacity\": stands twice, in columns 2 and 3");
  }

  @Test
  void rejectsAColumnWithoutName() {
    assertError("name,,capacity [Ah]\na,,1\n", "modules.csv line 1: column 2 has no name");
  }

  @Test
  void rejectsSemicolons() {
    assertError(
        "name;capacity [Ah]\na;1\n",
        "modules.csv line 1: cells must be separated by commas, not by semicolons or tabs");
  }

  @Test
  void rejectsTooFewAndTooManyCells() {
    assertError(HEADER + "a\n", "modules.csv line 2: 1 cells where the header has 2");
    assertError(HEADER + "a,1,2\n", "modules.csv line 2: 3 cells where the header has 2");
  }

  @Test
  void rejectsAnEmptyCellThatMustBeFilled() {
    assertError(HEADER + "a, \n", "modules.csv line 2, column \"capacity [Ah]\": is empty");
  }

  @Test
  void rejectsEmptyFilesOfAllSorts() {
    String empty = "modules.csv is empty: expected a header line and at least one row";
    assertError("", empty);
    assertError("\uFEFF \n\n", empty);
    assertError("# only a remark\n", "modules.csv holds comments only: expected a header line");
    assertError(HEADER, "modules.csv has a header line but no rows");
  }

  @ParameterizedTest
  @CsvSource({"'\"a\"b,1'", "'\"a,1'", "'a,\"1\" 2'"})
  void rejectsMisplacedQuotationMarks(String row) {
    assertError(
        HEADER + "x,1\n" + row + "\n", "modules.csv line 3: misplaced or missing quotation mark");
  }

  @Test
  void rejectsAMissingFileAndAFolder() throws IOException {
    Path file = folder.resolve("modules.csv");
    assertThatThrownBy(() -> CsvTable.read(file))
        .isInstanceOf(JobFileException.class)
        .hasMessage("modules.csv is missing in " + folder.toAbsolutePath());
    Files.createDirectory(file);
    assertThatThrownBy(() -> CsvTable.read(file)).hasMessage("modules.csv is not a file");
  }

  @Test
  void rejectsOtherEncodings() {
    assertThatThrownBy(() -> CsvTable.read(write(HEADER + "Öl,1\n", StandardCharsets.ISO_8859_1)))
        .isInstanceOf(JobFileException.class)
        .hasMessage("modules.csv line 2: not UTF-8 text (save the file as UTF-8)");
    assertThatThrownBy(() -> CsvTable.read(write(HEADER + "a,1\n", StandardCharsets.UTF_16)))
        .hasMessage("modules.csv line 1: not UTF-8 text (save the file as UTF-8)");
    assertThatThrownBy(() -> CsvTable.read(write(HEADER + "a,1\n", StandardCharsets.UTF_16LE)))
        .hasMessage("modules.csv line 1: holds a zero byte: not UTF-8 text");
  }

  @Test
  void takesAsManyRowsAsItSaysAndNotOneMore() {
    String most = HEADER + "a,1\n".repeat(CsvTable.MOST_ROWS);
    assertThat(CsvTable.read(write(most)).map(CsvTableTest::capacityOf))
        .hasSize(CsvTable.MOST_ROWS);
    assertError(most + "a,1\n", "modules.csv line 10002: more than 10000 rows");
  }

  @Test
  void aMillionLinesAreOneClearError() {
    assertError(HEADER + "a,1\n".repeat(1_000_000), "modules.csv line 10002: more than 10000 rows");
  }

  @Test
  void aFileTooLargeIsOneClearError() {
    assertError(HEADER + "\"" + "x".repeat(TextFile.MOST_BYTES), "modules.csv is larger than 8 MB");
  }

  @Test
  void messagesStayOnOneShortLine() {
    assertThatThrownBy(
            () ->
                CsvTable.read(write(HEADER + "a,\"" + "1\n\u001b[31m\u202e".repeat(5000) + "\"\n"))
                    .map(CsvTableTest::capacityOf))
        .satisfies(
            e ->
                assertThat(e.getMessage())
                    .doesNotContainPattern("\\p{Cc}|\\p{Cf}")
                    .hasSizeLessThan(200));
  }

  @Test
  void tellsTheLineWhenTheLibraryRejectsAValue() {
    Path file = write("name\na\nb\n");
    assertThatThrownBy(
            () ->
                CsvTable.read(file)
                    .map(
                        row -> {
                          if (row.field("name").text().equals("b")) {
                            throw InvalidInputException.of("Cell.mass", "> 0 kg", "-1 kg");
                          }
                          return row;
                        }))
        .isInstanceOf(JobFileException.class)
        .hasMessage("modules.csv line 3: Cell.mass must be > 0 kg, but was -1 kg");
  }

  @Test
  void anOptionalCellMayBeEmptyAndItsColumnMissing() {
    Path file = write("name,mass [kg]\na,\nb,3\n");
    List<String> masses =
        CsvTable.read(file)
            .map(
                row ->
                    row.field("name").text()
                        + row.optional("mass").map(f -> f.positive(Kind.MASS).toString())
                        + row.optional("price").isPresent());
    assertThat(masses).containsExactly("aOptional.emptyfalse", "bOptional[3 kg]false");
  }

  @Test
  void readsSharesAndStatesOfCharge() {
    assertThat(only("efficiency [%]", "93", Field::share)).isEqualTo(0.93);
    assertThat(only("efficiency [1]", "0.93", Field::share)).isEqualTo(0.93);
    assertThat(only("soc [%]", "0", Field::stateOfCharge)).isEqualTo(StateOfCharge.EMPTY);
    assertThatThrownBy(() -> only("efficiency [%]", "101", Field::share))
        .hasMessageEndingWith("must be > 0 % and ≤ 100 %, but was 101 %");
    assertThatThrownBy(() -> only("efficiency [%]", "0", Field::share))
        .hasMessageEndingWith("must be > 0 % and ≤ 100 %, but was 0 %");
    assertThatThrownBy(() -> only("soc [1]", "20", Field::stateOfCharge))
        .hasMessageEndingWith("must be from 0 % to 100 %, but was 20 1");
  }

  @Test
  void readsCounts() {
    assertThat(only("series", "12", f -> f.count(1, 20))).isEqualTo(12);
    assertThatThrownBy(() -> only("series", "1.5", f -> f.count(1, 20)))
        .hasMessageEndingWith("not a whole number: \"1.5\"");
    assertThatThrownBy(() -> only("series", "21", f -> f.count(1, 20)))
        .hasMessageEndingWith("must be from 1 to 20, but was 21");
    assertThatThrownBy(() -> only("series", "−1", f -> f.count(1, 20)))
        .hasMessageEndingWith("must be from 1 to 20, but was −1");
  }

  @Test
  void readsChoicesWhateverTheCapitals() {
    assertThat(only("basis", "Data Sheet", f -> f.choice(Basis.class))).isEqualTo(Basis.DATA_SHEET);
    assertThatThrownBy(() -> only("basis", "guess", f -> f.choice(Basis.class)))
        .hasMessage(
            "modules.csv line 2, column \"basis\":"
                + " not one of measured, data sheet, estimated: \"guess\"");
  }

  @Test
  void readsPrices() {
    assertThat(only("price [EUR]", "1250.50", Field::price)).isEqualTo(Price.of("1250.5", "EUR"));
    assertThatThrownBy(() -> only("price", "1", Field::price))
        .hasMessage(
            "modules.csv line 1, column \"price\": needs a currency in brackets, such as [EUR]");
    assertThatThrownBy(() -> only("price [XXZ]", "1", Field::price))
        .hasMessageContaining("line 2, column \"price [XXZ]\"");
    assertThatThrownBy(() -> only("price [EUR]", "-1", Field::price))
        .hasMessageContaining("must be ≥ 0");
  }

  @Test
  void readsNumbersWithoutUnit() {
    assertThat(only("years", "7.5", Field::plainNumber)).isEqualTo(7.5);
    assertThatThrownBy(() -> only("years", "-1", Field::plainNumber))
        .hasMessageEndingWith("must be ≥ 0 and finite, but was -1");
  }

  @Test
  void aQuantityMayBeZeroOrNegativeWhereThatMakesSense() {
    assertThat(only("resistance [mΩ]", "0", f -> f.nonNegative(Kind.RESISTANCE)).toString())
        .isEqualTo("0 mΩ");
    assertThat(only("temperature [°C]", "-5", f -> f.quantity(Kind.TEMPERATURE)).toString())
        .isEqualTo("-5 °C");
    assertThatThrownBy(() -> only("resistance [mΩ]", "-1", f -> f.nonNegative(Kind.RESISTANCE)))
        .hasMessageEndingWith("must be ≥ 0 mΩ, but was -1 mΩ");
  }

  @Test
  void rejectsTemperaturesBelowAbsoluteZero() {
    assertThatThrownBy(() -> only("temperature [°C]", "-300", f -> f.quantity(Kind.TEMPERATURE)))
        .isInstanceOf(JobFileException.class)
        .hasMessageContaining("line 2, column \"temperature [°C]\"");
  }
}
