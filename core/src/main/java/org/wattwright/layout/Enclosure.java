package org.wattwright.layout;

import java.io.Serializable;
import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Mass;
import org.jspecify.annotations.Nullable;
import org.wattwright.internal.Require;
import org.wattwright.units.Kind;
import org.wattwright.units.Measure;
import org.wattwright.units.Measures;
import org.wattwright.units.Price;
import org.wattwright.units.WorkshopUnits;

/**
 * A battery box: how many modules it holds, what it weighs empty, and what it costs.
 *
 * <pre>{@code
 * Enclosure box = Enclosure.of("steel box", 6, kilograms(9.5)).withPrice(Price.of("180", "EUR"));
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 */
public final class Enclosure implements Serializable {
  private static final long serialVersionUID = 1L;

  private final String name;
  private final int modules;
  private final Quantity<Mass> tareMass;
  private final @Nullable Price price;

  private Enclosure(String name, int modules, Quantity<Mass> tareMass, @Nullable Price price) {
    this.name = name;
    this.modules = modules;
    this.tareMass = tareMass;
    this.price = price;
  }

  /**
   * An enclosure.
   *
   * @param name as reports print it
   * @param modules most modules that one holds, ≥ 1
   * @param tareMass mass of one, empty, ≥ 0 kg
   * @return the enclosure, without a price
   * @throws org.wattwright.units.InvalidInputException if the name is blank or a value is outside
   *     its range
   */
  public static Enclosure of(String name, int modules, Quantity<Mass> tareMass) {
    Require.quantity("Enclosure.tareMass", tareMass, WorkshopUnits.KILOGRAM).nonNegative();
    return new Enclosure(
        Require.text("Enclosure.name", name),
        Require.positiveCount("Enclosure.modules", modules),
        Measure.from(tareMass, Kind.MASS),
        null);
  }

  /**
   * This enclosure with its price.
   *
   * @param value price of one
   * @return a new enclosure
   */
  public Enclosure withPrice(Price value) {
    return new Enclosure(name, modules, tareMass, Objects.requireNonNull(value, "price"));
  }

  /**
   * Name as reports print it.
   *
   * @return the name
   */
  public String name() {
    return name;
  }

  /**
   * Most modules that one holds.
   *
   * @return ≥ 1
   */
  public int modules() {
    return modules;
  }

  /**
   * Mass of one, empty.
   *
   * @return in the unit as given
   */
  public Quantity<Mass> tareMass() {
    return tareMass;
  }

  /**
   * Price of one.
   *
   * @return empty if not known
   */
  public Optional<Price> price() {
    return Optional.ofNullable(price);
  }

  /** How many are needed. */
  int countFor(int moduleCount) {
    return (moduleCount + modules - 1) / modules;
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Enclosure that
        && name.equals(that.name)
        && modules == that.modules
        && tareMass.equals(that.tareMass)
        && Objects.equals(price, that.price);
  }

  @Override
  public int hashCode() {
    return Objects.hash(name, modules, tareMass, price);
  }

  /**
   * Name, room and mass.
   *
   * @return for example {@code steel box (6 modules, 9.5 kg)}
   */
  @Override
  public String toString() {
    String room = modules == 1 ? "1 module" : modules + " modules";
    return name + " (" + room + ", " + Measures.format(tareMass, Kind.MASS) + ")";
  }
}
