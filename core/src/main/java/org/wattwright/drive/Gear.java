package org.wattwright.drive;

import static org.wattwright.units.WorkshopUnits.NEWTON_METRE;

import java.io.Serializable;
import java.util.Optional;
import javax.measure.Quantity;
import org.jspecify.annotations.Nullable;
import org.wattwright.internal.Require;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;
import org.wattwright.units.Measure;
import org.wattwright.units.Torque;

/**
 * One gear between motor and propeller shaft or final drive.
 *
 * <p>Immutable and thread-safe.
 *
 * @param name as reports print it
 * @param ratio turns of the motor for one turn behind the gear, &gt; 0
 * @param efficiency torque behind over ratio times torque before, above 0 and at most 1
 * @param torqueLimit most torque that the motor may put in
 */
public record Gear(
    String name, double ratio, double efficiency, Optional<Quantity<Torque>> torqueLimit)
    implements Serializable {
  /**
   * Checks the ranges.
   *
   * @param name as reports print it
   * @param ratio &gt; 0
   * @param efficiency above 0 and at most 1
   * @param torqueLimit most torque that the motor may put in
   * @throws InvalidInputException if a value is outside its range
   */
  public Gear {
    name = Require.text("Gear.name", name);
    Require.positive("Gear.ratio", ratio);
    MotorLoss.efficiency("Gear.efficiency", efficiency);
    torqueLimit.ifPresent(t -> Require.quantity("Gear.torqueLimit", t, NEWTON_METRE).positive());
    torqueLimit = torqueLimit.map(t -> Measure.from(t, Kind.TORQUE));
  }

  /**
   * A gear.
   *
   * @param name as reports print it
   * @param ratio &gt; 0
   * @param efficiency above 0 and at most 1
   * @return a gear without a torque limit
   * @throws InvalidInputException if a value is outside its range
   */
  public static Gear of(String name, double ratio, double efficiency) {
    return new Gear(name, ratio, efficiency, Optional.empty());
  }

  /**
   * This gear with the most torque that the motor may put in.
   *
   * @param torque &gt; 0 N·m
   * @return a new gear
   * @throws InvalidInputException if not positive
   */
  public Gear withTorqueLimit(Quantity<Torque> torque) {
    return new Gear(name, ratio, efficiency, Optional.of(torque));
  }

  double limitNm() {
    return torqueLimit.map(Kind.TORQUE::siValueOf).orElse(Double.POSITIVE_INFINITY);
  }

  /** Serialises by a form of its own, as Optional does not. */
  private Object writeReplace() {
    return new Form(name, ratio, efficiency, torqueLimit.orElse(null));
  }

  private record Form(
      String name, double ratio, double efficiency, @Nullable Quantity<Torque> limit)
      implements Serializable {
    private Object readResolve() {
      return new Gear(name, ratio, efficiency, Optional.ofNullable(limit));
    }
  }

  /**
   * Name and ratio.
   *
   * @return for example {@code gear 2, 2.05}
   */
  @Override
  public String toString() {
    return "gear " + name + ", " + ratio;
  }
}
