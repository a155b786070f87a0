package org.wattwright.drive;

import static org.wattwright.units.WorkshopUnits.KILOMETRE_PER_HOUR;
import static org.wattwright.units.WorkshopUnits.METRE_PER_SECOND;
import static org.wattwright.units.WorkshopUnits.SECOND;

import java.io.Serializable;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Acceleration;
import javax.measure.quantity.Energy;
import javax.measure.quantity.Length;
import javax.measure.quantity.Speed;
import javax.measure.quantity.Time;
import org.jspecify.annotations.Nullable;
import org.wattwright.check.Source;
import org.wattwright.internal.Require;
import org.wattwright.profile.Profile;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;
import org.wattwright.units.Measures;

/**
 * Speed against time, with straight lines between the points, and the grade of the road.
 *
 * <p>Every figure is exact for the straight lines. {@link StandardCycle} holds those of the
 * regulations.
 *
 * <pre>{@code
 * DriveCycle round = DriveCycle.of("bakery round", Source.measurement("logger"), trace);
 * round.distance();       // 11.01 km
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 */
public final class DriveCycle implements Serializable {
  private static final long serialVersionUID = 1L;
  private static final int MOST_POINTS = 1_000_000;
  private static final double FASTEST_KMH = 400;
  private static final double CONTINUOUS = 1e-9;

  private final String name;
  private final Source source;
  private final double[] timesS;
  private final double[] speedsMs;
  private final double grade;

  private DriveCycle(String name, Source source, double[] timesS, double[] speedsMs, double grade) {
    this.name = name;
    this.source = source;
    this.timesS = timesS;
    this.speedsMs = speedsMs;
    this.grade = grade;
  }

  /**
   * A cycle from a trace of speed: samples with straight lines, or stretches without jumps.
   *
   * @param name as reports print it
   * @param source where it comes from
   * @param trace of speed, 0 to 400 km/h, at most a million segments
   * @return the cycle, on the level
   * @throws InvalidInputException if a speed is outside its range, if speed jumps, or if the trace
   *     is too long
   */
  public static DriveCycle of(String name, Source source, Profile<Speed> trace) {
    double[] durationsS = trace.durationsIn(SECOND);
    double[] startsMs = trace.startValuesIn(METRE_PER_SECOND);
    double[] endsMs = trace.endValuesIn(METRE_PER_SECOND);
    Require.count("DriveCycle.segments", durationsS.length, 1, MOST_POINTS);
    double[] timesS = new double[durationsS.length + 1];
    double[] speedsMs = new double[timesS.length];
    speedsMs[0] = startsMs[0];
    for (int i = 0; i < durationsS.length; i++) {
      if (Math.abs(startsMs[i] - speedsMs[i]) > CONTINUOUS) {
        throw InvalidInputException.of(
            "DriveCycle.trace[" + i + "].start",
            Measures.format(Kind.SPEED.ofSi(speedsMs[i]), Kind.SPEED) + " (speed cannot jump)",
            Measures.format(Kind.SPEED.ofSi(startsMs[i]), Kind.SPEED));
      }
      timesS[i + 1] = timesS[i] + durationsS[i];
      speedsMs[i + 1] = endsMs[i];
    }
    return of(name, source, timesS, speedsMs);
  }

  /** From arrays that nobody else keeps. */
  static DriveCycle of(String name, Source source, double[] timesS, double[] speedsMs) {
    for (int i = 0; i < speedsMs.length; i++) {
      Require.quantity(
              "DriveCycle.speed[" + i + "]", Kind.SPEED.ofSi(speedsMs[i]), KILOMETRE_PER_HOUR)
          .between(0, FASTEST_KMH);
    }
    return new DriveCycle(
        Require.text("DriveCycle.name", name),
        Objects.requireNonNull(source, "source"),
        timesS,
        speedsMs,
        0);
  }

  /**
   * Cycles one after the other; speed must be the same where two meet.
   *
   * @param name as reports print it
   * @param source where the combination comes from
   * @param parts at least one, all on the same grade
   * @return the combination
   * @throws InvalidInputException if there is no part, if speed jumps or if grades differ
   */
  public static DriveCycle inSequence(String name, Source source, List<DriveCycle> parts) {
    Require.nonEmpty("DriveCycle.parts", parts);
    DriveCycle whole = parts.get(0);
    for (DriveCycle part : parts.subList(1, parts.size())) {
      whole = whole.followedBy(part);
    }
    return new DriveCycle(
        Require.text("DriveCycle.name", name), source, whole.timesS, whole.speedsMs, whole.grade);
  }

  private DriveCycle followedBy(DriveCycle next) {
    double endMs = speedsMs[speedsMs.length - 1];
    if (Math.abs(endMs - next.speedsMs[0]) > CONTINUOUS || grade != next.grade) {
      throw InvalidInputException.of(
          "DriveCycle.parts", "of the same speed and grade where they meet", next.name);
    }
    int n = timesS.length;
    double[] times = Arrays.copyOf(timesS, n + next.timesS.length - 1);
    double[] speeds = Arrays.copyOf(speedsMs, times.length);
    for (int i = 1; i < next.timesS.length; i++) {
      times[n + i - 1] = timesS[n - 1] + next.timesS[i];
      speeds[n + i - 1] = next.speedsMs[i];
    }
    return new DriveCycle(name, source, times, speeds, grade);
  }

  /**
   * The same speeds on a grade all along.
   *
   * @param tangent of the slope, from −0.5 to 0.5, positive uphill
   * @return a new cycle
   * @throws InvalidInputException if the grade is outside its range
   */
  public DriveCycle onGrade(double tangent) {
    double checked = Require.between("DriveCycle.grade", tangent, -0.5, 0.5);
    return new DriveCycle(name, source, timesS, speedsMs, checked);
  }

  /**
   * Name as reports print it.
   *
   * @return the name
   */
  public String name() {
    return name;
  }

  /**
   * Where it comes from.
   *
   * @return the source
   */
  public Source source() {
    return source;
  }

  /**
   * Grade of the road, as a tangent.
   *
   * @return 0 on the level
   */
  public double grade() {
    return grade;
  }

  /**
   * Number of steps between points.
   *
   * @return at least 1
   */
  public int steps() {
    return timesS.length - 1;
  }

  /**
   * Speed against time.
   *
   * @return straight lines between the points
   */
  public Profile<Speed> trace() {
    return Profile.ofPoints(SECOND, timesS, METRE_PER_SECOND, speedsMs);
  }

  /**
   * From the first point to the last.
   *
   * @return in s
   */
  public Quantity<Time> duration() {
    return Kind.TIME.ofSi(durationS());
  }

  /**
   * Distance: the sum of (v₁ + v₂)/2·Δt.
   *
   * @return in m
   */
  public Quantity<Length> distance() {
    return Kind.LENGTH.ofSi(distanceM());
  }

  /**
   * Distance over duration, stops included.
   *
   * @return in km/h
   */
  public Quantity<Speed> averageSpeed() {
    return Kind.SPEED.ofSi(distanceM() / durationS());
  }

  /**
   * Highest speed.
   *
   * @return in km/h
   */
  public Quantity<Speed> maximumSpeed() {
    return Kind.SPEED.ofSi(Arrays.stream(speedsMs).max().orElseThrow());
  }

  /**
   * Greatest rise of speed over time within one step.
   *
   * @return in m/s², ≥ 0 unless the cycle only brakes
   */
  public Quantity<Acceleration> greatestAcceleration() {
    double most = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < steps(); i++) {
      most = Math.max(most, (speedsMs[i + 1] - speedsMs[i]) / (timesS[i + 1] - timesS[i]));
    }
    return Kind.ACCELERATION.ofSi(most);
  }

  /**
   * Time in steps that begin and end at rest.
   *
   * @return in s
   */
  public Quantity<Time> timeStanding() {
    double standingS = 0;
    for (int i = 0; i < steps(); i++) {
      standingS += speedsMs[i] == 0 && speedsMs[i + 1] == 0 ? timesS[i + 1] - timesS[i] : 0;
    }
    return Kind.TIME.ofSi(standingS);
  }

  /**
   * How often the speed falls to zero.
   *
   * @return ≥ 0
   */
  public int stops() {
    int stops = 0;
    for (int i = 0; i < steps(); i++) {
      stops += speedsMs[i] > 0 && speedsMs[i + 1] == 0 ? 1 : 0;
    }
    return stops;
  }

  /**
   * The part between two times; both must be points of the cycle.
   *
   * @param from 0 s or later
   * @param to later than from
   * @return a cycle that begins at 0 s
   * @throws InvalidInputException if a time is no point of the cycle, or if they are not in order
   */
  public DriveCycle between(Quantity<Time> from, Quantity<Time> to) {
    int first = index("DriveCycle.from", from);
    int last = index("DriveCycle.to", to);
    if (!(last > first)) {
      throw InvalidInputException.of("DriveCycle.to", "> " + from, to.toString());
    }
    double[] times = Arrays.copyOfRange(timesS, first, last + 1);
    double startS = times[0];
    for (int i = 0; i < times.length; i++) {
      times[i] -= startS;
    }
    double[] speeds = Arrays.copyOfRange(speedsMs, first, last + 1);
    return new DriveCycle(name + ", " + from + " to " + to, source, times, speeds, grade);
  }

  private int index(String field, Quantity<Time> time) {
    int index = Arrays.binarySearch(timesS, Kind.TIME.siValueOf(time));
    if (index < 0) {
      throw InvalidInputException.of(field, "a point of the cycle", time.toString());
    }
    return index;
  }

  /**
   * Energy at the wheels while they are driven, as the WLTP counts it: for each step the force
   * R(v̄) + m·a at the mean speed v̄, times the distance, where positive. Source: UN GTR No. 15,
   * Annex 7, paragraph 5.
   *
   * @param load road load; its factor for turning parts counts
   * @return in kW·h
   */
  public Quantity<Energy> wheelEnergy(RoadLoad load) {
    return Kind.ENERGY.ofSi(wheelEnergyJ(load, 1));
  }

  /**
   * Energy that braking must take, counted in the same way: the most that regeneration could return
   * at the wheels.
   *
   * @param load road load
   * @return in kW·h, ≥ 0
   */
  public Quantity<Energy> brakingEnergy(RoadLoad load) {
    return Kind.ENERGY.ofSi(wheelEnergyJ(load, -1));
  }

  private double wheelEnergyJ(RoadLoad load, int sign) {
    double slope = Math.atan(grade);
    double energyJ = 0;
    for (int i = 0; i < steps(); i++) {
      double stepS = timesS[i + 1] - timesS[i];
      double meanMs = (speedsMs[i] + speedsMs[i + 1]) / 2;
      double forceN =
          load.rollingN(meanMs, Math.cos(slope))
              + load.dragN(meanMs)
              + load.gradeN(Math.sin(slope))
              + load.inertiaKg() * (speedsMs[i + 1] - speedsMs[i]) / stepS;
      energyJ += Math.max(0, sign * forceN) * meanMs * stepS;
    }
    return energyJ;
  }

  double durationS() {
    return timesS[timesS.length - 1] - timesS[0];
  }

  double distanceM() {
    double distanceM = 0;
    for (int i = 0; i < steps(); i++) {
      distanceM += (speedsMs[i] + speedsMs[i + 1]) / 2 * (timesS[i + 1] - timesS[i]);
    }
    return distanceM;
  }

  double timeS(int i) {
    return timesS[i];
  }

  double speedMs(int i) {
    return speedsMs[i];
  }

  /** Copy of the speeds. */
  double[] speedsMs() {
    return speedsMs.clone();
  }

  /** The same times with other speeds, which nobody else keeps. */
  DriveCycle withSpeeds(String newName, double[] newSpeedsMs) {
    return new DriveCycle(newName, source, timesS, newSpeedsMs, grade);
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof DriveCycle that
        && name.equals(that.name)
        && source.equals(that.source)
        && grade == that.grade
        && Arrays.equals(timesS, that.timesS)
        && Arrays.equals(speedsMs, that.speedsMs);
  }

  @Override
  public int hashCode() {
    return Objects.hash(name, grade, Arrays.hashCode(speedsMs));
  }

  /**
   * Name, duration, distance and highest speed.
   *
   * @return for example {@code NEDC: 1180 s, 11.01 km, up to 120 km/h}
   */
  @Override
  public String toString() {
    return name
        + ": "
        + Measures.format(duration(), Kind.TIME)
        + ", "
        + Measures.format(distance(), org.wattwright.units.WorkshopUnits.KILOMETRE, 2)
        + ", up to "
        + Measures.format(maximumSpeed(), Kind.SPEED);
  }
}
