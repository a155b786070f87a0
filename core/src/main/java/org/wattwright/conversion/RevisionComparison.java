package org.wattwright.conversion;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * Two revisions of a calculation sheet, compared line by line: what was added, what was removed,
 * and what says something else.
 *
 * <pre>{@code
 * RevisionComparison revision = RevisionComparison.of(ordered.toSheet(), today.toSheet());
 * System.out.println(revision.toText());
 * }</pre>
 *
 * <p>Form plays no part: neither white space nor the order of sections, rows and columns' widths,
 * nor the lines of a drawing. A line is known again by the titles above it and by what it is about:
 * the first cell of a row, meaning and symbol of a step, code and words of a check, a sentence by
 * its words without its figures. A check that moves from the list of open ones to the appendix of
 * passes is removed there and added here.
 *
 * <p>Immutable and thread-safe.
 */
public final class RevisionComparison {
  private final List<SheetLine> added;
  private final List<SheetLine> removed;
  private final List<LineChange> changed;

  private RevisionComparison(
      List<SheetLine> added, List<SheetLine> removed, List<LineChange> changed) {
    this.added = List.copyOf(added);
    this.removed = List.copyOf(removed);
    this.changed = List.copyOf(changed);
  }

  /** What a line is known by; the count parts those of one name. */
  private record Key(String place, String name, int count) {}

  /**
   * Compares two sheets.
   *
   * @param before the earlier revision
   * @param after the later one
   * @return what differs
   */
  public static RevisionComparison of(CalculationSheet before, CalculationSheet after) {
    Map<Key, SheetLine> first = keyed(SheetLines.of(before));
    Map<Key, SheetLine> second = keyed(SheetLines.of(after));
    List<SheetLine> removed = new ArrayList<>();
    List<LineChange> changed = new ArrayList<>();
    first.forEach(
        (key, line) -> {
          SheetLine now = second.get(key);
          if (now == null) {
            removed.add(line);
          } else if (!now.value().equals(line.value())) {
            changed.add(new LineChange(line.place(), line.name(), line.value(), now.value()));
          }
        });
    List<SheetLine> added =
        second.entrySet().stream()
            .filter(entry -> !first.containsKey(entry.getKey()))
            .map(Map.Entry::getValue)
            .toList();
    return new RevisionComparison(added, removed, changed);
  }

  private static Map<Key, SheetLine> keyed(List<SheetLine> lines) {
    Map<Key, SheetLine> keyed = new LinkedHashMap<>();
    Map<Key, Integer> counts = new LinkedHashMap<>();
    for (SheetLine line : lines) {
      int count = counts.merge(new Key(line.place(), line.name(), 0), 1, Integer::sum);
      keyed.put(new Key(line.place(), line.name(), count), line);
    }
    return keyed;
  }

  /**
   * Lines that only the later revision has.
   *
   * @return in its order
   */
  public List<SheetLine> added() {
    return added;
  }

  /**
   * Lines that only the earlier revision has.
   *
   * @return in its order
   */
  public List<SheetLine> removed() {
    return removed;
  }

  /**
   * Lines of both that say something else.
   *
   * @return in the order of the earlier revision
   */
  public List<LineChange> changed() {
    return changed;
  }

  /**
   * Whether both say the same, version and fingerprint included.
   *
   * @return true if no line differs
   */
  public boolean isSame() {
    return added.isEmpty() && removed.isEmpty() && changed.isEmpty();
  }

  /**
   * The differences as a section of a sheet.
   *
   * @return a table of what changed, then one of what came and went
   */
  public Section toSection() {
    Section section = Section.of("Changes since the earlier revision");
    if (isSame()) {
      return section.with(new Paragraph("Nothing changed."));
    }
    DataTable changes = DataTable.of("Changed", "Where", "What", "Before", "Now");
    for (LineChange each : changed) {
      changes = changes.row(each.place(), each.name(), each.before(), each.after());
    }
    return section.with(changes, table("Added", added), table("Removed", removed));
  }

  private static DataTable table(String caption, List<SheetLine> lines) {
    DataTable table = DataTable.of(caption, "Where", "What", "It says");
    for (SheetLine line : lines) {
      table = table.row(line.place(), line.name(), line.value());
    }
    return table;
  }

  /**
   * Plain text, a line each: {@code ~} changed, {@code +} added, {@code -} removed.
   *
   * @return the text, ending with a line feed
   */
  public String toText() {
    List<String> lines = new ArrayList<>(List.of(toString()));
    changed.forEach(line -> lines.add("~ " + line));
    added.forEach(line -> lines.add("+ " + line));
    removed.forEach(line -> lines.add("- " + line));
    return lines.stream().collect(Collectors.joining("\n", "", "\n"));
  }

  /**
   * How many lines differ.
   *
   * @return for example {@code 3 lines changed, 1 added, 0 removed}
   */
  @Override
  public String toString() {
    return changed.size()
        + " lines changed, "
        + added.size()
        + " added, "
        + removed.size()
        + " removed";
  }
}
