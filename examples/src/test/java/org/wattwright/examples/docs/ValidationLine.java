package org.wattwright.examples.docs;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.io.Reader;
import java.math.BigDecimal;
import java.math.MathContext;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** One check value as the tests of the library wrote it down. */
record ValidationLine(CSVRecord values) {
  /** Digits of ours that are shown: fewer than any two machines could differ in. */
  private static final MathContext SHOWN = new MathContext(6);

  /** A deviation below this is rounding. */
  private static final BigDecimal ROUNDING = new BigDecimal("1e-9");

  private static final CSVFormat FORMAT =
      CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();

  /** Every line of every file of a folder. */
  static List<ValidationLine> readAll(Path folder) throws IOException {
    List<ValidationLine> lines = new ArrayList<>();
    try (Stream<Path> files = Files.list(folder)) {
      for (Path file : files.filter(f -> f.toString().endsWith(".csv")).sorted().toList()) {
        try (Reader in = Files.newBufferedReader(file, UTF_8);
            CSVParser parser = FORMAT.parse(in)) {
          parser.forEach(values -> lines.add(new ValidationLine(values)));
        }
      }
    }
    return lines;
  }

  private String text(String column) {
    return values.get(column);
  }

  String id() {
    return text("id");
  }

  /** The package, without what tells two files of one package apart. */
  String packageName() {
    return text("package").replaceFirst("[.].*", "");
  }

  /** What makes a row the same row wherever it is compared. */
  String key() {
    return String.join("|", id(), text("quantity"), text("conditions"));
  }

  boolean isCovered() {
    return !text("label").isEmpty();
  }

  String label() {
    return text("label");
  }

  boolean isExplained() {
    return text("verdict").startsWith("differs: ");
  }

  boolean isFromMemory() {
    return text("obtained").contains("memory");
  }

  String verdict() {
    return isExplained() ? "differs" : text("verdict");
  }

  /** Why it is not covered, or why it differs. */
  String reason() {
    return text("verdict").replaceFirst("^(not covered|differs): ", "");
  }

  String quantity() {
    return text("quantity");
  }

  String source() {
    return text("source");
  }

  private String obtained() {
    String how = text("obtained").replaceFirst(":.*", "");
    if (how.equals("memory")) {
      return "from memory";
    }
    return isFromMemory() ? how + " (from memory)" : how;
  }

  String published() {
    String unit = text("unit");
    return unit.isEmpty() || unit.equals("1") ? text("value") : text("value") + " " + unit;
  }

  String ours() {
    String ours = text("ours");
    return text("tolerance").equals("text") ? ours : rounded(new BigDecimal(ours));
  }

  private String deviation() {
    String[] words = text("deviation").split(" ");
    if (words.length < 2) {
      return words[0];
    }
    BigDecimal value = new BigDecimal(words[1]);
    return value.abs().compareTo(ROUNDING) < 0
        ? "0"
        : words[0] + " " + rounded(value.round(new MathContext(1)));
  }

  private static String rounded(BigDecimal value) {
    BigDecimal short6 = value.round(SHOWN).stripTrailingZeros();
    int exponent = short6.precision() - short6.scale();
    return exponent > 7 || exponent < -4 ? short6.toString() : short6.toPlainString();
  }

  List<String> cells() {
    return List.of(
        id(),
        quantity(),
        text("conditions"),
        source(),
        obtained(),
        published(),
        ours(),
        deviation(),
        text("tolerance"),
        verdict(),
        label());
  }
}
