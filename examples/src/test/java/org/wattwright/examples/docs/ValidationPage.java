package org.wattwright.examples.docs;

import static java.util.stream.Collectors.groupingBy;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

/** The page that lists every check value, made of what the tests wrote down. */
final class ValidationPage {
  private static final List<String> PACKAGES =
      List.of(
          "units",
          "internal",
          "profile",
          "battery",
          "thermal",
          "conductor",
          "vehicle",
          "voltage",
          "protection",
          "charging",
          "drive",
          "installation");

  private static final String HEAD =
      """
      # Validation

      Every published value that the tests compare with, its source, ours, and how far apart the two are. The tests write this page; one of them fails when it
      is stale. `mvn -B -ntp verify -Dwattwright.update=true` writes it anew.

      - **computed**: the library works the value out. These prove the method, and are counted apart.
      - **transcribed**: a table entry that the library carries. These prove the copy.
      - **bound**: a plausibility band, which proves that a number is not absurd.

      *Obtained* says how the published value came here: *seen* in the text named, *computed* outside of the library by the formula of the source, *from memory*
      (nobody has looked at the page yet), or *common practice*. A deviation is relative (rel) or in the unit of the row (abs), as its tolerance is; below
      1e-9 it is rounding and shown as 0. The tolerance is the source's: half of its last digit, or what it states. Ours is shown to six digits.
      """;

  private final Map<String, List<ValidationLine>> covered = new LinkedHashMap<>();
  private final List<ValidationLine> uncovered;
  private final List<ValidationLine> explained;

  ValidationPage(List<ValidationLine> lines) {
    Map<String, ValidationLine> byKey = new LinkedHashMap<>();
    for (ValidationLine line : lines) {
      byKey.merge(line.key(), line, (old, fresh) -> fresh.isCovered() ? fresh : old);
    }
    for (String name : PACKAGES) {
      covered.put(
          name,
          byKey.values().stream()
              .filter(line -> line.isCovered() && line.packageName().equals(name))
              .toList());
    }
    uncovered = byKey.values().stream().filter(line -> !line.isCovered()).toList();
    explained = byKey.values().stream().filter(ValidationLine::isExplained).toList();
  }

  int rows() {
    return coveredRows() + uncovered.size();
  }

  int coveredRows() {
    return covered.values().stream().mapToInt(List::size).sum();
  }

  List<String> lines() {
    List<String> page = new ArrayList<>(HEAD.lines().toList());
    summary(page);
    disagreements(page);
    covered.forEach((name, lines) -> table(page, name, lines));
    notCovered(page);
    return page;
  }

  private void summary(List<String> page) {
    page.addAll(List.of("", "## Summary", ""));
    page.add("| package | computed | transcribed | bound | of these from memory | differ |");
    page.add("| --- | ---: | ---: | ---: | ---: | ---: |");
    covered.forEach((name, lines) -> page.add(summaryRow("`" + name + "`", lines)));
    page.add(summaryRow("**all**", covered.values().stream().flatMap(List::stream).toList()));
    page.add("");
    page.add(
        String.format(
            Locale.ROOT,
            "%d rows of published values: %d compared, %d that nothing in the library corresponds to, each with its reason at the end.",
            rows(),
            coveredRows(),
            uncovered.size()));
  }

  private static String summaryRow(String name, List<ValidationLine> lines) {
    return String.format(
        Locale.ROOT,
        "| %s | %d | %d | %d | %d | %d |",
        name,
        count(lines, "computed"),
        count(lines, "transcribed"),
        count(lines, "bound"),
        lines.stream().filter(ValidationLine::isFromMemory).count(),
        lines.stream().filter(ValidationLine::isExplained).count());
  }

  private static long count(List<ValidationLine> lines, String label) {
    return lines.stream().filter(line -> line.label().equals(label)).count();
  }

  private void disagreements(List<String> page) {
    page.addAll(List.of("", "## Where a published value and ours differ", ""));
    if (explained.isEmpty()) {
      page.add("Nowhere.");
      return;
    }
    page.add("| id | quantity | published | ours | why |");
    page.add("| --- | --- | ---: | ---: | --- |");
    for (ValidationLine line : explained) {
      page.add(
          row(List.of(line.id(), line.quantity(), line.published(), line.ours(), line.reason())));
    }
  }

  private static void table(List<String> page, String name, List<ValidationLine> lines) {
    page.addAll(List.of("", "## `" + name + "`", ""));
    page.add(
        "| id | quantity | conditions | source | obtained | published | ours | deviation | tolerance | verdict | label |");
    page.add("| --- | --- | --- | --- | --- | ---: | ---: | ---: | --- | --- | --- |");
    lines.forEach(line -> page.add(row(line.cells())));
  }

  private void notCovered(List<String> page) {
    page.addAll(List.of("", "## Rows that nothing corresponds to", ""));
    page.add("| why | rows |");
    page.add("| --- | --- |");
    Map<String, List<ValidationLine>> byReason =
        uncovered.stream()
            .collect(
                groupingBy(
                    ValidationLine::reason, TreeMap::new, java.util.stream.Collectors.toList()));
    byReason.forEach(
        (why, lines) ->
            page.add(
                row(
                    List.of(
                        why, String.join(", ", lines.stream().map(ValidationLine::id).toList())))));
  }

  private static String row(List<String> cells) {
    return "| " + String.join(" | ", cells.stream().map(ValidationPage::escaped).toList()) + " |";
  }

  /** Keeps a cell in its column, and a star or an angle bracket from meaning something. */
  private static String escaped(String cell) {
    return cell.replaceAll("\\s+", " ").replaceAll("([\\\\|*_<>`\\[\\]])", "\\\\$1");
  }
}
