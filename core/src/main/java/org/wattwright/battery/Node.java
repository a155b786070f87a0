package org.wattwright.battery;

import java.util.Arrays;
import java.util.List;

/**
 * Strings in parallel on one node, behind common leads: each string is a source with a resistance
 * that may differ by direction.
 *
 * <p>The current out of the node falls steadily as its voltage rises. Between two neighbouring
 * source voltages every string keeps its direction, so there the node is one source with one
 * resistance, a {@link Piece}; every question is answered in closed form in the piece it falls in.
 */
final class Node {
  private final double[] sourceV;
  private final double[] dischargeOhm;
  private final double[] chargeOhm;
  private final double leadOhm;

  /** From the highest node voltages, where all strings are charged, to the lowest. */
  private final Piece[] pieces;

  Node(double[] sourceV, double[] dischargeOhm, double[] chargeOhm, double leadOhm) {
    this.sourceV = sourceV;
    this.dischargeOhm = dischargeOhm;
    this.chargeOhm = chargeOhm;
    this.leadOhm = leadOhm;
    this.pieces = pieces();
  }

  /** A node of strings, each in its state, some time after a current began. */
  static Node of(
      List<StringModel> models, List<StringModel.State> states, double durationS, double leadOhm) {
    int count = models.size();
    double[] sourceV = new double[count];
    double[] dischargeOhm = new double[count];
    double[] chargeOhm = new double[count];
    Load discharge = new Load(Direction.DISCHARGE, durationS);
    Load charge = new Load(Direction.CHARGE, durationS);
    for (int k = 0; k < count; k++) {
      StringModel model = models.get(k);
      StringModel.State state = states.get(k);
      boolean likePrevious = k > 0 && model == models.get(k - 1) && state.equals(states.get(k - 1));
      sourceV[k] = likePrevious ? sourceV[k - 1] : model.openCircuitV(state);
      dischargeOhm[k] = likePrevious ? dischargeOhm[k - 1] : model.resistanceOhm(state, discharge);
      chargeOhm[k] = likePrevious ? chargeOhm[k - 1] : model.resistanceOhm(state, charge);
    }
    return new Node(sourceV, dischargeOhm, chargeOhm, leadOhm);
  }

  /** A range of node voltages in which the strings act as one source with one resistance. */
  private record Piece(double lowerV, double upperV, double sourceV, double ohm) {
    double currentAt(double nodeV) {
      return (sourceV - nodeV) / ohm;
    }

    double largestCurrentA() {
      return currentAt(lowerV);
    }

    boolean holds(double nodeV) {
      return nodeV >= lowerV && nodeV <= upperV;
    }
  }

  private Piece[] pieces() {
    double[] sorted = Arrays.stream(sourceV).distinct().sorted().toArray();
    Piece[] found = new Piece[sorted.length + 1];
    double upperV = Double.POSITIVE_INFINITY;
    for (int i = 0; i < found.length; i++) {
      double lowerV = i < sorted.length ? sorted[sorted.length - 1 - i] : Double.NEGATIVE_INFINITY;
      found[i] = piece(lowerV, upperV);
      upperV = lowerV;
    }
    return found;
  }

  /** E = Σ(E_k/R_k)/Σ(1/R_k), taken from the first source so that equal sources stay exact. */
  private Piece piece(double lowerV, double upperV) {
    double conductanceS = 0;
    double aboveFirstA = 0;
    for (int k = 0; k < sourceV.length; k++) {
      double ohm = sourceV[k] >= upperV ? dischargeOhm[k] : chargeOhm[k];
      conductanceS += 1 / ohm;
      aboveFirstA += (sourceV[k] - sourceV[0]) / ohm;
    }
    return new Piece(lowerV, upperV, sourceV[0] + aboveFirstA / conductanceS, 1 / conductanceS);
  }

  int count() {
    return sourceV.length;
  }

  double sourceV(int k) {
    return sourceV[k];
  }

  double resistanceOhm(int k, Direction direction) {
    return direction == Direction.DISCHARGE ? dischargeOhm[k] : chargeOhm[k];
  }

  /** Resistance at the terminals with all strings working in one direction. */
  double resistanceOhm(Direction direction) {
    return pieces[direction == Direction.DISCHARGE ? pieces.length - 1 : 0].ohm() + leadOhm;
  }

  /** Node voltage at which the strings together deliver a current; discharge positive. */
  double voltageAt(double currentA) {
    for (Piece piece : pieces) {
      if (currentA <= piece.largestCurrentA()) {
        return piece.sourceV() - currentA * piece.ohm();
      }
    }
    throw new IllegalStateException("current is no number: " + currentA);
  }

  /** Voltage at the terminals, behind the leads. */
  double terminalAt(double currentA) {
    return voltageAt(currentA) - currentA * leadOhm;
  }

  /** Current of all strings while one of them has a drop, positive on discharge, inside it. */
  double currentAtDrop(int ofString, double dropV) {
    double currentA = 0;
    for (int k = 0; k < sourceV.length; k++) {
      double differenceV = sourceV[k] - sourceV[ofString] + dropV;
      currentA += differenceV / resistanceOhm(k, differenceV);
    }
    return currentA;
  }

  double stringCurrentAt(int k, double nodeV) {
    double differenceV = sourceV[k] - nodeV;
    return differenceV / resistanceOhm(k, differenceV);
  }

  /** I²·R of every string. */
  double stringHeatAt(double nodeV) {
    double heatW = 0;
    for (int k = 0; k < sourceV.length; k++) {
      heatW += stringCurrentAt(k, nodeV) * (sourceV[k] - nodeV);
    }
    return heatW;
  }

  /** I²·R of every string and of the leads. */
  double heatAt(double currentA) {
    return stringHeatAt(voltageAt(currentA)) + currentA * currentA * leadOhm;
  }

  /**
   * The current, at most a bound, at which discharge power is largest: the bound itself, or the
   * peak I = E/(2·R) of a piece if that lies below.
   */
  double currentOfLargestPower(double boundA) {
    double bestA = boundA;
    double bestW = boundA * terminalAt(boundA);
    for (Piece piece : pieces) {
      double peakA = piece.sourceV() / (2 * (piece.ohm() + leadOhm));
      boolean inside = peakA < boundA && piece.holds(piece.sourceV() - peakA * piece.ohm());
      if (inside && peakA * terminalAt(peakA) > bestW) {
        bestA = peakA;
        bestW = peakA * terminalAt(peakA);
      }
    }
    return bestA;
  }

  /**
   * Smallest current at a power, positive on discharge; the current of largest power if that is
   * less.
   *
   * <p>I = 2P/(E + √(E² − 4RP)), the form that keeps its digits as P tends to 0.
   */
  double currentAtPower(double powerW) {
    for (Piece piece : pieces) {
      if (powerW <= largestPowerW(piece)) {
        return currentAtPower(piece, powerW);
      }
    }
    return currentAtPower(pieces[pieces.length - 1], powerW);
  }

  private double currentAtPower(Piece piece, double powerW) {
    double ohm = piece.ohm() + leadOhm;
    // Rounding may push the largest power itself a little beyond the square.
    double square = Math.max(0, piece.sourceV() * piece.sourceV() - 4 * ohm * powerW);
    return 2 * powerW / (piece.sourceV() + Math.sqrt(square));
  }

  /** Largest power that a piece reaches on the way to its largest current. */
  private double largestPowerW(Piece piece) {
    double ohm = piece.ohm() + leadOhm;
    double currentA = Math.min(piece.largestCurrentA(), piece.sourceV() / (2 * ohm));
    return currentA * (piece.sourceV() - currentA * ohm);
  }

  private double resistanceOhm(int k, double differenceV) {
    return differenceV >= 0 ? dischargeOhm[k] : chargeOhm[k];
  }
}
