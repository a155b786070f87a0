package org.wattwright.protection;

import static org.wattwright.units.WorkshopUnits.AMPERE;
import static org.wattwright.units.WorkshopUnits.AMPERE_SQUARED_SECOND;
import static org.wattwright.units.WorkshopUnits.SECOND;
import static org.wattwright.units.WorkshopUnits.VOLT;

import java.util.Comparator;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.ElectricPotential;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import org.jspecify.annotations.Nullable;
import org.wattwright.check.CautionBand;
import org.wattwright.check.Check;
import org.wattwright.check.CheckBuilder;
import org.wattwright.check.Figure;
import org.wattwright.internal.Require;
import org.wattwright.profile.Profile;
import org.wattwright.units.JouleIntegral;
import org.wattwright.units.Kind;
import org.wattwright.units.NamedUnit;

/**
 * What a contactor is asked to do, against what its catalogue allows: one check a question.
 *
 * <p>All are safety checks with stable codes {@code contactor.…}. What the catalogue does not state
 * gives NOT_CHECKED and names the field. Immutable and thread-safe.
 */
public final class ContactorChecks {
  private final ContactorData data;

  ContactorChecks(ContactorData data) {
    this.data = data;
  }

  private CheckBuilder check(String code, String what) {
    return Check.named("contactor." + code, what + " of " + data.name())
        .source(data.source())
        .basis(data.basis())
        .safety();
  }

  /**
   * {@code contactor.voltage}: whichever device opens first sees the whole pack voltage, also in a
   * split pack.
   *
   * @param packHighest highest voltage of the whole pack, &gt; 0 V
   * @return the check
   * @throws org.wattwright.units.InvalidInputException if not positive
   */
  public Check voltage(Quantity<ElectricPotential> packHighest) {
    double packV = Require.quantity("Contactor.packHighest", packHighest, VOLT).positive();
    return check("voltage", "whole pack's highest voltage against rated voltage")
        .cautionBand(CautionBand.NONE)
        .atMost(Figure.ofSi(packV, VOLT), Figure.ofSi(data.voltageV(), VOLT));
  }

  /**
   * {@code contactor.carry}: a steady current.
   *
   * @param current either sign
   * @return the check
   */
  public Check carry(Quantity<ElectricCurrent> current) {
    double currentA = Math.abs(Kind.CURRENT.siValueOf(current));
    CheckBuilder check = check("carry", "steady current against continuous current");
    return compare(check, currentA, data.carryA(), AMPERE, "contactor.carry");
  }

  /**
   * {@code contactor.carry-time}: a current for a time.
   *
   * @param current either sign
   * @param duration &gt; 0 s
   * @return the check
   * @throws org.wattwright.units.InvalidInputException if the duration is not positive
   */
  public Check carry(Quantity<ElectricCurrent> current, Quantity<Time> duration) {
    double currentA = Math.abs(Kind.CURRENT.siValueOf(current));
    double durationS = Require.quantity("Contactor.duration", duration, SECOND).positive();
    CheckBuilder check = check("carry-time", currentA + " A: duration against carry curve");
    Double carryA = data.carryA();
    if (carryA != null && currentA <= carryA) {
      return check.note("not above the continuous current").holds(true);
    }
    if (data.carryCurve() == null) {
      return check.notChecked(Figure.ofSi(durationS, SECOND), "contactor.carryCurve");
    }
    OptionalDouble allowedS = data.carryCurve().durationS(currentA);
    return allowedS.isPresent()
        ? check.atMost(Figure.ofSi(durationS, SECOND), Figure.ofSi(allowedS.getAsDouble(), SECOND))
        : check.notChecked(Figure.ofSi(durationS, SECOND), beyondCurve());
  }

  private String beyondCurve() {
    CarryCurve curve = data.carryCurve();
    return curve == null
        ? "contactor.carryCurve"
        : "contactor.carryCurve above " + AMPERE.of(curve.highestA());
  }

  /**
   * {@code contactor.carry-profile}: a current against time, both signs heating alike.
   *
   * <p>The highest RMS over each duration of the carry curve may not exceed that curve's current,
   * and the RMS of a profile that repeats not the continuous current (common practice). A profile
   * that does not repeat happens once: its RMS may not exceed what the curve allows for its
   * duration.
   *
   * @param current the profile
   * @return the worst of these, as a check of RMS current
   */
  public Check carry(Profile<ElectricCurrent> current) {
    return new CarryProfile(data, check("carry-profile", "current profile")).check(current);
  }

  /**
   * {@code contactor.make}: the inrush when it closes on what pre-charge has left.
   *
   * @param inrush peak current, ≥ 0 A
   * @return the check
   * @throws org.wattwright.units.InvalidInputException if negative
   */
  public Check make(Quantity<ElectricCurrent> inrush) {
    double inrushA = Require.quantity("Contactor.inrush", inrush, AMPERE).nonNegative();
    CheckBuilder check = check("make", "inrush on closing against make limit");
    return compare(check, inrushA, data.makeA(), AMPERE, "contactor.makeLimit");
  }

  /**
   * {@code contactor.break} or {@code contactor.break-reverse}: a trip, at full voltage, in its
   * direction, so many times.
   *
   * <p>Polarised contacts without a rating in that direction fail.
   *
   * @param trip what it is asked to break
   * @return the check
   */
  public Check breaks(BreakRating trip) {
    boolean reverse = trip.directions().contains(BreakDirection.REVERSE);
    CheckBuilder check = check(reverse ? "break-reverse" : "break", "to break " + trip);
    Figure actual = Figure.ofSi(trip.currentA(), AMPERE);
    Optional<BreakRating> best = bestFor(trip);
    if (best.isPresent()) {
      return check.atMost(actual, Figure.ofSi(best.get().currentA(), AMPERE));
    }
    boolean hasDirection =
        data.breaks().stream().anyMatch(r -> r.directions().containsAll(trip.directions()));
    if (data.polarised() && !hasDirection && !data.breaks().isEmpty()) {
      return check.note("polarised contacts may not break in this direction").holds(false);
    }
    return check.notChecked(actual, "contactor.breaks at " + trip.voltage() + ", " + way(trip));
  }

  private static String way(BreakRating trip) {
    String directions = trip.directions().size() > 1 ? "either way" : first(trip).toString();
    return trip.breaks() == 1 ? directions : directions + ", " + trip.breaks() + " times";
  }

  private static BreakDirection first(BreakRating trip) {
    return trip.directions().iterator().next();
  }

  private Optional<BreakRating> bestFor(BreakRating trip) {
    return data.breaks().stream()
        .filter(rating -> rating.speaksOf(trip))
        .max(Comparator.comparingDouble(BreakRating::currentA));
  }

  Optional<Quantity<ElectricCurrent>> breakLimit(
      Quantity<ElectricPotential> voltage, BreakDirection direction) {
    BreakRating any = new BreakRating(AMPERE.of(1), voltage, Set.of(direction), 1);
    return bestFor(any).map(BreakRating::current);
  }

  /**
   * {@code contactor.fuse-first}: above what it may break, a contactor must stay closed until the
   * fuse has cleared.
   *
   * @param fault the fault that a trip would have it break
   * @param fuseClears total clearing time of the fuse at that fault, ≥ 0 s
   * @param tripDelay from the start of the fault until the coil is let go, ≥ 0 s; the opening time
   *     is added if it is stated
   * @return passes if it may break the fault, or if the fuse is quicker
   * @throws org.wattwright.units.InvalidInputException if a time is negative
   */
  public Check fuseFirst(BreakRating fault, Quantity<Time> fuseClears, Quantity<Time> tripDelay) {
    double clearsS = Require.quantity("Contactor.fuseClears", fuseClears, SECOND).nonNegative();
    double delayS = Require.quantity("Contactor.tripDelay", tripDelay, SECOND).nonNegative();
    CheckBuilder check = check("fuse-first", "clearing time of the fuse against trip delay");
    Optional<BreakRating> best = bestFor(fault);
    if (best.isPresent() && fault.currentA() <= best.get().currentA()) {
      return check.note("it may break this fault itself").holds(true);
    }
    return check
        .note("above its break limit it must stay closed until the fuse has cleared")
        .atMost(Figure.ofSi(clearsS, SECOND), Figure.ofSi(delayS, SECOND));
  }

  /**
   * {@code contactor.withstand}: the joule integral that the fuse lets through.
   *
   * @param letThrough total I²t, ≥ 0 A²s
   * @return the check
   * @throws org.wattwright.units.InvalidInputException if negative
   */
  public Check withstand(Quantity<JouleIntegral> letThrough) {
    double a2s =
        Require.quantity("Contactor.letThrough", letThrough, AMPERE_SQUARED_SECOND).nonNegative();
    CheckBuilder check = check("withstand", "total I²t of the fuse against withstand");
    return compare(check, a2s, data.withstandA2S(), AMPERE_SQUARED_SECOND, "contactor.withstand");
  }

  /**
   * {@code contactor.withstand-peak}: the peak that the fuse lets through; above it the contacts
   * lift off and weld.
   *
   * @param peak ≥ 0 A
   * @return the check
   * @throws org.wattwright.units.InvalidInputException if negative
   */
  public Check withstandPeak(Quantity<ElectricCurrent> peak) {
    double peakA = Require.quantity("Contactor.peak", peak, AMPERE).nonNegative();
    CheckBuilder check = check("withstand-peak", "peak let through against peak withstand");
    return compare(check, peakA, data.peakA(), AMPERE, "contactor.peakWithstand");
  }

  /**
   * {@code contactor.pull-in}: the lowest low-voltage supply, with the coil at its hottest.
   *
   * @param lowestSupply at the coil's terminals, &gt; 0 V
   * @param hottest temperature of the coil, −60 °C to 200 °C
   * @return the check
   * @throws org.wattwright.units.InvalidInputException if an argument is outside its range
   */
  public Check pullIn(Quantity<ElectricPotential> lowestSupply, Quantity<Temperature> hottest) {
    double supplyV = Require.quantity("Contactor.lowestSupply", lowestSupply, VOLT).positive();
    CheckBuilder check = check("pull-in", "lowest supply against pull-in of the hot coil");
    ContactorCoil coil = data.coil();
    if (coil == null) {
      return check.notChecked(Figure.ofSi(supplyV, VOLT), "contactor.coil");
    }
    return atLeast(check, supplyV, coil.pullInAt(hottest), "contactor.coil.pullIn at " + hottest);
  }

  /**
   * {@code contactor.hold}: the lowest dip of the supply while it is closed: a contactor that lets
   * go under load breaks what it must not.
   *
   * @param lowestDip at the coil's terminals, &gt; 0 V
   * @param hottest temperature of the coil, −60 °C to 200 °C
   * @return the check
   * @throws org.wattwright.units.InvalidInputException if an argument is outside its range
   */
  public Check hold(Quantity<ElectricPotential> lowestDip, Quantity<Temperature> hottest) {
    double dipV = Require.quantity("Contactor.lowestDip", lowestDip, VOLT).positive();
    CheckBuilder check = check("hold", "lowest dip of the supply against drop-out");
    ContactorCoil coil = data.coil();
    if (coil == null) {
      return check.notChecked(Figure.ofSi(dipV, VOLT), "contactor.coil");
    }
    return atLeast(check, dipV, coil.dropOutAt(hottest), "contactor.coil.dropOut at " + hottest);
  }

  private static Check atLeast(
      CheckBuilder check,
      double actualV,
      Optional<Quantity<ElectricPotential>> limit,
      String field) {
    Figure actual = Figure.ofSi(actualV, VOLT);
    return limit.isPresent()
        ? check.atLeast(actual, Figure.of(limit.get(), VOLT))
        : check.notChecked(actual, field);
  }

  private static Check compare(
      CheckBuilder check,
      double actualSi,
      @Nullable Double limitSi,
      NamedUnit<?> unit,
      String field) {
    Figure actual = figure(actualSi, unit);
    return limitSi == null
        ? check.notChecked(actual, field)
        : check.atMost(actual, figure(limitSi, unit));
  }

  private static <Q extends Quantity<Q>> Figure figure(double si, NamedUnit<Q> unit) {
    return Figure.ofSi(si, unit);
  }

  /**
   * The contactor that is asked.
   *
   * @return its name
   */
  @Override
  public String toString() {
    return "checks of " + data.name();
  }
}
