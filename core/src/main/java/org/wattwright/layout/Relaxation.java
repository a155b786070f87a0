package org.wattwright.layout;

import java.util.Objects;
import org.wattwright.check.Figure;

/**
 * The smallest change of one requirement's limit that would admit a candidate, with all other
 * requirements as they are.
 *
 * <p>Immutable and thread-safe.
 *
 * @param requirement the requirement with its present limit
 * @param limit the present limit
 * @param needed the limit that would admit the candidate
 * @param candidate the candidate that would be admitted; it breaks this requirement and no other
 * @param text the conflict in words
 */
public record Relaxation(
    String requirement, Figure limit, Figure needed, Candidate candidate, String text) {
  /**
   * Rejects null.
   *
   * @param requirement the requirement with its present limit
   * @param limit the present limit
   * @param needed the limit that would admit the candidate
   * @param candidate the candidate that would be admitted
   * @param text the conflict in words
   */
  public Relaxation {
    Objects.requireNonNull(requirement, "requirement");
    Objects.requireNonNull(limit, "limit");
    Objects.requireNonNull(needed, "needed");
    Objects.requireNonNull(candidate, "candidate");
    Objects.requireNonNull(text, "text");
  }

  /**
   * The conflict and the candidate.
   *
   * @return for example {@code charger ends at 118.8 V, pack end of charge is 131.4 V: 6s2p flat
   *     module}
   */
  @Override
  public String toString() {
    return text + ": " + candidate.arrangement();
  }
}
