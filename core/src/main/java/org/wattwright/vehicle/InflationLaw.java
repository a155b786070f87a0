package org.wattwright.vehicle;

import static org.wattwright.units.WorkshopUnits.KILOGRAM;
import static org.wattwright.units.WorkshopUnits.KILOPASCAL;

import java.io.Serializable;
import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Pressure;
import org.jspecify.annotations.Nullable;
import org.wattwright.check.Figure;
import org.wattwright.check.Recorder;
import org.wattwright.check.Source;
import org.wattwright.internal.Require;
import org.wattwright.units.Kind;

/**
 * How much pressure a tyre needs for a load: p = p_ref·(Q/Q_max)^1.25.
 *
 * <p>Without allowances for speed, camber or cross-ply construction: a floor, not a recommendation;
 * the tyre maker's table decides. Source: ETRTO load formula, as quoted by an owners' forum and a
 * tyre-pressure page. Immutable and thread-safe.
 */
public final class InflationLaw implements Serializable {
  private static final long serialVersionUID = 1L;

  /** Exponent of the load; ETRTO. */
  private static final double EXPONENT = 1.25;

  private static final Source ETRTO = Source.standard("ETRTO Standards Manual", "load formula");

  private final double maximumLoadKg;
  private final double referencePa;

  private InflationLaw(double maximumLoadKg, double referencePa) {
    this.maximumLoadKg = maximumLoadKg;
    this.referencePa = referencePa;
  }

  /**
   * From the load of one tyre and the pressure at which it holds.
   *
   * @param maximumLoad of one tyre, &gt; 0 kg
   * @param reference pressure above the atmosphere, &gt; 0 kPa
   * @return the law
   * @throws org.wattwright.units.InvalidInputException if an argument is not positive
   */
  public static InflationLaw of(Quantity<Mass> maximumLoad, Quantity<Pressure> reference) {
    return new InflationLaw(
        Require.quantity("InflationLaw.maximumLoad", maximumLoad, KILOGRAM).positive(),
        Require.quantity("InflationLaw.reference", reference, KILOPASCAL).positive());
  }

  /**
   * From the marking of a radial car tyre.
   *
   * @param tyre with its load index
   * @return empty if load index or reference pressure are not known from the marking
   */
  public static Optional<InflationLaw> of(Tyre tyre) {
    return tyre.maximumLoad().flatMap(q -> tyre.referencePressure().map(p -> of(q, p)));
  }

  /**
   * Lowest pressure for a load; above the maximum load the tyre is overloaded at any pressure, and
   * the figure only shows by how much.
   *
   * @param load on one tyre, ≥ 0 kg
   * @return above the atmosphere, in kPa
   * @throws org.wattwright.units.InvalidInputException if the load is negative
   */
  public Quantity<Pressure> pressureFor(Quantity<Mass> load) {
    return pressureFor(load, Recorder.OFF);
  }

  /**
   * Lowest pressure for a load, with the working.
   *
   * @param load on one tyre, ≥ 0 kg
   * @param recorder takes down the step
   * @return above the atmosphere, in kPa
   * @throws org.wattwright.units.InvalidInputException if the load is negative
   */
  public Quantity<Pressure> pressureFor(Quantity<Mass> load, Recorder recorder) {
    double loadKg = Require.quantity("InflationLaw.load", load, KILOGRAM).nonNegative();
    double pressurePa = referencePa * Math.pow(loadKg / maximumLoadKg, EXPONENT);
    if (recorder.isOn()) {
      recorder
          .step("p", "lowest tyre pressure, without allowances")
          .formula("p_ref·(Q/Q_max)^1.25")
          .with("p_ref", referencePa, KILOPASCAL)
          .with("Q", loadKg, KILOGRAM)
          .with("Q_max", maximumLoadKg, KILOGRAM)
          .source(ETRTO)
          .gives(pressurePa, KILOPASCAL);
    }
    return Kind.PRESSURE.ofSi(pressurePa);
  }

  /**
   * Load that one tyre carries at a pressure: Q_max·(p/p_ref)^0.8, at most Q_max.
   *
   * @param pressure above the atmosphere, ≥ 0 kPa
   * @return in kg
   * @throws org.wattwright.units.InvalidInputException if the pressure is negative
   */
  public Quantity<Mass> loadAt(Quantity<Pressure> pressure) {
    double pressurePa =
        Require.quantity("InflationLaw.pressure", pressure, KILOPASCAL).nonNegative();
    double share = Math.min(1, pressurePa / referencePa);
    return Si.mass(maximumLoadKg * Math.pow(share, 1 / EXPONENT));
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return this == other
        || (other instanceof InflationLaw that
            && maximumLoadKg == that.maximumLoadKg
            && referencePa == that.referencePa);
  }

  @Override
  public int hashCode() {
    return Objects.hash(maximumLoadKg, referencePa);
  }

  /**
   * Load and pressure.
   *
   * @return for example {@code 500 kg at 250 kPa}
   */
  @Override
  public String toString() {
    return Figure.ofSi(maximumLoadKg, KILOGRAM) + " at " + Figure.ofSi(referencePa, KILOPASCAL);
  }
}
