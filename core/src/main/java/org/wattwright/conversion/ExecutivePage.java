package org.wattwright.conversion;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.wattwright.internal.Require;
import org.wattwright.units.InvalidInputException;

/**
 * The answer to the customer in ten lines, with the cautions below; the first page of a sheet.
 *
 * <p>A line about something that nobody reckoned says so. Whoever knows more gives the line its
 * answer:
 *
 * <pre>{@code
 * ExecutivePage page = ExecutivePage.of(van)
 *     .answer(ExecutiveLine.RANGE, "96 km new, 77 km at 80 % capacity, 71 km in winter")
 *     .answer(ExecutiveLine.LOAD_SPACE, "stays as it is: no module lies in it");
 * System.out.println(page.toText());
 * }</pre>
 *
 * <p>Immutable and thread-safe: every call returns a new page.
 */
public final class ExecutivePage {
  private static final int LABEL_WIDTH = 18;

  private final Map<ExecutiveLine, String> answers;

  private ExecutivePage(Map<ExecutiveLine, String> answers) {
    this.answers = Collections.unmodifiableMap(new EnumMap<>(answers));
  }

  /**
   * The page of a conversion, with what it knows itself.
   *
   * @param conversion the conversion
   * @return ten lines
   */
  public static ExecutivePage of(Conversion conversion) {
    return new ExecutivePage(ExecutiveAnswers.of(conversion));
  }

  /**
   * With an answer in place of the one before.
   *
   * @param line the question
   * @param text one sentence or two
   * @return a new page
   * @throws InvalidInputException if the text is blank
   */
  public ExecutivePage answer(ExecutiveLine line, String text) {
    Map<ExecutiveLine, String> more = new EnumMap<>(answers);
    more.put(line, Require.text("ExecutivePage." + line, text));
    return new ExecutivePage(more);
  }

  /**
   * The answers.
   *
   * @return one for each of the ten lines, in their order
   */
  public Map<ExecutiveLine, String> answers() {
    return answers;
  }

  /**
   * The page as a section: a table of ten rows, and below it what may hurt somebody.
   *
   * @return the section
   */
  public Section toSection() {
    DataTable table = DataTable.of("", "Question", "Answer");
    for (Map.Entry<ExecutiveLine, String> each : answers.entrySet()) {
      table = table.row(each.getKey().toString(), each.getValue());
    }
    return Section.of("In ten lines")
        .with(
            table,
            new Cautions(
                List.of(
                    "High voltage kills: only trained and authorised people work on the pack.",
                    "CAUTION means close to a limit or resting on an estimate, NOT CHECKED that"
                        + " nothing is known. Neither is a promise.",
                    "This page supports, and never replaces, local codes, type approval and the"
                        + " judgement of a licensed engineer; the sections behind it say what"
                        + " each line rests on.")));
  }

  /**
   * Plain text, a line for each question.
   *
   * @return ten lines, ending with a line feed
   */
  public String toText() {
    return answers.entrySet().stream()
        .map(each -> padded(each.getKey().toString()) + each.getValue())
        .collect(Collectors.joining("\n", "", "\n"));
  }

  private static String padded(String label) {
    return label + " ".repeat(Math.max(1, LABEL_WIDTH - label.length()));
  }

  /**
   * The verdict alone.
   *
   * @return the first line
   */
  @Override
  public String toString() {
    return String.valueOf(answers.get(ExecutiveLine.VERDICT));
  }
}
