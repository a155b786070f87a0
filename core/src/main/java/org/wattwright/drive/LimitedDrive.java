package org.wattwright.drive;

import static org.wattwright.units.WorkshopUnits.KILOMETRE;
import static org.wattwright.units.WorkshopUnits.WATT_HOUR_PER_KILOMETRE;

import java.io.Serializable;
import java.util.List;
import java.util.Objects;
import org.wattwright.check.Figure;
import org.wattwright.units.Kind;
import org.wattwright.units.Measures;

/**
 * What a vehicle does under one limit.
 *
 * @param limit current or power
 * @param range on the cycle, with full pedal where the trace is lost
 * @param once the cycle once, for consumption and the share not followed
 * @param demand the same vehicle driven by demand
 * @param zeroToFifty 0 to 50 km/h with full pedal
 * @param topSpeed on the level
 * @param ladenGrade steepest grade laden at 20 km/h
 */
public record LimitedDrive(
    Figure limit,
    RangeResult range,
    CycleResult once,
    DemandResult demand,
    TimeToSpeed zeroToFifty,
    LimitedSpeed topSpeed,
    LimitedGrade ladenGrade)
    implements Serializable {
  /**
   * Rejects null.
   *
   * @param limit current or power
   * @param range on the cycle
   * @param once the cycle once
   * @param demand driven by demand
   * @param zeroToFifty 0 to 50 km/h with full pedal
   * @param topSpeed on the level
   * @param ladenGrade steepest grade laden at 20 km/h
   */
  public LimitedDrive {
    Objects.requireNonNull(limit, "limit");
    Objects.requireNonNull(range, "range");
    Objects.requireNonNull(once, "once");
    Objects.requireNonNull(demand, "demand");
    Objects.requireNonNull(zeroToFifty, "zeroToFifty");
    Objects.requireNonNull(topSpeed, "topSpeed");
    Objects.requireNonNull(ladenGrade, "ladenGrade");
  }

  /**
   * Cells of a table: limit, consumption, range, by demand, 0–50, top speed, grade, not followed.
   */
  /**
   * One text a column of {@link PowerLimitStudy#headings()}.
   *
   * @return an immutable list
   */
  public List<String> cells() {
    return List.of(
        limit.toString(),
        once.consumption().map(c -> Measures.format(c, WATT_HOUR_PER_KILOMETRE, 1)).orElse("–"),
        Measures.format(range.distance(), KILOMETRE, 1),
        demand.consumption().map(c -> Measures.format(c, WATT_HOUR_PER_KILOMETRE, 1)).orElse("–"),
        zeroToFifty.time().map(t -> Measures.format(t, Kind.TIME)).orElse("not reached"),
        Measures.format(topSpeed.speed(), Kind.SPEED),
        Figure.share(Math.rint(ladenGrade.grade() * 1000) / 1000).toString(),
        Figure.share(Math.rint(once.following().shareBehind() * 1000) / 1000).toString());
  }

  /**
   * All figures on one line.
   *
   * @return limit first
   */
  @Override
  public String toString() {
    return String.join("; ", cells());
  }
}
