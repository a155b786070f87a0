package org.wattwright.protection;

import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.wattwright.check.Check;

/** How many candidates one requirement rules out, and by how little. Immutable. */
public final class RuledOut {
  private final String code;
  private final int count;
  private final Check nearest;
  private final @Nullable Check alone;

  RuledOut(String code, int count, Check nearest, @Nullable Check alone) {
    this.code = code;
    this.count = count;
    this.nearest = nearest;
    this.alone = alone;
  }

  /** How far a limit is exceeded; infinite where there is no number. */
  static double excess(Check check) {
    return check.use().orElse(Double.POSITIVE_INFINITY);
  }

  /**
   * The requirement.
   *
   * @return code of its check, such as {@code fuse.voltage}
   */
  public String code() {
    return code;
  }

  /**
   * How many candidates do not meet it.
   *
   * @return ≥ 1
   */
  public int count() {
    return count;
  }

  /**
   * The least that it is missed by, whatever else the candidate misses.
   *
   * @return failed, or not checked for want of data
   */
  public Check nearest() {
    return nearest;
  }

  /**
   * Its smallest relaxation: the least that it is missed by, of the candidates that miss nothing
   * else. The actual value is what the limit would have to be.
   *
   * @return empty if every candidate that misses it misses something else too
   */
  public Optional<Check> smallestRelaxation() {
    return Optional.ofNullable(alone);
  }

  /**
   * Requirement, count and nearest miss.
   *
   * @return for example {@code contactor.carry: 2, of which alone FAIL contactor.carry: …}
   */
  @Override
  public String toString() {
    Check shown = alone != null ? alone : nearest;
    String note = shown.note().isEmpty() ? "" : " (" + shown.note() + ")";
    return String.format(
        Locale.ROOT,
        "%s: %d, %s %s%s",
        code,
        count,
        alone != null ? "alone" : "with others",
        shown,
        note);
  }
}
