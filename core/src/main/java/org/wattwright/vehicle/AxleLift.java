package org.wattwright.vehicle;

import static org.wattwright.units.WorkshopUnits.KILOGRAM;
import static org.wattwright.units.WorkshopUnits.METRE;

import java.io.Serializable;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import org.jspecify.annotations.Nullable;
import org.wattwright.check.Figure;
import org.wattwright.check.Given;
import org.wattwright.check.Worksheet;
import org.wattwright.internal.Require;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;

/**
 * Height of the centre of gravity from a weighing with one axle raised.
 *
 * <p>With g the axle left on the ground and l the lifted one, r their loaded radii and m_g1, m_g2
 * the readings below the ground axle, level and raised: h = r_l − (m_g2/m)·(r_l − r_g) + L·(m_g2 −
 * m_g1)/(m·tan θ). The angle follows from the rise H of the lifted wheel centre: L·sin θ + (r_l −
 * r_g)·(cos θ − 1) = H + (r_g − r_g2), where r_g2 is the loaded radius of the ground axle while it
 * carries more. Springs are blocked, brakes off, the wheels of the ground axle free to roll.
 *
 * <p>Source: ISO 10392; moment balance about the ground axle. Immutable and thread-safe.
 */
public final class AxleLift implements Serializable {
  private static final long serialVersionUID = 1L;

  private final AxleLiftKernel kernel;
  private final double heightM;

  AxleLift(AxleLiftKernel kernel) {
    this.kernel = kernel;
    this.heightM = kernel.heightM();
    if (!(heightM > 0)) {
      Figure reading = Figure.ofSi(kernel.input(AxleLiftKernel.GROUND_RAISED), KILOGRAM);
      throw InvalidInputException.of(
          "AxleLift.reading",
          "such that the centre of gravity is above the ground",
          reading + ", which puts it at " + Figure.ofSi(heightM, METRE));
    }
  }

  /**
   * Starts from the level weighing.
   *
   * @param level the vehicle with both axles on the ground
   * @param lifted the axle that is raised
   * @return a builder
   */
  public static AxleLiftBuilder of(WeighedVehicle level, Axle lifted) {
    return new AxleLiftBuilder(level, lifted);
  }

  /**
   * Reading that a known height would give, for planning a weighing.
   *
   * @param level the vehicle with both axles on the ground, height of the centre of gravity known
   * @param radius loaded radius of all wheels, &gt; 0 m
   * @param rise of the lifted wheel centres, &gt; 0 m and &lt; wheelbase
   * @return gain of the axle on the ground, in kg
   * @throws InvalidInputException if an argument is outside its range or the height is not known
   */
  public static Quantity<Mass> expectedGain(
      WeighedVehicle level, Quantity<Length> radius, Quantity<Length> rise) {
    double radiusM = Require.quantity("AxleLift.radius", radius, METRE).positive();
    double riseM = Require.quantity("AxleLift.rise", rise, METRE).positive();
    double heightM = level.height().typicalM();
    if (!(heightM > 0)) {
      throw InvalidInputException.of("WeighedVehicle.centreOfGravityHeight", "given", "missing");
    }
    if (!(riseM < level.wheelbaseM())) {
      throw InvalidInputException.of(
          "AxleLift.rise", "< wheelbase, " + level.wheelbase(), rise.toString());
    }
    double massKg = level.frontKg() + level.rearKg();
    double tangent = Math.tan(Math.asin(riseM / level.wheelbaseM()));
    return Si.mass((heightM - radiusM) * massKg * tangent / level.wheelbaseM());
  }

  /**
   * Height of the centre of gravity above the ground, vehicle level.
   *
   * @return in m
   */
  public Quantity<Length> height() {
    return Si.length(heightM);
  }

  /**
   * The height as an input with its basis.
   *
   * @return measured
   */
  public Given<Quantity<Length>> toGiven() {
    return Given.measured(height(), "axle lift, ±" + Figure.of(worstCase(), Kind.LENGTH));
  }

  /**
   * Angle of the vehicle while raised.
   *
   * @return in °
   */
  public Quantity<Angle> angle() {
    return Kind.ANGLE.ofSi(kernel.angleRad());
  }

  /**
   * Error of the height per error of the raised reading: L·e/(m·tan θ), less the share of unequal
   * wheels.
   *
   * @param readingError of the axle on the ground, raised; ≥ 0 kg
   * @return in m
   * @throws InvalidInputException if the error is negative
   */
  public Quantity<Length> errorFrom(Quantity<Mass> readingError) {
    double errorKg =
        Require.quantity("AxleLift.readingError", readingError, KILOGRAM).nonNegative();
    return Si.length(Math.abs(kernel.shiftM(AxleLiftKernel.GROUND_RAISED, errorKg)));
  }

  /**
   * Error of the height with every stated tolerance at its worst: Σ|Δh|, first order.
   *
   * @return half-width in m
   */
  public Quantity<Length> worstCase() {
    return Si.length(kernel.worstCaseM());
  }

  /**
   * Likely error of the height: √Σ(Δh)², tolerances independent.
   *
   * @return half-width in m
   */
  public Quantity<Length> rootSumSquare() {
    return Si.length(kernel.rootSumSquareM());
  }

  /**
   * The working, with what the tolerance of each reading does to the height.
   *
   * @return the worksheet
   */
  public Worksheet worksheet() {
    Worksheet.Recording recording = Worksheet.record("Centre of gravity height by axle lift");
    kernel.record(recording);
    return recording.toWorksheet();
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return this == other || (other instanceof AxleLift that && kernel.equals(that.kernel));
  }

  @Override
  public int hashCode() {
    return kernel.hashCode();
  }

  /**
   * Height and worst-case error.
   *
   * @return for example {@code 0.4859 m ± 0.0139 m}
   */
  @Override
  public String toString() {
    return Figure.of(height(), Kind.LENGTH) + " ± " + Figure.of(worstCase(), Kind.LENGTH);
  }
}
