package org.wattwright.examples.job;

import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Time;
import org.wattwright.charging.ChargingPoint;
import org.wattwright.check.Given;

/**
 * A place to charge at, as the job states it.
 *
 * <p>Immutable and thread-safe.
 *
 * @param origin where it stands
 * @param name its name, unique in the job
 * @param point supply with pilot and cable
 * @param allowed how long a charge may take, and who asks for it; empty if nobody does
 * @param stated as typed, for the list of inputs
 */
public record ChargingPointInput(
    Origin origin,
    String name,
    ChargingPoint point,
    Optional<Given<Quantity<Time>>> allowed,
    Statement stated) {}
