package org.wattwright.installation;

import static org.wattwright.units.WorkshopUnits.KILOGRAM;
import static org.wattwright.units.WorkshopUnits.NEWTON;
import static org.wattwright.units.WorkshopUnits.NEWTON_METRE;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import org.wattwright.check.Check;
import org.wattwright.check.CheckBuilder;
import org.wattwright.check.Checks;
import org.wattwright.check.Figure;
import org.wattwright.check.Given;
import org.wattwright.check.Source;
import org.wattwright.internal.Require;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;
import org.wattwright.units.Measure;
import org.wattwright.units.Torque;

/**
 * The mounts of a drive unit under its full torque, forward and backward.
 *
 * <p>Where gears and differential sit in the unit, its housing takes the whole torque of the axle,
 * ratio and all, not that of the motor: T·i·η, see {@code Driveline.wheelTorque}; driving forward
 * lifts its front. Force of a mount: k/Σk·F ∓ T·k·r/Σk·r² about the centre of stiffness, a rigid
 * unit on elastic mounts, with its weight. Source: statics. Mounts in line with each other along
 * the axis of the torque share by stiffness too; give each of them.
 *
 * <p>Immutable and thread-safe.
 *
 * @param mounts at least two, of different names, not all at one place
 * @param mass of the unit, &gt; 0 kg
 * @param centreU place of its centre of gravity along u
 * @param centreUp place of its centre of gravity upward
 */
public record DriveUnitMounts(
    List<DriveUnitMount> mounts,
    Given<Quantity<Mass>> mass,
    Quantity<Length> centreU,
    Quantity<Length> centreUp)
    implements Serializable {
  /**
   * Checks the values.
   *
   * @param mounts at least two
   * @param mass &gt; 0 kg
   * @param centreU place along u
   * @param centreUp place upward
   * @throws InvalidInputException if there are fewer than two mounts, two of one name, or all are
   *     at one place; or the mass is not positive
   */
  public DriveUnitMounts {
    mounts = Require.nonEmpty("DriveUnitMounts.mounts", mounts);
    Require.quantity("DriveUnitMounts.mass", mass.value(), KILOGRAM).positive();
    centreU = Measure.from(centreU, Kind.LENGTH);
    centreUp = Measure.from(centreUp, Kind.LENGTH);
    long places = mounts.stream().map(each -> List.of(each.u(), each.up())).distinct().count();
    long names = mounts.stream().map(DriveUnitMount::name).distinct().count();
    if (places < 2 || names < mounts.size()) {
      throw InvalidInputException.of(
          "DriveUnitMounts.mounts", "of different names, at two places at least", "" + mounts);
    }
  }

  /**
   * What the unit puts on its mounts.
   *
   * @param torque on the axle, positive driving forward; for a propeller shaft positive if its
   *     upper side turns to the right as the driver sees it
   * @return one for each mount, in their order
   */
  public List<MountReaction> reactions(Quantity<Torque> torque) {
    double[] u = mounts.stream().mapToDouble(m -> Kind.LENGTH.siValueOf(m.u())).toArray();
    double[] up = mounts.stream().mapToDouble(m -> Kind.LENGTH.siValueOf(m.up())).toArray();
    double[] rate =
        mounts.stream().mapToDouble(m -> Kind.SPRING_RATE.siValueOf(m.stiffness())).toArray();
    ShearKernel kernel = new ShearKernel(u, up, rate);
    double weightN = Kind.MASS.siValueOf(mass.value()) * RetentionLoads.STANDARD_GRAVITY_MS2;
    double[] force = {0, -weightN};
    double momentNm =
        Kind.TORQUE.siValueOf(torque)
            + kernel.moment(force, Kind.LENGTH.siValueOf(centreU), Kind.LENGTH.siValueOf(centreUp));
    double[] alongU = new double[u.length];
    double[] alongUp = new double[u.length];
    kernel.solve(force, momentNm, alongU, alongUp);
    List<MountReaction> reactions = new ArrayList<>();
    for (int i = 0; i < u.length; i++) {
      reactions.add(
          new MountReaction(
              mounts.get(i).name(), Kind.FORCE.ofSi(alongU[i]), Kind.FORCE.ofSi(alongUp[i])));
    }
    return List.copyOf(reactions);
  }

  /**
   * Whether each mount carries its share in both directions.
   *
   * @param forward highest torque driving forward, ≥ 0 N·m
   * @param backward highest torque in reverse or in regeneration, ≥ 0 N·m
   * @return one check {@code installation.mount-load} for each mount, the worse direction;
   *     NOT_CHECKED where its rated force is not known
   * @throws InvalidInputException if a torque is negative
   */
  public List<Check> checks(Given<Quantity<Torque>> forward, Given<Quantity<Torque>> backward) {
    Objects.requireNonNull(forward, "forward");
    double forwardNm =
        Require.quantity("DriveUnitMounts.forward", forward.value(), NEWTON_METRE).nonNegative();
    double backwardNm =
        Require.quantity("DriveUnitMounts.backward", backward.value(), NEWTON_METRE).nonNegative();
    List<MountReaction> drive = reactions(NEWTON_METRE.of(forwardNm));
    List<MountReaction> reverse = reactions(NEWTON_METRE.of(-backwardNm));
    List<Check> checks = new ArrayList<>();
    for (int i = 0; i < mounts.size(); i++) {
      Check ahead = check(i, "driving forward", drive.get(i).resultant(), forward);
      Check back = check(i, "driving backward", reverse.get(i).resultant(), backward);
      checks.add(Checks.worse(ahead, back));
    }
    return List.copyOf(checks);
  }

  private Check check(int i, String way, Quantity<Force> actual, Given<Quantity<Torque>> torque) {
    DriveUnitMount mount = mounts.get(i);
    CheckBuilder check =
        Check.named("installation.mount-load", "drive unit mount " + mount.name() + ", full torque")
            .source(mount.rating().map(Given::source).orElse(Source.dataSheet("drive unit mount")))
            .basisOf(mass, torque)
            .note(way)
            .safety();
    Figure load = Figure.of(actual, NEWTON);
    return mount
        .rating()
        .map(rated -> check.basisOf(rated).atMost(load, Figure.of(rated.value(), NEWTON)))
        .orElseGet(() -> check.notChecked(load, mount.name() + ".ratedForce"));
  }
}
