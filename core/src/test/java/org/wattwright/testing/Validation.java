package org.wattwright.testing;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentSkipListMap;
import javax.measure.Quantity;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.assertj.core.api.Assertions;
import org.junit.jupiter.api.extension.BeforeAllCallback;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.wattwright.units.Kind;

/**
 * Compares our numbers with published ones and writes down how they agree.
 *
 * <p>Registered as a static extension. At the end of the run each package's results stand in {@code
 * target/validation/<package>.csv}, one line a row, sorted by identifier. Every comparison is
 * written, also one that fails its test.
 */
public final class Validation implements BeforeAllCallback {
  /** What an agreement proves. */
  public enum Label {
    /** The library works it out: proves the method. */
    COMPUTED,
    /** A table entry that the library carries: proves the copy. */
    TRANSCRIBED,
    /** A plausibility band. */
    BOUND
  }

  private static final ExtensionContext.Namespace NAMESPACE =
      ExtensionContext.Namespace.create(Validation.class);

  private static final CSVFormat FORMAT =
      CSVFormat.RFC4180
          .builder()
          .setRecordSeparator('\n')
          .setHeader(
              "id",
              "package",
              "topic",
              "quantity",
              "conditions",
              "value",
              "unit",
              "tolerance",
              "source",
              "obtained",
              "ours",
              "deviation",
              "verdict",
              "label")
          .get();

  /** Lines by identifier, shared by all test classes of one package. */
  private record Lines(String name, Map<String, Object[]> byId) implements AutoCloseable {
    @Override
    public void close() throws IOException {
      Path folder = Files.createDirectories(Path.of("target", "validation"));
      try (Writer out = Files.newBufferedWriter(folder.resolve(name + ".csv"), UTF_8);
          CSVPrinter printer = new CSVPrinter(out, FORMAT)) {
        for (Object[] line : byId.values()) {
          printer.printRecord(line);
        }
      }
    }
  }

  private final String packageName;
  private Map<String, Object[]> lines = new ConcurrentHashMap<>();

  private Validation(String packageName) {
    this.packageName = packageName;
  }

  /** Results of one package, named by the last part of its name. */
  public static Validation of(String packageName) {
    return new Validation(packageName);
  }

  @Override
  public void beforeAll(ExtensionContext context) {
    lines =
        context
            .getRoot()
            .getStore(NAMESPACE)
            .getOrComputeIfAbsent(
                packageName, name -> new Lines(name, new ConcurrentSkipListMap<>()), Lines.class)
            .byId();
  }

  /** Compares a number that the library works out, in the unit of the row. */
  public void computed(ReferenceRow row, double ours) {
    compare(row, ours, Label.COMPUTED);
  }

  /** Compares a quantity that the library works out. */
  public <Q extends Quantity<Q>> void computed(ReferenceRow row, Quantity<Q> ours, Kind<Q> kind) {
    compare(row, row.unit(kind).valueOf(ours), Label.COMPUTED);
  }

  /** Compares a text that the library works out, such as a verdict. */
  public void computed(ReferenceRow row, String ours) {
    record(
        row, ours, ours.equals(row.value()), ours.equals(row.value()) ? "0" : "", Label.COMPUTED);
    row.assertMatches(ours);
  }

  /** Compares a table entry that the library carries, in the unit of the row. */
  public void transcribed(ReferenceRow row, double ours) {
    compare(row, ours, Label.TRANSCRIBED);
  }

  /** Compares a table entry that the library carries. */
  public <Q extends Quantity<Q>> void transcribed(
      ReferenceRow row, Quantity<Q> ours, Kind<Q> kind) {
    compare(row, row.unit(kind).valueOf(ours), Label.TRANSCRIBED);
  }

  /** Compares with a plausibility band, in the unit of the row. */
  public void bound(ReferenceRow row, double ours) {
    compare(row, ours, Label.BOUND);
  }

  /** Compares with a plausibility band. */
  public <Q extends Quantity<Q>> void bound(ReferenceRow row, Quantity<Q> ours, Kind<Q> kind) {
    compare(row, row.unit(kind).valueOf(ours), Label.BOUND);
  }

  /**
   * Writes down a disagreement with the explanation that was worked out by hand. Fails where the
   * two agree after all, so that no excuse outlives its cause.
   */
  public void differs(ReferenceRow row, double ours, String explanation) {
    String deviation = row.tolerance().deviation(row.number(), ours);
    write(row, Double.toString(ours), deviation, "differs: " + explanation, "computed");
    Assertions.assertThat(ours)
        .as("%s, tolerance %s", row, row.tolerance())
        .isFinite()
        .matches(value -> !row.admits(value), "lies outside of the tolerance, as explained");
  }

  /** Writes down that nothing in the library corresponds to this row, and why. */
  public void notCovered(ReferenceRow row, String why) {
    write(row, "", "", "not covered: " + why, "");
  }

  private void compare(ReferenceRow row, double ours, Label label) {
    String deviation = row.tolerance().deviation(row.number(), ours);
    record(row, Double.toString(ours), row.admits(ours), deviation, label);
    row.assertMatches(ours);
  }

  private void record(
      ReferenceRow row, String ours, boolean agrees, String deviation, Label label) {
    String verdict = agrees ? "agrees" : "DIFFERS";
    write(row, ours, deviation, verdict, label.name().toLowerCase(Locale.ROOT));
  }

  private void write(
      ReferenceRow row, String ours, String deviation, String verdict, String label) {
    Object[] line = {
      row.id(),
      packageName,
      row.topic(),
      row.quantity(),
      row.conditionsText(),
      row.value(),
      row.unit(),
      row.tolerance(),
      row.source(),
      row.obtained(),
      ours,
      deviation,
      verdict,
      label
    };
    lines.put(row.id(), line);
  }
}
