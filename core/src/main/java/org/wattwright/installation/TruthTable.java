package org.wattwright.installation;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import org.wattwright.check.CautionBand;
import org.wattwright.check.Check;
import org.wattwright.check.Figure;
import org.wattwright.check.MarkdownTable;
import org.wattwright.check.Source;
import org.wattwright.internal.Require;
import org.wattwright.units.InvalidInputException;

/**
 * A decision table: lines of conditions, each with a reaction, checked over every combination of
 * the states of its signals. A combination answered by several lines must get the same answer from
 * each: the order of the lines plays no part. Immutable and thread-safe.
 *
 * @param name as reports print it
 * @param signals that the table looks at, at least one
 * @param lines conditions on these signals and reactions
 */
public record TruthTable(String name, List<InterlockSignal> signals, List<Line> lines)
    implements Serializable {
  private static final Source LOGIC =
      Source.commonPractice("every combination of states has one answer");

  /**
   * A line of the table.
   *
   * @param when conditions
   * @param reaction answer
   */
  public record Line(InterlockCase when, InterlockReaction reaction) implements Serializable {
    /**
     * Rejects null.
     *
     * @param when conditions
     * @param reaction answer
     */
    public Line {
      Objects.requireNonNull(when, "when");
      Objects.requireNonNull(reaction, "reaction");
    }
  }

  /**
   * Checks that every line speaks of the signals of the table.
   *
   * @param name as reports print it
   * @param signals at least one, none twice
   * @param lines conditions and reactions
   * @throws InvalidInputException if a line speaks of another signal, or a signal is told twice
   */
  public TruthTable {
    name = Require.text("TruthTable.name", name);
    signals = Require.nonEmpty("TruthTable.signals", signals);
    lines = List.copyOf(lines);
    if (Set.copyOf(signals).size() != signals.size()) {
      throw InvalidInputException.of("TruthTable.signals", "different", signals.toString());
    }
    for (Line line : lines) {
      if (!signals.containsAll(line.when().conditions().keySet())) {
        throw InvalidInputException.of(
            "TruthTable.lines", "conditions on " + signals, line.when().toString());
      }
    }
  }

  /**
   * A table without lines.
   *
   * @param name as reports print it
   * @param signals that it looks at, at least one
   * @return the table
   */
  public static TruthTable of(String name, InterlockSignal... signals) {
    return new TruthTable(name, List.of(signals), List.of());
  }

  /**
   * With one more line.
   *
   * @param when conditions
   * @param reaction answer
   * @return a new table
   * @throws InvalidInputException if the conditions speak of another signal
   */
  public TruthTable line(InterlockCase when, InterlockReaction reaction) {
    List<Line> all = new ArrayList<>(lines);
    all.add(new Line(when, reaction));
    return new TruthTable(name, signals, all);
  }

  /**
   * Every answer to a state of the vehicle.
   *
   * @param vehicle a state for every signal of the table
   * @return one if the table is sound; none or several if it is not
   * @throws InvalidInputException if a signal of the table has no state
   */
  public Set<InterlockReaction> reactions(InterlockCase vehicle) {
    for (InterlockSignal signal : signals) {
      if (vehicle.state(signal) == null) {
        throw InvalidInputException.of(
            "TruthTable." + signal, "one of " + signal.states(), "not told");
      }
    }
    Set<InterlockReaction> answers = new TreeSet<>();
    for (Line line : lines) {
      if (line.when().covers(vehicle)) {
        answers.add(line.reaction());
      }
    }
    return answers;
  }

  /**
   * The answer to a state of the vehicle.
   *
   * @param vehicle a state for every signal of the table
   * @return the reaction
   * @throws InvalidInputException if a signal has no state, or the table has no or several answers
   */
  public InterlockReaction reaction(InterlockCase vehicle) {
    Set<InterlockReaction> answers = reactions(vehicle);
    if (answers.size() != 1) {
      throw InvalidInputException.of("TruthTable.reaction", "one for " + vehicle, "" + answers);
    }
    return answers.iterator().next();
  }

  /**
   * Every combination of the states of its signals.
   *
   * @return in the order of signals and states
   */
  public List<InterlockCase> combinations() {
    List<InterlockCase> all = List.of(InterlockCase.any());
    for (InterlockSignal signal : signals) {
      all =
          all.stream()
              .flatMap(c -> signal.states().stream().map(state -> c.and(signal, state)))
              .toList();
    }
    return all;
  }

  /**
   * Combinations without an answer.
   *
   * @return empty if the table is complete
   */
  public List<InterlockCase> unanswered() {
    return combinations().stream().filter(c -> reactions(c).isEmpty()).toList();
  }

  /**
   * Combinations with several unlike answers.
   *
   * @return empty if the table contradicts itself nowhere
   */
  public List<InterlockCase> contradictions() {
    return combinations().stream().filter(c -> reactions(c).size() > 1).toList();
  }

  /**
   * Combinations in which a forbidden reaction happens.
   *
   * @param rule what is forbidden
   * @return empty if it never happens
   * @throws InvalidInputException if the rule speaks of a signal that the table does not look at
   */
  public List<InterlockCase> violations(ForbiddenReaction rule) {
    if (!signals.containsAll(rule.when().conditions().keySet())) {
      throw InvalidInputException.of(
          "TruthTable.violations", "conditions on " + signals, rule.when().toString());
    }
    return combinations().stream()
        .filter(rule.when()::covers)
        .filter(c -> reactions(c).stream().anyMatch(rule.reactions()::contains))
        .toList();
  }

  /**
   * The verdicts: {@code installation.interlock-complete}, {@code
   * installation.interlock-unambiguous}, and {@code installation.interlock-} with the code of each
   * rule. The note names the first state that breaks it.
   *
   * @param rules what is forbidden
   * @return two checks and one for each rule
   * @throws InvalidInputException if a rule speaks of a signal that the table does not look at
   */
  public List<Check> checks(List<ForbiddenReaction> rules) {
    List<Check> checks = new ArrayList<>();
    checks.add(none("complete", "states without an answer, " + name, LOGIC, unanswered()));
    checks.add(none("unambiguous", "states with unlike answers, " + name, LOGIC, contradictions()));
    for (ForbiddenReaction rule : rules) {
      checks.add(none(rule.code(), rule.what() + ", " + name, rule.source(), violations(rule)));
    }
    return checks;
  }

  private static Check none(String code, String what, Source source, List<InterlockCase> states) {
    return Check.named("installation.interlock-" + code, what)
        .source(source)
        .cautionBand(CautionBand.NONE)
        .safety()
        .note(states.isEmpty() ? "" : "first: " + states.get(0))
        .atMost(Figure.count(states.size()), Figure.count(0));
  }

  /**
   * A Markdown table, one column for each signal.
   *
   * @return the table, ending with a line feed
   */
  public String toMarkdown() {
    List<String> headings = new ArrayList<>(signals.stream().map(Object::toString).toList());
    headings.add("reaction");
    MarkdownTable table = MarkdownTable.withColumns(headings.toArray(String[]::new));
    for (Line line : lines) {
      List<String> cells = new ArrayList<>();
      for (InterlockSignal signal : signals) {
        SignalState state = line.when().state(signal);
        cells.add(state == null ? "any" : state.toString());
      }
      cells.add(line.reaction().toString());
      table.row(cells.toArray(String[]::new));
    }
    return table.toText();
  }

  /**
   * Name and number of lines.
   *
   * @return one line
   */
  @Override
  public String toString() {
    return name + " (" + lines.size() + " lines on " + signals.size() + " signals)";
  }
}
