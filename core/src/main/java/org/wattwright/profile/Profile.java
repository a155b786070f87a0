package org.wattwright.profile;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.Time;
import org.jspecify.annotations.Nullable;
import org.wattwright.internal.Require;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.JouleIntegral;
import org.wattwright.units.Kind;
import org.wattwright.units.NamedUnit;
import org.wattwright.units.WorkshopUnits;

/**
 * A quantity against time: the current of a drive, the power of a charge, the speed of a cycle.
 *
 * <p>Made from samples, straight between two of them, or from stretches that hold a value. Time
 * counts from the start, 0 s. A profile ends, or it repeats for ever with its duration as period.
 * Where the value jumps, the value at that time is the one after the jump. All figures are exact
 * for what was given; nothing is resampled unless asked for.
 *
 * <pre>{@code
 * Profile<ElectricCurrent> hill =
 *     Profile.segments(Kind.CURRENT)
 *         .hold(amperes(400), seconds(10))
 *         .hold(amperes(120), seconds(50))
 *         .build();
 * hill.rms();             // 196.6 A
 * hill.jouleIntegral();   // 2.32E6 A²·s
 * }</pre>
 *
 * <p>Immutable and thread-safe. Signs are kept: a discharge current is positive, a charge current
 * negative.
 *
 * @param <Q> the quantity type of the value
 */
public final class Profile<Q extends Quantity<Q>> implements Serializable {
  private static final long serialVersionUID = 1L;

  /** Far beyond any log of use; keeps a slip in a step from filling the memory. */
  private static final int MOST_SEGMENTS = 10_000_000;

  /** How far the durations of two profiles may differ, relative, and still count as equal. */
  private static final double ROUNDING = 1e-12;

  private final Kind<Q> kind;
  private final Trace trace;
  private final boolean repeating;

  Profile(Kind<Q> kind, Trace trace, boolean repeating) {
    this.kind = kind;
    this.trace = trace;
    this.repeating = repeating;
  }

  /**
   * Straight lines between samples.
   *
   * @param <Q> the quantity type of the value
   * @param kind kind of the value
   * @param samples two or more; the first at 0 s, time strictly increasing
   * @return the profile, from the first sample to the last
   * @throws InvalidInputException if there are fewer than two samples, if time does not start at 0
   *     s or does not increase, or if a value is of another kind
   */
  public static <Q extends Quantity<Q>> Profile<Q> ofSamples(
      Kind<Q> kind, List<Sample<Q>> samples) {
    double[] timesS = new double[samples.size()];
    double[] values = new double[samples.size()];
    for (int i = 0; i < timesS.length; i++) {
      timesS[i] = Kind.TIME.siValueOf(samples.get(i).time());
      values[i] = kind.siValueOf(samples.get(i).value());
    }
    return ProfileArrays.ofPoints(kind, timesS, values);
  }

  /**
   * Straight lines between points given as plain numbers, as a file holds them.
   *
   * @param <Q> the quantity type of the value
   * @param timeUnit unit of the times
   * @param times two or more; 0 first, strictly increasing
   * @param valueUnit unit of the values
   * @param values as many as times, finite
   * @return the profile, from the first point to the last
   * @throws InvalidInputException if a number is not finite, if the lengths differ, or as for
   *     {@link #ofSamples}
   */
  public static <Q extends Quantity<Q>> Profile<Q> ofPoints(
      NamedUnit<Time> timeUnit, double[] times, NamedUnit<Q> valueUnit, double[] values) {
    return ProfileArrays.ofPoints(
        valueUnit.kind(),
        ProfileArrays.si("Profile.times", times, timeUnit),
        ProfileArrays.si("Profile.values", values, valueUnit));
  }

  /**
   * Values that hold, given as plain numbers, as a simulation leaves them.
   *
   * @param <Q> the quantity type of the value
   * @param timeUnit unit of the durations
   * @param durations one or more, &gt; 0
   * @param valueUnit unit of the values
   * @param values as many as durations, finite
   * @return the profile
   * @throws InvalidInputException if a duration is not positive, if a number is not finite, or if
   *     the lengths differ
   */
  public static <Q extends Quantity<Q>> Profile<Q> ofSteps(
      NamedUnit<Time> timeUnit, double[] durations, NamedUnit<Q> valueUnit, double[] values) {
    return ProfileArrays.ofSteps(
        valueUnit.kind(),
        ProfileArrays.si("Profile.durations", durations, timeUnit),
        ProfileArrays.si("Profile.values", values, valueUnit));
  }

  /**
   * Starts a profile of stretches.
   *
   * @param <Q> the quantity type of the value
   * @param kind kind of the value
   * @return a builder that ends with {@code build()}
   */
  public static <Q extends Quantity<Q>> ProfileBuilder<Q> segments(Kind<Q> kind) {
    return new ProfileBuilder<>(Objects.requireNonNull(kind, "kind"));
  }

  /**
   * One value throughout.
   *
   * @param <Q> the quantity type of the value
   * @param kind kind of the value
   * @param value the value
   * @param duration &gt; 0 s
   * @return the profile
   * @throws InvalidInputException if duration is not positive or value is of another kind
   */
  public static <Q extends Quantity<Q>> Profile<Q> constant(
      Kind<Q> kind, Quantity<Q> value, Quantity<Time> duration) {
    return segments(kind).hold(value, duration).build();
  }

  /**
   * A law of time, taken at equal steps, with straight lines between.
   *
   * <p>Against a smooth law the figures err by a share of the order of (step / time in which the
   * law bends)²: 2000 steps over a half sine give its RMS to 1e-6.
   *
   * @param <Q> the quantity type of the value
   * @param kind kind of the value
   * @param duration &gt; 0 s
   * @param steps 1 to 10 000 000
   * @param law called once for each step and once more, from 0 s to duration, in order
   * @return the profile
   * @throws InvalidInputException if an argument is outside its range
   */
  public static <Q extends Quantity<Q>> Profile<Q> sampled(
      Kind<Q> kind,
      Quantity<Time> duration,
      int steps,
      Function<? super Quantity<Time>, ? extends Quantity<Q>> law) {
    double durationS =
        Require.quantity("Profile.duration", duration, WorkshopUnits.SECOND).positive();
    Require.count("Profile.steps", steps, 1, MOST_SEGMENTS);
    double[] timesS = new double[steps + 1];
    double[] values = new double[steps + 1];
    for (int i = 0; i <= steps; i++) {
      timesS[i] = durationS * i / steps;
      values[i] = kind.siValueOf(law.apply(Kind.TIME.ofSi(timesS[i])));
    }
    return new Profile<>(kind, Trace.ofPoints(timesS, values), false);
  }

  /**
   * What this is a history of.
   *
   * @return the kind of the value
   */
  public Kind<Q> kind() {
    return kind;
  }

  /**
   * How long it lasts; the period if it repeats.
   *
   * @return in s, &gt; 0 s
   */
  public Quantity<Time> duration() {
    return Kind.TIME.ofSi(trace.durationS());
  }

  /**
   * Whether it goes on for ever, with its duration as period.
   *
   * @return whether it repeats
   */
  public boolean isRepeating() {
    return repeating;
  }

  /**
   * The same history over and over again.
   *
   * @return a repeating profile
   */
  public Profile<Q> repeating() {
    return new Profile<>(kind, trace, true);
  }

  /**
   * The value at a time; after the jump if it jumps there.
   *
   * @param time from 0 s to the duration; any time from 0 s on if it repeats
   * @return in the customary unit
   * @throws InvalidInputException if time is outside that range
   */
  public Quantity<Q> at(Quantity<Time> time) {
    double timeS = Require.quantity("Profile.at", time, WorkshopUnits.SECOND).nonNegative();
    if (repeating) {
      timeS %= trace.durationS();
    } else {
      requireWithin("Profile.at", time, timeS);
    }
    return kind.ofSi(trace.at(timeS));
  }

  private void requireWithin(String field, Quantity<Time> time, double timeS) {
    if (!(timeS <= trace.durationS())) {
      throw InvalidInputException.of(field, "≤ " + duration(), time.toString());
    }
  }

  /**
   * Number of stretches in which the value holds or follows a straight line.
   *
   * @return ≥ 1; of one period if it repeats
   */
  public int segmentCount() {
    return trace.size();
  }

  /**
   * The stretches in which the value holds or follows a straight line.
   *
   * @return one or more, in order of time; those of one period if it repeats
   */
  public List<Segment<Q>> segments() {
    List<Segment<Q>> segments = new ArrayList<>(trace.size());
    for (int i = 0; i < trace.size(); i++) {
      segments.add(
          new Segment<>(
              Kind.TIME.ofSi(trace.startS(i)),
              Kind.TIME.ofSi(trace.lengthS(i)),
              kind.ofSi(trace.from(i)),
              kind.ofSi(trace.to(i))));
    }
    return List.copyOf(segments);
  }

  /**
   * Durations of the stretches as plain numbers, for a plot or a solver.
   *
   * @param unit unit of the numbers
   * @return a new array, one number per stretch
   */
  public double[] durationsIn(NamedUnit<Time> unit) {
    double[] lengthsS = new double[trace.size()];
    for (int i = 0; i < lengthsS.length; i++) {
      lengthsS[i] = trace.lengthS(i);
    }
    return ProfileArrays.in(unit, lengthsS);
  }

  /**
   * Values just after the start of each stretch as plain numbers, for a plot or a solver.
   *
   * @param unit unit of the numbers
   * @return a new array, one number per stretch
   */
  public double[] startValuesIn(NamedUnit<Q> unit) {
    return ProfileArrays.in(unit, trace.starts());
  }

  /**
   * Values just before the end of each stretch as plain numbers, for a plot or a solver.
   *
   * @param unit unit of the numbers
   * @return a new array, one number per stretch
   */
  public double[] endValuesIn(NamedUnit<Q> unit) {
    return ProfileArrays.in(unit, trace.ends());
  }

  /**
   * Mean over time: ∫v·dt / T.
   *
   * @return in the customary unit
   */
  public Quantity<Q> mean() {
    return kind.ofSi(Moment.FIRST.of(trace) / trace.durationS());
  }

  /**
   * Root mean square over time: √(∫v²·dt / T), with ∫v²·dt = Σ (a² + a·b + b²)/3·Δt over straight
   * lines from a to b. A conductor heats by it if T is short against its thermal time constant.
   *
   * @return in the customary unit, ≥ 0
   * @throws InvalidInputException if this is a profile of absolute temperatures
   */
  public Quantity<Q> rms() {
    requireNoTemperature("Profile.rms");
    return kind.ofSi(Math.sqrt(Moment.SECOND.of(trace) / trace.durationS()));
  }

  /**
   * The highest value, with its sign.
   *
   * @return in the customary unit
   */
  public Quantity<Q> highest() {
    return kind.ofSi(trace.highest());
  }

  /**
   * The lowest value, with its sign.
   *
   * @return in the customary unit
   */
  public Quantity<Q> lowest() {
    return kind.ofSi(trace.lowest());
  }

  /**
   * The largest size that the value reaches in either direction.
   *
   * @return in the customary unit, ≥ 0
   * @throws InvalidInputException if this is a profile of absolute temperatures
   */
  public Quantity<Q> peak() {
    requireNoTemperature("Profile.peak");
    return kind.ofSi(Math.max(Math.abs(trace.highest()), Math.abs(trace.lowest())));
  }

  /**
   * The smallest value that is not exceeded for a share of the time.
   *
   * @param share share of the time, 0 to 1; 0.5 is the median
   * @return in the customary unit
   * @throws InvalidInputException if share is outside 0 … 1
   */
  public Quantity<Q> percentile(double share) {
    return kind.ofSi(Levels.percentile(trace, Require.fraction("Profile.percentile", share)));
  }

  /**
   * Total time at or above a level; of one period if it repeats.
   *
   * @param level any value
   * @return in s, from 0 s to the duration
   */
  public Quantity<Time> timeAtOrAbove(Quantity<Q> level) {
    return Kind.TIME.ofSi(Levels.timeFromS(trace, kind.siValueOf(level)));
  }

  /**
   * The longest unbroken stretch at or above a level; over the end into the next period if it
   * repeats.
   *
   * @param level any value
   * @return the first of the longest; empty if the level is never reached
   */
  public Optional<Spell> longestAtOrAbove(Quantity<Q> level) {
    Spells.@Nullable Found found = Spells.longest(trace, kind.siValueOf(level), repeating);
    return found == null
        ? Optional.empty()
        : Optional.of(
            new Spell(
                Kind.TIME.ofSi(found.startS()), Kind.TIME.ofSi(found.lengthS()), found.endless()));
  }

  /**
   * The window of a given length with the highest mean, found exactly among all positions.
   *
   * @param length &gt; 0 s and at most the duration; any length if it repeats
   * @return the first of the highest
   * @throws InvalidInputException if length is outside that range
   */
  public Window<Q> highestMean(Quantity<Time> length) {
    double lengthS = windowLengthS(length);
    HighestWindow.Found found = highestWindow(Moment.FIRST, lengthS);
    return window(found.startS(), lengthS, found.moment() / lengthS);
  }

  /**
   * The window of a given length with the highest RMS, found exactly among all positions.
   *
   * @param length &gt; 0 s and at most the duration; any length if it repeats
   * @return the first of the highest
   * @throws InvalidInputException if length is outside that range, or if this is a profile of
   *     absolute temperatures
   */
  public Window<Q> highestRms(Quantity<Time> length) {
    requireNoTemperature("Profile.highestRms");
    double lengthS = windowLengthS(length);
    HighestWindow.Found found = highestWindow(Moment.SECOND, lengthS);
    return window(found.startS(), lengthS, Math.sqrt(found.moment() / lengthS));
  }

  private double windowLengthS(Quantity<Time> length) {
    double lengthS = Require.quantity("Profile.window", length, WorkshopUnits.SECOND).positive();
    if (!repeating) {
      requireWithin("Profile.window", length, lengthS);
    }
    return lengthS;
  }

  private HighestWindow.Found highestWindow(Moment moment, double lengthS) {
    return repeating
        ? HighestWindow.repeating(trace, moment, lengthS)
        : HighestWindow.within(trace, moment, lengthS);
  }

  private Window<Q> window(double startS, double lengthS, double value) {
    return new Window<>(Kind.TIME.ofSi(startS), Kind.TIME.ofSi(lengthS), kind.ofSi(value));
  }

  /**
   * The integral over time: charge of a current, energy of a power, length of a speed, speed of an
   * acceleration, angle of a rotational speed, flux of a voltage, mass or volume of a flow.
   *
   * @param <R> the quantity type of the integral
   * @param wanted the kind of the integral
   * @return ∫v·dt in the customary unit; of one period if it repeats
   * @throws InvalidInputException if the integral of this kind is of another kind
   */
  public <R extends Quantity<R>> Quantity<R> integral(Kind<R> wanted) {
    Integrals.require(wanted, kind);
    return wanted.ofSi(Moment.FIRST.of(trace));
  }

  /**
   * The joule integral ∫I²·dt of a current, Σ (a² + a·b + b²)/3·Δt over straight lines from a to b.
   *
   * @return in A²·s, ≥ 0 A²·s; of one period if it repeats
   * @throws InvalidInputException if this is not a profile of current
   */
  public Quantity<JouleIntegral> jouleIntegral() {
    requireCurrent("Profile.jouleIntegral");
    return Kind.JOULE_INTEGRAL.ofSi(Moment.SECOND.of(trace));
  }

  private void requireCurrent(String field) {
    Kind<ElectricCurrent> wanted = Kind.CURRENT;
    if (!kind.equals(wanted)) {
      throw InvalidInputException.of(field, "of a current", "of a " + kind);
    }
  }

  private void requireNoTemperature(String field) {
    if (kind.equals(Kind.TEMPERATURE)) {
      throw InvalidInputException.of(field, "of a kind with a true zero", "of a temperature");
    }
  }

  /**
   * Every value times a factor.
   *
   * @param factor finite; negative turns the direction round
   * @return a new profile
   * @throws InvalidInputException if factor is not finite, or if this is a profile of absolute
   *     temperatures
   */
  public Profile<Q> scaled(double factor) {
    requireNoTemperature("Profile.scaled");
    return new Profile<>(kind, trace.scaled(Require.finite("Profile.factor", factor)), repeating);
  }

  /**
   * The values of both added, such as the currents of two loads on one cable.
   *
   * @param other of the same duration, repeating like this one
   * @return a new profile
   * @throws InvalidInputException if the durations differ, if only one repeats, or if these are
   *     profiles of absolute temperatures
   */
  public Profile<Q> plus(Profile<Q> other) {
    requireNoTemperature("Profile.plus");
    double allowedS = ROUNDING * trace.durationS();
    if (!(Math.abs(other.trace.durationS() - trace.durationS()) <= allowedS)) {
      throw InvalidInputException.of(
          "Profile.plus.duration", duration().toString(), other.duration().toString());
    }
    if (other.repeating != repeating) {
      throw InvalidInputException.of("Profile.plus", ending(), other.ending());
    }
    return new Profile<>(kind, trace.plus(other.trace), repeating);
  }

  private String ending() {
    return repeating ? "repeating" : "ending";
  }

  /**
   * This profile, then another one.
   *
   * @param next starts when this one ends
   * @return a new profile
   * @throws InvalidInputException if one of the two repeats
   */
  public Profile<Q> then(Profile<Q> next) {
    requireEnding("Profile.then");
    next.requireEnding("Profile.then");
    requireFewEnough((long) trace.size() + next.trace.size());
    return new Profile<>(kind, trace.then(next.trace), false);
  }

  /**
   * This profile several times in a row, as one profile that ends.
   *
   * @param count ≥ 1
   * @return a new profile; of as many periods if this one repeats
   * @throws InvalidInputException if count is below 1, or if more than 10 000 000 stretches would
   *     result
   */
  public Profile<Q> repeated(int count) {
    Require.positiveCount("Profile.repeated", count);
    requireFewEnough((long) trace.size() * count);
    return new Profile<>(kind, trace.repeated(count), false);
  }

  private static void requireFewEnough(long segments) {
    if (segments > MOST_SEGMENTS) {
      throw InvalidInputException.of("Profile.segments", "≤ " + MOST_SEGMENTS, "" + segments);
    }
  }

  private void requireEnding(String field) {
    if (repeating) {
      throw InvalidInputException.of(field, "ending", "repeating")
          .withHint("repeated(n) makes one that ends");
    }
  }

  /**
   * The part up to a time.
   *
   * @param end &gt; 0 s and at most the duration
   * @return a new profile that ends
   * @throws InvalidInputException if end is outside that range, or if this one repeats
   */
  public Profile<Q> until(Quantity<Time> end) {
    requireEnding("Profile.until");
    double endS = Require.quantity("Profile.until", end, WorkshopUnits.SECOND).positive();
    requireWithin("Profile.until", end, endS);
    return new Profile<>(kind, trace.part(0, endS), false);
  }

  /**
   * The part from a time on, counted from there.
   *
   * @param start ≥ 0 s and before the end
   * @return a new profile that ends
   * @throws InvalidInputException if start is outside that range, or if this one repeats
   */
  public Profile<Q> after(Quantity<Time> start) {
    requireEnding("Profile.after");
    double startS = Require.quantity("Profile.after", start, WorkshopUnits.SECOND).nonNegative();
    if (!(startS < trace.durationS())) {
      throw InvalidInputException.of("Profile.after", "< " + duration(), start.toString());
    }
    return new Profile<>(kind, trace.part(startS, trace.durationS()), false);
  }

  /**
   * Means over equal steps, held over each; keeps the integral and loses peaks.
   *
   * @param step &gt; 0 s; the last one is shorter where the duration is no multiple of it
   * @return a new profile
   * @throws InvalidInputException if step is not positive, or so short that more than 10 000 000
   *     stretches would result
   */
  public Profile<Q> averagedOver(Quantity<Time> step) {
    return new Profile<>(kind, Resampling.means(trace, stepS(step)), repeating);
  }

  /**
   * Values at equal steps, with straight lines between; keeps values and loses what lies between.
   *
   * @param step &gt; 0 s; the last one is shorter where the duration is no multiple of it
   * @return a new profile
   * @throws InvalidInputException if step is not positive, or so short that more than 10 000 000
   *     stretches would result
   */
  public Profile<Q> sampledEvery(Quantity<Time> step) {
    return new Profile<>(kind, Resampling.points(trace, stepS(step)), repeating);
  }

  private double stepS(Quantity<Time> step) {
    double stepS = Require.quantity("Profile.step", step, WorkshopUnits.SECOND).positive();
    if (!(trace.durationS() / stepS <= MOST_SEGMENTS)) {
      throw InvalidInputException.of(
          "Profile.step", "≥ the duration / " + MOST_SEGMENTS, step.toString());
    }
    return stepS;
  }

  /**
   * Equal if kind, every stretch, and whether it repeats are equal.
   *
   * @param other any object
   * @return whether both are the same history
   */
  @Override
  public boolean equals(@Nullable Object other) {
    return this == other
        || (other instanceof Profile<?> that
            && kind == that.kind
            && repeating == that.repeating
            && trace.equals(that.trace));
  }

  /**
   * Agrees with {@link #equals}.
   *
   * @return the hash code
   */
  @Override
  public int hashCode() {
    return trace.hashCode() * 31 + kind.name().hashCode();
  }

  /**
   * Kind, duration and the main figures.
   *
   * @return for example {@code current over 60 s: 120 A … 400 A, mean 166.7 A, rms 196.6 A}
   */
  @Override
  public String toString() {
    return ProfileText.of(this);
  }
}
