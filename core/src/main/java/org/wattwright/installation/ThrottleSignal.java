package org.wattwright.installation;

import static org.wattwright.units.WorkshopUnits.MILLISECOND;
import static org.wattwright.units.WorkshopUnits.VOLT;

import java.io.Serializable;
import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricPotential;
import javax.measure.quantity.Time;
import org.jspecify.annotations.Nullable;
import org.wattwright.check.CautionBand;
import org.wattwright.check.Check;
import org.wattwright.check.CheckBuilder;
import org.wattwright.check.Figure;
import org.wattwright.check.Source;
import org.wattwright.check.Worksheet;
import org.wattwright.internal.Require;
import org.wattwright.units.Kind;
import org.wattwright.units.Measure;

/**
 * A throttle with two tracks: plausible while both agree on the travel.
 *
 * <p>A deviation of more than 10 % of the travel for more than 100 ms stops the motor's power.
 * Source: Formula SAE rules T.4.2, a competition rule in use as a good default. A signal outside 5
 * % to 95 % of the supply is a broken or shorted wire; common practice. Immutable and thread-safe.
 */
public final class ThrottleSignal implements Serializable {
  private static final long serialVersionUID = 1L;

  private static final double USUAL_DEVIATION = 0.10;
  private static final double USUAL_TIME_MS = 100;
  private static final double LOWEST_SHARE = 0.05;
  private static final double HIGHEST_SHARE = 0.95;

  /** Rounding of a share, so that a deviation of exactly the limit counts as within it. */
  private static final double ROUNDING = 1e-12;

  private static final Source T42 = Source.standard("Formula SAE rules", "T.4.2");
  private static final Source BAND =
      Source.commonPractice("valid signals lie within 5 % to 95 % of the supply");

  private final Fields fields;

  private record Fields(
      ThrottleTrack first,
      ThrottleTrack second,
      Quantity<ElectricPotential> supply,
      double deviation,
      Quantity<Time> time)
      implements Serializable {}

  /**
   * What two signals say.
   *
   * @param first travel by the first track
   * @param second travel by the second track
   * @param deviation between them, ≥ 0
   * @param isWithinBand whether both signals lie within 5 % to 95 % of the supply
   * @param isPlausible whether they lie there and agree
   */
  public record Reading(
      double first, double second, double deviation, boolean isWithinBand, boolean isPlausible)
      implements Serializable {}

  private ThrottleSignal(Fields fields) {
    this.fields = fields;
  }

  /**
   * Two tracks on one supply.
   *
   * @param first track
   * @param second track
   * @param supply &gt; 0 V
   * @return the signal with the usual limits
   * @throws org.wattwright.units.InvalidInputException if the supply is not positive
   */
  public static ThrottleSignal of(
      ThrottleTrack first, ThrottleTrack second, Quantity<ElectricPotential> supply) {
    Require.quantity("ThrottleSignal.supply", supply, VOLT).positive();
    return new ThrottleSignal(
        new Fields(
            Objects.requireNonNull(first, "first"),
            Objects.requireNonNull(second, "second"),
            Measure.from(supply, Kind.VOLTAGE),
            USUAL_DEVIATION,
            MILLISECOND.of(USUAL_TIME_MS)));
  }

  /**
   * With another limit of deviation.
   *
   * @param share of the travel, 0 to 1
   * @return a new signal
   * @throws org.wattwright.units.InvalidInputException if outside its range
   */
  public ThrottleSignal deviationLimit(double share) {
    double limit = Require.fraction("ThrottleSignal.deviationLimit", share);
    return new ThrottleSignal(
        new Fields(fields.first, fields.second, fields.supply, limit, fields.time));
  }

  /**
   * With another limit of time.
   *
   * @param time ≥ 0 ms
   * @return a new signal
   * @throws org.wattwright.units.InvalidInputException if negative
   */
  public ThrottleSignal timeLimit(Quantity<Time> time) {
    Require.quantity("ThrottleSignal.timeLimit", time, MILLISECOND).nonNegative();
    return new ThrottleSignal(
        new Fields(
            fields.first,
            fields.second,
            fields.supply,
            fields.deviation,
            Measure.from(time, Kind.TIME)));
  }

  /**
   * Share of the travel by which the tracks may differ.
   *
   * @return 0 to 1
   */
  public double deviationLimit() {
    return fields.deviation;
  }

  /**
   * How long they may differ by more.
   *
   * @return in ms unless told otherwise
   */
  public Quantity<Time> timeLimit() {
    return fields.time;
  }

  /**
   * What two signals say.
   *
   * @param first of the first track, ≥ 0 V
   * @param second of the second track, ≥ 0 V
   * @return travel, deviation and plausibility
   * @throws org.wattwright.units.InvalidInputException if a signal is negative
   */
  public Reading read(Quantity<ElectricPotential> first, Quantity<ElectricPotential> second) {
    double one = fields.first.travelAt(first);
    double two = fields.second.travelAt(second);
    double deviation = Math.abs(one - two);
    boolean inBand = isWithinBand(first) && isWithinBand(second);
    return new Reading(
        one, two, deviation, inBand, inBand && deviation <= fields.deviation + ROUNDING);
  }

  /**
   * The working of two signals.
   *
   * @param first of the first track, ≥ 0 V
   * @param second of the second track, ≥ 0 V
   * @return the worksheet
   * @throws org.wattwright.units.InvalidInputException if a signal is negative
   */
  public Worksheet worksheet(
      Quantity<ElectricPotential> first, Quantity<ElectricPotential> second) {
    Reading reading = read(first, second);
    Worksheet.Recording sheet = Worksheet.record("Travel by two tracks");
    travel(sheet, fields.first, first, "x_1");
    travel(sheet, fields.second, second, "x_2");
    sheet
        .step("Δx", "deviation of the tracks")
        .formula("|x_1 - x_2|")
        .with("x_1", Figure.share(reading.first()))
        .with("x_2", Figure.share(reading.second()))
        .gives(Figure.share(reading.deviation()));
    return sheet.toWorksheet();
  }

  private static void travel(
      Worksheet.Recording sheet,
      ThrottleTrack track,
      Quantity<ElectricPotential> signal,
      String symbol) {
    sheet
        .step(symbol, "travel by a track of " + track)
        .formula("(U - U_0)/(U_100 - U_0)")
        .with("U", Figure.of(signal, VOLT))
        .with("U_0", Figure.of(track.released(), VOLT))
        .with("U_100", Figure.of(track.pressed(), VOLT))
        .gives(Figure.share(track.travelAt(signal)));
  }

  private boolean isWithinBand(Quantity<ElectricPotential> signal) {
    double share = Kind.VOLTAGE.siValueOf(signal) / supplyV();
    return share >= LOWEST_SHARE && share <= HIGHEST_SHARE;
  }

  private double supplyV() {
    return Kind.VOLTAGE.siValueOf(fields.supply);
  }

  /**
   * Whether the motor may still drive.
   *
   * @param deviation share of the travel, ≥ 0
   * @param lasting for how long, ≥ 0 ms
   * @return false once it is larger than the limit for longer than the limit
   * @throws org.wattwright.units.InvalidInputException if a value is negative
   */
  public boolean allowsTorque(double deviation, Quantity<Time> lasting) {
    Require.nonNegative("ThrottleSignal.deviation", deviation);
    double lastsS = Require.quantity("ThrottleSignal.lasting", lasting, MILLISECOND).nonNegative();
    return deviation <= fields.deviation + ROUNDING
        || lastsS <= Kind.TIME.siValueOf(fields.time) * (1 + ROUNDING);
  }

  /**
   * Deviation read when the two signal wires touch and both carry the signal of the first track.
   *
   * @param travel 0 to 1
   * @return share of the travel, ≥ 0
   * @throws org.wattwright.units.InvalidInputException if outside its range
   */
  public double deviationIfShorted(double travel) {
    double share = Require.fraction("ThrottleSignal.travel", travel);
    double volts = fields.first.releasedV() + share * fields.first.spanV();
    return Math.abs(share - (volts - fields.second.releasedV()) / fields.second.spanV());
  }

  /**
   * The verdicts: {@code installation.throttle-tracks}, {@code installation.throttle-short}, {@code
   * installation.throttle-band-low}, {@code installation.throttle-band-high}, {@code
   * installation.throttle-deviation}, {@code installation.throttle-time}.
   *
   * @return six checks
   */
  public List<Check> checks() {
    double lowestV = Math.min(fields.first.lowestV(), fields.second.lowestV());
    double highestV = Math.max(fields.first.highestV(), fields.second.highestV());
    return List.of(
        safety("installation.throttle-tracks", "tracks of unlike slope or offset", T42)
            .holds(!fields.first.equals(fields.second)),
        safety("installation.throttle-short", "two wires that touch are found at any travel", T42)
            .atLeast(Figure.share(leastIfShorted()), Figure.share(fields.deviation)),
        safety("installation.throttle-band-low", "lowest valid signal", BAND)
            .atLeast(Figure.ofSi(lowestV, VOLT), Figure.ofSi(LOWEST_SHARE * supplyV(), VOLT)),
        safety("installation.throttle-band-high", "highest valid signal", BAND)
            .atMost(Figure.ofSi(highestV, VOLT), Figure.ofSi(HIGHEST_SHARE * supplyV(), VOLT)),
        safety("installation.throttle-deviation", "deviation that counts as implausible", T42)
            .atMost(Figure.share(fields.deviation), Figure.share(USUAL_DEVIATION)),
        safety("installation.throttle-time", "time until power is stopped", T42)
            .atMost(
                Figure.of(fields.time, MILLISECOND),
                Figure.of(MILLISECOND.of(USUAL_TIME_MS), MILLISECOND)));
  }

  /** The deviation is linear in travel inside the bars: least at an end, or 0 between. */
  private double leastIfShorted() {
    double slope = 1 - fields.first.spanV() / fields.second.spanV();
    double offset = -(fields.first.releasedV() - fields.second.releasedV()) / fields.second.spanV();
    double atEnd = offset + slope;
    return offset * atEnd <= 0 ? 0 : Math.min(Math.abs(offset), Math.abs(atEnd));
  }

  private static CheckBuilder safety(String code, String what, Source source) {
    return Check.named(code, what).source(source).cautionBand(CautionBand.NONE).safety();
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof ThrottleSignal that && fields.equals(that.fields);
  }

  @Override
  public int hashCode() {
    return fields.hashCode();
  }

  /**
   * Tracks and limits.
   *
   * @return in one line
   */
  @Override
  public String toString() {
    return "tracks "
        + fields.first
        + " and "
        + fields.second
        + ", "
        + Figure.share(fields.deviation)
        + " for "
        + fields.time;
  }
}
