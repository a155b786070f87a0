package org.wattwright.vehicle;

import java.io.Serializable;
import java.util.Objects;
import javax.measure.Quantity;
import org.jspecify.annotations.Nullable;
import org.wattwright.check.Figure;
import org.wattwright.units.Kind;

/**
 * A load or a length with what the stated tolerances do to it.
 *
 * <p>Lowest and highest: every tolerance at its worst at once. Root-sum-square: independent
 * tolerances, first order; the likely half-width. Immutable and thread-safe.
 *
 * @param <Q> what it is
 */
public final class Spread<Q extends Quantity<Q>> implements Serializable {
  private static final long serialVersionUID = 1L;

  private final Kind<Q> kind;
  private final Ends si;

  /** Lowest, nominal, highest and likely half-width in the coherent SI unit. */
  record Ends(double lowest, double nominal, double highest, double likely)
      implements Serializable {
    boolean isKnown() {
      return !Double.isNaN(lowest + nominal + highest + likely);
    }

    Ends plus(double more) {
      return new Ends(lowest + more, nominal + more, highest + more, likely);
    }
  }

  Spread(Kind<Q> kind, Ends si) {
    this.kind = kind;
    this.si = si;
  }

  /**
   * Every tolerance at its worst, downwards.
   *
   * @return in the customary unit of the kind
   */
  public Quantity<Q> lowest() {
    return kind.ofSi(si.lowest());
  }

  /**
   * The value without tolerances.
   *
   * @return in the customary unit of the kind
   */
  public Quantity<Q> nominal() {
    return kind.ofSi(si.nominal());
  }

  /**
   * Every tolerance at its worst, upwards.
   *
   * @return in the customary unit of the kind
   */
  public Quantity<Q> highest() {
    return kind.ofSi(si.highest());
  }

  /**
   * Likely half-width, tolerances independent of each other.
   *
   * @return in the customary unit of the kind, ≥ 0
   */
  public Quantity<Q> rootSumSquare() {
    return kind.ofSi(si.likely());
  }

  Spread<Q> plus(double moreSi) {
    return new Spread<>(kind, si.plus(moreSi));
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return this == other
        || (other instanceof Spread<?> that && kind.equals(that.kind) && si.equals(that.si));
  }

  @Override
  public int hashCode() {
    return Objects.hash(kind, si);
  }

  /**
   * Nominal value and both spreads.
   *
   * @return for example {@code 541.8 kg (535 kg … 548.7 kg; ±3.1 kg root-sum-square)}
   */
  @Override
  public String toString() {
    return text(nominal())
        + " ("
        + text(lowest())
        + " … "
        + text(highest())
        + "; ±"
        + text(rootSumSquare())
        + " root-sum-square)";
  }

  private String text(Quantity<Q> quantity) {
    return Figure.of(quantity, kind).toString();
  }
}
