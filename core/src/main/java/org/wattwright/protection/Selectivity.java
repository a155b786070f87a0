package org.wattwright.protection;

import static org.wattwright.units.WorkshopUnits.VOLT;

import java.io.Serializable;
import java.util.Locale;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricPotential;
import org.jspecify.annotations.Nullable;
import org.wattwright.check.Check;
import org.wattwright.check.CheckBuilder;
import org.wattwright.check.Figure;
import org.wattwright.check.Source;
import org.wattwright.internal.Require;
import org.wattwright.units.InvalidInputException;

/**
 * Whether the fuse nearest the fault clears it before the one upstream is hurt.
 *
 * <p>The total I²t of the downstream fuse must stay below the pre-arcing I²t of the upstream one,
 * slowest against fastest, at every current that both may see; where the upstream one is one of
 * several in parallel, its share of the current counts, and the share squared of the I²t. The rule
 * of thumb that 1.6 times the rating suffices belongs to gG links of 16 A or more alone, see {@link
 * #ofRatings}.
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
  private final double share;
  private final Fuse downstream;

  private Selectivity(Fuse upstream, double share, Fuse downstream) {
    this.upstream = upstream;
    this.share = share;
    this.downstream = downstream;
  }

  /**
   * Starts with the fuse nearer the battery.
   *
   * @param fuse the upstream fuse
   * @return a step that asks for the downstream fuse
   */
  public static Upstream of(Fuse fuse) {
    return new Upstream(fuse, 1);
  }

  /**
   * The fuse nearer the battery.
   *
   * @param fuse the upstream fuse
   * @param share of the downstream fuse's current that it carries, above 0 to 1
   */
  public record Upstream(Fuse fuse, double share) implements Serializable {
    /**
     * Checks the share.
     *
     * @param fuse the upstream fuse
     * @param share above 0 to 1
     * @throws org.wattwright.units.InvalidInputException if outside its range
     */
    public Upstream {
      Objects.requireNonNull(fuse, "fuse");
      if (!(share > 0 && share <= 1)) {
        throw InvalidInputException.of("Selectivity.share", "> 0 to 1", Double.toString(share));
      }
    }

    /**
     * One of several fuses in parallel, such as those of parallel strings, that together feed the
     * downstream one.
     *
     * @param value share of the downstream fuse's current that the worst loaded one carries, above
     *     0 to 1, such as 1.1/3 of three strings parted unevenly by a tenth
     * @return a new step
     * @throws org.wattwright.units.InvalidInputException if outside its range
     */
    public Upstream carrying(double value) {
      return new Upstream(fuse, value);
    }

    /**
     * Adds the fuse nearer the fault.
     *
     * @param downstream the fuse that must act alone
     * @return both
     */
    public Selectivity over(Fuse downstream) {
      return new Selectivity(fuse, share, downstream);
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
    double voltageV =
        Require.quantity("Selectivity.circuitVoltage", circuitVoltage, VOLT).positive();
    if (faults.highest().isEmpty()) {
      return check.notChecked("cell.ohmicResistance");
    }
    return new SelectivityScan(upstream, share, new ClearingSolver(downstream.data(), voltageV))
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
        && share == that.share
        && downstream.equals(that.downstream);
  }

  @Override
  public int hashCode() {
    return Objects.hash(upstream, share, downstream);
  }

  /**
   * Both fuses.
   *
   * @return for example {@code F-400 over F-200}
   */
  @Override
  public String toString() {
    String part = share == 1 ? "" : String.format(Locale.ROOT, ", carrying %.4g of it,", share);
    return upstream.name() + part + " over " + downstream.name();
  }
}
