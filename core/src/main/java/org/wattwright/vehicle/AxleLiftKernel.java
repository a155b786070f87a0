package org.wattwright.vehicle;

import static org.wattwright.units.WorkshopUnits.DEGREE;
import static org.wattwright.units.WorkshopUnits.KILOGRAM;
import static org.wattwright.units.WorkshopUnits.METRE;

import java.io.Serializable;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wattwright.check.Basis;
import org.wattwright.check.Figure;
import org.wattwright.check.Recorder;
import org.wattwright.check.StepBuilder;

/**
 * From the readings of an axle lift to angle and height, and what an error of each reading does.
 */
final class AxleLiftKernel implements Serializable {
  private static final long serialVersionUID = 1L;

  /** Places of the inputs in the vector that tolerances shake. */
  static final int GROUND_LEVEL = 0;

  static final int LIFTED_LEVEL = 1;
  static final int GROUND_RAISED = 2;
  static final int WHEELBASE = 3;
  static final int GROUND_RADIUS = 4;
  static final int LIFTED_RADIUS = 5;

  /** r_g − r_g2, by how much the tyres on the ground sink; 0 unless measured. */
  static final int SINK = 6;

  /** Rise in m, or the angle in rad where that was measured. */
  static final int RISE = 7;

  private static final List<String> SYMBOLS =
      List.of("m_g1", "m_l1", "m_g2", "L", "r_g", "r_l", "s", "H");
  private static final List<String> MEANINGS =
      List.of(
          "level reading of the axle on the ground",
          "level reading of the lifted axle",
          "reading of the axle on the ground, other axle lifted",
          "wheelbase",
          "loaded radius, axle on the ground",
          "loaded radius, lifted axle",
          "sinking of the tyres on the ground",
          "rise of the lifted wheel centres");

  private final double[] inputs;
  private final double[] tolerances;
  private final boolean angleMeasured;

  AxleLiftKernel(double[] inputs, double[] tolerances, boolean angleMeasured) {
    this.inputs = inputs.clone();
    this.tolerances = tolerances.clone();
    this.angleMeasured = angleMeasured;
  }

  double input(int index) {
    return inputs[index];
  }

  double angleRad() {
    return angle(inputs);
  }

  double heightM() {
    return height(inputs);
  }

  /** L·sin θ + Δr·(cos θ − 1) = H + s with Δr = r_l − r_g. */
  private double angle(double[] x) {
    if (angleMeasured) {
      return x[RISE];
    }
    double differenceM = x[LIFTED_RADIUS] - x[GROUND_RADIUS];
    double riseM = x[RISE] + x[SINK];
    double lineM = Math.hypot(x[WHEELBASE], differenceM);
    return Math.asin((riseM + differenceM) / lineM) - Math.atan2(differenceM, x[WHEELBASE]);
  }

  private double height(double[] x) {
    double massKg = x[GROUND_LEVEL] + x[LIFTED_LEVEL];
    double gainKg = x[GROUND_RAISED] - x[GROUND_LEVEL];
    double differenceM = x[LIFTED_RADIUS] - x[GROUND_RADIUS];
    double axleLineM = x[LIFTED_RADIUS] - x[GROUND_RAISED] / massKg * differenceM;
    return axleLineM + x[WHEELBASE] * gainKg / (massKg * Math.tan(angle(x)));
  }

  /** Half the change of the height when one input moves from one end to the other. */
  double shiftM(int input, double tolerance) {
    if (tolerance == 0) {
      return 0;
    }
    double[] low = inputs.clone();
    double[] high = inputs.clone();
    low[input] -= tolerance;
    high[input] += tolerance;
    return (height(high) - height(low)) / 2;
  }

  double worstCaseM() {
    double sumM = 0;
    for (int i = 0; i < inputs.length; i++) {
      sumM += Math.abs(shiftM(i, tolerances[i]));
    }
    return sumM;
  }

  double rootSumSquareM() {
    double squares = 0;
    for (int i = 0; i < inputs.length; i++) {
      double shiftM = shiftM(i, tolerances[i]);
      squares += shiftM * shiftM;
    }
    return Math.sqrt(squares);
  }

  void record(Recorder recorder) {
    recordAngle(recorder);
    double massKg = inputs[GROUND_LEVEL] + inputs[LIFTED_LEVEL];
    recorder
        .step("m", "mass of the vehicle")
        .formula("m_g1 + m_l1")
        .with("m_g1", inputs[GROUND_LEVEL], KILOGRAM)
        .with("m_l1", inputs[LIFTED_LEVEL], KILOGRAM)
        .basis(Basis.MEASURED)
        .gives(massKg, KILOGRAM);
    recorder
        .step("h", "centre of gravity above ground")
        .formula("r_l - (m_g2/m)·(r_l - r_g) + L·(m_g2 - m_g1)/(m·tan(θ))")
        .with("r_l", inputs[LIFTED_RADIUS], METRE)
        .with("r_g", inputs[GROUND_RADIUS], METRE)
        .with("m", massKg, KILOGRAM)
        .with("m_g1", inputs[GROUND_LEVEL], KILOGRAM)
        .with("m_g2", inputs[GROUND_RAISED], KILOGRAM)
        .with("L", inputs[WHEELBASE], METRE)
        .with("θ", angleRad(), DEGREE)
        .basis(Basis.MEASURED)
        .source(AxleLiftBuilder.ISO_10392)
        .gives(heightM(), METRE);
    recordErrors(recorder);
  }

  private void recordAngle(Recorder recorder) {
    if (angleMeasured) {
      recorder
          .step("θ", "angle of the vehicle, measured")
          .basis(Basis.MEASURED)
          .gives(angleRad(), DEGREE);
      return;
    }
    double differenceM = inputs[LIFTED_RADIUS] - inputs[GROUND_RADIUS];
    StepBuilder step =
        recorder.step(
            "θ", "angle of the vehicle (Δr = r_l - r_g; s: sinking of the tyres on the ground)");
    if (differenceM == 0) {
      step.formula("asin((H + s)/L)");
    } else {
      step.formula("asin((H + s + Δr)/√(L² + Δr²)) - atan(Δr/L)").with("Δr", differenceM, METRE);
    }
    step.with("H", inputs[RISE], METRE)
        .with("s", inputs[SINK], METRE)
        .with("L", inputs[WHEELBASE], METRE)
        .basis(Basis.MEASURED)
        .gives(angleRad(), DEGREE);
  }

  private void recordErrors(Recorder recorder) {
    for (int i = 0; i < inputs.length; i++) {
      if (tolerances[i] != 0) {
        String symbol = i == RISE && angleMeasured ? "θ" : SYMBOLS.get(i);
        String meaning = i == RISE && angleMeasured ? "measured angle" : MEANINGS.get(i);
        recorder
            .step("Δh(" + symbol + ")", "change of the height by the tolerance of: " + meaning)
            .formula("|h(" + symbol + " + t) - h(" + symbol + " - t)|/2")
            .with("t", tolerance(i))
            .basis(Basis.MEASURED)
            .gives(Math.abs(shiftM(i, tolerances[i])), METRE);
      }
    }
    recorder
        .step("Δh", "every tolerance at its worst")
        .formula("Σ|Δh_i|")
        .basis(Basis.MEASURED)
        .gives(worstCaseM(), METRE);
    recorder
        .step("σ(h)", "root-sum-square of all tolerances")
        .formula("√ΣΔh_i²")
        .basis(Basis.MEASURED)
        .gives(rootSumSquareM(), METRE);
  }

  private Figure tolerance(int input) {
    if (input <= GROUND_RAISED) {
      return Figure.ofSi(tolerances[input], KILOGRAM);
    }
    return input == RISE && angleMeasured
        ? Figure.ofSi(tolerances[input], DEGREE)
        : Figure.ofSi(tolerances[input], METRE);
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return this == other
        || (other instanceof AxleLiftKernel that
            && Arrays.equals(inputs, that.inputs)
            && Arrays.equals(tolerances, that.tolerances)
            && angleMeasured == that.angleMeasured);
  }

  @Override
  public int hashCode() {
    return Arrays.hashCode(inputs);
  }
}
