package org.wattwright.profile;

import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;

/** What the integral of a quantity over time is called. */
final class Integrals {
  /** All in coherent SI units, so that the number of the integral needs no factor. */
  private static final Map<Kind<?>, Kind<?>> NAMES =
      Map.of(
          Kind.CURRENT, Kind.CHARGE,
          Kind.POWER, Kind.ENERGY,
          Kind.SPEED, Kind.LENGTH,
          Kind.ACCELERATION, Kind.SPEED,
          Kind.ROTATIONAL_SPEED, Kind.ANGLE,
          Kind.VOLTAGE, Kind.MAGNETIC_FLUX,
          Kind.MASS_FLOW, Kind.MASS,
          Kind.VOLUME_FLOW, Kind.VOLUME);

  private Integrals() {}

  static void require(Kind<?> wanted, Kind<?> over) {
    @Nullable Kind<?> named = NAMES.get(over);
    if (named != wanted) {
      String bound = named == null ? "one that has a name" : named.name();
      throw InvalidInputException.of("Profile.integral of " + over, bound, wanted.name());
    }
  }
}
