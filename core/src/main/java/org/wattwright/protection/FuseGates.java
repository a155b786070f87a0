package org.wattwright.protection;

import static org.wattwright.units.WorkshopUnits.AMPERE;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricCurrent;
import org.wattwright.internal.Require;
import org.wattwright.internal.ResourceTable;
import org.wattwright.units.JouleIntegral;
import org.wattwright.units.Kind;
import org.wattwright.units.Measure;

/**
 * Pre-arcing I²t at 10 ms within which every gG link of a rating must lie, IEC 60269-1: a bound for
 * a link of unknown make, never the curve of a real one.
 *
 * <p>Table 6 of edition 3, Table 7 of edition 4, for the ratings of which both ends were seen.
 *
 * @param ratedCurrent In in A
 * @param smallest least pre-arcing I²t, in A²s
 * @param largest most pre-arcing I²t, in A²s
 */
public record FuseGates(
    Quantity<ElectricCurrent> ratedCurrent,
    Quantity<JouleIntegral> smallest,
    Quantity<JouleIntegral> largest)
    implements Serializable {
  private static final List<FuseGates> GENERAL_PURPOSE = read();

  /**
   * Takes any quantity implementation.
   *
   * @param ratedCurrent In
   * @param smallest least pre-arcing I²t
   * @param largest most pre-arcing I²t
   */
  public FuseGates {
    ratedCurrent = Measure.from(ratedCurrent, Kind.CURRENT);
    smallest = Measure.from(smallest, Kind.JOULE_INTEGRAL);
    largest = Measure.from(largest, Kind.JOULE_INTEGRAL);
  }

  /**
   * The gates of a gG link.
   *
   * @param ratedCurrent one of 63, 100, 160, 200, 315 and 400 A
   * @return empty for any other rating
   * @throws org.wattwright.units.InvalidInputException if not positive
   */
  public static Optional<FuseGates> generalPurpose(Quantity<ElectricCurrent> ratedCurrent) {
    double ratedA = Require.quantity("FuseGates.ratedCurrent", ratedCurrent, AMPERE).positive();
    return GENERAL_PURPOSE.stream()
        .filter(gates -> Kind.CURRENT.siValueOf(gates.ratedCurrent()) == ratedA)
        .findFirst();
  }

  private static List<FuseGates> read() {
    List<FuseGates> all = new ArrayList<>();
    for (ResourceTable.Row row : ResourceTable.read(FuseGates.class, "gates.csv").rows()) {
      all.add(
          new FuseGates(
              AMPERE.of(row.number("rated [A]")),
              Kind.JOULE_INTEGRAL.ofSi(row.number("smallest [A2s]")),
              Kind.JOULE_INTEGRAL.ofSi(row.number("largest [A2s]"))));
    }
    return List.copyOf(all);
  }

  /**
   * Rating and gates.
   *
   * @return for example {@code gG 63 A, 9000 A²·s … 27000 A²·s at 10 ms}
   */
  @Override
  public String toString() {
    return "gG " + ratedCurrent + ", " + smallest + " … " + largest + " at 10 ms";
  }
}
