package org.wattwright.vehicle;

import static org.wattwright.units.WorkshopUnits.METRE;
import static org.wattwright.units.WorkshopUnits.METRE_PER_SECOND_SQUARED;

import java.io.Serializable;
import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Acceleration;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import org.jspecify.annotations.Nullable;
import org.wattwright.check.CautionBand;
import org.wattwright.check.Check;
import org.wattwright.check.Figure;
import org.wattwright.check.Recorder;
import org.wattwright.check.Source;
import org.wattwright.check.Worksheet;
import org.wattwright.internal.Require;
import org.wattwright.units.Kind;

/**
 * Static stability factor: half the track over the height of the centre of gravity, T/(2·h).
 *
 * <p>Times g it is the lateral acceleration at which a rigid vehicle tips; springs and tyres lower
 * that. Source: NHTSA, Rollover resistance rulemaking, chapter V. Immutable and thread-safe.
 */
public final class StabilityFactor implements Serializable {
  private static final long serialVersionUID = 1L;

  private static final Source NHTSA =
      Source.standard("NHTSA rollover resistance rulemaking", "chapter V");

  private final Stance stance;
  private final double trackM;

  private StabilityFactor(Stance stance, double trackM) {
    this.stance = stance;
    this.trackM = trackM;
  }

  /**
   * From a stance and the track.
   *
   * @param stance with the height of the centre of gravity
   * @param track mean of front and rear, &gt; 0 m
   * @return the factor
   * @throws org.wattwright.units.InvalidInputException if the track is not positive
   */
  public static StabilityFactor of(Stance stance, Quantity<Length> track) {
    Objects.requireNonNull(stance, "stance");
    return new StabilityFactor(
        stance, Require.quantity("StabilityFactor.track", track, METRE).positive());
  }

  /**
   * From a load state, with the mean of both tracks.
   *
   * @param state the vehicle in its load case
   * @return empty if height or a track are not known
   */
  public static Optional<StabilityFactor> of(LoadState state) {
    double sumM = state.vehicle().trackM(Axle.FRONT) + state.vehicle().trackM(Axle.REAR);
    return Double.isNaN(sumM)
        ? Optional.empty()
        : state.stance().map(stance -> new StabilityFactor(stance, sumM / 2));
  }

  /**
   * The factor.
   *
   * @return T/(2·h)
   */
  public double factor() {
    return factor(Recorder.OFF);
  }

  private double factor(Recorder recorder) {
    double factor = trackM / (2 * stance.heightM());
    if (recorder.isOn()) {
      recorder
          .step("SSF", "static stability factor")
          .formula("T/(2·h)")
          .with("T", trackM, METRE)
          .with("h", stance.heightM(), METRE)
          .basis(stance.basis())
          .source(NHTSA)
          .gives(Figure.number(factor));
    }
    return factor;
  }

  /**
   * Lateral acceleration at which a rigid vehicle tips: g·T/(2·h).
   *
   * @return in m/s²
   */
  public Quantity<Acceleration> tippingAcceleration() {
    return Kind.ACCELERATION.ofSi(tippingMs2(factor(), Recorder.OFF));
  }

  private double tippingMs2(double factor, Recorder recorder) {
    double tippingMs2 = stance.gravity() * factor;
    if (recorder.isOn()) {
      recorder
          .step("a_y", "lateral acceleration at which a rigid vehicle tips")
          .formula("g·SSF")
          .with("g", stance.gravity(), METRE_PER_SECOND_SQUARED)
          .with("SSF", Figure.number(factor))
          .basis(stance.basis())
          .source(NHTSA)
          .gives(tippingMs2, METRE_PER_SECOND_SQUARED);
    }
    return tippingMs2;
  }

  /**
   * Load moved from the inner to the outer wheels, both axles together: m·a_y·h/T.
   *
   * @param lateral acceleration, ≥ 0 m/s²
   * @return in N
   * @throws org.wattwright.units.InvalidInputException if it is negative
   */
  public Quantity<Force> lateralTransfer(Quantity<Acceleration> lateral) {
    double ayMs2 =
        Require.quantity("StabilityFactor.lateral", lateral, METRE_PER_SECOND_SQUARED)
            .nonNegative();
    return Kind.FORCE.ofSi(stance.massKg() * ayMs2 * stance.heightM() / trackM);
  }

  /**
   * The factor against a least value; an estimated height is taken at its upper end.
   *
   * @param least asked for, &gt; 0
   * @param source who asks for it
   * @return the check {@code stability.factor}
   * @throws org.wattwright.units.InvalidInputException if the least value is not positive
   */
  public Check check(double least, Source source) {
    Require.positive("StabilityFactor.least", least);
    return Check.named("stability.factor", "static stability factor")
        .source(source)
        .basis(stance.basis())
        .safety()
        .atLeast(Figure.number(lowest()), Figure.number(least));
  }

  /**
   * The factor against that before the conversion; estimated heights at their upper ends.
   *
   * @param before the factor before, same load case
   * @return the check {@code stability.change}; a fall is a FAIL
   */
  public Check checkAgainst(StabilityFactor before) {
    return Check.named("stability.change", "static stability factor against that before")
        .source(Source.requirement("no less stable than before the conversion"))
        .basis(stance.basis().and(before.stance.basis()))
        .safety()
        .cautionBand(CautionBand.NONE)
        .atLeast(Figure.number(lowest()), Figure.number(before.lowest()));
  }

  private double lowest() {
    return stance.extremes().stream()
        .mapToDouble(end -> new StabilityFactor(end, trackM).factor())
        .min()
        .orElseThrow();
  }

  /**
   * The working.
   *
   * @return the worksheet
   */
  public Worksheet worksheet() {
    Worksheet.Recording recording = Worksheet.record("Static stability factor");
    tippingMs2(factor(recording), recording);
    return recording.toWorksheet();
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return this == other
        || (other instanceof StabilityFactor that
            && stance.equals(that.stance)
            && trackM == that.trackM);
  }

  @Override
  public int hashCode() {
    return Objects.hash(stance, trackM);
  }

  /**
   * The factor.
   *
   * @return for example {@code static stability factor 1.157}
   */
  @Override
  public String toString() {
    return "static stability factor " + Figure.number(factor());
  }
}
