package org.wattwright.battery;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.function.ToDoubleFunction;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricCharge;
import org.wattwright.internal.Require;
import org.wattwright.units.Kind;
import org.wattwright.units.Measure;
import org.wattwright.units.Measures;
import org.wattwright.units.StateOfCharge;
import org.wattwright.units.WorkshopUnits;

/**
 * Cells or modules in series that differ in capacity and state of charge, such as salvaged ones:
 * what can be drawn and put in, and which one ends it.
 *
 * <p>The same charge passes through all. Out: least Qᵢ·sᵢ; in: least Qᵢ·(1 − sᵢ); usable without
 * balancing: their sum. Balancing at the top makes it the least Qᵢ: it removes the imbalance, never
 * the weakest cell. Source: Kirchhoff's current law.
 *
 * <pre>{@code
 * SeriesBalance string = SeriesBalance.of("module 1", ampereHours(100), percentCharge(50))
 *     .and("module 2", ampereHours(96), percentCharge(45));
 * string.drawable();        // 43.2 A·h
 * string.endsDischarge();   // module 2
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 *
 * @param members in series, at least one
 */
public record SeriesBalance(List<Member> members) implements Serializable {
  /**
   * A cell or module in the string.
   *
   * @param name as reports print it
   * @param capacity &gt; 0 A·h
   * @param stateOfCharge its own
   */
  public record Member(String name, Quantity<ElectricCharge> capacity, StateOfCharge stateOfCharge)
      implements Serializable {
    /**
     * Checks the capacity.
     *
     * @param name as reports print it
     * @param capacity &gt; 0 A·h
     * @param stateOfCharge its own
     * @throws org.wattwright.units.InvalidInputException if the name is blank or the capacity is
     *     not positive
     */
    public Member {
      name = Require.text("SeriesBalance.name", name);
      Require.quantity("SeriesBalance.capacity", capacity, WorkshopUnits.AMPERE_HOUR).positive();
      capacity = Measure.from(capacity, Kind.CHARGE);
      Objects.requireNonNull(stateOfCharge, "stateOfCharge");
    }

    double capacityC() {
      return Kind.CHARGE.siValueOf(capacity);
    }

    double drawableC() {
      return capacityC() * stateOfCharge.fraction();
    }

    double insertableC() {
      return capacityC() * (1 - stateOfCharge.fraction());
    }

    /**
     * Name, capacity and state of charge.
     *
     * @return for example {@code module 2 (96 A·h at 45 %)}
     */
    @Override
    public String toString() {
      return name + " (" + Measures.format(capacity, Kind.CHARGE) + " at " + stateOfCharge + ")";
    }
  }

  /**
   * Copies the list.
   *
   * @param members in series, at least one
   * @throws org.wattwright.units.InvalidInputException if there is none
   */
  public SeriesBalance {
    members = Require.nonEmpty("SeriesBalance.members", members);
  }

  /**
   * Starts a string with its first cell or module.
   *
   * @param name as reports print it
   * @param capacity &gt; 0 A·h
   * @param stateOfCharge its own
   * @return a string of one, to be extended by {@link #and}
   */
  public static SeriesBalance of(
      String name, Quantity<ElectricCharge> capacity, StateOfCharge stateOfCharge) {
    return new SeriesBalance(List.of(new Member(name, capacity, stateOfCharge)));
  }

  /**
   * This string with one more cell or module.
   *
   * @param name as reports print it
   * @param capacity &gt; 0 A·h
   * @param stateOfCharge its own
   * @return a new string
   */
  public SeriesBalance and(
      String name, Quantity<ElectricCharge> capacity, StateOfCharge stateOfCharge) {
    List<Member> more = new ArrayList<>(members);
    more.add(new Member(name, capacity, stateOfCharge));
    return new SeriesBalance(more);
  }

  private Member least(ToDoubleFunction<Member> charge) {
    return members.stream().min(Comparator.comparingDouble(charge)).orElseThrow();
  }

  /**
   * The one that is empty first.
   *
   * @return the first of several that are equal
   */
  public Member endsDischarge() {
    return least(Member::drawableC);
  }

  /**
   * The one that is full first.
   *
   * @return the first of several that are equal
   */
  public Member endsCharge() {
    return least(Member::insertableC);
  }

  /**
   * Charge that can be drawn until one is empty.
   *
   * @return in A·h
   */
  public Quantity<ElectricCharge> drawable() {
    return Kind.CHARGE.ofSi(endsDischarge().drawableC());
  }

  /**
   * Charge that can be put in until one is full.
   *
   * @return in A·h
   */
  public Quantity<ElectricCharge> insertable() {
    return Kind.CHARGE.ofSi(endsCharge().insertableC());
  }

  /**
   * Usable capacity without balancing.
   *
   * @return in A·h
   */
  public Quantity<ElectricCharge> usable() {
    return Kind.CHARGE.ofSi(endsDischarge().drawableC() + endsCharge().insertableC());
  }

  /**
   * Usable capacity once all are full together.
   *
   * @return that of the smallest, in A·h
   */
  public Quantity<ElectricCharge> usableWhenTopBalanced() {
    return Kind.CHARGE.ofSi(least(Member::capacityC).capacityC());
  }

  /**
   * What can be drawn and put in, and what ends it.
   *
   * @return for example {@code 43.2 A·h out until module 2 is empty, 41.4 A·h in until module 3 is
   *     full}
   */
  @Override
  public String toString() {
    return Measures.format(drawable(), Kind.CHARGE)
        + " out until "
        + endsDischarge().name()
        + " is empty, "
        + Measures.format(insertable(), Kind.CHARGE)
        + " in until "
        + endsCharge().name()
        + " is full";
  }
}
