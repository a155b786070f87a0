package org.wattwright.vehicle;

import static org.wattwright.units.WorkshopUnits.KILOGRAM;

import java.io.Serializable;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Mass;
import org.jspecify.annotations.Nullable;
import org.wattwright.internal.Require;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;
import org.wattwright.units.Measure;

/** Collects the limits of a vehicle; none is required. */
public final class AxleLimitsBuilder {
  private @Nullable Quantity<Mass> frontAxle;
  private @Nullable Quantity<Mass> rearAxle;
  private @Nullable Quantity<Mass> grossMass;
  private @Nullable Quantity<Mass> grossCombination;
  private @Nullable Tyre frontTyre;
  private @Nullable Tyre rearTyre;
  private AxleWheels rearWheels = AxleWheels.SINGLE;

  AxleLimitsBuilder() {}

  /** What has been collected, in one piece. */
  record Fields(
      @Nullable Quantity<Mass> frontAxle,
      @Nullable Quantity<Mass> rearAxle,
      @Nullable Quantity<Mass> grossMass,
      @Nullable Quantity<Mass> grossCombination,
      @Nullable Tyre frontTyre,
      @Nullable Tyre rearTyre,
      AxleWheels rearWheels)
      implements Serializable {}

  /**
   * Permitted load of the front axle.
   *
   * @param mass &gt; 0 kg
   * @return this builder
   */
  public AxleLimitsBuilder frontAxle(Quantity<Mass> mass) {
    frontAxle = limit("frontAxle", mass);
    return this;
  }

  /**
   * Permitted load of the rear axle.
   *
   * @param mass &gt; 0 kg
   * @return this builder
   */
  public AxleLimitsBuilder rearAxle(Quantity<Mass> mass) {
    rearAxle = limit("rearAxle", mass);
    return this;
  }

  /**
   * Permitted mass of the laden vehicle.
   *
   * @param mass &gt; 0 kg
   * @return this builder
   */
  public AxleLimitsBuilder grossMass(Quantity<Mass> mass) {
    grossMass = limit("grossMass", mass);
    return this;
  }

  /**
   * Permitted mass of vehicle and trailer together.
   *
   * @param mass &gt; 0 kg, not below the gross mass
   * @return this builder
   */
  public AxleLimitsBuilder grossCombination(Quantity<Mass> mass) {
    grossCombination = limit("grossCombination", mass);
    return this;
  }

  /**
   * Tyre of the front wheels.
   *
   * @param tyre with its load index, or without
   * @return this builder
   */
  public AxleLimitsBuilder frontTyre(Tyre tyre) {
    frontTyre = Objects.requireNonNull(tyre, "tyre");
    return this;
  }

  /**
   * Tyre of the rear wheels.
   *
   * @param tyre with its load index, or without
   * @return this builder
   */
  public AxleLimitsBuilder rearTyre(Tyre tyre) {
    rearTyre = Objects.requireNonNull(tyre, "tyre");
    return this;
  }

  /**
   * How the rear tyres are arranged; single unless told.
   *
   * @param wheels single, or in pairs
   * @return this builder
   */
  public AxleLimitsBuilder rearWheels(AxleWheels wheels) {
    rearWheels = Objects.requireNonNull(wheels, "wheels");
    return this;
  }

  private static Quantity<Mass> limit(String field, Quantity<Mass> mass) {
    Require.quantity("AxleLimits." + field, mass, KILOGRAM).positive();
    return Measure.from(mass, Kind.MASS);
  }

  /**
   * Makes the limits.
   *
   * @return the limits
   * @throws InvalidInputException if the gross combination is below the gross mass
   */
  public AxleLimits build() {
    if (grossMass != null
        && grossCombination != null
        && Kind.MASS.compare(grossCombination, grossMass) < 0) {
      throw InvalidInputException.of(
          "AxleLimits.grossCombination", "≥ gross mass, " + grossMass, grossCombination.toString());
    }
    return new AxleLimits(
        new Fields(
            frontAxle, rearAxle, grossMass, grossCombination, frontTyre, rearTyre, rearWheels));
  }
}
