package org.wattwright.layout;

import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.wattwright.units.Kind;
import org.wattwright.vehicle.Position;

/** Places along the line on which a bay fills. */
final class BayAxis {
  private BayAxis() {}

  /** first + steps · (second − first), in each direction that is known. */
  static Position between(Position first, Position second, double steps) {
    Position place =
        Position.behindFrontAxle(between(first.behindFrontAxle(), second.behindFrontAxle(), steps));
    Optional<Quantity<Length>> left = between(first.leftOfCentre(), second.leftOfCentre(), steps);
    Optional<Quantity<Length>> up = between(first.aboveGround(), second.aboveGround(), steps);
    if (left.isPresent()) {
      place = place.leftOfCentre(left.get());
    }
    return up.isPresent() ? place.aboveGround(up.get()) : place;
  }

  private static Optional<Quantity<Length>> between(
      Optional<Quantity<Length>> first, Optional<Quantity<Length>> second, double steps) {
    return first.flatMap(one -> second.map(other -> between(one, other, steps)));
  }

  private static Quantity<Length> between(
      Quantity<Length> first, Quantity<Length> second, double steps) {
    double firstM = Kind.LENGTH.siValueOf(first);
    return Kind.LENGTH.ofSi(firstM + steps * (Kind.LENGTH.siValueOf(second) - firstM));
  }

  /** Height in m; NaN if not known. */
  static double heightM(Position position) {
    return position.aboveGround().map(Kind.LENGTH::siValueOf).orElse(Double.NaN);
  }
}
