package org.wattwright.protection;

import static org.wattwright.units.WorkshopUnits.AMPERE;
import static org.wattwright.units.WorkshopUnits.AMPERE_SQUARED_SECOND;
import static org.wattwright.units.WorkshopUnits.MILLISECOND;
import static org.wattwright.units.WorkshopUnits.SECOND;
import static org.wattwright.units.WorkshopUnits.VOLT;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.Time;
import org.wattwright.check.Check;
import org.wattwright.check.CheckBuilder;
import org.wattwright.check.Figure;
import org.wattwright.check.Given;
import org.wattwright.check.Source;
import org.wattwright.units.JouleIntegral;
import org.wattwright.units.Kind;

/** The checks of one fuse in one circuit. */
final class FuseChecks {
  private static final Source LINK = Source.standard("IEC 60269-1", "ratings of fuse-links");
  private static final Source COORDINATION =
      Source.standard("IEC 60364-4-43", "434.5, protection against short circuit");

  private final Fuse fuse;
  private final FuseData data;
  private final FuseDuty duty;

  FuseChecks(Fuse fuse, FuseDuty duty) {
    this.fuse = fuse;
    this.data = fuse.data();
    this.duty = duty;
  }

  List<Check> all() {
    List<Check> checks = new ArrayList<>();
    checks.add(continuousCurrent());
    duty.profile().ifPresent(profile -> checks.add(cyclicCurrent(profile.rms())));
    checks.add(voltage());
    checks.add(timeConstant());
    checks.add(breakingCapacity());
    checks.add(minimumBreakingCurrent());
    checks.add(overloads());
    checks.add(clearingTime());
    checks.add(letThrough());
    return checks;
  }

  private CheckBuilder check(String code, String what, Source source) {
    return Check.named("fuse." + code, what).source(source).basis(fuse.basis()).safety();
  }

  private static CheckBuilder restingOn(CheckBuilder check, FaultCurrent fault) {
    return check.basis(fault.basis()).estimated(fault.estimates().toArray(String[]::new));
  }

  private static Figure amperes(Quantity<ElectricCurrent> current) {
    return Figure.of(current, AMPERE);
  }

  private Check continuousCurrent() {
    CheckBuilder check =
        check("continuous-current", "continuous current against rating in " + duty.air(), LINK);
    Figure actual = amperes(duty.continuousCurrent());
    return fuse.continuousCurrentAt(duty.air())
        .map(limit -> check.atMost(actual, amperes(limit)))
        .orElseGet(() -> check.notChecked(actual, "fuse.ambientDerating"));
  }

  private Check cyclicCurrent(Quantity<ElectricCurrent> rms) {
    CheckBuilder check = check("cyclic-current", "RMS of the swinging load", LINK);
    Optional<Quantity<ElectricCurrent>> continuous = fuse.continuousCurrentAt(duty.air());
    if (continuous.isEmpty()) {
      return check.notChecked(amperes(rms), "fuse.ambientDerating");
    }
    if (data.derating().cyclic() == null) {
      return check.notChecked(amperes(rms), "fuse.cyclicFactor");
    }
    double limitA = Kind.CURRENT.siValueOf(continuous.get()) * data.derating().cyclic();
    return check.atMost(amperes(rms), Figure.ofSi(limitA, AMPERE));
  }

  private Check voltage() {
    CheckBuilder check = check("voltage", "highest voltage against rated direct voltage", LINK);
    Figure actual = Figure.of(duty.highestVoltage(), VOLT);
    if (data.directV() != null) {
      return check.atMost(actual, Figure.ofSi(data.directV(), VOLT));
    }
    if (data.alternatingV() != null) {
      return check
          .note(
              "rated for alternating current only, "
                  + VOLT.of(data.alternatingV())
                  + ": that says nothing about direct current; fuse.directVoltage is missing")
          .holds(false);
    }
    return check.notChecked(actual, "fuse.directVoltage");
  }

  private Check timeConstant() {
    CheckBuilder check = check("time-constant", "longest L/R against the tested one", LINK);
    Optional<Quantity<Time>> longest = duty.faults().longestTimeConstant();
    if (longest.isEmpty()) {
      return check.notChecked(duty.faults().missing().toArray(String[]::new));
    }
    restingOn(check, duty.faults().lowest());
    Figure actual = Figure.of(longest.get(), MILLISECOND);
    return data.testTimeConstantS() == null
        ? check.notChecked(actual, "fuse.testTimeConstant")
        : check.atMost(actual, Figure.ofSi(data.testTimeConstantS(), MILLISECOND));
  }

  private Check breakingCapacity() {
    CheckBuilder check =
        check("breaking-capacity", "highest fault against breaking capacity", LINK);
    Optional<Quantity<ElectricCurrent>> highest = duty.faults().highestCurrent();
    if (highest.isEmpty()) {
      return check.notChecked("cell.ohmicResistance");
    }
    duty.faults().highest().ifPresent(fault -> restingOn(check, fault));
    return data.breakingCapacityA() == null
        ? check.notChecked(amperes(highest.get()), "fuse.breakingCapacity")
        : check.atMost(amperes(highest.get()), Figure.ofSi(data.breakingCapacityA(), AMPERE));
  }

  private Check minimumBreakingCurrent() {
    CheckBuilder check =
        restingOn(
            check(
                "minimum-breaking-current", "lowest fault against minimum breaking current", LINK),
            duty.faults().lowest());
    Figure actual = amperes(duty.faults().lowest().prospective());
    if (data.breakingRange() == null) {
      return check.notChecked(actual, "fuse.breakingRange");
    }
    if (data.breakingRange() == BreakingRange.FULL) {
      return check.note("full-range link").holds(true);
    }
    return data.minimumBreakingA() == null
        ? check.notChecked(actual, "fuse.minimumBreakingCurrent")
        : check.atLeast(actual, Figure.ofSi(data.minimumBreakingA(), AMPERE));
  }

  /** A partial-range link leaves the over-currents below its minimum to another device. */
  private Check overloads() {
    CheckBuilder check = check("overload-range", "who interrupts the smallest over-currents", LINK);
    if (data.breakingRange() == null) {
      return check.notChecked("fuse.breakingRange");
    }
    if (data.breakingRange() == BreakingRange.FULL) {
      return check.note("full-range link").holds(true);
    }
    if (data.minimumBreakingA() == null) {
      return check.notChecked("fuse.minimumBreakingCurrent");
    }
    Figure limit = Figure.ofSi(data.minimumBreakingA(), AMPERE);
    return duty.otherDeviceUpTo()
        .map(upTo -> check.atLeast(amperes(upTo), limit))
        .orElseGet(
            () ->
                check
                    .note("over-currents below " + limit + " need another device, none is named")
                    .holds(false));
  }

  private Check clearingTime() {
    FaultCurrent lowest = duty.faults().lowest();
    CheckBuilder check =
        restingOn(check("clearing-time", "time to clear the lowest fault", COORDINATION), lowest);
    Optional<Quantity<Time>> within = duty.clearWithin();
    if (within.isEmpty()) {
      return check.notChecked("duty.clearWithin");
    }
    return fuse.clearing(lowest, duty.highestVoltage())
        .fold(
            cleared ->
                check.atMost(Figure.of(cleared.time(), SECOND), Figure.of(within.get(), SECOND)),
            not -> check.note(not.reason()).holds(false),
            unknown ->
                check.note(unknown.reason()).notChecked(unknown.missing().toArray(String[]::new)));
  }

  private Check letThrough() {
    CheckBuilder check =
        check("let-through", "largest let-through against withstand", COORDINATION);
    Optional<Given<Quantity<JouleIntegral>>> withstand = duty.withstand();
    if (withstand.isEmpty()) {
      return check.notChecked("duty.withstand");
    }
    Optional<FaultCurrent> highest = duty.faults().highest();
    if (highest.isEmpty()) {
      return check.notChecked("cell.ohmicResistance");
    }
    restingOn(restingOn(check, highest.get()), duty.faults().lowest());
    check.basisOf(withstand.get());
    Figure limit = Figure.of(withstand.get().value(), AMPERE_SQUARED_SECOND);
    return worstLetThrough(highest.get())
        .fold(
            worst -> check.atMost(Figure.of(worst.letThrough(), AMPERE_SQUARED_SECOND), limit),
            not -> check.note(not.reason()).holds(false),
            unknown ->
                check.note(unknown.reason()).notChecked(unknown.missing().toArray(String[]::new)));
  }

  /**
   * The largest over all faults, with what capacitors add: straight between the curve's points, so
   * that those suffice.
   */
  private Clearing worstLetThrough(FaultCurrent highest) {
    FaultCurrent lowest = duty.faults().lowest();
    double voltageV = Kind.VOLTAGE.siValueOf(duty.highestVoltage());
    ClearingSolver alone = new ClearingSolver(data, voltageV);
    CapacitorInfeed infeed = CapacitorInfeed.of(duty.faults().capacitors());
    CombinedClearing solver = new CombinedClearing(data, voltageV, infeed);
    Clearing worst = solver.solve(lowest);
    for (double currentA : alone.bendsBetween(lowest.prospectiveA(), highest.prospectiveA())) {
      worst = worseOf(worst, solver.solve(highest.limitedTo(currentA)));
    }
    return worseOf(worst, solver.solve(highest));
  }

  /** The one that is not cleared, or not known, or lets more through. */
  private static Clearing worseOf(Clearing one, Clearing other) {
    if (one instanceof Clearing.Cleared first && other instanceof Clearing.Cleared second) {
      return integralA2S(second) > integralA2S(first) ? other : one;
    }
    if (one instanceof Clearing.NotCleared || other instanceof Clearing.Cleared) {
      return one;
    }
    return other instanceof Clearing.NotCleared || one instanceof Clearing.Cleared ? other : one;
  }

  private static double integralA2S(Clearing.Cleared cleared) {
    return Kind.JOULE_INTEGRAL.siValueOf(cleared.letThrough());
  }
}
