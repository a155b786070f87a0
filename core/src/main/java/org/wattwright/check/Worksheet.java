package org.wattwright.check;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.wattwright.internal.Require;

/**
 * The working of a calculation: ordered steps with symbol, formula, numbers, result and source.
 *
 * <p>Immutable and thread-safe.
 *
 * @param title what was calculated
 * @param steps in the order in which they were computed
 */
public record Worksheet(String title, List<Step> steps) implements Serializable {
  private static final int INDENT = 6;
  private static final int NUMBER_WIDTH = 4;
  private static final int USUAL_HEADING_LEVEL = 3;
  private static final int DEEPEST_HEADING = 6;

  /**
   * Copies the list.
   *
   * @param title what was calculated
   * @param steps in the order in which they were computed
   */
  public Worksheet {
    title = Require.text("Worksheet.title", title);
    steps = List.copyOf(steps);
  }

  /**
   * Starts to record.
   *
   * @param title what is calculated
   * @return a recorder that collects steps; not thread-safe
   */
  public static Recording record(String title) {
    return new Recording(Require.text("Worksheet.title", title));
  }

  /**
   * The last step that gives a symbol.
   *
   * @param symbol symbol of the result, such as {@code U_full}
   * @return empty if there is no such step
   */
  public Optional<Step> step(String symbol) {
    return steps.stream()
        .filter(step -> step.symbol().equals(symbol))
        .reduce((first, second) -> second);
  }

  /**
   * Plain text for a terminal: each step numbered, with its working and its source.
   *
   * @return the text, no line longer than 100 characters unless a word is, ending with a line feed
   */
  public String toText() {
    StringBuilder out = new StringBuilder(TextLayout.plain(title)).append('\n');
    for (int i = 0; i < steps.size(); i++) {
      String number = TextLayout.padded((i + 1) + ".", NUMBER_WIDTH);
      Step step = steps.get(i);
      lines(number, step).forEach(line -> out.append(line).append('\n'));
    }
    return out.toString();
  }

  private static List<String> lines(String number, Step step) {
    List<String> lines = new ArrayList<>();
    String head = step.meaning() + " [" + step.basis() + "]";
    lines.addAll(TextLayout.wrap("  " + number, head, INDENT));
    lines.addAll(working(step));
    lines.addAll(TextLayout.wrap(" ".repeat(INDENT), "Source: " + step.source(), INDENT + 2));
    return lines;
  }

  /** On one line if it fits, else one line for each equals sign. */
  private static List<String> working(Step step) {
    String whole = " ".repeat(INDENT) + TextLayout.plain(step.toString());
    if (whole.length() <= TextLayout.WIDTH) {
      return List.of(whole);
    }
    List<String> lines = new ArrayList<>();
    int signAt = INDENT + step.symbol().length() + 1;
    String lead = " ".repeat(INDENT) + step.symbol() + " = ";
    for (String side : step.sides()) {
      lines.addAll(TextLayout.wrap(lead, side, signAt + 2));
      lead = " ".repeat(signAt) + "= ";
    }
    return lines;
  }

  /**
   * A heading of the third level and a Markdown table.
   *
   * @return heading and table, ending with a line feed
   */
  public String toMarkdown() {
    return toMarkdown(USUAL_HEADING_LEVEL);
  }

  /**
   * A heading and a Markdown table.
   *
   * @param headingLevel 1 to 6
   * @return heading and table, ending with a line feed
   * @throws org.wattwright.units.InvalidInputException if the level is outside its range
   */
  public String toMarkdown(int headingLevel) {
    Require.count("Worksheet.headingLevel", headingLevel, 1, DEEPEST_HEADING);
    MarkdownTable table =
        MarkdownTable.withColumns("What", "Formula", "With numbers", "Result", "Basis", "Source");
    for (Step step : steps) {
      String formula = step.formula().isEmpty() ? "" : " = " + step.formula();
      table.row(
          step.meaning(),
          step.symbol() + formula,
          step.substituted(),
          step.result().toString(),
          step.basis().toString(),
          step.source().toString());
    }
    return "#".repeat(headingLevel) + " " + MarkdownTable.escaped(title) + "\n\n" + table.toText();
  }

  /**
   * Title and number of steps; {@link #toText} prints all.
   *
   * @return one line
   */
  @Override
  public String toString() {
    return title + " (" + steps.size() + " steps; toText() prints them)";
  }

  /** A recorder that collects steps. */
  public static final class Recording implements Recorder {
    private final String title;
    private final List<Step> steps = new ArrayList<>();

    Recording(String title) {
      this.title = title;
    }

    @Override
    public boolean isOn() {
      return true;
    }

    @Override
    public void add(Step step) {
      steps.add(step);
    }

    /**
     * Title and number of steps so far.
     *
     * @return one line
     */
    @Override
    public String toString() {
      return title + " (" + steps.size() + " steps so far)";
    }

    /**
     * What has been recorded so far.
     *
     * @return the worksheet
     */
    public Worksheet toWorksheet() {
      return new Worksheet(title, steps);
    }
  }
}
