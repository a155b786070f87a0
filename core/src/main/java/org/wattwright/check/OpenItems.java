package org.wattwright.check;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Lists of open items, found in checks and printed by who must answer. */
public final class OpenItems {
  /** By who must answer; what concerns safety and what is missing first. */
  private static final Comparator<OpenItem> BY_PARTY =
      Comparator.comparing(OpenItem::answeredBy)
          .thenComparing(OpenItem::safety, Comparator.reverseOrder())
          .thenComparing(OpenItem::reason)
          .thenComparing(OpenItem::input);

  private OpenItems() {}

  /** What two mentions of one question have in common. */
  private record Question(Party answeredBy, OpenItem.Reason reason, String input) {}

  /**
   * What the checks wait for: every missing input, and every estimated one.
   *
   * <p>A check that rests on an estimate without naming it stands with its own words. Mentions of
   * one input by several checks become one item, unless different parties must answer.
   *
   * @param checks in any order
   * @return ordered by who must answer, safety first
   */
  public static List<OpenItem> of(Collection<Check> checks) {
    Map<Question, List<Check>> waiting = new LinkedHashMap<>();
    for (Check check : checks) {
      for (Question question : questionsOf(check)) {
        waiting.computeIfAbsent(question, any -> new ArrayList<>()).add(check);
      }
    }
    return waiting.entrySet().stream()
        .map(entry -> item(entry.getKey(), entry.getValue()))
        .sorted(BY_PARTY)
        .toList();
  }

  private static List<Question> questionsOf(Check check) {
    List<Question> questions = new ArrayList<>();
    for (String input : check.missing()) {
      questions.add(new Question(check.answeredBy(), OpenItem.Reason.MISSING, input));
    }
    for (String input : estimatesOf(check)) {
      questions.add(new Question(check.answeredBy(), OpenItem.Reason.ESTIMATED, input));
    }
    return questions;
  }

  private static List<String> estimatesOf(Check check) {
    boolean unnamed = check.basis() == Basis.ESTIMATED && check.estimates().isEmpty();
    return unnamed ? List.of("an input of: " + check.what()) : check.estimates();
  }

  private static OpenItem item(Question question, List<Check> checks) {
    return new OpenItem(
        question.answeredBy(),
        question.reason(),
        question.input(),
        checks.stream().map(Check::code).toList(),
        checks.stream().anyMatch(Check::isSafety));
  }

  /**
   * Plain text, one item a line under who must answer.
   *
   * @param items in the order to print
   * @return the text, ending with a line feed unless empty
   */
  public static String toText(List<OpenItem> items) {
    StringBuilder out = new StringBuilder();
    Party party = null;
    for (OpenItem item : items) {
      if (item.answeredBy() != party) {
        party = item.answeredBy();
        out.append(party).append('\n');
      }
      TextLayout.wrap("  ", line(item), 6).forEach(line -> out.append(line).append('\n'));
    }
    return out.toString();
  }

  private static String line(OpenItem item) {
    String mark = item.safety() ? " [safety]" : "";
    String waiting = item.checks().isEmpty() ? "" : ", for " + String.join(", ", item.checks());
    return item.reason() + mark + ": " + item.input() + waiting;
  }

  /**
   * A Markdown table.
   *
   * @param items in the order to print
   * @return the table, ending with a line feed
   */
  public static String toMarkdown(List<OpenItem> items) {
    MarkdownTable table =
        MarkdownTable.withColumns("Who answers", "Input", "Why open", "Safety", "Checks");
    for (OpenItem item : items) {
      table.row(
          item.answeredBy().toString(),
          item.input(),
          item.reason().toString(),
          item.safety() ? "yes" : "",
          String.join(", ", item.checks()));
    }
    return table.toText();
  }
}
