package org.wattwright.check;

import java.io.Serializable;
import java.util.List;
import java.util.Objects;
import org.wattwright.internal.Require;

/**
 * A question that somebody must still answer: an input that is missing, or one that is estimated
 * and wants a measurement or a data sheet.
 *
 * <p>Immutable and thread-safe.
 *
 * @param answeredBy who can answer
 * @param reason why it is open
 * @param input the input in question
 * @param checks codes of the checks that wait for it, in alphabetical order; may be empty
 * @param safety whether one of them is a safety check
 */
public record OpenItem(
    Party answeredBy, Reason reason, String input, List<String> checks, boolean safety)
    implements Serializable {
  /** Why an item is open. */
  public enum Reason {
    /** The input is not known. */
    MISSING("missing"),
    /** The input is an estimate. */
    ESTIMATED("estimated");

    private final String label;

    Reason(String label) {
      this.label = label;
    }

    /**
     * The label as reports print it.
     *
     * @return {@code missing} or {@code estimated}
     */
    @Override
    public String toString() {
      return label;
    }
  }

  /**
   * Copies the list and rejects a blank input.
   *
   * @param answeredBy who can answer
   * @param reason why it is open
   * @param input the input in question
   * @param checks codes of the checks that wait for it
   * @param safety whether one of them is a safety check
   */
  public OpenItem {
    Objects.requireNonNull(answeredBy, "answeredBy");
    Objects.requireNonNull(reason, "reason");
    input = Require.text("OpenItem.input", input);
    checks = checks.stream().sorted().distinct().toList();
  }

  /**
   * One line.
   *
   * @return for example {@code parts supplier: inverter.maximumVoltage is missing
   *     (voltage.maximum)}
   */
  @Override
  public String toString() {
    String waiting = checks.isEmpty() ? "" : " (" + String.join(", ", checks) + ")";
    return answeredBy + ": " + input + " is " + reason + waiting;
  }
}
