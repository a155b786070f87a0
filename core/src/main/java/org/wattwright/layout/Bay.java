package org.wattwright.layout;

import java.io.Serializable;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import org.jspecify.annotations.Nullable;
import org.wattwright.battery.BatteryModule;
import org.wattwright.internal.Require;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;
import org.wattwright.units.Measure;
import org.wattwright.units.WorkshopUnits;
import org.wattwright.vehicle.MassItem;
import org.wattwright.vehicle.Position;

/**
 * A place in the vehicle for battery modules: how many of each type it takes, what it may carry,
 * what its enclosure weighs, and where the modules sit.
 *
 * <p>A bay fills along an axis: the first module sits at one position, the second at another, and
 * each next one as far on again. The enclosure counts only if the bay holds a module.
 *
 * <pre>{@code
 * Bay boot = Bay.at("boot", Position.behindFrontAxle(metres(2.45)).onCentreLine().aboveGround(metres(0.55)))
 *     .next(Position.behindFrontAxle(metres(2.65)).onCentreLine().aboveGround(metres(0.55)))
 *     .holds(module, 6)
 *     .massAtMost(kilograms(90))
 *     .enclosure(MassItem.of("boot box", kilograms(9.5), middleOfBoot))
 *     .linkedTo("under the bonnet", metres(2.6));
 * }</pre>
 *
 * <p>Immutable and thread-safe: every call returns a new bay.
 */
public final class Bay implements Serializable {
  private static final long serialVersionUID = 1L;

  /** More than fits into any road vehicle. */
  private static final int MOST = 10_000;

  private final String name;
  private final Position first;
  private final Parts parts;

  /** What may be stated beyond name and first position. */
  private record Parts(
      Position second,
      Map<BatteryModule, Integer> room,
      @Nullable Quantity<Mass> massLimit,
      @Nullable MassItem enclosure,
      Map<String, Quantity<Length>> links,
      boolean keptFree)
      implements Serializable {}

  private Bay(String name, Position first, Parts parts) {
    this.name = name;
    this.first = first;
    this.parts = parts;
  }

  /**
   * A bay without room yet; all its modules count at one place until {@link #next} is stated.
   *
   * @param name as reports print it
   * @param first centre of its first module
   * @return the bay
   * @throws InvalidInputException if the name is blank
   */
  public static Bay at(String name, Position first) {
    Objects.requireNonNull(first, "first");
    Parts none = new Parts(first, Map.of(), null, null, Map.of(), false);
    return new Bay(Require.text("Bay.name", name), first, none);
  }

  /**
   * This bay with the place of its second module; every next one is as far on again.
   *
   * @param second centre of the second module; sideways place and height known if they are of the
   *     first
   * @return a new bay
   * @throws InvalidInputException if one of the two positions lacks what the other states
   */
  public Bay next(Position second) {
    requireAlike("leftOfCentre", first.leftOfCentre(), second.leftOfCentre());
    requireAlike("aboveGround", first.aboveGround(), second.aboveGround());
    return with(
        new Parts(
            second, parts.room, parts.massLimit, parts.enclosure, parts.links, parts.keptFree));
  }

  private void requireAlike(String what, Optional<?> one, Optional<?> other) {
    if (one.isPresent() != other.isPresent()) {
      throw InvalidInputException.of(
          "Bay.next of " + name + ": " + what,
          one.isPresent() ? "given, as for the first module" : "left out, as for the first module",
          other.isPresent() ? "given" : "missing");
    }
  }

  /**
   * This bay with its room for a type of module if that has the bay to itself; for the same type it
   * replaces. Several types share the room as {@link #fits} says.
   *
   * @param module the type
   * @param count most modules of it, 1 to 10 000
   * @return a new bay
   * @throws InvalidInputException if the count is outside its range
   */
  public Bay holds(BatteryModule module, int count) {
    Objects.requireNonNull(module, "module");
    Require.count("Bay.room of " + name + " for " + module.name(), count, 1, MOST);
    Map<BatteryModule, Integer> room = new HashMap<>(parts.room);
    room.put(module, count);
    return with(
        new Parts(
            parts.second,
            Map.copyOf(room),
            parts.massLimit,
            parts.enclosure,
            parts.links,
            parts.keptFree));
  }

  /**
   * This bay with the most that it may carry, modules and enclosure together.
   *
   * @param mass &gt; 0 kg
   * @return a new bay
   * @throws InvalidInputException if not positive
   */
  public Bay massAtMost(Quantity<Mass> mass) {
    Require.quantity("Bay.massLimit of " + name, mass, WorkshopUnits.KILOGRAM).positive();
    Measure<Mass> ours = Measure.from(mass, Kind.MASS);
    return with(
        new Parts(parts.second, parts.room, ours, parts.enclosure, parts.links, parts.keptFree));
  }

  /**
   * This bay with its enclosure, added once if the bay holds a module.
   *
   * @param box its empty mass and where its centre is
   * @return a new bay
   */
  public Bay enclosure(MassItem box) {
    Objects.requireNonNull(box, "box");
    return with(
        new Parts(parts.second, parts.room, parts.massLimit, box, parts.links, parts.keptFree));
  }

  /**
   * This bay with the length of cable that links a string of modules on to another bay. The same
   * way back need not be stated; two different lengths for one pair are an error when used.
   *
   * @param otherBay name of the other bay
   * @param length ≥ 0 m
   * @return a new bay
   * @throws InvalidInputException if the length is negative, or the other bay is this one
   */
  public Bay linkedTo(String otherBay, Quantity<Length> length) {
    String other = Require.text("Bay.link of " + name, otherBay);
    if (other.equals(name)) {
      throw InvalidInputException.of("Bay.link of " + name, "to another bay", "to itself");
    }
    Require.quantity("Bay.link of " + name + " to " + other, length, WorkshopUnits.METRE)
        .nonNegative();
    Map<String, Quantity<Length>> links = new TreeMap<>(parts.links);
    links.put(other, Measure.from(length, Kind.LENGTH));
    return with(
        new Parts(
            parts.second,
            parts.room,
            parts.massLimit,
            parts.enclosure,
            Collections.unmodifiableMap(links),
            parts.keptFree));
  }

  /**
   * This bay left empty: it stays in the list, and takes nothing.
   *
   * @return a new bay
   */
  public Bay keptFree() {
    return with(
        new Parts(parts.second, parts.room, parts.massLimit, parts.enclosure, parts.links, true));
  }

  private Bay with(Parts changed) {
    return new Bay(name, first, changed);
  }

  /**
   * The name.
   *
   * @return as reports print it
   */
  public String name() {
    return name;
  }

  /**
   * Room for a type of module.
   *
   * @param module the type
   * @return most modules of it; 0 if the bay is kept free or takes none
   */
  public int roomFor(BatteryModule module) {
    return parts.keptFree ? 0 : parts.room.getOrDefault(module, 0);
  }

  /**
   * Whether modules of several types fit together: the share of its room that each type takes, Σ
   * count/room, is at most 1. Modules that have places of their own belong into a bay of their own.
   *
   * @param counts modules of each type, ≥ 0; at most four types
   * @return true if so
   * @throws InvalidInputException if there are more than four types
   */
  public boolean fits(Map<BatteryModule, Integer> counts) {
    Require.count("Bay.fits types", counts.size(), 0, RoomShare.MOST_TYPES);
    List<BatteryModule> types = List.copyOf(counts.keySet());
    int[] rooms = types.stream().mapToInt(this::roomFor).toArray();
    return new RoomShare(rooms).fits(types.stream().mapToInt(counts::get).toArray());
  }

  /**
   * Whether the bay is left empty.
   *
   * @return true if so
   */
  public boolean isKeptFree() {
    return parts.keptFree;
  }

  /**
   * The most that it may carry.
   *
   * @return empty if not limited
   */
  public Optional<Quantity<Mass>> massLimit() {
    return Optional.ofNullable(parts.massLimit);
  }

  /**
   * The enclosure.
   *
   * @return empty if there is none
   */
  public Optional<MassItem> enclosure() {
    return Optional.ofNullable(parts.enclosure);
  }

  /**
   * Lengths of link cable to other bays.
   *
   * @return by name of the other bay, as stated here
   */
  public Map<String, Quantity<Length>> links() {
    return parts.links;
  }

  /**
   * Middle of the modules when the first so many are in.
   *
   * @param count modules in the bay, ≥ 1
   * @return first + (count − 1)/2 · (second − first)
   * @throws InvalidInputException if the count is less than 1
   */
  public Position middleOf(int count) {
    double steps = (Require.positiveCount("count", count) - 1) / 2.0;
    return BayAxis.between(first, parts.second, steps);
  }

  /** Middle of so many modules behind others; both counted along the axis. */
  Position middleOf(int before, int count) {
    return BayAxis.between(first, parts.second, before + (count - 1) / 2.0);
  }

  Position first() {
    return first;
  }

  Position second() {
    return parts.second;
  }

  boolean hasRoom() {
    return parts.keptFree || !parts.room.isEmpty();
  }

  private List<Object> fields() {
    return List.of(name, first, parts);
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return this == other || (other instanceof Bay that && fields().equals(that.fields()));
  }

  @Override
  public int hashCode() {
    return fields().hashCode();
  }

  /**
   * Name, place and room.
   *
   * @return for example {@code boot at 2.45 m behind front axle: room for 6 × flat}
   */
  @Override
  public String toString() {
    Map<String, Integer> sorted = new TreeMap<>();
    parts.room.forEach((module, count) -> sorted.put(module.name(), count));
    StringBuilder room = new StringBuilder();
    sorted.forEach(
        (module, count) ->
            room.append(room.isEmpty() ? ": room for " : ", ")
                .append(count)
                .append(" × ")
                .append(module));
    return name + " at " + first + (parts.keptFree ? ": kept free" : room);
  }
}
