package org.wattwright.protection;

import java.util.List;
import org.wattwright.internal.Require;

/**
 * Parts that a circuit could not consider, because the catalogue leaves something out. Immutable.
 *
 * @param circuit name of the circuit
 * @param type what kind of part
 * @param count how many were not looked at
 * @param of how many of that kind there are
 * @param missing the fields that are missing, such as {@code Cable.outerDiameter of T}
 */
public record PassedOver(
    String circuit, CircuitPart.Type type, int count, int of, List<String> missing) {
  private static final int MOST_SHOWN = 4;

  /**
   * Checks the fields and copies the list.
   *
   * @param circuit name of the circuit
   * @param type what kind of part
   * @param count how many were not looked at, ≥ 1
   * @param of how many of that kind there are
   * @param missing the fields that are missing
   * @throws org.wattwright.units.InvalidInputException if the count is not 1 to {@code of}
   */
  public PassedOver {
    Require.count("PassedOver.count", count, 1, of);
    missing = List.copyOf(missing);
  }

  /**
   * How many and why.
   *
   * @return for example {@code traction: 3 of 10 cables not looked at: Cable.outerDiameter of T
   *     missing}
   */
  @Override
  public String toString() {
    List<String> shown = missing.subList(0, Math.min(MOST_SHOWN, missing.size()));
    String more = shown.size() < missing.size() ? ", … missing" : " missing";
    return circuit
        + ": "
        + count
        + " of "
        + of
        + " "
        + type.plural()
        + " not looked at: "
        + String.join(", ", shown)
        + more;
  }
}
