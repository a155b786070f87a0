package org.wattwright.protection;

import java.util.ArrayList;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricPotential;
import org.wattwright.units.Kind;

/**
 * A contactor in its circuit as the search sees it, in SI.
 *
 * @param breakA highest current of a discharge that it may break at the circuit's voltage; 0 if the
 *     catalogue says nothing of it
 * @param openingS longest time from the command to open contacts; 0 if unknown, which a check says
 * @param continuousA current that it carries for ever; 0 if unknown, which a check says
 * @param withstands how long it bears more, each curve true by itself; empty if unknown, which a
 *     check says, and then counted as borne
 */
record SwitchLine(double breakA, double openingS, double continuousA, List<TimeCurve> withstands) {
  private static final double HIGHEST_A = 1e7;

  /** Bears and breaks everything at once. */
  static final SwitchLine IDEAL =
      new SwitchLine(Double.POSITIVE_INFINITY, 0, Double.POSITIVE_INFINITY, List.of());

  static SwitchLine of(Contactor contactor, Quantity<ElectricPotential> highestVoltage) {
    double continuousA = contactor.carry().map(Kind.CURRENT::siValueOf).orElse(0.0);
    double breakA =
        contactor
            .breakLimit(highestVoltage, BreakDirection.FORWARD)
            .map(Kind.CURRENT::siValueOf)
            .orElse(0.0);
    double openingS = contactor.openingTime().map(Kind.TIME::siValueOf).orElse(0.0);
    List<TimeCurve> withstands = new ArrayList<>();
    contactor
        .withstand()
        .map(Kind.JOULE_INTEGRAL::siValueOf)
        .ifPresent(
            a2s -> {
              withstands.add(line(Math.max(continuousA, 1), a2s));
              contactor.carryCurve().ifPresent(curve -> withstands.add(overload(curve)));
            });
    return new SwitchLine(breakA, openingS, continuousA, List.copyOf(withstands));
  }

  private static TimeCurve line(double fromA, double integralA2S) {
    return TimeCurve.of(
        new double[] {fromA, HIGHEST_A},
        new double[] {integralA2S / (fromA * fromA), integralA2S / (HIGHEST_A * HIGHEST_A)});
  }

  /** The carry curve with its own rule between the points: asked at them and just above. */
  private static TimeCurve overload(CarryCurve curve) {
    double[] currentsA = new double[2 * curve.size() - 1];
    double[] timesS = new double[2 * curve.size() - 1];
    int size = 0;
    for (int i = 0; i < curve.size(); i++) {
      double atA = curve.currentA(i);
      currentsA[size] = atA;
      timesS[size++] = curve.durationS(atA).orElseThrow();
      if (i + 1 < curve.size()) {
        double aboveA = Math.nextUp(atA);
        currentsA[size] = aboveA;
        timesS[size++] = curve.durationS(aboveA).orElseThrow();
      }
    }
    return TimeCurve.of(currentsA, timesS);
  }

  /** Currents at which something clears within what the contactor bears. */
  CurrentRanges bears(TimeCurve clearing) {
    if (withstands.isEmpty()) {
      return CurrentRanges.ALL;
    }
    CurrentRanges borne =
        CurrentRanges.of(clearing.lowestA(), Math.min(continuousA, clearing.highestA()));
    for (TimeCurve each : withstands) {
      borne = borne.or(clearing.notAbove(each));
    }
    return borne;
  }

  /** Currents that it bears for a time. */
  CurrentRanges bears(double timeS) {
    if (withstands.isEmpty()) {
      return CurrentRanges.ALL;
    }
    CurrentRanges borne = CurrentRanges.of(0, continuousA);
    for (TimeCurve each : withstands) {
      borne = borne.or(each.atLeast(timeS));
    }
    return borne;
  }
}
