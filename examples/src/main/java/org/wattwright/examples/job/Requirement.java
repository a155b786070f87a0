package org.wattwright.examples.job;

import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.ElectricResistance;
import javax.measure.quantity.Energy;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Power;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import javax.measure.quantity.Volume;
import org.wattwright.units.Price;
import org.wattwright.units.ResistancePerLength;
import org.wattwright.units.StateOfCharge;

/**
 * What the customer asks of the pack.
 *
 * <p>Immutable and thread-safe.
 *
 * @param energy the energy and the conditions under which it is drawn
 * @param peak the peak power and the conditions under which it must be there
 * @param regeneration what the drive unit feeds back at most
 * @param climate the range of pack temperatures
 * @param limits what the pack may weigh, fill and cost
 * @param links cables from bay to bay
 * @param mostStrings most strings in parallel to look at
 * @param objective what ranks the packs that meet everything
 */
public record Requirement(
    UsableEnergy energy,
    PeakPower peak,
    Regeneration regeneration,
    Climate climate,
    Limits limits,
    Links links,
    int mostStrings,
    Objective objective) {
  /**
   * Usable energy asked for.
   *
   * @param energy &gt; 0
   * @param empty state of charge at which the driver calls it empty
   * @param full state of charge to which it is charged, above empty
   * @param power constant power at which it is drawn, &gt; 0
   * @param temperature of the pack
   */
  public record UsableEnergy(
      Quantity<Energy> energy,
      StateOfCharge empty,
      StateOfCharge full,
      Quantity<Power> power,
      Quantity<Temperature> temperature) {}

  /**
   * Peak power asked for.
   *
   * @param power at the terminals of the pack, &gt; 0
   * @param duration &gt; 0
   * @param stateOfCharge at which it must still be there
   * @param temperature of the pack at which it must be there
   * @param whenEmpty what is left of it when the pack is at its emptiest and coldest, &gt; 0
   */
  public record PeakPower(
      Quantity<Power> power,
      Quantity<Time> duration,
      StateOfCharge stateOfCharge,
      Quantity<Temperature> temperature,
      Quantity<Power> whenEmpty) {}

  /**
   * Regeneration into the pack.
   *
   * @param current at the terminals of the pack, &gt; 0
   * @param duration &gt; 0
   */
  public record Regeneration(Quantity<ElectricCurrent> current, Quantity<Time> duration) {}

  /**
   * Resistance of the cables from bay to bay; what is empty was not stated. Either as a whole, or
   * for a length, to be multiplied by the lengths between the bays that are used.
   *
   * @param whole all cables and joints of one string; empty if perLength is stated
   * @param perLength of the cable, one way, at its operating temperature
   * @param joint one joint, of which each cable has two
   */
  public record Links(
      Optional<Quantity<ElectricResistance>> whole,
      Optional<Quantity<ResistancePerLength>> perLength,
      Optional<Quantity<ElectricResistance>> joint) {
    /** Key of the whole. */
    public static final String WHOLE = "link cable resistance";

    /** Key of the resistance for a length. */
    public static final String PER_LENGTH = "link cable resistance per length";

    /** Key of a joint. */
    public static final String JOINT = "link joint resistance";

    /** All of them. */
    public static final List<String> KEYS = List.of(WHOLE, PER_LENGTH, JOINT);
  }

  /**
   * Temperatures of the pack in use.
   *
   * @param coldest lower end
   * @param hottest upper end, above the lower
   */
  public record Climate(Quantity<Temperature> coldest, Quantity<Temperature> hottest) {}

  /**
   * Limits of the pack; an empty one was not stated.
   *
   * @param mass of all modules
   * @param volume of all modules
   * @param price of all modules
   */
  public record Limits(
      Optional<Quantity<Mass>> mass, Optional<Quantity<Volume>> volume, Optional<Price> price) {}
}
