package org.wattwright.vehicle;

import static org.wattwright.units.WorkshopUnits.CELSIUS;
import static org.wattwright.units.WorkshopUnits.KILOGRAM;
import static org.wattwright.units.WorkshopUnits.KILOMETRE_PER_HOUR;
import static org.wattwright.units.WorkshopUnits.KILOWATT;
import static org.wattwright.units.WorkshopUnits.METRE;
import static org.wattwright.units.WorkshopUnits.NEWTON;

import java.io.Serializable;
import javax.measure.Quantity;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Power;
import javax.measure.quantity.Speed;
import javax.measure.quantity.Temperature;
import org.jspecify.annotations.Nullable;
import org.wattwright.internal.MissingFields;
import org.wattwright.internal.Require;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;

/** Describes a {@link Descent}; mass, drop, distance and speed are required. */
public final class DescentBuilder {
  private @Nullable Double massKg;
  private @Nullable Double dropM;
  private @Nullable Double distanceM;
  private @Nullable Double speedMs;
  private double resistanceN;
  private double regenerationW;
  private double airK = Kind.TEMPERATURE.siValueOf(CELSIUS.of(20));

  DescentBuilder() {}

  /** What has been described, in SI. */
  record Fields(
      double massKg,
      double dropM,
      double distanceM,
      double speedMs,
      double resistanceN,
      double regenerationW,
      double airK)
      implements Serializable {
    Fields withMassKg(double otherKg) {
      return new Fields(otherKg, dropM, distanceM, speedMs, resistanceN, regenerationW, airK);
    }

    Fields withRegenerationW(double powerW) {
      return new Fields(massKg, dropM, distanceM, speedMs, resistanceN, powerW, airK);
    }
  }

  /**
   * Mass of the laden vehicle.
   *
   * @param mass &gt; 0 kg
   * @return this builder
   */
  public DescentBuilder mass(Quantity<Mass> mass) {
    massKg = Require.quantity("Descent.mass", mass, KILOGRAM).positive();
    return this;
  }

  /**
   * Height that is lost.
   *
   * @param height &gt; 0 m, less than the distance
   * @return this builder
   */
  public DescentBuilder drop(Quantity<Length> height) {
    dropM = Require.quantity("Descent.drop", height, METRE).positive();
    return this;
  }

  /**
   * Length of the road.
   *
   * @param length &gt; 0 m
   * @return this builder
   */
  public DescentBuilder distance(Quantity<Length> length) {
    distanceM = Require.quantity("Descent.distance", length, METRE).positive();
    return this;
  }

  /**
   * Steady speed.
   *
   * @param speed &gt; 0 km/h
   * @return this builder
   */
  public DescentBuilder speed(Quantity<Speed> speed) {
    speedMs = Require.quantity("Descent.speed", speed, KILOMETRE_PER_HOUR).positive();
    return this;
  }

  /**
   * Mean resistance of rolling and air; none unless told, which is the safe side.
   *
   * @param force ≥ 0 N
   * @return this builder
   */
  public DescentBuilder resistance(Quantity<Force> force) {
    resistanceN = Require.quantity("Descent.resistance", force, NEWTON).nonNegative();
    return this;
  }

  /**
   * Power that the drive takes back, measured at the road; none unless told, as with a full or cold
   * pack.
   *
   * @param power ≥ 0 kW
   * @return this builder
   */
  public DescentBuilder regeneration(Quantity<Power> power) {
    regenerationW = Require.quantity("Descent.regeneration", power, KILOWATT).nonNegative();
    return this;
  }

  /**
   * Temperature of air and brakes at the top; 20 °C unless told.
   *
   * @param temperature absolute
   * @return this builder
   */
  public DescentBuilder air(Quantity<Temperature> temperature) {
    airK = Kind.TEMPERATURE.siValueOf(temperature);
    return this;
  }

  /**
   * Makes the descent.
   *
   * @return the descent
   * @throws InvalidInputException if fields are missing or the drop is not less than the distance
   */
  public Descent build() {
    new MissingFields("Descent")
        .field("mass", massKg)
        .field("drop", dropM)
        .field("distance", distanceM)
        .field("speed", speedMs)
        .rejectIfAny();
    double drop = MissingFields.present(dropM);
    double distance = MissingFields.present(distanceM);
    if (!(drop < distance)) {
      throw InvalidInputException.of(
          "Descent.drop", "< distance, " + Si.length(distance), Si.length(drop).toString());
    }
    return new Descent(
        new Fields(
            MissingFields.present(massKg),
            drop,
            distance,
            MissingFields.present(speedMs),
            resistanceN,
            regenerationW,
            airK));
  }
}
