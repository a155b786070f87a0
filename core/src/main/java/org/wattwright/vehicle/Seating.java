package org.wattwright.vehicle;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.wattwright.internal.Require;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;

/**
 * Where people and their luggage sit: the driver, the passengers row by row, the luggage space.
 *
 * <pre>{@code
 * Seating seats = Seating.driverAt(behindFrontAxle(metres(1.15)).leftOfCentre(metres(0.33)))
 *     .row("front passenger", 1, behindFrontAxle(metres(1.15)).rightOfCentre(metres(0.33)))
 *     .row("rear bench", 2, behindFrontAxle(metres(1.95)).onCentreLine());
 * }</pre>
 *
 * <p>Places are the seating reference points. Occupants weigh 75 kg unless told. Immutable and
 * thread-safe.
 */
public final class Seating implements Serializable {
  private static final long serialVersionUID = 1L;

  /** One row of passenger seats, or a part of it. */
  private record Row(String name, int passengers, Position position) implements Serializable {}

  private final Position driver;
  private final List<Row> rows;
  private final @Nullable Position luggage;
  private final OccupantMass occupant;

  private Seating(
      Position driver, List<Row> rows, @Nullable Position luggage, OccupantMass occupant) {
    this.driver = driver;
    this.rows = rows;
    this.luggage = luggage;
    this.occupant = occupant;
  }

  /**
   * A vehicle with a driver only.
   *
   * @param position seating reference point of the driver
   * @return the seating
   */
  public static Seating driverAt(Position position) {
    Objects.requireNonNull(position, "position");
    return new Seating(position, List.of(), null, OccupantMass.SEATED_75_KG);
  }

  /**
   * The same with passengers.
   *
   * @param name as reports print it, such as {@code rear bench}
   * @param passengers how many, ≥ 1
   * @param position their common reference point
   * @return a new seating
   * @throws InvalidInputException if the name is blank or nobody sits there
   */
  public Seating row(String name, int passengers, Position position) {
    List<Row> more = new ArrayList<>(rows);
    more.add(
        new Row(
            Require.text("Seating.row", name),
            Require.positiveCount("Seating.row " + name + ".passengers", passengers),
            Objects.requireNonNull(position, "position")));
    return new Seating(driver, List.copyOf(more), luggage, occupant);
  }

  /**
   * The same with a luggage space.
   *
   * @param position middle of the luggage
   * @return a new seating
   */
  public Seating luggageAt(Position position) {
    return new Seating(driver, rows, Objects.requireNonNull(position, "position"), occupant);
  }

  /**
   * The same with another conventional mass.
   *
   * @param mass of each occupant, the driver included
   * @return a new seating
   */
  public Seating occupantsOf(OccupantMass mass) {
    return new Seating(driver, rows, luggage, Objects.requireNonNull(mass, "mass"));
  }

  /**
   * Number of people when every seat is taken.
   *
   * @return driver and passengers
   */
  public int occupants() {
    return 1 + rows.stream().mapToInt(Row::passengers).sum();
  }

  /**
   * The conventional mass of one occupant.
   *
   * @return the rule in use
   */
  public OccupantMass occupant() {
    return occupant;
  }

  /**
   * Middle of the luggage space.
   *
   * @return empty if not given
   */
  public Optional<Position> luggagePlace() {
    return Optional.ofNullable(luggage);
  }

  /** The driver, with his luggage where the rule says so. */
  List<MassItem> driverItems() {
    List<MassItem> items = new ArrayList<>();
    items.add(MassItem.of("driver", occupant.body(), driver));
    addLuggage(items, 1);
    return items;
  }

  /** Driver and all passengers, with their luggage. */
  List<MassItem> allItems() {
    List<MassItem> items = new ArrayList<>();
    items.add(MassItem.of("driver", occupant.body(), driver));
    double bodyKg = Kind.MASS.siValueOf(occupant.body());
    for (Row row : rows) {
      items.add(MassItem.of(row.name(), Si.mass(row.passengers() * bodyKg), row.position()));
    }
    addLuggage(items, occupants());
    return items;
  }

  private void addLuggage(List<MassItem> items, int people) {
    double luggageKg = people * Kind.MASS.siValueOf(occupant.luggage());
    if (!(luggageKg > 0)) {
      return;
    }
    if (luggage == null) {
      throw InvalidInputException.of(
          "Seating.luggageAt",
          "given, since each occupant has " + occupant.luggage() + " of luggage",
          "missing");
    }
    items.add(MassItem.of("luggage", Si.mass(luggageKg), luggage));
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return this == other
        || (other instanceof Seating that
            && driver.equals(that.driver)
            && rows.equals(that.rows)
            && Objects.equals(luggage, that.luggage)
            && occupant.equals(that.occupant));
  }

  @Override
  public int hashCode() {
    return Objects.hash(driver, rows, luggage, occupant);
  }

  /**
   * People and their mass.
   *
   * @return for example {@code 4 occupants of 75 kg}
   */
  @Override
  public String toString() {
    return occupants() + (rows.isEmpty() ? " occupant of " : " occupants of ") + occupant.body();
  }
}
