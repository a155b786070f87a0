package org.wattwright.installation;

import java.util.ArrayList;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Mass;
import org.jspecify.annotations.Nullable;
import org.wattwright.units.Kind;

/**
 * The load cases of a mass under a rule: each direction with the weight and without it, so that a
 * weight which helps is not counted on.
 */
final class RetentionLoads {
  static final double STANDARD_GRAVITY_MS2 = 9.80665;
  private static final double[] WEIGHT = {0, 0, -STANDARD_GRAVITY_MS2};

  /** One load case: force in the directions of the face, for one kilogram. */
  static final class Load {
    private final LoadDirection direction;
    private final boolean withWeight;
    private final double[] forcePerKg;

    Load(LoadDirection direction, boolean withWeight, double[] forcePerKg) {
      this.direction = direction;
      this.withWeight = withWeight;
      this.forcePerKg = forcePerKg;
    }

    LoadDirection direction() {
      return direction;
    }

    boolean withWeight() {
      return withWeight;
    }

    double[] forceN(double massKg) {
      return new double[] {massKg * forcePerKg[0], massKg * forcePerKg[1], massKg * forcePerKg[2]};
    }

    double inPlanePerKg() {
      return Math.hypot(forcePerKg[0], forcePerKg[1]);
    }
  }

  private final List<Load> loads = new ArrayList<>();
  private final double massKg;
  private final double[] pointM;

  RetentionLoads(
      MountingFace face, Quantity<Mass> mass, double[] pointM, @Nullable AccelerationRules rules) {
    this.massKg = Kind.MASS.siValueOf(mass);
    this.pointM = pointM;
    if (rules != null) {
      rules
          .accelerations()
          .forEach(
              (direction, value) -> {
                double ms2 = Kind.ACCELERATION.siValueOf(value);
                loads.add(load(face, direction, ms2, false));
                loads.add(load(face, direction, ms2, true));
              });
    }
  }

  private static Load load(
      MountingFace face, LoadDirection direction, double ms2, boolean withWeight) {
    double[] force = direction.unit();
    for (int i = 0; i < force.length; i++) {
      force[i] = force[i] * ms2 + (withWeight ? WEIGHT[i] : 0);
    }
    return new Load(direction, withWeight, face.components(force));
  }

  List<Load> loads() {
    return loads;
  }

  double massKg() {
    return massKg;
  }

  FixingGroup.@Nullable Held held(FixingGroup group, Load load) {
    return group.solve(load.forceN(massKg), pointM);
  }

  /** Highest share of any fixing under any load; infinite if a load is not held. */
  double highestShare(FixingGroup group, InteractionRule rule) {
    FixingShares shares = new FixingShares(group, rule);
    double highest = 0;
    for (Load load : loads) {
      FixingGroup.Held held = held(group, load);
      if (held == null) {
        return Double.POSITIVE_INFINITY;
      }
      highest = Math.max(highest, shares.highest(held));
    }
    return highest;
  }
}
