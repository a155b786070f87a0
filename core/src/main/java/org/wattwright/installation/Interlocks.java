package org.wattwright.installation;

import static org.wattwright.installation.InterlockCase.when;
import static org.wattwright.installation.InterlockReaction.FORWARD;
import static org.wattwright.installation.InterlockReaction.NEUTRAL;
import static org.wattwright.installation.InterlockReaction.NOT_READY;
import static org.wattwright.installation.InterlockReaction.NO_ACTION;
import static org.wattwright.installation.InterlockReaction.OPEN_CONTACTORS;
import static org.wattwright.installation.InterlockReaction.READY;
import static org.wattwright.installation.InterlockReaction.REVERSE;
import static org.wattwright.installation.InterlockReaction.STAY_FORWARD;
import static org.wattwright.installation.InterlockReaction.STAY_REVERSE;
import static org.wattwright.installation.InterlockReaction.WARN_THEN_DERATE;
import static org.wattwright.units.WorkshopUnits.KILOMETRE_PER_HOUR;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import javax.measure.Quantity;
import javax.measure.quantity.Speed;
import org.wattwright.check.Check;
import org.wattwright.check.Source;
import org.wattwright.internal.Require;

/**
 * The usual interlocks of a conversion as truth tables: drive-off, direction, faults; and what must
 * never happen in any table.
 *
 * <p>Source: UN R100 Rev. 3 para 5.3 for the charging plug and the drive-ready state; brake, idle
 * accelerator, direction and order of opening are common practice.
 */
public final class Interlocks {
  /** Usual speed above which the direction is not changed: 5 km/h, common practice. */
  public static final Quantity<Speed> USUAL_DIRECTION_SPEED = KILOMETRE_PER_HOUR.of(5);

  private static final Source PLUG = Source.standard("UN R100 Rev. 3", "para 5.3.3");
  private static final Source PRACTICE =
      Source.commonPractice("interlocks of drive-off and direction");

  private Interlocks() {}

  /**
   * State of the speed signal.
   *
   * @param speed of the vehicle, ≥ 0 km/h
   * @param threshold of a change of direction, &gt; 0 km/h
   * @return standing, slow up to the threshold, fast above it
   * @throws org.wattwright.units.InvalidInputException if a value is outside its range
   */
  public static SignalState speedState(Quantity<Speed> speed, Quantity<Speed> threshold) {
    double ms = Require.quantity("Interlocks.speed", speed, KILOMETRE_PER_HOUR).nonNegative();
    double limit =
        Require.quantity("Interlocks.threshold", threshold, KILOMETRE_PER_HOUR).positive();
    if (ms == 0) {
      return SignalState.STANDING;
    }
    return ms <= limit ? SignalState.SLOW : SignalState.FAST;
  }

  /**
   * From off to drive-ready: plug out, key on, pre-charge complete, and then brake, start and idle
   * accelerator together; once ready it stays so until plug, key or pre-charge change.
   *
   * @return the table
   */
  public static TruthTable start() {
    InterlockCase able =
        when(InterlockSignal.CHARGE_PLUG, SignalState.OUT)
            .and(InterlockSignal.KEY, SignalState.ON)
            .and(InterlockSignal.PRECHARGE, SignalState.COMPLETE);
    InterlockCase starting = able.and(InterlockSignal.DRIVE, SignalState.NOT_READY);
    return TruthTable.of(
            "start",
            InterlockSignal.CHARGE_PLUG,
            InterlockSignal.KEY,
            InterlockSignal.PRECHARGE,
            InterlockSignal.DRIVE,
            InterlockSignal.BRAKE,
            InterlockSignal.START,
            InterlockSignal.ACCELERATOR)
        .line(when(InterlockSignal.CHARGE_PLUG, SignalState.IN), NOT_READY)
        .line(when(InterlockSignal.KEY, SignalState.OFF), NOT_READY)
        .line(when(InterlockSignal.PRECHARGE, SignalState.INCOMPLETE), NOT_READY)
        .line(able.and(InterlockSignal.DRIVE, SignalState.READY), READY)
        .line(starting.and(InterlockSignal.BRAKE, SignalState.RELEASED), NOT_READY)
        .line(starting.and(InterlockSignal.START, SignalState.RELEASED), NOT_READY)
        .line(starting.and(InterlockSignal.ACCELERATOR, SignalState.PRESSED), NOT_READY)
        .line(
            starting
                .and(InterlockSignal.BRAKE, SignalState.PRESSED)
                .and(InterlockSignal.START, SignalState.PRESSED)
                .and(InterlockSignal.ACCELERATOR, SignalState.RELEASED),
            READY);
  }

  /**
   * The direction selector: a change to the opposite direction only up to the threshold; neutral at
   * any speed.
   *
   * @return the table
   */
  public static TruthTable direction() {
    TruthTable table =
        TruthTable.of(
                "direction",
                InterlockSignal.SPEED,
                InterlockSignal.DIRECTION,
                InterlockSignal.SELECTOR)
            .line(when(InterlockSignal.SELECTOR, SignalState.NEUTRAL), NEUTRAL);
    for (SignalState speed : InterlockSignal.SPEED.states()) {
      boolean fast = speed == SignalState.FAST;
      table =
          table
              .line(moving(speed, SignalState.FORWARD, SignalState.FORWARD), FORWARD)
              .line(moving(speed, SignalState.REVERSE, SignalState.REVERSE), REVERSE)
              .line(
                  moving(speed, SignalState.FORWARD, SignalState.REVERSE),
                  fast ? STAY_FORWARD : REVERSE)
              .line(
                  moving(speed, SignalState.REVERSE, SignalState.FORWARD),
                  fast ? STAY_REVERSE : FORWARD)
              .line(
                  moving(speed, SignalState.NEUTRAL, SignalState.FORWARD), fast ? NEUTRAL : FORWARD)
              .line(
                  moving(speed, SignalState.NEUTRAL, SignalState.REVERSE),
                  fast ? NEUTRAL : REVERSE);
    }
    return table;
  }

  private static InterlockCase moving(
      SignalState speed, SignalState direction, SignalState selector) {
    return when(InterlockSignal.SPEED, speed)
        .and(InterlockSignal.DIRECTION, direction)
        .and(InterlockSignal.SELECTOR, selector);
  }

  /**
   * Reaction to faults: a crash opens the contactors at once; at rest so do an open interlock loop
   * and a battery trip; while moving torque is taken back first.
   *
   * @return the table
   */
  public static TruthTable faults() {
    InterlockCase noCrash = when(InterlockSignal.CRASH, SignalState.OFF);
    TruthTable table =
        TruthTable.of(
                "faults",
                InterlockSignal.CRASH,
                InterlockSignal.SPEED,
                InterlockSignal.INTERLOCK_LOOP,
                InterlockSignal.BATTERY_TRIP)
            .line(when(InterlockSignal.CRASH, SignalState.ON), OPEN_CONTACTORS)
            .line(
                noCrash
                    .and(InterlockSignal.INTERLOCK_LOOP, SignalState.CLOSED)
                    .and(InterlockSignal.BATTERY_TRIP, SignalState.OFF),
                NO_ACTION);
    for (SignalState speed : InterlockSignal.SPEED.states()) {
      InterlockReaction reaction =
          speed == SignalState.STANDING ? OPEN_CONTACTORS : WARN_THEN_DERATE;
      InterlockCase at = noCrash.and(InterlockSignal.SPEED, speed);
      table =
          table
              .line(at.and(InterlockSignal.INTERLOCK_LOOP, SignalState.OPEN), reaction)
              .line(at.and(InterlockSignal.BATTERY_TRIP, SignalState.ON), reaction);
    }
    return table;
  }

  /**
   * What no table may do, as far as it looks at these signals.
   *
   * @return plug in while ready, start before pre-charge, start with the accelerator pressed,
   *     direction change above the threshold both ways, contactors kept closed after a crash
   */
  public static List<ForbiddenReaction> forbidden() {
    InterlockCase fast = when(InterlockSignal.SPEED, SignalState.FAST);
    return List.of(
        forbid(
            "plug",
            "own propulsion while plugged in",
            when(InterlockSignal.CHARGE_PLUG, SignalState.IN),
            Set.of(READY),
            PLUG),
        forbid(
            "precharge",
            "ready before pre-charge is complete",
            when(InterlockSignal.PRECHARGE, SignalState.INCOMPLETE),
            Set.of(READY),
            PRACTICE),
        forbid(
            "accelerator",
            "ready for the first time with the accelerator pressed",
            when(InterlockSignal.ACCELERATOR, SignalState.PRESSED)
                .and(InterlockSignal.DRIVE, SignalState.NOT_READY),
            Set.of(READY),
            PRACTICE),
        forbid(
            "forward-to-reverse",
            "reverse engaged above the threshold while moving forward",
            fast.and(InterlockSignal.DIRECTION, SignalState.FORWARD),
            Set.of(REVERSE),
            PRACTICE),
        forbid(
            "reverse-to-forward",
            "forward engaged above the threshold while moving backward",
            fast.and(InterlockSignal.DIRECTION, SignalState.REVERSE),
            Set.of(FORWARD),
            PRACTICE),
        forbid(
            "crash",
            "contactors closed after a crash signal",
            when(InterlockSignal.CRASH, SignalState.ON),
            Set.of(NO_ACTION, WARN_THEN_DERATE, READY),
            PRACTICE));
  }

  private static ForbiddenReaction forbid(
      String code, String what, InterlockCase when, Set<InterlockReaction> never, Source source) {
    return new ForbiddenReaction(code, what, when, never, source);
  }

  /**
   * Every table against every rule that it has the signals for.
   *
   * @param tables such as {@link #start}, {@link #direction}, {@link #faults}
   * @return completeness, lack of contradiction and rules of each; a rule that no table has the
   *     signals for is NOT_CHECKED
   */
  public static List<Check> checks(List<TruthTable> tables) {
    List<Check> checks = new ArrayList<>();
    for (TruthTable table : tables) {
      checks.addAll(
          table.checks(forbidden().stream().filter(rule -> speaksOf(table, rule)).toList()));
    }
    forbidden().stream()
        .filter(rule -> tables.stream().noneMatch(table -> speaksOf(table, rule)))
        .map(
            rule ->
                Check.named("installation.interlock-" + rule.code(), rule.what())
                    .source(rule.source())
                    .safety()
                    .notChecked("truth table on " + rule.when()))
        .forEach(checks::add);
    return checks;
  }

  private static boolean speaksOf(TruthTable table, ForbiddenReaction rule) {
    return table.signals().containsAll(rule.when().conditions().keySet());
  }

  /**
   * The usual tables, checked.
   *
   * @return their checks
   */
  public static List<Check> usualChecks() {
    return checks(List.of(start(), direction(), faults()));
  }
}
