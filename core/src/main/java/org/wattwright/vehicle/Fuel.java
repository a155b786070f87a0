package org.wattwright.vehicle;

import static org.wattwright.units.WorkshopUnits.CUBIC_METRE;
import static org.wattwright.units.WorkshopUnits.KILOGRAM;

import java.util.Locale;
import javax.measure.Quantity;
import javax.measure.quantity.Volume;
import org.wattwright.check.Source;
import org.wattwright.internal.Require;
import org.wattwright.units.Density;
import org.wattwright.units.Kind;
import org.wattwright.units.Measure;

/**
 * Fuel that is in the tank when the vehicle is weighed and leaves with it: litres into mass.
 *
 * <p>The standard of a fuel leaves a band of densities; the mass is that of its middle, m =
 * V·(ρ_min + ρ_max)/2, and half of the band is the tolerance.
 */
public enum Fuel {
  /** Petrol, 720 kg/m³ to 775 kg/m³ at 15 °C. Source: EN 228, from memory. */
  PETROL(720, 775, "EN 228"),
  /** Diesel fuel, 820 kg/m³ to 845 kg/m³ at 15 °C. Source: EN 590, from memory. */
  DIESEL(820, 845, "EN 590");

  /** Share of the capacity; Regulation (EU) No 1230/2012, Article 2(4)(a). */
  private static final double LEAST_FILLING_IN_RUNNING_ORDER = 0.9;

  private final double lowestKgPerM3;
  private final double highestKgPerM3;
  private final String standard;

  Fuel(double lowestKgPerM3, double highestKgPerM3, String standard) {
    this.lowestKgPerM3 = lowestKgPerM3;
    this.highestKgPerM3 = highestKgPerM3;
    this.standard = standard;
  }

  /**
   * Lowest density that the standard allows, at 15 °C.
   *
   * @return in kg/m³
   */
  public Quantity<Density> lowestDensity() {
    return Kind.DENSITY.ofSi(lowestKgPerM3);
  }

  /**
   * Highest density that the standard allows, at 15 °C.
   *
   * @return in kg/m³
   */
  public Quantity<Density> highestDensity() {
    return Kind.DENSITY.ofSi(highestKgPerM3);
  }

  /**
   * Where the densities come from.
   *
   * @return the standard
   */
  public Source source() {
    return Source.standard(standard, "density at 15 °C, from memory");
  }

  /**
   * Fuel in a tank, for the list of what leaves.
   *
   * @param volume what is in the tank, ≥ 0 L
   * @param tank middle of the fuel
   * @return a mass item with half the band of densities as its tolerance
   * @throws org.wattwright.units.InvalidInputException if the volume is negative
   */
  public MassItem inTank(Quantity<Volume> volume, Position tank) {
    double volumeM3 = Require.quantity("Fuel.volume", volume, CUBIC_METRE).nonNegative();
    double massKg = volumeM3 * (lowestKgPerM3 + highestKgPerM3) / 2;
    double toleranceKg = volumeM3 * (highestKgPerM3 - lowestKgPerM3) / 2;
    return MassItem.of(Measure.from(volume, Kind.VOLUME) + " of " + this, KILOGRAM.of(massKg), tank)
        .withMassTolerance(KILOGRAM.of(toleranceKg));
  }

  /**
   * The least fuel that counts in the mass in running order: 90 % of what the tank holds.
   *
   * <p>Source: Regulation (EU) No 1230/2012, Article 2(4)(a).
   *
   * @param capacity of the tank, ≥ 0 L
   * @param tank middle of the fuel
   * @return a mass item with half the band of densities as its tolerance
   * @throws org.wattwright.units.InvalidInputException if the capacity is negative
   */
  public MassItem inRunningOrder(Quantity<Volume> capacity, Position tank) {
    double capacityM3 = Require.quantity("Fuel.capacity", capacity, CUBIC_METRE).nonNegative();
    return inTank(Kind.VOLUME.ofSi(capacityM3 * LEAST_FILLING_IN_RUNNING_ORDER), tank);
  }

  /**
   * The name in lower case.
   *
   * @return for example {@code petrol}
   */
  @Override
  public String toString() {
    return name().toLowerCase(Locale.ROOT);
  }
}
