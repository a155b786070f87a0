package org.wattwright.voltage;

import java.util.function.IntFunction;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricPotential;
import org.wattwright.units.Kind;
import org.wattwright.units.Measures;

/** Puts a conflict between two limits into words. */
final class ConflictText {
  private static final String PEAK_LOAD = "the peak load";

  private final IntFunction<EnvelopeSolver.Solution> solutions;
  private final int largest;
  private final SeriesSearch.End upper;

  ConflictText(
      IntFunction<EnvelopeSolver.Solution> solutions, int largest, SeriesSearch.End upper) {
    this.solutions = solutions;
    this.largest = largest;
    this.upper = upper;
  }

  /** An upper end against a lower one. */
  WindowMatch.Conflict with(SeriesSearch.End lower) {
    String name = lower.device().name();
    if (lower.number() > largest) {
      return unreachable(name, name + " starts at " + text(limit(lower)) + ", " + reached(lower));
    }
    boolean alone = name.equals(upper.device().name());
    String needs = (alone ? "it" : name) + " needs " + lower.number();
    return apart(name, lower.number(), needs + shortBy(lower));
  }

  /** An upper end against the load that the pack must carry. */
  WindowMatch.Conflict withPeakLoad(int fewest) {
    if (fewest > largest) {
      PeakLoad peak = solutions.apply(Math.max(1, upper.number())).peak();
      return unreachable(
          PEAK_LOAD,
          PEAK_LOAD
              + " is met by no number of modules in series up to "
              + largest
              + ": with "
              + Math.max(1, upper.number())
              + " the pack gives "
              + peak.maximum());
    }
    return apart(PEAK_LOAD, fewest, PEAK_LOAD + " needs " + fewest);
  }

  private WindowMatch.Conflict apart(String lower, int fewest, String needs) {
    Quantity<ElectricPotential> end = limit(upper);
    EnvelopeSolver.Solution needed = solutions.apply(fewest);
    double fullV = upper.rule().point().inV(needed.envelope());
    Quantity<ElectricPotential> apart = Kind.VOLTAGE.ofSi(fullV - Kind.VOLTAGE.siValueOf(end));
    String text =
        upperText(needed)
            + text(Kind.VOLTAGE.ofSi(fullV))
            + ": "
            + text(apart)
            + " apart; "
            + atMost()
            + ", but "
            + needs;
    return WindowMatch.Conflict.between(sides(lower), fewest, apart, text);
  }

  private String upperText(EnvelopeSolver.Solution needed) {
    boolean regenerating =
        upper.rule().point() == EnvelopePoint.UNDER_CHARGE
            && needed.regeneratingV() > Kind.VOLTAGE.siValueOf(needed.envelope().endOfCharge());
    String ends = upper.rule() == WindowRule.ABSOLUTE_MAXIMUM ? " stands " : " ends at ";
    String full = regenerating ? ", pack full under regeneration is " : ", pack full is ";
    return upper.device().name() + ends + text(limit(upper)) + full;
  }

  /** How far the pack with the most modules falls below the lower end. */
  private String shortBy(SeriesSearch.End lower) {
    if (upper.number() < 1) {
      return "";
    }
    double voltageV = lower.rule().point().inV(solutions.apply(upper.number()).envelope());
    double belowV = Kind.VOLTAGE.siValueOf(limit(lower)) - voltageV;
    return ": with "
        + upper.number()
        + " the pack falls "
        + text(Kind.VOLTAGE.ofSi(belowV))
        + " below its "
        + text(limit(lower));
  }

  private String reached(SeriesSearch.End lower) {
    double voltageV = lower.rule().point().inV(solutions.apply(largest).envelope());
    return largest
        + " modules in series, the most considered, reach "
        + text(Kind.VOLTAGE.ofSi(voltageV));
  }

  private WindowMatch.Conflict unreachable(String lower, String why) {
    String allows = "; " + upper.device().name() + " allows " + atMost();
    return WindowMatch.Conflict.withoutAnyNumber(
        sides(lower), upper.number() == largest ? why : why + allows);
  }

  private ConflictSides sides(String lower) {
    return new ConflictSides(upper.device().name(), limit(upper), upper.number(), lower);
  }

  private String atMost() {
    return "at most " + upper.number() + " in series";
  }

  private static Quantity<ElectricPotential> limit(SeriesSearch.End end) {
    return end.rule().limitOf(end.device()).orElseThrow();
  }

  private static String text(Quantity<ElectricPotential> voltage) {
    return Measures.format(voltage, Kind.VOLTAGE);
  }
}
