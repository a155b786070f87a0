package org.wattwright.layout;

import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * How many candidates one requirement ruled out.
 *
 * <p>Immutable and thread-safe.
 */
public final class Rejection {
  private final String reason;
  private final boolean missingData;
  private final long count;
  private final long aloneCount;
  private final @Nullable Relaxation relaxation;

  Rejection(
      String reason,
      boolean missingData,
      long count,
      long aloneCount,
      @Nullable Relaxation relaxation) {
    this.reason = reason;
    this.missingData = missingData;
    this.count = count;
    this.aloneCount = aloneCount;
    this.relaxation = relaxation;
  }

  /**
   * The requirement with its limit, or which input is missing.
   *
   * @return for example {@code pack mass ≤ 290 kg} or {@code missing data: dimensions of tall}
   */
  public String reason() {
    return reason;
  }

  /**
   * Whether candidates were ruled out because an input is missing, not because a limit is broken.
   *
   * @return true for missing data
   */
  public boolean isMissingData() {
    return missingData;
  }

  /**
   * Candidates that this ruled out, whatever else they break.
   *
   * @return ≥ 1
   */
  public long count() {
    return count;
  }

  /**
   * Candidates that nothing else ruled out.
   *
   * @return ≥ 0
   */
  public long aloneCount() {
    return aloneCount;
  }

  /**
   * The smallest change of the limit that would admit a candidate.
   *
   * @return empty if no candidate breaks this requirement alone, or the limit is not a number
   */
  public Optional<Relaxation> relaxation() {
    return Optional.ofNullable(relaxation);
  }

  /**
   * Reason and counts.
   *
   * @return for example {@code pack mass ≤ 290 kg: 84, of these 3 by this alone}
   */
  @Override
  public String toString() {
    return reason + ": " + count + ", of these " + aloneCount + " by this alone";
  }
}
