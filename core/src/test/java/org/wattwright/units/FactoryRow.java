package org.wattwright.units;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.util.List;
import java.util.stream.Stream;
import javax.measure.Quantity;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** A factory of {@link Measures}, its unit in SI from the definition, and how people type it. */
record FactoryRow(String factory, Kind<?> kind, BigDecimal si, List<String> spellings) {
  static Stream<FactoryRow> all() {
    CSVFormat format =
        CSVFormat.RFC4180
            .builder()
            .setHeader()
            .setSkipHeaderRecord(true)
            .setCommentMarker('#')
            .get();
    try (CSVParser records =
        format.parse(
            new InputStreamReader(
                FactoryRow.class.getResourceAsStream("/units/factories.csv"), UTF_8))) {
      return records.getRecords().stream().map(FactoryRow::of);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static FactoryRow of(CSVRecord values) {
    return new FactoryRow(
        values.get("factory"),
        kindOf(values.get("kind")),
        new BigDecimal(values.get("si")),
        List.of(values.get("spellings").split(" \\| ")));
  }

  private static Kind<?> kindOf(String name) {
    return Kind.values().stream().filter(k -> k.name().equals(name)).findFirst().orElseThrow();
  }

  Measure<?> of(double value) {
    try {
      return (Measure<?>) Measures.class.getMethod(factory, double.class).invoke(null, value);
    } catch (java.lang.reflect.InvocationTargetException e) {
      throw (RuntimeException) e.getCause();
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException(factory, e);
    }
  }

  @SuppressWarnings({"unchecked", "rawtypes"})
  static double siValue(Measure<?> measure) {
    return ((Kind) measure.kind()).siValueOf((Quantity) measure);
  }

  @Override
  public String toString() {
    return factory;
  }
}
