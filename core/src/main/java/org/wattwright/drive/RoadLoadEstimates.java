package org.wattwright.drive;

import static org.wattwright.units.WorkshopUnits.KILOGRAM;
import static org.wattwright.units.WorkshopUnits.METRE;
import static org.wattwright.units.WorkshopUnits.SQUARE_METRE;

import javax.measure.Quantity;
import javax.measure.quantity.Area;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import org.wattwright.check.Basis;
import org.wattwright.check.Estimate;
import org.wattwright.check.Source;
import org.wattwright.internal.Require;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;

/**
 * Sourced estimates of frontal area, drag area and rolling resistance for a vehicle that was never
 * coasted down; each is asked for by name and marked.
 *
 * <p>Bands are wide: a coast-down test on a calm day is better than all of them.
 */
public final class RoadLoadEstimates {
  private static final Source BOSCH =
      Source.literature("Bosch Automotive Handbook", "driving resistance").fromMemory();

  private static final Source WONG =
      Source.literature("J. Y. Wong, Theory of Ground Vehicles", "chapter 3, Wiley").fromMemory();

  private static final Source TABLES =
      Source.literature("engineering tables; Bosch Automotive Handbook", "rolling resistance")
          .fromMemory();

  /** Band of an estimated frontal area: a tenth each way, common practice. */
  private static final Estimate.Band AREA_BAND = new Estimate.Band(0.9, 1.1);

  private RoadLoadEstimates() {}

  /**
   * Frontal area from mass: A = 1.6 + 0.00056·(m − 765), m in kg, A in m².
   *
   * <p>Source: J. Y. Wong, Theory of Ground Vehicles (Wiley), chapter 3, from memory. Band: a tenth
   * each way, common practice.
   *
   * @param mass of a passenger car, 800 kg to 2000 kg
   * @return the estimate with its band
   * @throws InvalidInputException if the mass is outside the range of the rule
   */
  public static Estimate<Area> frontalArea(Quantity<Mass> mass) {
    double massKg = Require.quantity("RoadLoadEstimates.mass", mass, KILOGRAM).positive();
    if (!(massKg >= 800 && massKg <= 2000)) {
      throw InvalidInputException.of(
          "RoadLoadEstimates.mass", "800 kg to 2000 kg", mass.toString());
    }
    return area("frontal area", 1.6 + 0.00056 * (massKg - 765), AREA_BAND, WONG);
  }

  /**
   * Frontal area from track and height: A = 0.9·track·height.
   *
   * <p>Source: Bosch Automotive Handbook, from memory. Band: a tenth each way, common practice.
   *
   * @param track &gt; 0 m
   * @param height of the vehicle, &gt; 0 m
   * @return the estimate with its band
   * @throws InvalidInputException if a length is not positive
   */
  public static Estimate<Area> frontalArea(Quantity<Length> track, Quantity<Length> height) {
    double trackM = Require.quantity("RoadLoadEstimates.track", track, METRE).positive();
    double heightM = Require.quantity("RoadLoadEstimates.height", height, METRE).positive();
    return area("frontal area", 0.9 * trackM * heightM, AREA_BAND, BOSCH);
  }

  /**
   * Drag area c_d·A by the shape of the body: the middle of the published range of c_d, with its
   * ends as the band.
   *
   * <p>c_d: open convertible 0.5 … 0.7, two boxes 0.5 … 0.6, three boxes 0.4 … 0.55, wedge 0.3 …
   * 0.4. Source: Bosch Automotive Handbook, driving resistance, from memory.
   *
   * @param shape of the body
   * @param frontalArea &gt; 0 m²
   * @return the estimate with its band
   * @throws InvalidInputException if the area is not positive
   */
  public static Estimate<Area> dragArea(BodyShape shape, Quantity<Area> frontalArea) {
    double areaM2 =
        Require.quantity("RoadLoadEstimates.frontalArea", frontalArea, SQUARE_METRE).positive();
    double middle = (shape.low() + shape.high()) / 2;
    Estimate.Band band = new Estimate.Band(shape.low() / middle, shape.high() / middle);
    return area("drag area, " + shape, middle * areaM2, band, BOSCH);
  }

  private static Estimate<Area> area(
      String name, double areaM2, Estimate.Band band, Source source) {
    return Estimate.of(name, Kind.AREA.ofSi(areaM2), Kind.AREA, band, source);
  }

  /**
   * Rolling resistance of car tyres by surface: asphalt 0.012, rolled gravel 0.020, unpaved 0.050.
   *
   * <p>Source: engineering tables and Bosch Automotive Handbook, from memory.
   *
   * @param surface under the tyres
   * @return typical coefficient, marked as estimated
   */
  public static RollingResistance rollingResistance(RoadSurface surface) {
    return rolling(surface.typical());
  }

  /**
   * Low end of the rolling resistance: asphalt 0.010, rolled gravel 0.018, unpaved 0.045.
   *
   * @param surface under the tyres
   * @return low coefficient, marked as estimated
   */
  public static RollingResistance lowRollingResistance(RoadSurface surface) {
    return rolling(surface.low());
  }

  /**
   * High end of the rolling resistance: asphalt 0.015, rolled gravel 0.022, unpaved 0.055.
   *
   * @param surface under the tyres
   * @return high coefficient, marked as estimated
   */
  public static RollingResistance highRollingResistance(RoadSurface surface) {
    return rolling(surface.high());
  }

  private static RollingResistance rolling(double coefficient) {
    return RollingResistance.of(coefficient, Basis.ESTIMATED, TABLES);
  }
}
