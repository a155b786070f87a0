package org.wattwright.vehicle;

import static org.wattwright.units.WorkshopUnits.KILOGRAM;
import static org.wattwright.units.WorkshopUnits.METRE;

import java.util.ArrayList;
import java.util.List;
import org.wattwright.check.Figure;
import org.wattwright.check.Recorder;
import org.wattwright.check.Source;
import org.wattwright.check.StepBuilder;

/**
 * Σ±m·x/Σ±m, with every mass m and every place x anywhere in its interval.
 *
 * <p>Worst case, exact: the quotient's end λ is where the best of Σ±m·(x − λ) over all intervals is
 * zero, and for a given λ each term has its best at a corner; λ is found by repetition (Dinkelbach,
 * On nonlinear fractional programming, Management Science 13 (1967) 492). Root-sum-square, first
 * order: √Σ(((x − λ)·Δm/M)² + (m·Δx/M)²).
 */
final class CentreKernel {
  /** Each repetition gains digits faster than the last; a handful is usual. */
  private static final int MOST_REPETITIONS = 100;

  private static final String ENDS =
      " (S = Σm·x in kg·m, M = Σm, masses and places at the ends that together are worst)";

  private static final Source DINKELBACH =
      Source.literature("W. Dinkelbach, On nonlinear fractional programming", "1967");

  private final List<Term> terms = new ArrayList<>();

  /**
   * A mass at a place.
   *
   * @param sign +1 or −1
   * @param mass lowest, nominal, highest and likely half-width, kg
   * @param place lowest, nominal, highest and likely half-width, m
   */
  record Term(int sign, Spread.Ends mass, Spread.Ends place) {
    /** Greatest (way +1) or least (way −1) contribution to Σ±m·(x − λ). */
    Corner best(double lambdaM, int way) {
      double placeM = sign * way > 0 ? place.highest() : place.lowest();
      boolean heavy = sign * way * (placeM - lambdaM) > 0;
      return new Corner(sign * (heavy ? mass.highest() : mass.lowest()), placeM);
    }
  }

  private record Corner(double signedKg, double placeM) {}

  /** Moment and mass together. */
  private record Sum(double momentKgM, double massKg) {
    double quotientM() {
      return momentKgM / massKg;
    }
  }

  static Spread.Ends exact(double value) {
    return new Spread.Ends(value, value, value, 0);
  }

  static Spread.Ends around(double value, double tolerance) {
    return new Spread.Ends(value - tolerance, value, value + tolerance, tolerance);
  }

  CentreKernel add(Term term) {
    terms.add(term);
    return this;
  }

  /** Items with their places read by the caller. */
  CentreKernel addAll(List<SignedItem> items, Places places) {
    for (SignedItem signed : items) {
      MassItem item = signed.item();
      double kg = item.massKg();
      double tolerance = item.massToleranceKg();
      Spread.Ends mass =
          new Spread.Ends(Math.max(0, kg - tolerance), kg, kg + tolerance, tolerance);
      add(
          new Term(
              signed.sign(), mass, around(places.of(item.position()), item.positionToleranceM())));
    }
    return this;
  }

  /** Reads one distance of a position, m. */
  interface Places {
    double of(Position position);
  }

  Spread.Ends toSpread(SpreadKernel.Label label, Recorder recorder) {
    Sum nominal = nominal();
    double centreM = nominal.quotientM();
    if (Double.isNaN(centreM)) {
      return exact(Double.NaN);
    }
    Sum lowest = end(centreM, -1);
    Sum highest = end(centreM, 1);
    double likelyM = likely(centreM, nominal.massKg());
    if (recorder.isOn()) {
      record(label.step(recorder, "%s_min", "lowest" + ENDS), lowest);
      record(label.step(recorder, "%s_max", "highest" + ENDS), highest);
      label
          .step(recorder, "σ(%s)", "root-sum-square of all tolerances")
          .formula("√Σ(((x - " + label.symbol() + ")·Δm/M)² + (m·Δx/M)²)")
          .with("M", nominal.massKg(), KILOGRAM)
          .gives(likelyM, METRE);
    }
    return new Spread.Ends(lowest.quotientM(), centreM, highest.quotientM(), likelyM);
  }

  private static void record(StepBuilder step, Sum end) {
    step.formula("S/M")
        .with("S", Figure.number(end.momentKgM()))
        .with("M", end.massKg(), KILOGRAM)
        .source(DINKELBACH)
        .gives(end.quotientM(), METRE);
  }

  private Sum nominal() {
    double momentKgM = 0;
    double massKg = 0;
    for (Term term : terms) {
      momentKgM += term.sign() * term.mass().nominal() * term.place().nominal();
      massKg += term.sign() * term.mass().nominal();
    }
    return new Sum(momentKgM, massKg);
  }

  private Sum end(double startM, int way) {
    double lambdaM = startM;
    Sum best = nominal();
    for (int i = 0; i < MOST_REPETITIONS; i++) {
      Sum next = best(lambdaM, way);
      if (!(way * (next.quotientM() - lambdaM) > 0)) {
        return best;
      }
      best = next;
      lambdaM = next.quotientM();
    }
    return best;
  }

  private Sum best(double lambdaM, int way) {
    double momentKgM = 0;
    double massKg = 0;
    for (Term term : terms) {
      Corner corner = term.best(lambdaM, way);
      momentKgM += corner.signedKg() * corner.placeM();
      massKg += corner.signedKg();
    }
    return new Sum(momentKgM, massKg);
  }

  private double likely(double centreM, double massKg) {
    double squares = 0;
    for (Term term : terms) {
      double byMass = (term.place().nominal() - centreM) * term.mass().likely() / massKg;
      double byPlace = term.mass().nominal() * term.place().likely() / massKg;
      squares += byMass * byMass + byPlace * byPlace;
    }
    return Math.sqrt(squares);
  }
}
