package org.wattwright.examples.job;

import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Length;

/**
 * Where something sits in the vehicle.
 *
 * <p>Immutable and thread-safe.
 *
 * @param behind distance behind the front axle; negative ahead of it
 * @param left distance to the left of the centre line; negative to the right; empty if not stated
 * @param above height above the ground, ≥ 0; empty if not stated
 */
public record PlaceInput(
    Quantity<Length> behind, Optional<Quantity<Length>> left, Optional<Quantity<Length>> above) {}
