package org.wattwright.drive;

import static org.wattwright.units.WorkshopUnits.BAR;
import static org.wattwright.units.WorkshopUnits.METRE_PER_SECOND;

import java.io.Serializable;
import javax.measure.Quantity;
import javax.measure.quantity.Pressure;
import javax.measure.quantity.Speed;
import org.wattwright.check.Basis;
import org.wattwright.check.Source;
import org.wattwright.internal.Require;
import org.wattwright.units.InvalidInputException;

/**
 * Coefficient of rolling resistance: force over weight, f = f₀ + f₁·v + f₂·v².
 *
 * <p>Immutable and thread-safe.
 */
public final class RollingResistance implements Serializable {
  private static final long serialVersionUID = 1L;
  private static final double KMH_PER_MS = 3.6;
  private static final double MPH_PER_MS = 3600 / 1609.344;

  private static final Source WONG =
      Source.literature("J. Y. Wong, Theory of Ground Vehicles", "chapter 1, Wiley").fromMemory();

  private final double constant;
  private final double perMs;
  private final double perMs2;
  private final Basis basis;
  private final Source source;

  private RollingResistance(double[] terms, Basis basis, Source source) {
    this.constant = terms[0];
    this.perMs = terms[1];
    this.perMs2 = terms[2];
    this.basis = basis;
    this.source = source;
  }

  /**
   * The same at every speed, from a data sheet.
   *
   * @param coefficient from 0 to 1, about 0.01 for a car tyre on asphalt
   * @return the coefficient
   * @throws InvalidInputException if it is outside its range
   */
  public static RollingResistance of(double coefficient) {
    return of(coefficient, Basis.DATA_SHEET, Source.AS_GIVEN);
  }

  /**
   * The same at every speed.
   *
   * @param coefficient from 0 to 1
   * @param basis what it rests on
   * @param source where it comes from
   * @return the coefficient
   * @throws InvalidInputException if it is outside its range
   */
  public static RollingResistance of(double coefficient, Basis basis, Source source) {
    double checked = Require.fraction("RollingResistance.coefficient", coefficient);
    return new RollingResistance(new double[] {checked, 0, 0}, basis, source);
  }

  /**
   * A radial car tyre on a smooth hard road at rated load and pressure: 0.0136 + 0.40e-7·V², V in
   * km/h. Source: J. Y. Wong, Theory of Ground Vehicles (Wiley), chapter 1, from memory.
   *
   * @return an estimate
   */
  public static RollingResistance radialTyre() {
    return estimate(WONG, 0.0136, 0, 0.40e-7 * KMH_PER_MS * KMH_PER_MS);
  }

  /**
   * A cross-ply car tyre on a smooth hard road at rated load and pressure: 0.0169 + 0.19e-6·V², V
   * in km/h. Source: as for {@link #radialTyre}, from memory.
   *
   * @return an estimate
   */
  public static RollingResistance crossPlyTyre() {
    return estimate(WONG, 0.0169, 0, 0.19e-6 * KMH_PER_MS * KMH_PER_MS);
  }

  /**
   * From the inflation pressure: 0.005 + (0.01 + 0.0095·(V/100)²)/p, V in km/h, p in bar. Source:
   * engineering tables.
   *
   * @param pressure above that of the air, &gt; 0 bar
   * @return an estimate
   * @throws InvalidInputException if the pressure is not positive
   */
  public static RollingResistance atPressure(Quantity<Pressure> pressure) {
    double bar = Require.quantity("RollingResistance.pressure", pressure, BAR).positive() / 1e5;
    double perKmh2 = 0.0095 / bar / (100 * 100);
    Source tables = Source.literature("engineering tables", "rolling resistance by pressure");
    return estimate(tables, 0.005 + 0.01 / bar, 0, perKmh2 * KMH_PER_MS * KMH_PER_MS);
  }

  /**
   * The linear rule 0.01·(1 + V/100), V in mph. Source: T. D. Gillespie, Fundamentals of Vehicle
   * Dynamics (SAE 1992), chapter 4, from memory; other books print the rule with V in km/h.
   *
   * @return an estimate
   */
  public static RollingResistance linearRule() {
    Source source =
        Source.literature(
                "T. D. Gillespie, Fundamentals of Vehicle Dynamics", "chapter 4, SAE 1992")
            .fromMemory();
    return estimate(source, 0.01, 0.01 / 100 * MPH_PER_MS, 0);
  }

  private static RollingResistance estimate(Source source, double... terms) {
    return new RollingResistance(terms, Basis.ESTIMATED, source);
  }

  /**
   * This coefficient times a factor at every speed.
   *
   * @param factor &gt; 0
   * @return a new coefficient
   * @throws InvalidInputException if not positive
   */
  public RollingResistance scaled(double factor) {
    double by = Require.positive("RollingResistance.factor", factor);
    double[] terms = {constant * by, perMs * by, perMs2 * by};
    return new RollingResistance(terms, basis, source);
  }

  /**
   * Coefficient at a speed.
   *
   * @param speed ≥ 0
   * @return force over weight
   * @throws InvalidInputException if the speed is negative
   */
  public double at(Quantity<Speed> speed) {
    double speedMs =
        Require.quantity("RollingResistance.speed", speed, METRE_PER_SECOND).nonNegative();
    return constant + (perMs + perMs2 * speedMs) * speedMs;
  }

  /**
   * What it rests on.
   *
   * @return the basis
   */
  public Basis basis() {
    return basis;
  }

  /**
   * Where it comes from.
   *
   * @return the source
   */
  public Source source() {
    return source;
  }

  double[] terms() {
    return new double[] {constant, perMs, perMs2};
  }

  private java.util.List<Object> fields() {
    return java.util.List.of(constant, perMs, perMs2, basis, source);
  }

  @Override
  public boolean equals(@org.jspecify.annotations.Nullable Object other) {
    return other instanceof RollingResistance that && fields().equals(that.fields());
  }

  @Override
  public int hashCode() {
    return fields().hashCode();
  }

  /**
   * Coefficient at rest, and whether it grows with speed.
   *
   * @return for example {@code 0.0136, rising with speed}
   */
  @Override
  public String toString() {
    return constant + (perMs > 0 || perMs2 > 0 ? ", rising with speed" : "");
  }
}
