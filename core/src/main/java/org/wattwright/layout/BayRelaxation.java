package org.wattwright.layout;

import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.wattwright.check.Figure;

/**
 * The smallest change of one requirement that would admit an allocation, all others as they are.
 *
 * <p>Immutable and thread-safe.
 */
public final class BayRelaxation {
  private final String code;
  private final String requirement;
  private final @Nullable Figure limit;
  private final @Nullable Figure needed;
  private final @Nullable Allocation allocation;

  BayRelaxation(
      LoadRule.Identity identity,
      @Nullable Figure limit,
      @Nullable Figure needed,
      @Nullable Allocation allocation) {
    this.code = identity.code();
    this.requirement = identity.what();
    this.limit = limit;
    this.needed = needed;
    this.allocation = allocation;
  }

  /**
   * Code of the requirement, as in checks.
   *
   * @return for example {@code layout.axle-front}
   */
  public String code() {
    return code;
  }

  /**
   * The requirement in words.
   *
   * @return for example {@code front axle load against its plate}
   */
  public String requirement() {
    return requirement;
  }

  /**
   * The present limit.
   *
   * @return empty if the requirement has none
   */
  public Optional<Figure> limit() {
    return Optional.ofNullable(limit);
  }

  /**
   * The limit that would admit an allocation; a run with this limit finds one.
   *
   * @return empty if the requirement would have to be dropped
   */
  public Optional<Figure> needed() {
    return Optional.ofNullable(needed);
  }

  /**
   * The allocation that would be admitted; it breaks this requirement and no other.
   *
   * @return empty if there is no room for one
   */
  public Optional<Allocation> allocation() {
    return Optional.ofNullable(allocation);
  }

  /**
   * Requirement, limit, needed limit.
   *
   * @return for example {@code front axle load against its plate: limit 520 kg, needed 523.4 kg}
   */
  @Override
  public String toString() {
    String numbers =
        limit == null || needed == null
            ? "would have to be dropped"
            : "limit " + limit + ", needed " + needed;
    return Objects.requireNonNull(requirement) + ": " + numbers;
  }
}
