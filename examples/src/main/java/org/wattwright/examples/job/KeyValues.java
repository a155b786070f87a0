package org.wattwright.examples.job;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.wattwright.check.Basis;

/**
 * A table with one statement a row: key, value, unit, basis, source. Keys are known by being asked
 * for; any other is an error.
 *
 * <p>Not thread-safe; of no use after {@link #rejectUnknown}.
 */
final class KeyValues {
  private final String file;
  private final Map<String, Entry> entries = new LinkedHashMap<>();
  private final Set<String> asked = new HashSet<>();

  private record Entry(String key, Field field, Statement statement) {}

  private KeyValues(String file, List<Entry> rows) {
    this.file = file;
    rows.forEach(this::add);
  }

  static KeyValues read(Path path) {
    return new KeyValues(TextFile.nameOf(path), CsvTable.read(path).map(KeyValues::entry));
  }

  private static Entry entry(CsvRow row) {
    String key = row.field("key").text();
    String value = row.field("value").text();
    String unit = row.optional("unit").map(Field::text).orElse("");
    String where = row.origin() + ", key " + Quoted.of(key);
    Field field = new Field(value, unit, where, where);
    Basis basis = row.optional("basis").map(f -> f.choice(Basis.class)).orElse(Basis.DATA_SHEET);
    String source = row.optional("source").map(Field::text).orElse("");
    return new Entry(
        key, field, new Statement("job", key, field.asGiven(), basis, source, row.origin()));
  }

  private void add(Entry entry) {
    Entry first = entries.putIfAbsent(entry.key(), entry);
    if (first != null) {
      throw entry
          .statement()
          .origin()
          .error(
              "key "
                  + Quoted.of(entry.key())
                  + " stands twice, first in line "
                  + first.statement().origin().line());
    }
  }

  Field field(String key) {
    return optional(key)
        .orElseThrow(() -> JobFileException.of(file + ": missing key " + Quoted.of(key)));
  }

  Optional<Field> optional(String key) {
    asked.add(key);
    return Optional.ofNullable(entries.get(key)).map(Entry::field);
  }

  /** The statement of a key that is there, with its basis and source. */
  Statement statement(String key) {
    field(key);
    return Objects.requireNonNull(entries.get(key), key).statement();
  }

  List<Statement> statements() {
    return entries.values().stream().map(Entry::statement).toList();
  }

  void rejectUnknown() {
    for (Entry entry : entries.values()) {
      if (!asked.contains(entry.key())) {
        List<String> known = new ArrayList<>(asked);
        known.sort(null);
        throw entry
            .statement()
            .origin()
            .error(
                "unknown key "
                    + Quoted.of(entry.key())
                    + "; known are "
                    + String.join(", ", known));
      }
    }
  }
}
