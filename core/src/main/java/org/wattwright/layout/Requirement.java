package org.wattwright.layout;

import java.util.function.Function;
import javax.measure.Quantity;
import org.wattwright.check.Check;
import org.wattwright.units.NamedUnit;

/**
 * A requirement of your own on a candidate.
 *
 * <p>{@link #atMost} and {@link #atLeast} make one from a quantity: then the search also knows how
 * far each candidate misses it. Anything else implements {@link #check}. It is asked once for every
 * candidate, also for those that fail elsewhere, so it decides the speed of the search; it must
 * give the same answer each time, and must not ask the candidate for its {@link Candidate#checks()}
 * or its worksheet, which contain it.
 *
 * <pre>{@code
 * search.require(Requirement.atMost("resistance of the full pack", MILLIOHM, milliohms(40),
 *     candidate -> candidate.pack().resistance(full, Direction.DISCHARGE)));
 * }</pre>
 */
public interface Requirement {
  /**
   * Name as reports print it, with its limit.
   *
   * @return not blank
   */
  String name();

  /**
   * The check of a candidate. FAIL rules it out; NOT_CHECKED makes it provisional.
   *
   * @param candidate the candidate
   * @return the check
   */
  Check check(Candidate candidate);

  /**
   * A quantity that may not exceed a limit.
   *
   * @param <Q> the quantity type
   * @param name what the quantity is, in words
   * @param shownIn the unit of reports
   * @param limit the limit
   * @param value the quantity of a candidate
   * @return the requirement
   * @throws org.wattwright.units.InvalidInputException if the name is blank
   */
  static <Q extends Quantity<Q>> Requirement atMost(
      String name,
      NamedUnit<Q> shownIn,
      Quantity<Q> limit,
      Function<? super Candidate, ? extends Quantity<Q>> value) {
    OwnValue<Q> own = OwnValue.of("Requirement.name", name, shownIn, value);
    return new MeasuredRequirement(own, Bound.atMost(shownIn.kind().siValueOf(limit)));
  }

  /**
   * A quantity that must reach a limit.
   *
   * @param <Q> the quantity type
   * @param name what the quantity is, in words
   * @param shownIn the unit of reports
   * @param limit the limit
   * @param value the quantity of a candidate
   * @return the requirement
   * @throws org.wattwright.units.InvalidInputException if the name is blank
   */
  static <Q extends Quantity<Q>> Requirement atLeast(
      String name,
      NamedUnit<Q> shownIn,
      Quantity<Q> limit,
      Function<? super Candidate, ? extends Quantity<Q>> value) {
    OwnValue<Q> own = OwnValue.of("Requirement.name", name, shownIn, value);
    return new MeasuredRequirement(own, Bound.atLeast(shownIn.kind().siValueOf(limit)));
  }
}
