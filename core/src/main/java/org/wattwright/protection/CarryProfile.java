package org.wattwright.protection;

import static org.wattwright.units.WorkshopUnits.AMPERE;
import static org.wattwright.units.WorkshopUnits.SECOND;

import javax.measure.quantity.ElectricCurrent;
import org.jspecify.annotations.Nullable;
import org.wattwright.check.Check;
import org.wattwright.check.CheckBuilder;
import org.wattwright.check.Figure;
import org.wattwright.profile.Profile;
import org.wattwright.units.Kind;

/** A current profile against carry current and carry curve: the window that is used most. */
final class CarryProfile {
  private final @Nullable Double carryA;
  private final @Nullable CarryCurve curve;
  private final CheckBuilder check;

  private double worstA;
  private double limitA = Double.NaN;
  private String where = "";

  CarryProfile(ContactorData data, CheckBuilder check) {
    this.carryA = data.carryA();
    this.curve = data.carryCurve();
    this.check = check;
  }

  Check check(Profile<ElectricCurrent> current) {
    double wholeA = Kind.CURRENT.siValueOf(current.rms());
    double peakA = Kind.CURRENT.siValueOf(current.peak());
    if (carryA == null) {
      return check.notChecked(Figure.ofSi(wholeA, AMPERE), "contactor.carry");
    }
    consider(wholeA, wholeLimitA(current, carryA), "RMS of the whole");
    if (peakA > carryA && curve != null) {
      considerWindows(current, curve);
    }
    check.note(where);
    boolean fails = worstA > limitA;
    if (!fails && peakA > carryA && curve == null) {
      return check.notChecked(Figure.ofSi(peakA, AMPERE), "contactor.carryCurve");
    }
    if (!fails && peakA > carryA && curve != null && peakA > curve.highestA()) {
      String field = "contactor.carryCurve above " + AMPERE.of(curve.highestA());
      return check.notChecked(Figure.ofSi(peakA, AMPERE), field);
    }
    return check.atMost(Figure.ofSi(worstA, AMPERE), Figure.ofSi(limitA, AMPERE));
  }

  /** What repeats goes on for ever; what does not happens once, and cools before it comes again. */
  private double wholeLimitA(Profile<ElectricCurrent> current, double continuousA) {
    return current.isRepeating() || curve == null
        ? continuousA
        : Math.max(continuousA, curve.currentForA(Kind.TIME.siValueOf(current.duration())));
  }

  private void considerWindows(Profile<ElectricCurrent> current, CarryCurve points) {
    double lengthS = Kind.TIME.siValueOf(current.duration());
    for (int i = 0; i < points.size(); i++) {
      double windowS = points.durationS(i);
      if (current.isRepeating() || windowS <= lengthS) {
        double rmsA = Kind.CURRENT.siValueOf(current.highestRms(Kind.TIME.ofSi(windowS)).value());
        consider(rmsA, points.currentA(i), "highest RMS over " + SECOND.of(windowS));
      }
    }
  }

  private void consider(double rmsA, double allowedA, String window) {
    if (where.isEmpty() || rmsA / allowedA > worstA / limitA) {
      worstA = rmsA;
      limitA = allowedA;
      where = window;
    }
  }
}
