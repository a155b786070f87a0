package org.wattwright.installation;

import static org.wattwright.units.WorkshopUnits.SECOND;

import java.io.Serializable;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Time;
import org.jspecify.annotations.Nullable;
import org.wattwright.check.CautionBand;
import org.wattwright.check.Check;
import org.wattwright.check.Figure;
import org.wattwright.check.Source;
import org.wattwright.internal.LinearTable;
import org.wattwright.internal.Require;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;

/**
 * From travel of pedal or hand lever to the share of torque asked for: nothing within the dead band
 * at rest, all within the dead band at the end, a rising curve between; then no faster than the
 * rate limit. Immutable and thread-safe.
 */
public final class ThrottleMap implements Serializable {
  private static final long serialVersionUID = 1L;

  private static final Source PRACTICE =
      Source.commonPractice("a throttle at rest asks for nothing, whatever its tolerance");

  private final Fields fields;

  private record Fields(
      double restBand, double endBand, LinearTable curve, double riseS, double fallS)
      implements Serializable {}

  private ThrottleMap(Fields fields) {
    this.fields = fields;
  }

  /**
   * A straight line between two dead bands, without rate limit.
   *
   * @param restBand travel at rest that asks for nothing, 0 to 0.5
   * @param endBand travel before the end that asks for all, 0 to 0.49
   * @return the map
   * @throws InvalidInputException if a band is outside its range
   */
  public static ThrottleMap between(double restBand, double endBand) {
    Require.between("ThrottleMap.restBand", restBand, 0, 0.5);
    Require.between("ThrottleMap.endBand", endBand, 0, 0.49);
    LinearTable line =
        LinearTable.of("ThrottleMap.curve", new double[] {0, 1}, new double[] {0, 1});
    return new ThrottleMap(new Fields(restBand, endBand, line, 0, 0));
  }

  /**
   * Usual for a foot pedal: 5 % at rest, 5 % at the end, up in 0.3 s, down in 0.1 s. Common
   * practice.
   *
   * @return the map
   */
  public static ThrottleMap pedal() {
    return between(0.05, 0.05).risesIn(SECOND.of(0.3)).fallsIn(SECOND.of(0.1));
  }

  /**
   * Usual for a hand lever: a wider dead band against tremor and a gentle start, up in 0.8 s, down
   * in 0.1 s. Common practice.
   *
   * @return the map
   */
  public static ThrottleMap handLever() {
    return between(0.10, 0.05).through(0.5, 0.3).risesIn(SECOND.of(0.8)).fallsIn(SECOND.of(0.1));
  }

  /**
   * Bent to pass through a point.
   *
   * @param travel share of the way between the dead bands, above 0, below 1
   * @param demand share of the torque there, 0 to 1
   * @return a new map
   * @throws InvalidInputException if a value is outside its range
   */
  public ThrottleMap through(double travel, double demand) {
    if (!(travel > 0 && travel < 1)) {
      throw InvalidInputException.of("ThrottleMap.travel", "> 0 and < 1", "" + travel);
    }
    Require.fraction("ThrottleMap.demand", demand);
    LinearTable bent =
        LinearTable.of(
            "ThrottleMap.curve", new double[] {0, travel, 1}, new double[] {0, demand, 1});
    return new ThrottleMap(
        new Fields(fields.restBand, fields.endBand, bent, fields.riseS, fields.fallS));
  }

  /**
   * With a limit to how fast torque may rise.
   *
   * @param time from nothing to all, ≥ 0 s
   * @return a new map
   * @throws InvalidInputException if negative
   */
  public ThrottleMap risesIn(Quantity<Time> time) {
    double riseS = Require.quantity("ThrottleMap.risesIn", time, SECOND).nonNegative();
    return new ThrottleMap(
        new Fields(fields.restBand, fields.endBand, fields.curve, riseS, fields.fallS));
  }

  /**
   * With a limit to how fast torque may fall.
   *
   * @param time from all to nothing, ≥ 0 s
   * @return a new map
   * @throws InvalidInputException if negative
   */
  public ThrottleMap fallsIn(Quantity<Time> time) {
    double fallS = Require.quantity("ThrottleMap.fallsIn", time, SECOND).nonNegative();
    return new ThrottleMap(
        new Fields(fields.restBand, fields.endBand, fields.curve, fields.riseS, fallS));
  }

  /**
   * Share of torque that a travel asks for, at rest.
   *
   * @param travel share of the travel; below 0 counts as 0, above 1 as 1
   * @return 0 to 1
   * @throws InvalidInputException if it is not a number
   */
  public double demandAt(double travel) {
    Require.finite("ThrottleMap.travel", travel);
    double way = (travel - fields.restBand) / (1 - fields.restBand - fields.endBand);
    return fields.curve.at(way);
  }

  /**
   * Share of torque a while later, on the way from one demand to another.
   *
   * @param demand share now, 0 to 1
   * @param wanted share asked for, 0 to 1
   * @param elapsed ≥ 0 s
   * @return 0 to 1, between the two
   * @throws InvalidInputException if a value is outside its range
   */
  public double demandAfter(double demand, double wanted, Quantity<Time> elapsed) {
    Require.fraction("ThrottleMap.demand", demand);
    Require.fraction("ThrottleMap.wanted", wanted);
    double elapsedS = Require.quantity("ThrottleMap.elapsed", elapsed, SECOND).nonNegative();
    double fullS = wanted > demand ? fields.riseS : fields.fallS;
    double step = fullS == 0 ? 1 : elapsedS / fullS;
    return wanted > demand ? Math.min(wanted, demand + step) : Math.max(wanted, demand - step);
  }

  /**
   * The verdicts: {@code installation.throttle-rest}, the dead band against the tolerance of the
   * signal, and {@code installation.throttle-release}, torque gone in time.
   *
   * @param tolerance of the travel as read, 0 to 1
   * @param release longest time from all to nothing, &gt; 0 s
   * @return two checks
   * @throws InvalidInputException if a value is outside its range
   */
  public List<Check> checks(double tolerance, Quantity<Time> release) {
    Require.fraction("ThrottleMap.tolerance", tolerance);
    Require.quantity("ThrottleMap.release", release, SECOND).positive();
    return List.of(
        Check.named("installation.throttle-rest", "dead band at rest against its tolerance")
            .source(PRACTICE)
            .cautionBand(CautionBand.NONE)
            .safety()
            .atLeast(Figure.share(fields.restBand), Figure.share(tolerance)),
        Check.named("installation.throttle-release", "time from full torque to none")
            .source(Source.requirement("release of the throttle"))
            .safety()
            .atMost(Figure.of(Kind.TIME.ofSi(fields.fallS), SECOND), Figure.of(release, SECOND)));
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof ThrottleMap that && fields.equals(that.fields);
  }

  @Override
  public int hashCode() {
    return fields.hashCode();
  }

  /**
   * Dead bands and times.
   *
   * @return for example {@code dead 5 % and 5 %, up in 0.3 s, down in 0.1 s}
   */
  @Override
  public String toString() {
    return "dead "
        + Figure.share(fields.restBand)
        + " and "
        + Figure.share(fields.endBand)
        + ", up in "
        + SECOND.of(fields.riseS)
        + ", down in "
        + SECOND.of(fields.fallS);
  }
}
