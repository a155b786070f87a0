package org.wattwright.vehicle;

import static org.wattwright.units.WorkshopUnits.KILOGRAM;

import java.io.Serializable;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Mass;
import org.wattwright.check.Source;
import org.wattwright.internal.Require;
import org.wattwright.units.Kind;
import org.wattwright.units.Measure;

/**
 * The conventional mass of one occupant and of the luggage that goes with him.
 *
 * <p>Immutable and thread-safe.
 *
 * @param body in the seat, ≥ 0 kg
 * @param luggage in the luggage space, ≥ 0 kg
 * @param source the rule that fixes them
 */
public record OccupantMass(Quantity<Mass> body, Quantity<Mass> luggage, Source source)
    implements Serializable {
  /**
   * 75 kg in the seat: what European type approval takes for the driver and, in the axle-load
   * checks of passenger cars and light vans, for each passenger.
   *
   * <p>Source: Regulation (EU) No 1230/2012, Article 2 and Annex I Part A 2.6.2.1; since July 2022
   * replaced by Implementing Regulation (EU) 2021/535, Annex XIII (successor from memory).
   */
  public static final OccupantMass SEATED_75_KG =
      new OccupantMass(
          KILOGRAM.of(75),
          KILOGRAM.of(0),
          Source.standard(
              "Regulation (EU) No 1230/2012",
              "Article 2 and Annex I Part A 2.6.2.1; successor Regulation (EU) 2021/535"));

  /**
   * 68 kg in the seat and 7 kg of luggage: the same 75 kg with its luggage put where it travels.
   *
   * <p>Source: ISO 2416:1992 and Directive 95/48/EC, from memory.
   */
  public static final OccupantMass WITH_LUGGAGE_68_7_KG =
      new OccupantMass(
          KILOGRAM.of(68), KILOGRAM.of(7), Source.standard("ISO 2416", "1992, from memory"));

  /**
   * Checks the ranges.
   *
   * @param body in the seat, ≥ 0 kg
   * @param luggage in the luggage space, ≥ 0 kg
   * @param source the rule that fixes them
   * @throws org.wattwright.units.InvalidInputException if a mass is negative
   */
  public OccupantMass {
    Require.quantity("OccupantMass.body", body, KILOGRAM).nonNegative();
    Require.quantity("OccupantMass.luggage", luggage, KILOGRAM).nonNegative();
    body = Measure.from(body, Kind.MASS);
    luggage = Measure.from(luggage, Kind.MASS);
    Objects.requireNonNull(source, "source");
  }
}
