package org.wattwright.check;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
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
   * Plain text, one step in two lines, without trailing spaces.
   *
   * @return the text, ending with a line feed
   */
  public String toText() {
    StringBuilder out = new StringBuilder(title).append('\n');
    for (Step step : steps) {
      out.append("  ").append(step.meaning()).append(" [").append(step.basis()).append("]\n");
      out.append("    ").append(step).append("    (").append(step.source()).append(")\n");
    }
    return out.toString();
  }

  /**
   * A Markdown table.
   *
   * @return heading and table, ending with a line feed
   */
  public String toMarkdown() {
    MarkdownTable table =
        MarkdownTable.withColumns("What", "Formula", "With numbers", "Result", "Basis", "Source");
    for (Step step : steps) {
      table.row(
          step.meaning(),
          step.symbol() + " = " + step.formula(),
          step.inputs().isEmpty() ? "" : step.substituted(),
          step.result().toString(),
          step.basis().toString(),
          step.source().toString());
    }
    return "### " + MarkdownTable.escaped(title) + "\n\n" + table.toText();
  }

  /** Title and number of steps; {@link #toText} prints all. */
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
     * What has been recorded so far.
     *
     * @return the worksheet
     */
    public Worksheet toWorksheet() {
      return new Worksheet(title, steps);
    }
  }
}
