package org.wattwright.vehicle;

import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import org.wattwright.units.Kind;
import org.wattwright.units.Measure;

/** Between plain SI numbers and quantities of this package. */
final class Si {
  /** Standard gravity, exact (CGPM 1901). */
  static final double GRAVITY_M_PER_S2 = 9.80665;

  private Si() {}

  static Quantity<Mass> mass(double massKg) {
    return Kind.MASS.ofSi(massKg);
  }

  static Quantity<Length> length(double lengthM) {
    return Kind.LENGTH.ofSi(lengthM);
  }

  /** NaN stands for not known. */
  static Optional<Quantity<Length>> lengthIfKnown(double lengthM) {
    return Double.isNaN(lengthM) ? Optional.empty() : Optional.of(length(lengthM));
  }

  /** The opposite, in the unit as given. */
  static Quantity<Length> negated(Quantity<Length> distance) {
    Measure<Length> measure = Measure.from(distance, Kind.LENGTH);
    return measure.namedUnit().of(-measure.namedUnit().valueOf(measure));
  }
}
