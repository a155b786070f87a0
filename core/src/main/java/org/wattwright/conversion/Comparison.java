package org.wattwright.conversion;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.wattwright.internal.Require;
import org.wattwright.units.InvalidInputException;

/**
 * Two variants of a conversion side by side: their figures with the differences, and every check
 * that changed its verdict or its margin.
 *
 * <pre>{@code
 * Comparison comparison = withFlatModules.compare(withTallModules);
 * System.out.println(comparison.toText());
 * comparison.changedChecks().stream().filter(ChangedCheck::isWorse).forEach(System.out::println);
 * }</pre>
 *
 * <p>A check is found again by its code and by what it compares. Immutable and thread-safe.
 */
public final class Comparison {
  private final String first;
  private final String second;
  private final List<ComparedFigure> figures;
  private final List<ChangedCheck> changed;

  private Comparison(
      String first, String second, List<ComparedFigure> figures, List<ChangedCheck> changed) {
    this.first = first;
    this.second = second;
    this.figures = figures;
    this.changed = changed;
  }

  static Comparison of(Conversion first, Conversion second) {
    return new Comparison(
        first.title(),
        second.title(),
        List.copyOf(VariantFigures.of(first, second)),
        CheckPairs.changed(first.review(), second.review()));
  }

  /**
   * With a figure that the conversions do not know themselves, such as a range.
   *
   * @param figure behind those given before
   * @return a longer comparison
   */
  public Comparison with(ComparedFigure figure) {
    List<ComparedFigure> more = new ArrayList<>(figures);
    more.add(Objects.requireNonNull(figure, "figure"));
    return new Comparison(first, second, List.copyOf(more), changed);
  }

  /**
   * With other names for the two variants than their titles.
   *
   * @param firstName of the first
   * @param secondName of the second
   * @return a comparison that differs in its names alone
   * @throws InvalidInputException if a name is blank
   */
  public Comparison named(String firstName, String secondName) {
    return new Comparison(
        Require.text("Comparison.first", firstName),
        Require.text("Comparison.second", secondName),
        figures,
        changed);
  }

  /**
   * With some of the changed checks alone, such as {@code only(ChangedCheck::isOfVerdict)}.
   *
   * @param wanted true for those to keep
   * @return a shorter comparison
   */
  public Comparison only(Predicate<ChangedCheck> wanted) {
    return new Comparison(first, second, figures, changed.stream().filter(wanted).toList());
  }

  /**
   * The figures: modules, mass, energy, capacity, voltages; total, axle loads and front share of
   * every load case that both have; mass of the circuits; how many checks of each verdict.
   *
   * @return in a fixed order
   */
  public List<ComparedFigure> figures() {
    return figures;
  }

  /**
   * The checks that differ: those that became worse first, then those of another verdict, then
   * those of another margin alone, as it is printed.
   *
   * @return an immutable list; empty if every check is the same
   */
  public List<ChangedCheck> changedChecks() {
    return changed;
  }

  /** Worse, then otherwise changed, then margin alone; by code within. */
  static final Comparator<ChangedCheck> ORDER =
      Comparator.comparing(ChangedCheck::isWorse)
          .thenComparing(ChangedCheck::isOfVerdict)
          .reversed()
          .thenComparing(ChangedCheck::code)
          .thenComparing(ChangedCheck::what);

  /**
   * The figures as a table for a calculation sheet.
   *
   * @return one row a figure: first, second, difference
   */
  public DataTable table() {
    DataTable table =
        DataTable.of(first + " against " + second, "", ">First", ">Second", ">Difference");
    for (ComparedFigure figure : figures) {
      table =
          table.row(
              figure.name(),
              ComparedFigure.text(figure.before()),
              ComparedFigure.text(figure.after()),
              figure.signedDifference());
    }
    return table;
  }

  /**
   * The changed checks as a table for a calculation sheet.
   *
   * @return one row a check: what, first, second, code
   */
  public DataTable checkTable() {
    DataTable table =
        DataTable.of("Checks that changed", "Change", "Check", "First", "Second", "Code");
    for (ChangedCheck check : changed) {
      table =
          table.row(
              verdict(check),
              check.what(),
              ChangedCheck.side(check.before()),
              ChangedCheck.side(check.after()),
              check.code());
    }
    return table;
  }

  private static String verdict(ChangedCheck check) {
    if (check.isWorse()) {
      return "worse";
    }
    return check.isOfVerdict() ? "changed" : "margin";
  }

  /**
   * Both tables as a section.
   *
   * @return the section
   */
  public Section toSection() {
    Section section = Section.of("Comparison of two variants").with(table());
    return changed.isEmpty()
        ? section.with(new Paragraph("No check changed."))
        : section.with(checkTable());
  }

  /**
   * Plain text, one line a figure and a check.
   *
   * @return the text, ending with a line feed
   */
  public String toText() {
    List<String> lines = new ArrayList<>();
    lines.add(first + " against " + second);
    figures.forEach(figure -> lines.add("  " + figure));
    lines.add(changed.isEmpty() ? "no check changed" : "checks that changed");
    changed.forEach(check -> lines.add("  " + verdict(check) + ": " + check));
    return lines.stream().collect(Collectors.joining("\n", "", "\n"));
  }

  /**
   * Both titles, and how many checks changed.
   *
   * @return for example {@code van against van, flat modules: 3 checks worse, 2 changed, 40 with
   *     another margin}
   */
  @Override
  public String toString() {
    long worse = changed.stream().filter(ChangedCheck::isWorse).count();
    long verdicts = changed.stream().filter(ChangedCheck::isOfVerdict).count();
    return first
        + " against "
        + second
        + ": "
        + worse
        + " checks worse, "
        + (verdicts - worse)
        + " changed, "
        + (changed.size() - verdicts)
        + " with another margin";
  }
}
