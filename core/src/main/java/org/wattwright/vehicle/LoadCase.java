package org.wattwright.vehicle;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.wattwright.internal.Require;

/**
 * What the vehicle carries besides itself: nothing, the driver, everybody and their luggage, or
 * whatever else is to be looked at.
 *
 * <p>Immutable and thread-safe.
 *
 * @param name as reports print it
 * @param load people, luggage and goods
 */
public record LoadCase(String name, List<MassItem> load) implements Serializable {
  /** The vehicle as it stands, without a person in it. */
  public static final LoadCase KERB = new LoadCase("kerb", List.of());

  /**
   * Copies the list.
   *
   * @param name as reports print it
   * @param load people, luggage and goods
   * @throws org.wattwright.units.InvalidInputException if the name is blank
   */
  public LoadCase {
    name = Require.text("LoadCase.name", name);
    load = List.copyOf(load);
  }

  /**
   * The driver alone; with fuel or full batteries this is the mass in running order.
   *
   * @param seating where he sits
   * @return the load case
   * @throws org.wattwright.units.InvalidInputException if luggage has no place
   */
  public static LoadCase withDriver(Seating seating) {
    return new LoadCase("with driver", seating.driverItems());
  }

  /**
   * Every seat taken, with luggage; goods up to the gross mass are added by {@link
   * MassLedger#ladenTo}.
   *
   * @param seating where they sit
   * @return the load case
   * @throws org.wattwright.units.InvalidInputException if luggage has no place
   */
  public static LoadCase allSeats(Seating seating) {
    return new LoadCase("all seats taken", seating.allItems());
  }

  /**
   * This case with one more load.
   *
   * @param item the load
   * @return a new case of the same name
   */
  public LoadCase plus(MassItem item) {
    List<MassItem> more = new ArrayList<>(load);
    more.add(Objects.requireNonNull(item, "item"));
    return new LoadCase(name, more);
  }

  /**
   * This case under another name.
   *
   * @param other as reports print it
   * @return a new case
   */
  public LoadCase named(String other) {
    return new LoadCase(other, load);
  }

  /**
   * The name.
   *
   * @return as {@link #name()}
   */
  @Override
  public String toString() {
    return name;
  }
}
