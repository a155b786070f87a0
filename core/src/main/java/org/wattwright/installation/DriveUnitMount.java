package org.wattwright.installation;

import static org.wattwright.units.WorkshopUnits.NEWTON;
import static org.wattwright.units.WorkshopUnits.NEWTON_PER_MILLIMETRE;

import java.io.Serializable;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import org.jspecify.annotations.Nullable;
import org.wattwright.check.Given;
import org.wattwright.internal.Require;
import org.wattwright.units.Kind;
import org.wattwright.units.Measure;
import org.wattwright.units.SpringRate;

/**
 * One mount of a drive unit, seen along the axis of the torque it reacts to.
 *
 * <p>Immutable and thread-safe.
 *
 * @param name as reports print it
 * @param u place: forward for the torque of the axle, to the right for that of a propeller shaft
 * @param up place above any level used for all mounts and the centre of gravity
 * @param stiffness how stiff it is, alike in all directions, &gt; 0 N/mm; only the proportions
 *     count
 * @param ratedForce what it may carry; null if its maker does not say
 */
public record DriveUnitMount(
    String name,
    Quantity<Length> u,
    Quantity<Length> up,
    Quantity<SpringRate> stiffness,
    @Nullable Given<Quantity<Force>> ratedForce)
    implements Serializable {
  /**
   * Checks the values.
   *
   * @param name as reports print it
   * @param u place
   * @param up place
   * @param stiffness &gt; 0 N/mm
   * @param ratedForce &gt; 0 N or null
   * @throws org.wattwright.units.InvalidInputException if the name is blank or a value not positive
   */
  public DriveUnitMount {
    name = Require.text("DriveUnitMount.name", name);
    u = Measure.from(u, Kind.LENGTH);
    up = Measure.from(up, Kind.LENGTH);
    Require.quantity("DriveUnitMount.stiffness", stiffness, NEWTON_PER_MILLIMETRE).positive();
    stiffness = Measure.from(stiffness, Kind.SPRING_RATE);
    if (ratedForce != null) {
      Require.quantity("DriveUnitMount.ratedForce", ratedForce.value(), NEWTON).positive();
    }
  }

  /**
   * A mount whose rated force is not known.
   *
   * @param name as reports print it
   * @param u place
   * @param up place
   * @param stiffness &gt; 0 N/mm
   * @return the mount
   */
  public static DriveUnitMount at(
      String name, Quantity<Length> u, Quantity<Length> up, Quantity<SpringRate> stiffness) {
    return new DriveUnitMount(name, u, up, stiffness, null);
  }

  /**
   * The same mount with what it may carry.
   *
   * @param force in any direction, &gt; 0 N
   * @return a new mount
   */
  public DriveUnitMount rated(Given<Quantity<Force>> force) {
    return new DriveUnitMount(name, u, up, stiffness, force);
  }

  /**
   * What it may carry.
   *
   * @return empty if not known
   */
  public Optional<Given<Quantity<Force>>> rating() {
    return Optional.ofNullable(ratedForce);
  }
}
