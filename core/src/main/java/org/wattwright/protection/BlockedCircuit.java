package org.wattwright.protection;

import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.wattwright.check.Check;

/** Why a circuit gets no parts: the check that stands in the way, with counts. Immutable. */
public final class BlockedCircuit {
  private final Circuit circuit;
  private final String code;
  private final Map<String, Integer> ruledOut;
  private final @Nullable Check nearest;

  BlockedCircuit(
      Circuit circuit, String code, Map<String, Integer> ruledOut, @Nullable Check nearest) {
    this.circuit = circuit;
    this.code = code;
    this.ruledOut = new TreeMap<>(ruledOut);
    this.nearest = nearest;
  }

  /**
   * The circuit.
   *
   * @return as given
   */
  public Circuit circuit() {
    return circuit;
  }

  /**
   * Code of the blocking check: the one that the nearest miss breaks alone; else the one that rules
   * out most.
   *
   * @return such as {@code fuse.voltage}
   */
  public String code() {
    return code;
  }

  /**
   * How many candidates each check rules out, of the kind of part that is missing, or of the
   * combinations if every kind has some; one candidate may count several times.
   *
   * @return code to count
   */
  public Map<String, Integer> ruledOut() {
    return Map.copyOf(ruledOut);
  }

  /**
   * The smallest relaxation that would admit a candidate: the check that the nearest miss breaks
   * alone, whose actual value is what the limit would have to be.
   *
   * @return empty if every candidate breaks several
   */
  public Optional<Check> smallestRelaxation() {
    return Optional.ofNullable(nearest);
  }

  /**
   * What stands in the way.
   *
   * @return for example {@code no parts for heater: fuse.voltage blocks; …}
   */
  @Override
  public String toString() {
    String note = nearest == null || nearest.note().isEmpty() ? "" : " (" + nearest.note() + ")";
    String miss = nearest == null ? "" : "; nearest: " + nearest + note;
    return "no parts for "
        + circuit.name()
        + ": "
        + code
        + " blocks"
        + miss
        + "; ruled out by "
        + ruledOut;
  }
}
