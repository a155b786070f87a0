package org.wattwright.vehicle;

import java.io.Serializable;
import javax.measure.Quantity;
import javax.measure.quantity.Mass;
import org.wattwright.check.Figure;
import org.wattwright.units.Kind;
import org.wattwright.units.Measure;

/**
 * What the two axles carry on level ground at rest, as mass, the way scales show it.
 *
 * <p>Also used for differences; a load may be negative there, and on an axle that would lift.
 * Immutable and thread-safe.
 *
 * @param front carried by the front axle, in kg
 * @param rear carried by the rear axle, in kg
 */
public record AxleLoads(Quantity<Mass> front, Quantity<Mass> rear) implements Serializable {
  /**
   * Takes any implementation of a quantity.
   *
   * @param front carried by the front axle, in kg
   * @param rear carried by the rear axle, in kg
   */
  public AxleLoads {
    front = Measure.from(front, Kind.MASS);
    rear = Measure.from(rear, Kind.MASS);
  }

  static AxleLoads ofKg(double frontKg, double rearKg) {
    return new AxleLoads(Si.mass(frontKg), Si.mass(rearKg));
  }

  /**
   * What one axle carries.
   *
   * @param axle front or rear
   * @return in kg
   */
  public Quantity<Mass> on(Axle axle) {
    return axle == Axle.FRONT ? front : rear;
  }

  /**
   * Both together.
   *
   * @return in kg
   */
  public Quantity<Mass> total() {
    return Si.mass(kg(Axle.FRONT) + kg(Axle.REAR));
  }

  /**
   * Share of one axle in the total.
   *
   * @param axle front or rear
   * @return 0 to 1 while neither axle lifts; not a number if the total is zero
   */
  public double share(Axle axle) {
    return kg(axle) / (kg(Axle.FRONT) + kg(Axle.REAR));
  }

  double kg(Axle axle) {
    return Kind.MASS.siValueOf(on(axle));
  }

  /**
   * Both loads.
   *
   * @return for example {@code front 541.8 kg, rear 636.2 kg}
   */
  @Override
  public String toString() {
    return "front " + Figure.of(front, Kind.MASS) + ", rear " + Figure.of(rear, Kind.MASS);
  }
}
