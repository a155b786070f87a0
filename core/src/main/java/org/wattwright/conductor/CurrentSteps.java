package org.wattwright.conductor;

import static org.wattwright.units.WorkshopUnits.AMPERE;
import static org.wattwright.units.WorkshopUnits.SECOND;

import java.util.Arrays;
import javax.measure.quantity.ElectricCurrent;
import org.wattwright.profile.Profile;

/**
 * A current profile as steps of constant current, each with the heat of the stretch it stands for.
 *
 * <p>A stretch in which the current changes is cut into pieces, and a piece carries its RMS
 * current: I² = (I₁² + I₁·I₂ + I₂²)/3.
 */
final class CurrentSteps {
  private final double[] durationsS;
  private final double[] currentsA;

  private CurrentSteps(double[] durationsS, double[] currentsA) {
    this.durationsS = durationsS;
    this.currentsA = currentsA;
  }

  /** Not copied: the kernel only reads. */
  double[] durationsS() {
    return durationsS;
  }

  /** Not copied: the kernel only reads. */
  double[] currentsA() {
    return currentsA;
  }

  /** Pieces of ramps are no longer than a time, so that the temperature follows the ramp. */
  static CurrentSteps of(Profile<ElectricCurrent> profile, double longestPieceS) {
    double[] lengthsS = profile.durationsIn(SECOND);
    double[] fromA = profile.startValuesIn(AMPERE);
    double[] toA = profile.endValuesIn(AMPERE);
    double[] durationsS = new double[lengthsS.length];
    double[] currentsA = new double[lengthsS.length];
    int count = 0;
    for (int i = 0; i < lengthsS.length; i++) {
      int pieces = fromA[i] == toA[i] ? 1 : pieces(lengthsS[i], longestPieceS);
      if (count + pieces > durationsS.length) {
        int room = Math.max(2 * durationsS.length, count + pieces);
        durationsS = Arrays.copyOf(durationsS, room);
        currentsA = Arrays.copyOf(currentsA, room);
      }
      for (int piece = 0; piece < pieces; piece++) {
        double startA = fromA[i] + (toA[i] - fromA[i]) * piece / pieces;
        double endA = fromA[i] + (toA[i] - fromA[i]) * (piece + 1) / pieces;
        durationsS[count] = lengthsS[i] / pieces;
        currentsA[count] = rms(startA, endA);
        count++;
      }
    }
    return new CurrentSteps(Arrays.copyOf(durationsS, count), Arrays.copyOf(currentsA, count));
  }

  private static int pieces(double lengthS, double longestPieceS) {
    return (int) Math.min(1000, Math.ceil(lengthS / longestPieceS));
  }

  private static double rms(double startA, double endA) {
    return startA == endA
        ? Math.abs(startA)
        : Math.sqrt((startA * startA + startA * endA + endA * endA) / 3);
  }

  CurrentSteps scaled(double factor) {
    double[] scaledA = currentsA.clone();
    for (int i = 0; i < scaledA.length; i++) {
      scaledA[i] *= factor;
    }
    return new CurrentSteps(durationsS, scaledA);
  }

  double rmsA() {
    double integral = 0;
    double totalS = 0;
    for (int i = 0; i < durationsS.length; i++) {
      integral += currentsA[i] * currentsA[i] * durationsS[i];
      totalS += durationsS[i];
    }
    return Math.sqrt(integral / totalS);
  }
}
