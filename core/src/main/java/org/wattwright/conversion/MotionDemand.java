package org.wattwright.conversion;

import static org.wattwright.units.WorkshopUnits.KILOMETRE;
import static org.wattwright.units.WorkshopUnits.KILOMETRE_PER_HOUR;
import static org.wattwright.units.WorkshopUnits.SECOND;

import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import javax.measure.quantity.Speed;
import javax.measure.quantity.Time;
import org.wattwright.check.Basis;
import org.wattwright.check.Check;
import org.wattwright.check.CheckBuilder;
import org.wattwright.check.Figure;
import org.wattwright.check.Source;
import org.wattwright.drive.Ability;
import org.wattwright.drive.ElectricVehicle;
import org.wattwright.drive.Performance;
import org.wattwright.drive.RangeResult;
import org.wattwright.drive.TimeToSpeed;
import org.wattwright.units.Kind;
import org.wattwright.units.Measures;

/** One thing that somebody asks of the moving vehicle. */
interface MotionDemand {
  Quantity<Speed> STANDING = Measures.kilometresPerHour(0);

  /** Against what the vehicle does. */
  Check check(Motion motion);

  /** For the smallest limit that still meets it; a range is none. */
  Optional<Ability> ability(Motion motion);

  private static CheckBuilder named(String code, String what, ElectricVehicle vehicle) {
    return MotionRuns.resting(Check.named(code, what), vehicle);
  }

  /** A grade at a speed. */
  record Hold(Quantity<Speed> speed, double grade, Source source) implements MotionDemand {
    @Override
    public Check check(Motion motion) {
      double held = motion.performance().gradeAt(speed).grade();
      return named("drive.hold", "grade held at " + text(speed), motion.vehicle())
          .source(source)
          .atLeast(Figure.share(held), Figure.share(grade));
    }

    @Override
    public Optional<Ability> ability(Motion motion) {
      return Optional.of(Ability.hold(speed, grade));
    }
  }

  /** A start on a grade, laden. */
  record Start(double grade, Source source) implements MotionDemand {
    @Override
    public Check check(Motion motion) {
      ElectricVehicle vehicle = motion.laden().orElse(motion.vehicle());
      CheckBuilder check =
          named("drive.start", "grade to start on, laden", vehicle).source(source).safety();
      return motion
          .laden()
          .map(
              laden ->
                  check.atLeast(
                      Figure.share(Performance.of(laden).startingGrade().grade()),
                      Figure.share(grade)))
          .orElseGet(() -> check.notChecked("Motion.laden"));
    }

    @Override
    public Optional<Ability> ability(Motion motion) {
      return motion.laden().map(laden -> Ability.startOn(grade).with(laden.roadLoad()));
    }
  }

  /** A top speed on the level. */
  record TopSpeed(Quantity<Speed> speed, Source source) implements MotionDemand {
    @Override
    public Check check(Motion motion) {
      return named("drive.top-speed", "top speed on the level", motion.vehicle())
          .source(source)
          .atLeast(
              Figure.of(motion.performance().topSpeed().speed(), KILOMETRE_PER_HOUR),
              Figure.of(speed, KILOMETRE_PER_HOUR));
    }

    @Override
    public Optional<Ability> ability(Motion motion) {
      return Optional.of(Ability.hold(speed, 0));
    }
  }

  /** A speed from rest within a time. */
  record Reach(Quantity<Speed> speed, Quantity<Time> within, Source source)
      implements MotionDemand {
    @Override
    public Check check(Motion motion) {
      TimeToSpeed run = motion.performance().time(STANDING, speed);
      CheckBuilder check =
          named("drive.time", "time from rest to " + text(speed), motion.vehicle()).source(source);
      return run.time()
          .map(time -> check.atMost(Figure.of(time, SECOND), Figure.of(within, SECOND)))
          .orElseGet(() -> check.note(run.toString()).holds(false));
    }

    @Override
    public Optional<Ability> ability(Motion motion) {
      return Optional.of(Ability.reach(speed, within));
    }
  }

  /** A distance on the first cycle. */
  record Goes(RangeCase state, Quantity<Length> distance, Source source) implements MotionDemand {
    @Override
    public Check check(Motion motion) {
      String cycle = motion.cycles().get(0).name();
      CheckBuilder check =
          named("range." + state, "range on " + cycle + ", " + state, motion.vehicle())
              .source(source);
      Optional<RangeResult> range = motion.range(state, motion.cycles().get(0));
      if (range.isEmpty()) {
        return check.notChecked("Motion." + state);
      }
      if (state == RangeCase.AGED && motion.ageing().basis() == Basis.ESTIMATED) {
        check.estimated("age of the pack that the range is asked for");
      }
      return check
          .note("until " + range.get().endedBy())
          .atLeast(Figure.of(range.get().distance(), KILOMETRE), Figure.of(distance, KILOMETRE));
    }

    @Override
    public Optional<Ability> ability(Motion motion) {
      return Optional.empty();
    }
  }

  private static String text(Quantity<Speed> speed) {
    return Measures.format(speed, Kind.SPEED);
  }
}
