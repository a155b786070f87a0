package org.wattwright.battery;

import java.io.Serializable;
import javax.measure.Quantity;
import javax.measure.quantity.Temperature;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;
import org.wattwright.units.Measure;

/**
 * Range of absolute temperatures, both ends allowed.
 *
 * <p>Immutable and thread-safe.
 *
 * @param coldest lower end
 * @param hottest upper end, above the lower
 */
public record TemperatureRange(Quantity<Temperature> coldest, Quantity<Temperature> hottest)
    implements Serializable {
  /**
   * Checks the order.
   *
   * @param coldest lower end
   * @param hottest upper end, above the lower
   * @throws InvalidInputException if the upper end is not above the lower
   */
  public TemperatureRange {
    coldest = Measure.from(coldest, Kind.TEMPERATURE);
    hottest = Measure.from(hottest, Kind.TEMPERATURE);
    if (!(Kind.TEMPERATURE.compare(hottest, coldest) > 0)) {
      throw InvalidInputException.of(
          "TemperatureRange.hottest", "> coldest " + coldest, hottest.toString());
    }
  }

  /**
   * A range.
   *
   * @param coldest lower end
   * @param hottest upper end, above the lower
   * @return the range
   */
  public static TemperatureRange between(
      Quantity<Temperature> coldest, Quantity<Temperature> hottest) {
    return new TemperatureRange(coldest, hottest);
  }

  /**
   * Whether a temperature lies in the range.
   *
   * @param temperature absolute
   * @return true at both ends too
   */
  public boolean contains(Quantity<Temperature> temperature) {
    return containsK(Kind.TEMPERATURE.siValueOf(temperature));
  }

  boolean containsK(double temperatureK) {
    return temperatureK >= Kind.TEMPERATURE.siValueOf(coldest)
        && temperatureK <= Kind.TEMPERATURE.siValueOf(hottest);
  }

  /**
   * Both ends.
   *
   * @return for example {@code -20 °C … 55 °C}
   */
  @Override
  public String toString() {
    return coldest + " … " + hottest;
  }
}
