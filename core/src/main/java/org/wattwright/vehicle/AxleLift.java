package org.wattwright.vehicle;

import static org.wattwright.units.WorkshopUnits.DEGREE;
import static org.wattwright.units.WorkshopUnits.KILOGRAM;
import static org.wattwright.units.WorkshopUnits.METRE;

import java.io.Serializable;
import java.util.Arrays;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import org.jspecify.annotations.Nullable;
import org.wattwright.check.Figure;
import org.wattwright.check.Given;
import org.wattwright.check.Recorder;
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

  /** Places of the inputs in the vector that tolerances shake. */
  private static final int GROUND_LEVEL = 0;

  private static final int LIFTED_LEVEL = 1;
  private static final int GROUND_RAISED = 2;
  private static final int WHEELBASE = 3;
  private static final int GROUND_RADIUS = 4;
  private static final int LIFTED_RADIUS = 5;

  /** r_g − r_g2, by how much the tyres on the ground sink; 0 unless measured. */
  private static final int SINK = 6;

  /** Rise in m, or the angle in rad where that was measured. */
  private static final int RISE = 7;

  private final double[] inputs;
  private final double[] tolerances;
  private final boolean angleMeasured;
  private final double angleRad;
  private final double heightM;

  AxleLift(double[] inputs, double[] tolerances, boolean angleMeasured) {
    this.inputs = inputs.clone();
    this.tolerances = tolerances.clone();
    this.angleMeasured = angleMeasured;
    this.angleRad = angle(inputs);
    this.heightM = height(inputs, Recorder.OFF);
    if (!(heightM > 0)) {
      throw InvalidInputException.of(
          "AxleLift.reading",
          "such that the centre of gravity is above the ground",
          Si.mass(inputs[GROUND_RAISED]) + ", which puts it at " + heightM + " m");
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

  private double angle(double[] x) {
    if (angleMeasured) {
      return x[RISE];
    }
    double differenceM = x[LIFTED_RADIUS] - x[GROUND_RADIUS];
    double riseM = x[RISE] + x[SINK];
    double lineM = Math.hypot(x[WHEELBASE], differenceM);
    return Math.asin((riseM + differenceM) / lineM) - Math.atan2(differenceM, x[WHEELBASE]);
  }

  private double height(double[] x, Recorder recorder) {
    double massKg = x[GROUND_LEVEL] + x[LIFTED_LEVEL];
    double gainKg = x[GROUND_RAISED] - x[GROUND_LEVEL];
    double theta = angle(x);
    double differenceM = x[LIFTED_RADIUS] - x[GROUND_RADIUS];
    double axleLineM = x[LIFTED_RADIUS] - x[GROUND_RAISED] / massKg * differenceM;
    double resultM = axleLineM + x[WHEELBASE] * gainKg / (massKg * Math.tan(theta));
    if (recorder.isOn()) {
      recorder
          .step("θ", "angle of the vehicle" + (angleMeasured ? ", measured" : ""))
          .formula(angleMeasured ? "θ" : "asin((H + r_g - r_g2)/L), corrected for r_l - r_g")
          .gives(theta, DEGREE);
      recorder
          .step("h", "centre of gravity above ground")
          .formula("r_l - (m_g2/m)·(r_l - r_g) + L·(m_g2 - m_g1)/(m·tan(θ))")
          .with("r_l", x[LIFTED_RADIUS], METRE)
          .with("r_g", x[GROUND_RADIUS], METRE)
          .with("m", massKg, KILOGRAM)
          .with("m_g1", x[GROUND_LEVEL], KILOGRAM)
          .with("m_g2", x[GROUND_RAISED], KILOGRAM)
          .with("L", x[WHEELBASE], METRE)
          .with("θ", theta, DEGREE)
          .source(AxleLiftBuilder.ISO_10392)
          .gives(resultM, METRE);
    }
    return resultM;
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
    return Kind.ANGLE.ofSi(angleRad);
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
    return Si.length(Math.abs(shift(GROUND_RAISED, errorKg)));
  }

  /**
   * Error of the height with every stated tolerance at its worst: Σ|Δh|, first order.
   *
   * @return half-width in m
   */
  public Quantity<Length> worstCase() {
    double sumM = 0;
    for (int i = 0; i < inputs.length; i++) {
      sumM += Math.abs(shift(i, tolerances[i]));
    }
    return Si.length(sumM);
  }

  /**
   * Likely error of the height: √Σ(Δh)², tolerances independent.
   *
   * @return half-width in m
   */
  public Quantity<Length> rootSumSquare() {
    double squares = 0;
    for (int i = 0; i < inputs.length; i++) {
      double shiftM = shift(i, tolerances[i]);
      squares += shiftM * shiftM;
    }
    return Si.length(Math.sqrt(squares));
  }

  /** Half the change of the height when one input moves from one end to the other. */
  private double shift(int input, double tolerance) {
    if (tolerance == 0) {
      return 0;
    }
    double[] low = inputs.clone();
    double[] high = inputs.clone();
    low[input] -= tolerance;
    high[input] += tolerance;
    return (height(high, Recorder.OFF) - height(low, Recorder.OFF)) / 2;
  }

  /**
   * The working.
   *
   * @return the worksheet
   */
  public Worksheet worksheet() {
    Worksheet.Recording recording = Worksheet.record("Centre of gravity height by axle lift");
    height(inputs, recording);
    return recording.toWorksheet();
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return this == other
        || (other instanceof AxleLift that
            && Arrays.equals(inputs, that.inputs)
            && Arrays.equals(tolerances, that.tolerances)
            && angleMeasured == that.angleMeasured);
  }

  @Override
  public int hashCode() {
    return Arrays.hashCode(inputs);
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
