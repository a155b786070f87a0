package org.wattwright.battery;

import java.io.Serializable;
import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Power;
import org.jspecify.annotations.Nullable;
import org.wattwright.units.Kind;
import org.wattwright.units.Measures;

/**
 * Heat of a pack under current: the loss in its resistance, and the reversible part where known.
 *
 * <p>q = I·(OCV − U) − I·T·dU/dT, I positive on discharge. Source: D. Bernardi, E. Pawlikowski, J.
 * Newman, J. Electrochem. Soc. 132 (1985) 5. Immutable and thread-safe.
 */
public final class Heat implements Serializable {
  private static final long serialVersionUID = 1L;

  private final Quantity<Power> irreversible;
  private final @Nullable Quantity<Power> reversible;

  Heat(double irreversibleW, @Nullable Double reversibleW) {
    irreversible = Kind.POWER.ofSi(irreversibleW);
    reversible = reversibleW == null ? null : Kind.POWER.ofSi(reversibleW);
  }

  /**
   * Loss in the resistance, I·(OCV − U).
   *
   * @return ≥ 0, in kW
   */
  public Quantity<Power> irreversible() {
    return irreversible;
  }

  /**
   * Entropic part, −I·T·dU/dT; negative where it cools.
   *
   * @return empty if the entropic coefficient is not known
   */
  public Optional<Quantity<Power>> reversible() {
    return Optional.ofNullable(reversible);
  }

  /**
   * Both together; the loss alone if the reversible part is not known.
   *
   * @return in kW
   */
  public Quantity<Power> total() {
    double reversibleW = reversible == null ? 0 : Kind.POWER.siValueOf(reversible);
    return Kind.POWER.ofSi(Kind.POWER.siValueOf(irreversible) + reversibleW);
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Heat that
        && irreversible.equals(that.irreversible)
        && Objects.equals(reversible, that.reversible);
  }

  @Override
  public int hashCode() {
    return Objects.hash(irreversible, reversible);
  }

  /**
   * Total, and whether the reversible part is in it.
   *
   * @return for example {@code 1.643 kW (reversible part not known)}
   */
  @Override
  public String toString() {
    String remark = reversible == null ? " (reversible part not known)" : "";
    return Measures.format(total(), Kind.POWER) + remark;
  }
}
