package org.wattwright.protection;

import java.io.Serializable;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricPotential;
import org.jspecify.annotations.Nullable;
import org.wattwright.check.Check;
import org.wattwright.check.CheckBuilder;
import org.wattwright.check.Figure;
import org.wattwright.check.Source;

/**
 * Whether the fuse nearest the fault clears it before the one upstream is hurt.
 *
 * <p>The total I²t of the downstream fuse must stay below the pre-arcing I²t of the upstream one,
 * slowest against fastest, at every current that both may see. The rule of thumb that 1.6 times the
 * rating suffices belongs to gG links of 16 A or more alone, see {@link #ofRatings}.
 *
 * <p>Immutable and thread-safe.
 */
public final class Selectivity implements Serializable {
  private static final long serialVersionUID = 1L;

  /** gG links of 16 A or more, one to the next; IEC 60269 gates, fuse application practice. */
  private static final double RATIO_OF_RATINGS = 1.6;

  private static final double LEAST_RATING_A = 16;
  private static final Source PRACTICE =
      Source.commonPractice(
          "selective if the downstream total I²t is below the upstream pre-arcing I²t");

  private final Fuse upstream;
  private final Fuse downstream;

  private Selectivity(Fuse upstream, Fuse downstream) {
    this.upstream = upstream;
    this.downstream = downstream;
  }

  /**
   * Starts with the fuse nearer the battery.
   *
   * @param fuse the upstream fuse
   * @return a step that asks for the downstream fuse
   */
  public static Upstream of(Fuse fuse) {
    return new Upstream(fuse);
  }

  /**
   * The fuse nearer the battery.
   *
   * @param fuse the upstream fuse
   */
  public record Upstream(Fuse fuse) implements Serializable {
    /**
     * Adds the fuse nearer the fault.
     *
     * @param downstream the fuse that must act alone
     * @return both
     */
    public Selectivity over(Fuse downstream) {
      return new Selectivity(fuse, downstream);
    }
  }

  /**
   * By joule integrals over the range of faults behind the downstream fuse.
   *
   * @param faults behind the downstream fuse
   * @param circuitVoltage highest voltage of the circuit, &gt; 0 V
   * @return code {@code fuse.selectivity}, at the fault with the least to spare; NOT_CHECKED if a
   *     curve or I²t does not reach that far
   * @throws org.wattwright.units.InvalidInputException if the voltage is not positive
   */
  public Check check(FaultRange faults, Quantity<ElectricPotential> circuitVoltage) {
    CheckBuilder check =
        Check.named("fuse.selectivity", downstream.name() + " clears before " + upstream.name())
            .source(PRACTICE)
            .basis(upstream.basis())
            .basis(downstream.basis());
    if (faults.highest().isEmpty()) {
      return check.notChecked("cell.ohmicResistance");
    }
    return new SelectivityScan(upstream, downstream, circuitVoltage)
        .check(check, faults.lowest(), faults.highest().get());
  }

  /**
   * By the ratio of ratings, for gG links of 16 A or more only.
   *
   * @param bothAreGeneralPurpose whether both links are of class gG
   * @return code {@code fuse.selectivity-ratio}; NOT_CHECKED for any other links, since the rule
   *     says nothing about them
   */
  public Check ofRatings(boolean bothAreGeneralPurpose) {
    CheckBuilder check =
        Check.named(
                "fuse.selectivity-ratio",
                "rating of " + upstream.name() + " to " + downstream.name())
            .source(Source.standard("IEC 60269", "gates of gG links, fuse application practice"));
    double upstreamA = upstream.data().ratedA();
    double downstreamA = downstream.data().ratedA();
    Figure ratio = Figure.number(upstreamA / downstreamA);
    if (!bothAreGeneralPurpose || downstreamA < LEAST_RATING_A) {
      return check
          .note("the ratio holds between gG links of 16 A or more only; compare I²t")
          .notChecked(ratio, "both fuses of class gG, 16 A or more");
    }
    return check
        .cautionBand(org.wattwright.check.CautionBand.NONE)
        .atLeast(ratio, Figure.number(RATIO_OF_RATINGS));
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Selectivity that
        && upstream.equals(that.upstream)
        && downstream.equals(that.downstream);
  }

  @Override
  public int hashCode() {
    return 31 * upstream.hashCode() + downstream.hashCode();
  }

  /**
   * Both fuses.
   *
   * @return for example {@code F-400 over F-200}
   */
  @Override
  public String toString() {
    return upstream.name() + " over " + downstream.name();
  }
}
