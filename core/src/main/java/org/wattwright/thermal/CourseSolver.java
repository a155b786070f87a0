package org.wattwright.thermal;

import org.wattwright.battery.Heat;
import org.wattwright.units.Kind;

/**
 * Temperature of the lump under a current that is straight over each stretch.
 *
 * <p>A step takes the heat at its middle, found with a half step, and follows the exact exponential
 * with that heat: second order, never past the steady temperature, and its energies balance by
 * construction. Each step is also done in two halves; the halves are kept, and a third of the
 * difference bounds their error. Steps never cross the end of a stretch.
 */
final class CourseSolver {
  /** Bound of the summed error over a whole course. */
  private static final double TOLERANCE_K = 1e-6;

  /** A step is at least this share of its stretch, so that every course ends. */
  private static final double SHORTEST_SHARE = 1d / 4096;

  private final PackHeatModel model;
  private final double startSoc;
  private final double totalS;
  private final CoursePieces pieces = new CoursePieces();
  private double chargeC;
  private double nowK;
  private double errorK;

  CourseSolver(PackHeatModel model, double startSoc, double totalS) {
    this.model = model;
    this.startSoc = startSoc;
    this.totalS = totalS;
  }

  /** One piece: state at its start, its length, the current at both ends. */
  private record Step(double startK, double soc, double lengthS, double fromA, double toA) {}

  /** What a step gave. */
  private record Done(double endK, double lossW, double reversibleW) {}

  CoursePieces run(double startK, double[] lengthsS, double[] fromA, double[] toA) {
    nowK = startK;
    pieces.start(startK);
    for (int i = 0; i < lengthsS.length; i++) {
      stretch(lengthsS[i], fromA[i], toA[i]);
    }
    pieces.finish(errorK);
    return pieces;
  }

  private void stretch(double lengthS, double fromA, double toA) {
    double slopeAPerS = (toA - fromA) / lengthS;
    double shortestS = lengthS * SHORTEST_SHARE;
    double doneS = 0;
    double stepS = lengthS;
    while (doneS < lengthS) {
      boolean last = stepS >= lengthS - doneS;
      double triedS = last ? lengthS - doneS : stepS;
      double beginA = fromA + slopeAPerS * doneS;
      double endA = last ? toA : beginA + slopeAPerS * triedS;
      double ratio = attempt(triedS, beginA, endA, shortestS);
      if (ratio <= 1) {
        doneS = last ? lengthS : doneS + triedS;
      }
      stepS = Math.max(shortestS, triedS * Math.max(0.2, Math.min(4, 0.9 / Math.sqrt(ratio))));
    }
  }

  /** Error over its allowance; at most 1 if the two halves were kept. */
  private double attempt(double lengthS, double fromA, double toA, double shortestS) {
    double middleA = (fromA + toA) / 2;
    double soc = startSoc - chargeC / model.chargeC();
    Step first = new Step(nowK, soc, lengthS / 2, fromA, middleA);
    Done firstDone = done(first);
    double firstC = charge(first);
    double middleSoc = soc - firstC / model.chargeC();
    Step second = new Step(firstDone.endK(), middleSoc, lengthS / 2, middleA, toA);
    Done secondDone = done(second);
    double wholeK = done(new Step(nowK, soc, lengthS, fromA, toA)).endK();
    double stepErrorK = Math.abs(wholeK - secondDone.endK()) / 3;
    double ratio = stepErrorK / (TOLERANCE_K * lengthS / totalS);
    if (ratio > 1 && lengthS > shortestS * (1 + 1e-9)) {
      return ratio;
    }
    keep(first, firstDone);
    keep(second, secondDone);
    errorK += stepErrorK;
    return Math.min(ratio, 1);
  }

  private static double charge(Step step) {
    return (step.fromA() + step.toA()) / 2 * step.lengthS();
  }

  private void keep(Step step, Done done) {
    chargeC += charge(step);
    nowK = done.endK();
    double soc = startSoc - chargeC / model.chargeC();
    pieces.add(
        new CoursePieces.Piece(step.lengthS(), done.endK(), done.lossW(), done.reversibleW()),
        new CoursePieces.Drive(step.fromA(), step.toA(), soc));
  }

  private Done done(Step step) {
    double halfS = step.lengthS() / 2;
    double middleA = (step.fromA() + step.toA()) / 2;
    double quarterC = (step.fromA() + middleA) / 2 * halfS;
    double middleSoc = step.soc() - quarterC / model.chargeC();
    double earlyW = model.heatW(middleSoc, step.startK(), middleA);
    double middleK = after(step.startK(), earlyW, halfS);
    Heat heat = model.heat(middleSoc, middleK, middleA);
    double lossW = Kind.POWER.siValueOf(heat.irreversible());
    double reversibleW = PackHeatModel.reversibleW(heat);
    double endK = after(step.startK(), lossW + reversibleW, step.lengthS());
    return new Done(endK, lossW, reversibleW);
  }

  private double after(double startK, double heatW, double timeS) {
    return Relaxation.afterK(startK, model.rateKPerS(heatW, startK), model.decayPerS(), timeS);
  }
}
