package org.wattwright.battery;

import java.io.Serializable;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import javax.measure.quantity.Volume;
import org.wattwright.internal.Require;
import org.wattwright.units.Kind;
import org.wattwright.units.Measure;
import org.wattwright.units.WorkshopUnits;

/**
 * Outer size of a box-shaped part.
 *
 * <p>Immutable and thread-safe.
 *
 * @param length &gt; 0
 * @param width &gt; 0
 * @param height &gt; 0
 */
public record Dimensions(Quantity<Length> length, Quantity<Length> width, Quantity<Length> height)
    implements Serializable {
  /**
   * Checks the range.
   *
   * @param length &gt; 0
   * @param width &gt; 0
   * @param height &gt; 0
   * @throws org.wattwright.units.InvalidInputException if a value is not positive
   */
  public Dimensions {
    length = positive("Dimensions.length", length);
    width = positive("Dimensions.width", width);
    height = positive("Dimensions.height", height);
  }

  /**
   * From three lengths.
   *
   * @param length &gt; 0
   * @param width &gt; 0
   * @param height &gt; 0
   * @return the dimensions
   */
  public static Dimensions of(
      Quantity<Length> length, Quantity<Length> width, Quantity<Length> height) {
    return new Dimensions(length, width, height);
  }

  private static Quantity<Length> positive(String field, Quantity<Length> value) {
    Require.quantity(field, value, WorkshopUnits.MILLIMETRE).positive();
    return Measure.from(value, Kind.LENGTH);
  }

  /**
   * Volume of the box.
   *
   * @return in L
   */
  public Quantity<Volume> volume() {
    return Kind.VOLUME.ofSi(
        Kind.LENGTH.siValueOf(length)
            * Kind.LENGTH.siValueOf(width)
            * Kind.LENGTH.siValueOf(height));
  }

  /**
   * The three lengths.
   *
   * @return for example {@code 355 mm × 152 mm × 108 mm}
   */
  @Override
  public String toString() {
    return length + " × " + width + " × " + height;
  }
}
