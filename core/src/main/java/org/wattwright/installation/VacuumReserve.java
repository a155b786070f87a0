package org.wattwright.installation;

import static org.wattwright.units.WorkshopUnits.KILOPASCAL;

import java.io.Serializable;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Pressure;
import org.wattwright.check.Source;
import org.wattwright.internal.Require;
import org.wattwright.units.Kind;
import org.wattwright.units.Measure;

/**
 * What must be left without the pump: a number of full applications, after which the servo still
 * has a stated difference of pressure. Immutable and thread-safe.
 *
 * @param stops full applications with the pump dead, 1 to 1000
 * @param leastDifference between air and vacuum after the last of them, &gt; 0 kPa
 * @param source who asks for it
 */
public record VacuumReserve(int stops, Quantity<Pressure> leastDifference, Source source)
    implements Serializable {
  /** Eight full strokes, the test of stored energy. */
  private static final Source STORED_ENERGY =
      Source.standard("Directive 71/320/EEC", "Annex IV A 1.2.1: eight full strokes");

  private static final int STORED_ENERGY_STOPS = 8;

  /**
   * Checks the ranges.
   *
   * @param stops 1 to 1000
   * @param leastDifference &gt; 0 kPa
   * @param source who asks for it
   * @throws org.wattwright.units.InvalidInputException if a value is outside its range
   */
  public VacuumReserve {
    Require.count("VacuumReserve.stops", stops, 1, 1000);
    Require.quantity("VacuumReserve.leastDifference", leastDifference, KILOPASCAL).positive();
    leastDifference = Measure.from(leastDifference, Kind.PRESSURE);
    Objects.requireNonNull(source, "source");
  }

  /**
   * A reserve that the workshop asks for.
   *
   * @param stops 1 to 1000
   * @param leastDifference &gt; 0 kPa
   * @return the reserve
   * @throws org.wattwright.units.InvalidInputException if a value is outside its range
   */
  public static VacuumReserve of(int stops, Quantity<Pressure> leastDifference) {
    return new VacuumReserve(stops, leastDifference, Source.requirement("reserve of brake vacuum"));
  }

  /**
   * The eight full strokes of the stored-energy test; its clause is of air reservoirs, the same
   * number is in use for vacuum.
   *
   * @param leastDifference with which the servo still gives secondary performance, &gt; 0 kPa
   * @return the reserve
   * @throws org.wattwright.units.InvalidInputException if the difference is not positive
   */
  public static VacuumReserve storedEnergyTest(Quantity<Pressure> leastDifference) {
    return new VacuumReserve(STORED_ENERGY_STOPS, leastDifference, STORED_ENERGY);
  }

  double differencePa() {
    return Kind.PRESSURE.siValueOf(leastDifference);
  }

  /**
   * Number and difference.
   *
   * @return for example {@code 8 full applications down to 41 kPa}
   */
  @Override
  public String toString() {
    return stops + " full applications down to " + leastDifference;
  }
}
