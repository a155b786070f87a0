package org.wattwright.check;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Lists of checks: ordered, counted, found again, and printed. */
public final class Checks {
  private static final int OUTCOME_WIDTH = Outcome.NOT_CHECKED.toString().length() + 1;

  /**
   * Worst first, safety first; then by the content, so that the order of the input plays no part.
   */
  private static final Comparator<Check> BY_SEVERITY =
      Comparator.comparing(Check::outcome)
          .reversed()
          .thenComparing(Check::isSafety, Comparator.reverseOrder())
          .thenComparing(Check::code)
          .thenComparing(Check::what)
          .thenComparing(Check::toString);

  private Checks() {}

  /**
   * Sorted by severity, safety checks before others, then by code.
   *
   * @param checks any order
   * @return worst first
   */
  public static List<Check> bySeverity(Collection<Check> checks) {
    return checks.stream().sorted(BY_SEVERITY).toList();
  }

  /**
   * The worse of two answers to one question: the worse verdict, or the smaller margin.
   *
   * @param first one answer
   * @param second another
   * @return the worse; the first if both are alike
   */
  public static Check worse(Check first, Check second) {
    int byOutcome = second.outcome().compareTo(first.outcome());
    if (byOutcome != 0) {
      return byOutcome > 0 ? second : first;
    }
    return marginSi(second) < marginSi(first) ? second : first;
  }

  private static double marginSi(Check check) {
    return check.margin().map(Figure::value).orElse(Double.POSITIVE_INFINITY);
  }

  /**
   * The checks of one code.
   *
   * @param checks any order
   * @param code the stable code
   * @return those of that code, in the order given; may be empty
   */
  public static List<Check> withCode(Collection<Check> checks, String code) {
    return checks.stream().filter(check -> check.code().equals(code)).toList();
  }

  /**
   * How many of each verdict.
   *
   * @param checks any order
   * @return for example {@code 1 FAIL, 2 CAUTION, 14 PASS}; {@code nothing was checked} if empty
   */
  public static String summary(Collection<Check> checks) {
    if (checks.isEmpty()) {
      return "nothing was checked";
    }
    return Stream.of(Outcome.FAIL, Outcome.NOT_CHECKED, Outcome.CAUTION, Outcome.PASS)
        .filter(outcome -> count(checks, outcome) > 0)
        .map(outcome -> count(checks, outcome) + " " + outcome)
        .collect(Collectors.joining(", "));
  }

  private static long count(Collection<Check> checks, Outcome outcome) {
    return checks.stream().filter(check -> check.outcome() == outcome).count();
  }

  /**
   * Plain text for a terminal, a few lines a check: verdict, what, figures, then code, source,
   * basis and remark.
   *
   * @param checks in the order to print
   * @return the text, no line longer than 100 characters unless a word is, ending with a line feed
   *     unless empty
   */
  public static String toText(Collection<Check> checks) {
    StringBuilder out = new StringBuilder();
    for (Check check : checks) {
      lines(check).forEach(line -> out.append(line).append('\n'));
    }
    return out.toString();
  }

  private static List<String> lines(Check check) {
    String verdict = TextLayout.padded(check.outcome().toString(), OUTCOME_WIDTH);
    String indent = " ".repeat(OUTCOME_WIDTH);
    String safety = check.isSafety() ? " [safety]" : "";
    String figures =
        check.margin().isEmpty()
            ? check.comparison()
            : check.comparison() + ", margin " + check.margin().get();
    String behind = figures.isEmpty() ? "" : ": " + figures;
    String limit = check.code() + "; limit: " + check.source() + "; inputs: " + check.basis();
    String remark = check.remark().isEmpty() ? "" : "; " + check.remark();
    return Stream.concat(
            TextLayout.wrap(verdict, check.what() + safety + behind, OUTCOME_WIDTH).stream(),
            TextLayout.wrap(indent, limit + remark, OUTCOME_WIDTH).stream())
        .toList();
  }

  /**
   * A Markdown table.
   *
   * @param checks in the order to print
   * @return the table, ending with a line feed
   */
  public static String toMarkdown(Collection<Check> checks) {
    MarkdownTable table =
        MarkdownTable.withColumns(
            "Verdict", "Check", "Actual and limit", "Margin", "Basis", "Source", "Remark", "Code");
    for (Check check : checks) {
      table.row(
          check.outcome().toString(),
          check.what(),
          check.comparison(),
          check.margin().map(Figure::toString).orElse(""),
          check.basis().toString(),
          check.source().toString(),
          check.remark(),
          check.code());
    }
    return table.toText();
  }
}
