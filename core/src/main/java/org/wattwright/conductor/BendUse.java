package org.wattwright.conductor;

import static org.wattwright.units.WorkshopUnits.MILLIMETRE;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.wattwright.internal.Require;
import org.wattwright.internal.ResourceTable;
import org.wattwright.units.InvalidInputException;

/** How a cable is bent, which sets its smallest bend radius; DIN VDE 0298-3. */
public enum BendUse {
  /** Flexible cable, bent once and fixed. */
  FLEXIBLE_FIXED,
  /** Flexible cable, free to move. */
  FLEXIBLE_MOVING,
  /** Cable for fixed installation, as laid. */
  INSTALLATION_LAID,
  /** Cable for fixed installation, shaped once with care before a terminal. */
  INSTALLATION_SHAPED_ONCE,
  /** Conductor for more than 1000 V, unshielded; NFPA 70 (NEC) 300.34. */
  ABOVE_1000_V_UNSHIELDED,
  /** Conductor for more than 1000 V, shielded or lead covered; NFPA 70 (NEC) 300.34. */
  ABOVE_1000_V_SHIELDED;

  private record Band(BendUse use, double aboveMm, double upToMm, double factor) {}

  private static final class Table {
    static final List<Band> BANDS = PublishedRows.read("bend-radius.csv", Table::band);

    private static Band band(ResourceTable.Row row) {
      return new Band(
          row.constant("use", BendUse.class),
          row.number("above [mm]"),
          row.number("up to [mm]"),
          row.number("factor"));
    }
  }

  /**
   * Smallest bend radius as a multiple of the outer diameter.
   *
   * @param outerDiameter &gt; 0 and at most 1000 mm
   * @return the multiple, 1 to 12
   * @throws InvalidInputException if the diameter is outside its range
   */
  public double multipleFor(Quantity<Length> outerDiameter) {
    String field = "BendUse.outerDiameter";
    Require.quantity(field, outerDiameter, MILLIMETRE).positiveUpTo(1000);
    double diameterMm = MILLIMETRE.valueOf(outerDiameter);
    return Table.BANDS.stream()
        .filter(b -> b.use() == this && diameterMm > b.aboveMm() && diameterMm <= b.upToMm())
        .findFirst()
        .orElseThrow(
            () -> InvalidInputException.of(field, "in the table", outerDiameter.toString()))
        .factor();
  }

  /**
   * Smallest bend radius: multiple × outer diameter.
   *
   * @param outerDiameter &gt; 0 and at most 1000 mm
   * @return in mm
   * @throws InvalidInputException if the diameter is outside its range
   */
  public Quantity<Length> minimumRadius(Quantity<Length> outerDiameter) {
    return MILLIMETRE.of(multipleFor(outerDiameter) * MILLIMETRE.valueOf(outerDiameter));
  }
}
