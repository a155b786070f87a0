package org.wattwright.vehicle;

import static org.wattwright.units.WorkshopUnits.KILOGRAM;
import static org.wattwright.units.WorkshopUnits.METRE;

import java.io.Serializable;
import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import org.jspecify.annotations.Nullable;
import org.wattwright.check.Basis;
import org.wattwright.internal.Require;
import org.wattwright.units.Kind;
import org.wattwright.units.Measure;

/**
 * A mass with the place of its centre: an engine taken out, a battery box put in, a passenger.
 *
 * <p>Whether it is removed or added is said where it is used; the mass itself is never negative.
 * Tolerances are half-widths (±) and zero unless stated.
 *
 * <pre>{@code
 * MassItem.of("rear battery box", kilograms(126), Position.behindFrontAxle(metres(2.62)))
 *     .withMassTolerance(kilograms(2))
 *     .withPositionTolerance(millimetres(20));
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 */
public final class MassItem implements Serializable {
  private static final long serialVersionUID = 1L;

  private final String name;
  private final Quantity<Mass> mass;
  private final Position position;
  private final Quantity<Mass> massTolerance;
  private final Quantity<Length> positionTolerance;
  private final Basis basis;
  private final boolean unsprung;

  /** What may be stated beyond name, mass and position. */
  private record Extras(
      Quantity<Mass> massTolerance,
      Quantity<Length> positionTolerance,
      Basis basis,
      boolean unsprung) {
    static final Extras NONE = new Extras(KILOGRAM.of(0), METRE.of(0), Basis.DATA_SHEET, false);
  }

  private MassItem(String name, Quantity<Mass> mass, Position position, Extras extras) {
    this.name = name;
    this.mass = mass;
    this.position = position;
    this.massTolerance = extras.massTolerance();
    this.positionTolerance = extras.positionTolerance();
    this.basis = extras.basis();
    this.unsprung = extras.unsprung();
  }

  /**
   * A mass from a data sheet, without tolerances, carried by the springs.
   *
   * @param name as reports print it
   * @param mass ≥ 0 kg
   * @param position of its centre of gravity
   * @return the item
   * @throws org.wattwright.units.InvalidInputException if the name is blank or the mass negative
   */
  public static MassItem of(String name, Quantity<Mass> mass, Position position) {
    String text = Require.text("MassItem.name", name);
    Require.quantity("MassItem.mass of " + text, mass, KILOGRAM).nonNegative();
    Measure<Mass> ours = Measure.from(mass, Kind.MASS);
    return new MassItem(text, ours, Objects.requireNonNull(position, "position"), Extras.NONE);
  }

  /**
   * The same item with a tolerance of its mass.
   *
   * @param tolerance half-width, ≥ 0 kg
   * @return a new item
   * @throws org.wattwright.units.InvalidInputException if the tolerance is negative
   */
  public MassItem withMassTolerance(Quantity<Mass> tolerance) {
    Require.quantity("MassItem.massTolerance of " + name, tolerance, KILOGRAM).nonNegative();
    Measure<Mass> ours = Measure.from(tolerance, Kind.MASS);
    return with(new Extras(ours, positionTolerance, basis, unsprung));
  }

  /**
   * The same item with a tolerance of its place, along and across the vehicle and in height alike.
   *
   * @param tolerance half-width, ≥ 0 m
   * @return a new item
   * @throws org.wattwright.units.InvalidInputException if the tolerance is negative
   */
  public MassItem withPositionTolerance(Quantity<Length> tolerance) {
    Require.quantity("MassItem.positionTolerance of " + name, tolerance, METRE).nonNegative();
    Measure<Length> ours = Measure.from(tolerance, Kind.LENGTH);
    return with(new Extras(massTolerance, ours, basis, unsprung));
  }

  /**
   * The same item with another basis.
   *
   * @param value what mass and place rest on; data sheet unless told
   * @return a new item
   */
  public MassItem withBasis(Basis value) {
    Objects.requireNonNull(value, "basis");
    return with(new Extras(massTolerance, positionTolerance, value, unsprung));
  }

  /**
   * The same item carried by an axle itself and not by its springs, such as a drive unit bolted to
   * a beam axle.
   *
   * @return a new item
   */
  public MassItem onAxle() {
    return with(new Extras(massTolerance, positionTolerance, basis, true));
  }

  private MassItem with(Extras extras) {
    return new MassItem(name, mass, position, extras);
  }

  /**
   * What it is.
   *
   * @return the name as reports print it
   */
  public String name() {
    return name;
  }

  /**
   * Its mass.
   *
   * @return as given, ≥ 0 kg
   */
  public Quantity<Mass> mass() {
    return mass;
  }

  /**
   * Where its centre is.
   *
   * @return the position
   */
  public Position position() {
    return position;
  }

  /**
   * Tolerance of its mass.
   *
   * @return half-width, ≥ 0 kg
   */
  public Quantity<Mass> massTolerance() {
    return massTolerance;
  }

  /**
   * Tolerance of its place, each direction.
   *
   * @return half-width, ≥ 0 m
   */
  public Quantity<Length> positionTolerance() {
    return positionTolerance;
  }

  /**
   * What mass and place rest on.
   *
   * @return the basis
   */
  public Basis basis() {
    return basis;
  }

  /**
   * Whether an axle carries it directly.
   *
   * @return false if the springs carry it
   */
  public boolean isUnsprung() {
    return unsprung;
  }

  double massKg() {
    return Kind.MASS.siValueOf(mass);
  }

  double massToleranceKg() {
    return Kind.MASS.siValueOf(massTolerance);
  }

  double positionToleranceM() {
    return Kind.LENGTH.siValueOf(positionTolerance);
  }

  private List<Object> fields() {
    return List.of(name, mass, position, massTolerance, positionTolerance, basis, unsprung);
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return this == other || (other instanceof MassItem that && fields().equals(that.fields()));
  }

  @Override
  public int hashCode() {
    return fields().hashCode();
  }

  /**
   * Name, mass and place.
   *
   * @return for example {@code charger: 11 kg at 0.1 m behind front axle}
   */
  @Override
  public String toString() {
    return name + ": " + mass + " at " + position;
  }
}
