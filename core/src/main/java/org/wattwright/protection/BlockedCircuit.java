package org.wattwright.protection;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.wattwright.check.Check;

/**
 * Why a circuit gets no parts: every requirement with the number of candidates that do not meet it.
 *
 * <p>Candidates are the parts of the kind of which none serves; if every kind has some, the
 * combinations of the circuit's parts; if those serve too, but not behind the circuits nearer to
 * the source, each combination behind each fuse that these may have, with the least resistance that
 * they can have with it. Immutable.
 */
public final class BlockedCircuit {
  private static final Comparator<RuledOut> LEAST_EXCEEDED =
      Comparator.comparingDouble(
          each -> each.smallestRelaxation().map(RuledOut::excess).orElse(Double.POSITIVE_INFINITY));

  private final Circuit circuit;
  private final Candidates candidates;
  private final List<RuledOut> requirements;

  /** What kind of candidates were judged, in the plural, and how many. */
  record Candidates(String kind, int count) {}

  BlockedCircuit(Circuit circuit, Candidates candidates, List<RuledOut> requirements) {
    this.circuit = circuit;
    this.candidates = candidates;
    this.requirements = List.copyOf(requirements);
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
   * @return such as {@code fuse.voltage}, or {@code no fuses to choose from}
   */
  public String code() {
    return nearestAlone()
        .or(() -> requirements.stream().findFirst())
        .map(RuledOut::code)
        .orElse("no " + candidates.kind() + " to choose from");
  }

  private Optional<RuledOut> nearestAlone() {
    return requirements.stream()
        .filter(each -> each.smallestRelaxation().isPresent())
        .min(LEAST_EXCEEDED);
  }

  /**
   * How many candidates were judged.
   *
   * @return 0 if the catalogue has none
   */
  public int candidates() {
    return candidates.count();
  }

  /**
   * The requirements that rule out candidates, each with its smallest relaxation.
   *
   * @return that which rules out most first
   */
  public List<RuledOut> requirements() {
    return requirements;
  }

  /**
   * How many candidates each check rules out; one candidate may count for several.
   *
   * @return code to count
   */
  public Map<String, Integer> ruledOut() {
    Map<String, Integer> counts = new TreeMap<>();
    requirements.forEach(each -> counts.put(each.code(), each.count()));
    return counts;
  }

  /**
   * The smallest relaxation that would admit a candidate: the check that the nearest miss breaks
   * alone, whose actual value is what the limit would have to be.
   *
   * @return empty if every candidate breaks several
   */
  public Optional<Check> smallestRelaxation() {
    return nearestAlone().flatMap(RuledOut::smallestRelaxation);
  }

  /**
   * What stands in the way, requirement by requirement.
   *
   * @return for example {@code no parts for heater: fuse.voltage blocks; 8 fuses, ruled out by
   *     fuse.voltage: 8, alone FAIL …}
   */
  @Override
  public String toString() {
    String none = "no parts for " + circuit.name() + ": " + code();
    if (requirements.isEmpty()) {
      return none;
    }
    String by = String.join("; ", requirements.stream().map(RuledOut::toString).toList());
    return none
        + " blocks; "
        + candidates.count()
        + " "
        + candidates.kind()
        + ", ruled out by "
        + by;
  }
}
