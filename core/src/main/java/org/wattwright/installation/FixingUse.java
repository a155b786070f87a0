package org.wattwright.installation;

import java.io.Serializable;
import java.util.Objects;
import org.wattwright.check.Figure;

/**
 * How far one fixing is used in one way under one load.
 *
 * <p>Immutable and thread-safe.
 *
 * @param fixing its name
 * @param direction which way the mass is thrown
 * @param mode how it may give
 * @param actual the load: a force, or the value of the interaction
 * @param limit the resistance: a force, or 1
 * @param share of the load that may be put on it at most; above 1 it gives. Grows in proportion to
 *     the mass
 */
public record FixingUse(
    String fixing,
    LoadDirection direction,
    FixingMode mode,
    Figure actual,
    Figure limit,
    double share)
    implements Serializable {
  /**
   * Any values.
   *
   * @param fixing its name
   * @param direction which way the mass is thrown
   * @param mode how it may give
   * @param actual the load
   * @param limit the resistance
   * @param share of the resistance
   */
  public FixingUse {
    Objects.requireNonNull(fixing, "fixing");
    Objects.requireNonNull(direction, "direction");
    Objects.requireNonNull(mode, "mode");
    Objects.requireNonNull(actual, "actual");
    Objects.requireNonNull(limit, "limit");
  }

  /**
   * Where and how.
   *
   * @return for example {@code front left, thrown forward: pull-out through the panel, 83 %}
   */
  @Override
  public String toString() {
    return fixing + ", thrown " + direction + ": " + mode + ", " + Figure.share(share);
  }
}
