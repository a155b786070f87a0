package org.wattwright.installation;

import static org.wattwright.units.WorkshopUnits.METRE;

import java.io.Serializable;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;
import org.wattwright.units.Measure;

/**
 * The rectangle with which a component presses on its mounting face; it tips about the edges.
 *
 * <p>Take the stiff part of the base only: the edge it can really lean on. Immutable and
 * thread-safe.
 *
 * @param lowU lower edge along u
 * @param highU upper edge along u, above the lower
 * @param lowV lower edge along v
 * @param highV upper edge along v, above the lower
 */
public record Footprint(
    Quantity<Length> lowU, Quantity<Length> highU, Quantity<Length> lowV, Quantity<Length> highV)
    implements Serializable {
  /**
   * Checks the order.
   *
   * @param lowU lower edge along u
   * @param highU upper edge along u
   * @param lowV lower edge along v
   * @param highV upper edge along v
   * @throws InvalidInputException if an upper edge is not above its lower
   */
  public Footprint {
    lowU = Measure.from(lowU, Kind.LENGTH);
    highU = Measure.from(highU, Kind.LENGTH);
    lowV = Measure.from(lowV, Kind.LENGTH);
    highV = Measure.from(highV, Kind.LENGTH);
    requireOrder("Footprint.highU", lowU, highU);
    requireOrder("Footprint.highV", lowV, highV);
  }

  private static void requireOrder(String field, Quantity<Length> low, Quantity<Length> high) {
    if (!(METRE.valueOf(high) > METRE.valueOf(low))) {
      throw InvalidInputException.of(field, "> " + low, high.toString());
    }
  }

  /**
   * A rectangle from the origin.
   *
   * @param alongU length along u, &gt; 0
   * @param alongV length along v, &gt; 0
   * @return the rectangle
   * @throws InvalidInputException if a length is not positive
   */
  public static Footprint of(Quantity<Length> alongU, Quantity<Length> alongV) {
    return new Footprint(METRE.of(0), alongU, METRE.of(0), alongV);
  }

  /** u of the four corners, in turn around the rectangle. */
  double[] cornersUM() {
    double low = Kind.LENGTH.siValueOf(lowU);
    double high = Kind.LENGTH.siValueOf(highU);
    return new double[] {low, high, high, low};
  }

  /** v of the four corners, in turn around the rectangle. */
  double[] cornersVM() {
    double low = Kind.LENGTH.siValueOf(lowV);
    double high = Kind.LENGTH.siValueOf(highV);
    return new double[] {low, low, high, high};
  }

  boolean contains(Fixing fixing) {
    return fixing.uM() >= Kind.LENGTH.siValueOf(lowU)
        && fixing.uM() <= Kind.LENGTH.siValueOf(highU)
        && fixing.vM() >= Kind.LENGTH.siValueOf(lowV)
        && fixing.vM() <= Kind.LENGTH.siValueOf(highV);
  }
}
