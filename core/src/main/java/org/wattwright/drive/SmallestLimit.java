package org.wattwright.drive;

import java.io.Serializable;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import javax.measure.Quantity;
import org.jspecify.annotations.Nullable;
import org.wattwright.units.Kind;
import org.wattwright.units.Measures;

/**
 * The smallest limit with which a vehicle still has all abilities asked for, and which of them
 * needs it; or which ability it lacks even without a limit.
 *
 * <p>Immutable and thread-safe.
 *
 * @param <Q> current or power
 */
public final class SmallestLimit<Q extends Quantity<Q>> implements Serializable {
  private static final long serialVersionUID = 1L;

  private final Kind<Q> kind;
  private final LinkedHashMap<Ability, Quantity<Q>> needs;
  private final Ability governing;
  private final boolean possible;

  SmallestLimit(
      Kind<Q> kind, Map<Ability, Quantity<Q>> needs, Ability governing, boolean possible) {
    this.kind = kind;
    this.needs = new LinkedHashMap<>(needs);
    this.governing = governing;
    this.possible = possible;
  }

  /**
   * Whether any limit will do.
   *
   * @return false if the vehicle lacks an ability even without a limit
   */
  public boolean isPossible() {
    return possible;
  }

  /**
   * The smallest limit.
   *
   * @return empty if the vehicle lacks an ability even without a limit
   */
  public Optional<Quantity<Q>> limit() {
    return possible ? Optional.ofNullable(needs.get(governing)) : Optional.empty();
  }

  /**
   * The ability that needs the most, or the first one that is lacking.
   *
   * @return the ability
   */
  public Ability governing() {
    return governing;
  }

  /**
   * What each ability needs alone.
   *
   * @return by ability, in the order asked; those lacking even without a limit are left out
   */
  public Map<Ability, Quantity<Q>> needs() {
    return Collections.unmodifiableMap(needs);
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof SmallestLimit<?> that
        && needs.equals(that.needs)
        && governing.equals(that.governing)
        && possible == that.possible;
  }

  @Override
  public int hashCode() {
    return needs.hashCode();
  }

  /**
   * The limit and what governs it.
   *
   * @return for example {@code 232.1 A, for hold 80 km/h on 5 %}
   */
  @Override
  public String toString() {
    return limit()
        .map(limit -> Measures.format(limit, kind) + ", for " + governing)
        .orElseGet(() -> "none: even without a limit it does not " + governing);
  }
}
