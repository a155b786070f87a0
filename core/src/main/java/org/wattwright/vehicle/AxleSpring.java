package org.wattwright.vehicle;

import static org.wattwright.units.WorkshopUnits.KILOGRAM;
import static org.wattwright.units.WorkshopUnits.METRE_PER_SECOND_SQUARED;
import static org.wattwright.units.WorkshopUnits.MILLIMETRE;
import static org.wattwright.units.WorkshopUnits.NEWTON_PER_MILLIMETRE;

import java.io.Serializable;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.jspecify.annotations.Nullable;
import org.wattwright.check.Basis;
import org.wattwright.check.Check;
import org.wattwright.check.Figure;
import org.wattwright.check.Recorder;
import org.wattwright.check.Source;
import org.wattwright.check.Worksheet;
import org.wattwright.internal.Require;
import org.wattwright.units.Kind;
import org.wattwright.units.SpringRate;

/**
 * The springs of one axle: how far they sink under added mass, and the bump travel that is left.
 *
 * <p>Δs = Δm·g/(2·k), with Δm the change of the load that the springs of the axle carry against the
 * vehicle as weighed, and k the rate of one spring at its wheel (spring rate times motion ratio
 * squared). Linear springs; parts on the axle itself do not count. Source: Hooke's law. Immutable
 * and thread-safe.
 */
public final class AxleSpring implements Serializable {
  private static final long serialVersionUID = 1L;

  private final Axle axle;
  private final double rateNPerM;
  private final double bumpTravelM;
  private final Basis basis;

  private AxleSpring(Axle axle, double rateNPerM, double bumpTravelM, Basis basis) {
    this.axle = axle;
    this.rateNPerM = rateNPerM;
    this.bumpTravelM = bumpTravelM;
    this.basis = basis;
  }

  /**
   * Springs from a data sheet.
   *
   * @param axle front or rear
   * @param wheelRate of one spring, at the wheel, &gt; 0 N/mm
   * @param bumpTravel of the wheel up to the bump stop, vehicle as weighed, ≥ 0 m
   * @return the springs
   * @throws org.wattwright.units.InvalidInputException if an argument is outside its range
   */
  public static AxleSpring of(
      Axle axle, Quantity<SpringRate> wheelRate, Quantity<Length> bumpTravel) {
    Objects.requireNonNull(axle, "axle");
    return new AxleSpring(
        axle,
        Require.quantity("AxleSpring.wheelRate", wheelRate, NEWTON_PER_MILLIMETRE).positive(),
        Require.quantity("AxleSpring.bumpTravel", bumpTravel, MILLIMETRE).nonNegative(),
        Basis.DATA_SHEET);
  }

  /**
   * The same springs with another basis.
   *
   * @param value what rate and travel rest on; data sheet unless told
   * @return new springs
   */
  public AxleSpring withBasis(Basis value) {
    return new AxleSpring(axle, rateNPerM, bumpTravelM, Objects.requireNonNull(value, "basis"));
  }

  /**
   * The axle.
   *
   * @return front or rear
   */
  public Axle axle() {
    return axle;
  }

  /**
   * How far the springs sink against the vehicle as weighed.
   *
   * @param state the vehicle in its load case
   * @return in mm, negative where they rise
   */
  public Quantity<Length> deflection(LoadState state) {
    return MILLIMETRE.of(deflectionM(state, Recorder.OFF) * 1000);
  }

  private double deflectionM(LoadState state, Recorder recorder) {
    double changeKg = Kind.MASS.siValueOf(state.sprungChange(axle));
    double deflectionM = changeKg * Si.GRAVITY_M_PER_S2 / (2 * rateNPerM);
    if (recorder.isOn()) {
      recorder
          .step("Δs", "deflection of the " + axle + " springs at the wheel")
          .formula("Δm·g/(2·k)")
          .with("Δm", changeKg, KILOGRAM)
          .with("g", Si.GRAVITY_M_PER_S2, METRE_PER_SECOND_SQUARED)
          .with("k", rateNPerM, NEWTON_PER_MILLIMETRE)
          .basis(basis.and(state.basis()))
          .gives(deflectionM, MILLIMETRE);
    }
    return deflectionM;
  }

  /**
   * Bump travel that is left.
   *
   * @param state the vehicle in its load case
   * @return in mm; negative if the stops would be reached at rest
   */
  public Quantity<Length> remainingTravel(LoadState state) {
    return MILLIMETRE.of(remainingM(state, Recorder.OFF) * 1000);
  }

  private double remainingM(LoadState state, Recorder recorder) {
    double deflectionM = deflectionM(state, recorder);
    double remainingM = bumpTravelM - deflectionM;
    if (recorder.isOn()) {
      recorder
          .step("s", "bump travel left on the " + axle + " axle")
          .formula("s_0 - Δs")
          .with("s_0", bumpTravelM, MILLIMETRE)
          .with("Δs", deflectionM, MILLIMETRE)
          .basis(basis.and(state.basis()))
          .gives(remainingM, MILLIMETRE);
    }
    return remainingM;
  }

  /**
   * Bump travel left against what is asked for.
   *
   * @param state the vehicle in its load case
   * @param least travel asked for, ≥ 0 m
   * @return the check {@code spring.front} or {@code spring.rear}
   * @throws org.wattwright.units.InvalidInputException if the least travel is negative
   */
  public Check check(LoadState state, Quantity<Length> least) {
    Require.quantity("AxleSpring.least", least, MILLIMETRE).nonNegative();
    return Check.named(
            "spring." + axle,
            "bump travel left on the " + axle + " axle, " + state.loadCase().name())
        .source(Source.requirement("bump travel"))
        .basis(basis.and(state.basis()))
        .safety()
        .atLeast(Figure.of(remainingTravel(state), MILLIMETRE), Figure.of(least, MILLIMETRE));
  }

  /**
   * The working.
   *
   * @param state the vehicle in its load case
   * @return the worksheet
   */
  public Worksheet worksheet(LoadState state) {
    Worksheet.Recording recording =
        Worksheet.record("Springs of the " + axle + " axle, " + state.loadCase().name());
    remainingM(state, recording);
    return recording.toWorksheet();
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return this == other
        || (other instanceof AxleSpring that
            && axle == that.axle
            && rateNPerM == that.rateNPerM
            && bumpTravelM == that.bumpTravelM
            && basis == that.basis);
  }

  @Override
  public int hashCode() {
    return Objects.hash(axle, rateNPerM, bumpTravelM, basis);
  }

  /**
   * Rate and travel.
   *
   * @return for example {@code rear springs 18 N/mm at the wheel, 75 mm bump travel}
   */
  @Override
  public String toString() {
    return axle
        + " springs "
        + Figure.ofSi(rateNPerM, NEWTON_PER_MILLIMETRE)
        + " at the wheel, "
        + Figure.ofSi(bumpTravelM, MILLIMETRE)
        + " bump travel";
  }
}
