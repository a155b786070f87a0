package org.wattwright.conductor;

import java.util.Arrays;

/**
 * Temperature of a lumped conductor under a current that is constant by segments.
 *
 * <p>C·dT/dt = I²·R₂₀·[1 + α·(T − T₂₀)] − q(T). The loss q(T) is worked out once on a grid of
 * surface temperatures and is straight between its nodes, so that within a cell the equation is
 * linear and its solution an exact exponential, whatever the step; the time at which a cell is left
 * is exact too. A constant current therefore never overshoots its final temperature.
 */
final class TransientKernel {
  private static final double COLDEST_SURFACE_K = 213.15;
  private static final double FINE_K = 1;
  private static final double MEDIUM_K = 2;
  private static final double COARSE_K = 5;
  private static final double FINE_WITHIN_K = 10;
  private static final double MEDIUM_WITHIN_K = 120;

  /** Below this the series for (1 − e⁻ˣ)/x is exact to rounding. */
  private static final double SMALL = 0.02;

  private final HeatedConductor conductor;
  private final double resistanceOhmPerM;
  private final double coefficientPerK;
  private final double heatCapacityJPerMK;

  /** Nodes of the loss: conductor temperature and loss of one metre. */
  private final double[] nodesK;

  private final double[] lossesWPerM;
  private final double[] slopesWPerMK;

  TransientKernel(HeatedConductor conductor) {
    this.conductor = conductor;
    this.resistanceOhmPerM = conductor.resistanceOhmPerM();
    this.coefficientPerK = conductor.coefficientPerK();
    this.heatCapacityJPerMK = conductor.heatCapacityJPerMK();
    double[] surfacesK = surfaceNodesK(conductor.kernel().loss().airK());
    int count = surfacesK.length;
    this.nodesK = new double[count];
    this.lossesWPerM = new double[count];
    this.slopesWPerMK = new double[count - 1];
    for (int i = 0; i < count; i++) {
      lossesWPerM[i] = conductor.kernel().loss().lossWPerM(surfacesK[i]);
      nodesK[i] = surfacesK[i] + lossesWPerM[i] * conductor.thermalResistanceKmPerW();
    }
    for (int i = 0; i < count - 1; i++) {
      slopesWPerMK[i] = (lossesWPerM[i + 1] - lossesWPerM[i]) / (nodesK[i + 1] - nodesK[i]);
    }
  }

  /** Fine near the air's temperature, where the loss bends, coarse far from it. */
  private static double[] surfaceNodesK(double airK) {
    double[] nodes = new double[512];
    int count = 0;
    double atK = COLDEST_SURFACE_K;
    while (atK < SteadyKernel.HIGHEST_K) {
      nodes[count++] = atK;
      double distanceK = Math.abs(atK - airK);
      double stepK =
          distanceK < FINE_WITHIN_K ? FINE_K : distanceK < MEDIUM_WITHIN_K ? MEDIUM_K : COARSE_K;
      // A node at the air's temperature itself, where the slope of the loss is least.
      atK = atK < airK && atK + stepK > airK - FINE_K / 2 ? airK : atK + stepK;
    }
    nodes[count++] = SteadyKernel.HIGHEST_K;
    return Arrays.copyOf(nodes, count);
  }

  double coldestK() {
    return nodesK[0];
  }

  double highestK() {
    return nodesK[nodesK.length - 1];
  }

  HeatedConductor conductor() {
    return conductor;
  }

  /** Time constant at a rise of 30 K, resistance taken as constant. */
  double timeConstantS() {
    return heatCapacityJPerMK / conductor.kernel().trialConductance();
  }

  /** A run on its way: temperature and cell, the peak and its time. */
  static final class Run {
    double endK;
    double peakK;
    double peakAtS;

    /** When the highest temperature of the model was reached; NaN if it was not. */
    double leftAtS = Double.NaN;

    private int cell;

    private Run(double startK, int cell) {
      this.endK = startK;
      this.peakK = startK;
      this.cell = cell;
    }
  }

  /** Current for current, from a temperature; {@code endsK} may be empty if not wanted. */
  Run run(double startK, double[] durationsS, double[] currentsA, double[] endsK) {
    Run run = new Run(startK, cellOf(startK));
    double timeS = 0;
    for (int i = 0; i < durationsS.length; i++) {
      advance(run, currentsA[i], durationsS[i]);
      timeS += durationsS[i];
      if (run.endK > run.peakK) {
        run.peakK = run.endK;
        run.peakAtS = timeS;
      }
      if (endsK.length > 0) {
        endsK[i] = run.endK;
      }
      if (!(run.endK < highestK())) {
        run.leftAtS = timeS;
        break;
      }
    }
    return run;
  }

  /** One segment, cell by cell until its time is over. */
  private void advance(Run run, double currentA, double durationS) {
    double sourceWPerM = currentA * currentA * resistanceOhmPerM;
    double temperatureK = run.endK;
    int cell = run.cell;
    int last = slopesWPerMK.length - 1;
    double leftS = durationS;
    boolean hasCrossed = false;
    while (leftS > 0) {
      double rateKPerS = rateKPerS(sourceWPerM, temperatureK, cell);
      double decayPerS = decayPerS(sourceWPerM, cell);
      double nextK = temperatureK + rateKPerS * leftS * relativeRise(decayPerS * leftS);
      boolean up = nextK > nodesK[cell + 1] && cell < last;
      boolean down = nextK < nodesK[cell] && cell > 0;
      if (!up && !down) {
        temperatureK = nextK;
        break;
      }
      double edgeK = up ? nodesK[cell + 1] : nodesK[cell];
      if (hasCrossed && edgeK == temperatureK) {
        break; // At rest on a node: each side sends it to the other.
      }
      hasCrossed = true;
      leftS -= timeTo(edgeK - temperatureK, rateKPerS, decayPerS);
      temperatureK = edgeK;
      cell += up ? 1 : -1;
    }
    run.cell = cell;
    run.endK = Math.min(temperatureK, highestK());
  }

  /** dT/dt at a temperature within a cell. */
  private double rateKPerS(double sourceWPerM, double temperatureK, int cell) {
    double inflowWPerM =
        sourceWPerM * (1 + coefficientPerK * (temperatureK - ConductorMaterial.REFERENCE_K));
    double lossWPerM = lossesWPerM[cell] + slopesWPerMK[cell] * (temperatureK - nodesK[cell]);
    return (inflowWPerM - lossWPerM) / heatCapacityJPerMK;
  }

  /** How fast dT/dt falls off within a cell. */
  private double decayPerS(double sourceWPerM, int cell) {
    return (slopesWPerMK[cell] - sourceWPerM * coefficientPerK) / heatCapacityJPerMK;
  }

  /** Time in s a steady current takes from one temperature up to another; infinite if never. */
  double timeToS(double currentA, double startK, double limitK) {
    double sourceWPerM = currentA * currentA * resistanceOhmPerM;
    double temperatureK = startK;
    double timeS = 0;
    for (int cell = cellOf(startK); temperatureK < limitK; cell++) {
      boolean isLast = cell == slopesWPerMK.length - 1;
      double goalK = isLast ? limitK : Math.min(limitK, nodesK[cell + 1]);
      double rateKPerS = rateKPerS(sourceWPerM, temperatureK, cell);
      double decayPerS = decayPerS(sourceWPerM, cell);
      double neededK = goalK - temperatureK;
      if (!(rateKPerS > 0) || !(decayPerS * neededK < rateKPerS)) {
        return Double.POSITIVE_INFINITY;
      }
      timeS += timeTo(neededK, rateKPerS, decayPerS);
      temperatureK = goalK;
    }
    return timeS;
  }

  private int cellOf(double temperatureK) {
    int found = Arrays.binarySearch(nodesK, temperatureK);
    int index = found >= 0 ? found : -found - 2;
    return Math.max(0, Math.min(index, slopesWPerMK.length - 1));
  }

  /** (1 − e⁻ˣ)/x, also for x = 0 and x &lt; 0. */
  private static double relativeRise(double x) {
    if (Math.abs(x) < SMALL) {
      return 1 - x / 2 * (1 - x / 3 * (1 - x / 4 * (1 - x / 5 * (1 - x / 6 * (1 - x / 7)))));
    }
    return -Math.expm1(-x) / x;
  }

  /** Time after which an exponential that starts at a rate has moved by a rise. */
  private static double timeTo(double riseK, double rateKPerS, double decayPerS) {
    double linearS = riseK / rateKPerS;
    double x = decayPerS * linearS;
    return Math.abs(x) < 1e-12 ? linearS : -Math.log1p(-x) / decayPerS;
  }
}
