package org.wattwright.installation;

import java.io.Serializable;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Mass;
import org.jspecify.annotations.Nullable;
import org.wattwright.check.Figure;
import org.wattwright.units.Kind;

/**
 * Which existing holes hold a part; or the choice that comes nearest, what blocks it and the least
 * that would have to give.
 *
 * <p>Immutable and thread-safe.
 */
public final class HoleChoice implements Serializable {
  private static final long serialVersionUID = 1L;

  private final boolean holds;
  private final @Nullable Retention retention;
  private final int choicesSeen;

  HoleChoice(boolean holds, @Nullable Retention retention, int choicesSeen) {
    this.holds = holds;
    this.retention = retention;
    this.choicesSeen = choicesSeen;
  }

  /**
   * Whether the holes suffice, for the directions the rule states.
   *
   * @return whether a choice holds
   */
  public boolean holds() {
    return holds;
  }

  /**
   * The choice that holds, or the one that comes nearest.
   *
   * @return empty if no choice of bolts holds the part in place at all, however light it is
   */
  public Optional<Retention> retention() {
    return Optional.ofNullable(retention);
  }

  /**
   * The holes of that choice.
   *
   * @return their fixings; empty if there is no choice
   */
  public List<Fixing> fixings() {
    return retention == null ? List.of() : retention.group().fixings();
  }

  /**
   * Which fixing gives first.
   *
   * @return empty if there is no choice
   */
  public Optional<FixingUse> governing() {
    return retention().flatMap(Retention::governing);
  }

  /**
   * What the choice would carry; if the holes do not suffice, the mass it would have to come down
   * to: the smallest relaxation in mass.
   *
   * @return empty if there is no choice
   */
  public Optional<Quantity<Mass>> carriedMass() {
    return retention().flatMap(Retention::carriedMass);
  }

  /**
   * How many choices of holes and bolts were looked at.
   *
   * @return at least 0
   */
  public int choicesSeen() {
    return choicesSeen;
  }

  /**
   * Why the holes do not suffice, and what would have to give.
   *
   * @return empty if they do
   */
  public String whyNone() {
    if (holds) {
      return "";
    }
    Retention nearest = retention;
    FixingUse use = nearest == null ? null : nearest.governing().orElse(null);
    if (nearest == null || use == null) {
      return "no choice of these holes and bolts holds the part in place: too few holes, or all in"
          + " one row; one more hole is needed";
    }
    return "nearest with "
        + nearest.group().fixings().size()
        + " holes: "
        + use
        + "; it would hold "
        + nearest
            .carriedMass()
            .map(mass -> Figure.of(mass, Kind.MASS).toString())
            .orElse("nothing that is known");
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof HoleChoice that
        && holds == that.holds
        && choicesSeen == that.choicesSeen
        && Objects.equals(retention, that.retention);
  }

  @Override
  public int hashCode() {
    return Objects.hash(holds, retention, choicesSeen);
  }

  /**
   * The answer in one line.
   *
   * @return the fixings, or why none
   */
  @Override
  public String toString() {
    return holds ? Objects.requireNonNull(retention).group().toString() : whyNone();
  }
}
