package org.wattwright.battery;

import java.util.Arrays;

/**
 * Strings in parallel on one node: each a source with a resistance that may differ by direction.
 *
 * <p>The current out of the node falls steadily as its voltage rises, so the voltage that carries a
 * current is unique; between two neighbouring source voltages it is a linear equation.
 */
final class Node {
  private final double[] sourceV;
  private final double[] dischargeOhm;
  private final double[] chargeOhm;

  Node(double[] sourceV, double[] dischargeOhm, double[] chargeOhm) {
    this.sourceV = sourceV;
    this.dischargeOhm = dischargeOhm;
    this.chargeOhm = chargeOhm;
  }

  /** Node voltage at which the strings together deliver a current; discharge positive. */
  double voltageAt(double currentA) {
    double[] sorted = sourceV.clone();
    Arrays.sort(sorted);
    // From the top: the lowest voltage interval whose upper end still delivers too little.
    double upperV = Double.POSITIVE_INFINITY;
    for (int i = sorted.length - 1; i >= 0; i--) {
      if (currentAt(sorted[i]) >= currentA) {
        return solveBetween(sorted[i], upperV, currentA);
      }
      upperV = sorted[i];
    }
    return solveBetween(Double.NEGATIVE_INFINITY, upperV, currentA);
  }

  /** V = (ΣE/R − I)/Σ(1/R) with the directions that hold inside the interval. */
  private double solveBetween(double lowerV, double upperV, double currentA) {
    double conductanceS = 0;
    double shortCircuitA = 0;
    for (int k = 0; k < sourceV.length; k++) {
      // A source at or above the upper end discharges; at or below the lower end it is charged.
      boolean discharges = sourceV[k] >= upperV || lowerV == Double.NEGATIVE_INFINITY;
      double ohm = discharges ? dischargeOhm[k] : chargeOhm[k];
      conductanceS += 1 / ohm;
      shortCircuitA += sourceV[k] / ohm;
    }
    return (shortCircuitA - currentA) / conductanceS;
  }

  double currentAt(double nodeV) {
    double currentA = 0;
    for (int k = 0; k < sourceV.length; k++) {
      currentA += stringCurrentAt(k, nodeV);
    }
    return currentA;
  }

  double stringCurrentAt(int k, double nodeV) {
    double differenceV = sourceV[k] - nodeV;
    return differenceV / resistanceOhm(k, differenceV);
  }

  double heatAt(double nodeV) {
    double heatW = 0;
    for (int k = 0; k < sourceV.length; k++) {
      heatW += stringCurrentAt(k, nodeV) * (sourceV[k] - nodeV);
    }
    return heatW;
  }

  private double resistanceOhm(int k, double differenceV) {
    return differenceV >= 0 ? dischargeOhm[k] : chargeOhm[k];
  }
}
