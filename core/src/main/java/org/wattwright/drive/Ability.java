package org.wattwright.drive;

import static org.wattwright.units.WorkshopUnits.KILOMETRE_PER_HOUR;
import static org.wattwright.units.WorkshopUnits.SECOND;

import java.io.Serializable;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Speed;
import javax.measure.quantity.Time;
import org.jspecify.annotations.Nullable;
import org.wattwright.check.Figure;
import org.wattwright.internal.Require;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;
import org.wattwright.units.Measures;

/**
 * Something that a vehicle has to be able to do: hold a speed on a grade, start on a grade, reach a
 * speed in a time, follow a cycle.
 *
 * <pre>{@code
 * Ability.hold(kilometresPerHour(80), 0.05);        // hold 80 km/h on 5 %
 * Ability.startOn(0.20).with(load.withMass(kilograms(1600)));   // start on 20 % laden
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 */
public final class Ability implements Serializable {
  private static final long serialVersionUID = 1L;

  private final String text;
  private final Test test;
  private final @Nullable Loading load;

  /** How the ability is tried. */
  private interface Test extends Serializable {
    boolean isMet(ElectricVehicle vehicle);
  }

  private Ability(String text, Test test, @Nullable Loading load) {
    this.text = text;
    this.test = test;
    this.load = load;
  }

  private record Hold(double speedMs, double slope) implements Test {
    @Override
    public boolean isMet(ElectricVehicle vehicle) {
      FullPedal pedal = pedal(vehicle);
      return speedMs <= pedal.fastestMs() && pedal.freeN(speedMs, slope) >= 0;
    }
  }

  private record Start(double slope) implements Test {
    @Override
    public boolean isMet(ElectricVehicle vehicle) {
      FullPedal pedal = pedal(vehicle);
      return pedal.freeN(0, slope) >= 0 && pedal.freeN(Performance.WALKING_MS, slope) >= 0;
    }
  }

  private record Reach(double speedMs, double withinS) implements Test {
    @Override
    public boolean isMet(ElectricVehicle vehicle) {
      return pedal(vehicle)
          .between(0, speedMs, 0)
          .time()
          .filter(time -> Kind.TIME.siValueOf(time) <= withinS)
          .isPresent();
    }
  }

  private record Follow(DriveCycle cycle) implements Test {
    @Override
    public boolean isMet(ElectricVehicle vehicle) {
      return CycleRun.of(vehicle).once(cycle).following().isComplete();
    }
  }

  private static FullPedal pedal(ElectricVehicle vehicle) {
    double soc = vehicle.state().stateOfCharge().fraction();
    return new FullPedal(DriveModel.of(vehicle), soc, FullPedal.BEST);
  }

  /**
   * Hold a speed on a grade.
   *
   * @param speed &gt; 0
   * @param grade tangent of the slope, from −1 to 1
   * @return the ability
   * @throws InvalidInputException if an argument is outside its range
   */
  public static Ability hold(Quantity<Speed> speed, double grade) {
    double speedMs = Require.quantity("Ability.speed", speed, KILOMETRE_PER_HOUR).positive();
    String text = "hold " + Measures.format(speed, Kind.SPEED) + " on " + Figure.share(grade);
    return new Ability(text, new Hold(speedMs, slope(grade)), null);
  }

  /**
   * Start on a grade and reach 5 km/h on it.
   *
   * @param grade tangent of the slope, from −1 to 1
   * @return the ability
   * @throws InvalidInputException if the grade is outside its range
   */
  public static Ability startOn(double grade) {
    return new Ability("start on " + Figure.share(grade), new Start(slope(grade)), null);
  }

  /**
   * Reach a speed from rest on the level within a time.
   *
   * @param speed &gt; 0
   * @param within &gt; 0 s
   * @return the ability
   * @throws InvalidInputException if an argument is not positive
   */
  public static Ability reach(Quantity<Speed> speed, Quantity<Time> within) {
    double speedMs = Require.quantity("Ability.speed", speed, KILOMETRE_PER_HOUR).positive();
    double withinS = Require.quantity("Ability.within", within, SECOND).positive();
    String text =
        "reach "
            + Measures.format(speed, Kind.SPEED)
            + " within "
            + Measures.format(within, Kind.TIME);
    return new Ability(text, new Reach(speedMs, withinS), null);
  }

  /**
   * Follow a cycle within 2 km/h all along.
   *
   * @param cycle the cycle
   * @return the ability
   */
  public static Ability follow(DriveCycle cycle) {
    return new Ability("follow " + cycle.name(), new Follow(cycle), null);
  }

  private static double slope(double grade) {
    return Math.atan(Require.between("Ability.grade", grade, -1, 1));
  }

  /**
   * The same with another road load, such as laden.
   *
   * @param roadLoad in place of that of the vehicle
   * @return a new ability
   */
  public Ability with(RoadLoad roadLoad) {
    return new Ability(text, test, new Loading(roadLoad, null));
  }

  /**
   * The same ability of a vehicle laden like another one: its road load, and how that one stands on
   * its driven axle.
   *
   * @param loaded the vehicle as loaded
   * @return a new ability
   */
  public Ability with(ElectricVehicle loaded) {
    return new Ability(text, test, Loading.of(loaded));
  }

  /**
   * Whether a vehicle has it.
   *
   * @param vehicle in the state its pack is in
   * @return true if it does
   */
  public boolean isMetBy(ElectricVehicle vehicle) {
    return test.isMet(load == null ? vehicle : load.on(vehicle));
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Ability that
        && test.equals(that.test)
        && Objects.equals(load, that.load);
  }

  @Override
  public int hashCode() {
    return Objects.hash(test, load);
  }

  /**
   * In words.
   *
   * @return for example {@code hold 80 km/h on 5 % with 1600 kg}
   */
  @Override
  public String toString() {
    return load == null ? text : text + " with " + Measures.format(load.load().mass(), Kind.MASS);
  }
}
