package org.wattwright.protection;

import java.io.Serializable;
import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Mass;
import org.jspecify.annotations.Nullable;
import org.wattwright.units.Kind;
import org.wattwright.units.Price;

/** A part chosen for a circuit, as the list of parts has it. Immutable and thread-safe. */
public final class CircuitPart implements Serializable {
  private static final long serialVersionUID = 1L;

  /** What kind of part. */
  public enum Type {
    /** Cable of one circuit, cut to length. */
    CABLE("cables"),
    /** Fuse link. */
    FUSE("fuses"),
    /** Contactor. */
    CONTACTOR("contactors"),
    /** Pre-charge resistor. */
    PRECHARGE_RESISTOR("pre-charge resistors");

    private final String plural;

    Type(String plural) {
      this.plural = plural;
    }

    String plural() {
      return plural;
    }
  }

  private final Type type;
  private final String name;
  private final @Nullable Double massKg;
  private final @Nullable Price price;

  CircuitPart(Type type, String name, @Nullable Double massKg, @Nullable Price price) {
    this.type = type;
    this.name = name;
    this.massKg = massKg;
    this.price = price;
  }

  /**
   * What kind of part.
   *
   * @return the type
   */
  public Type type() {
    return type;
  }

  /**
   * As the catalogue names it; a cable with its length.
   *
   * @return the name
   */
  public String name() {
    return name;
  }

  /**
   * Mass of the whole part.
   *
   * @return empty if the catalogue does not say
   */
  public Optional<Quantity<Mass>> mass() {
    return Optional.ofNullable(massKg).map(Kind.MASS::ofSi);
  }

  /**
   * Price of the whole part.
   *
   * @return empty if the catalogue does not say
   */
  public Optional<Price> price() {
    return Optional.ofNullable(price);
  }

  @Nullable Double massKg() {
    return massKg;
  }

  @Nullable Price priceOrNull() {
    return price;
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof CircuitPart that
        && type == that.type
        && name.equals(that.name)
        && Objects.equals(massKg, that.massKg)
        && Objects.equals(price, that.price);
  }

  @Override
  public int hashCode() {
    return Objects.hash(type, name, massKg, price);
  }

  /**
   * The name.
   *
   * @return for example {@code 6.4 m of 35 mm² T}
   */
  @Override
  public String toString() {
    return name;
  }
}
