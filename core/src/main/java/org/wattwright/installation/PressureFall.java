package org.wattwright.installation;

import static org.wattwright.units.WorkshopUnits.KILOPASCAL;

import java.io.Serializable;
import javax.measure.Quantity;
import javax.measure.quantity.Pressure;
import org.wattwright.internal.Require;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;
import org.wattwright.units.Measure;

/**
 * From a higher absolute pressure down to a lower one. Immutable and thread-safe.
 *
 * @param from absolute, &gt; 0 kPa
 * @param to absolute, &gt; 0 kPa, not above the first
 */
public record PressureFall(Quantity<Pressure> from, Quantity<Pressure> to) implements Serializable {
  /**
   * Checks the ranges.
   *
   * @param from absolute, &gt; 0 kPa
   * @param to absolute, &gt; 0 kPa, not above the first
   * @throws InvalidInputException if a pressure is outside its range
   */
  public PressureFall {
    double fromPa = Require.quantity("PressureFall.from", from, KILOPASCAL).positive();
    double toPa = Require.quantity("PressureFall.to", to, KILOPASCAL).positive();
    if (!(toPa <= fromPa)) {
      throw InvalidInputException.of("PressureFall.to", "≤ " + from, to.toString());
    }
    from = Measure.from(from, Kind.PRESSURE);
    to = Measure.from(to, Kind.PRESSURE);
  }

  static PressureFall ofPa(double fromPa, double toPa) {
    return new PressureFall(KILOPASCAL.of(fromPa / 1000), KILOPASCAL.of(toPa / 1000));
  }

  double fromPa() {
    return Kind.PRESSURE.siValueOf(from);
  }

  double toPa() {
    return Kind.PRESSURE.siValueOf(to);
  }

  /**
   * Both ends.
   *
   * @return for example {@code 101.325 kPa to 30 kPa}
   */
  @Override
  public String toString() {
    return from + " to " + to;
  }
}
