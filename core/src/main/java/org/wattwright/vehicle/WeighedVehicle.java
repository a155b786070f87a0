package org.wattwright.vehicle;

import java.io.Serializable;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import org.jspecify.annotations.Nullable;
import org.wattwright.check.Basis;
import org.wattwright.units.Kind;

/**
 * A vehicle as it stood on the scales, with its wheelbase: the base every ledger starts from.
 *
 * <p>Weighed by four wheels or by two axles, on level ground, at rest. Tracks, height of the centre
 * of gravity and roll stiffness are optional; what depends on them is not calculated without them.
 *
 * <pre>{@code
 * WeighedVehicle van = WeighedVehicle.withWheelbase(metres(2.31))
 *     .frontAxle(kilograms(560))
 *     .rearAxle(kilograms(470))
 *     .centreOfGravityHeight(metres(0.54))
 *     .build();
 * }</pre>
 *
 * <p>Axes: distance behind the front axle, left of the centre line, above the ground. Immutable and
 * thread-safe.
 */
public final class WeighedVehicle implements Serializable {
  private static final long serialVersionUID = 1L;

  private final WeighedVehicleBuilder.Fields fields;
  private final double wheelbaseM;
  private final double frontKg;
  private final double rearKg;

  WeighedVehicle(WeighedVehicleBuilder.Fields fields) {
    this.fields = fields;
    this.wheelbaseM = Kind.LENGTH.siValueOf(fields.wheelbase());
    this.frontKg = fields.axles().kg(Axle.FRONT);
    this.rearKg = fields.axles().kg(Axle.REAR);
  }

  /**
   * Starts with the distance between the axles.
   *
   * @param wheelbase &gt; 0 m
   * @return a builder
   * @throws org.wattwright.units.InvalidInputException if the wheelbase is not positive
   */
  public static WeighedVehicleBuilder withWheelbase(Quantity<Length> wheelbase) {
    return new WeighedVehicleBuilder(wheelbase);
  }

  /**
   * Distance between the axles.
   *
   * @return as given
   */
  public Quantity<Length> wheelbase() {
    return fields.wheelbase();
  }

  /**
   * Distance between the wheel centres of an axle.
   *
   * @param axle front or rear
   * @return empty if not given
   */
  public Optional<Quantity<Length>> track(Axle axle) {
    return Si.lengthIfKnown(trackM(axle));
  }

  /**
   * Axle loads as weighed.
   *
   * @return in kg
   */
  public AxleLoads axles() {
    return fields.axles();
  }

  /**
   * Wheel loads as weighed.
   *
   * @return empty if only the axles were weighed
   */
  public Optional<WheelLoads> wheels() {
    return Optional.ofNullable(fields.wheels());
  }

  /**
   * Height of the centre of gravity above the ground.
   *
   * @return typical value of an estimate; empty if not known
   */
  public Optional<Quantity<Length>> centreOfGravityHeight() {
    return Si.lengthIfKnown(height().typicalM());
  }

  /**
   * What the height of the centre of gravity rests on.
   *
   * @return measured where none is given
   */
  public Basis heightBasis() {
    return height().basis();
  }

  /**
   * What the split of the roll stiffness rests on, and with it every wheel load that a mass off the
   * centre line changes.
   *
   * @return weakest basis of both axles; measured where none is given
   */
  public Basis rollStiffnessBasis() {
    return rollSplit().basis();
  }

  /**
   * Tolerance of one scale reading.
   *
   * @return half-width, ≥ 0 kg
   */
  public Quantity<Mass> readingTolerance() {
    return fields.readingTolerance();
  }

  /** Height with its band; all NaN if not known. */
  record Height(double lowM, double typicalM, double highM, Basis basis) implements Serializable {
    static final Height UNKNOWN = new Height(Double.NaN, Double.NaN, Double.NaN, Basis.MEASURED);
  }

  /** Share of the front axle in the roll stiffness; NaN if not known. */
  record RollSplit(double frontShare, Basis basis) implements Serializable {
    static final RollSplit UNKNOWN = new RollSplit(Double.NaN, Basis.MEASURED);
  }

  double wheelbaseM() {
    return wheelbaseM;
  }

  double frontKg() {
    return frontKg;
  }

  double rearKg() {
    return rearKg;
  }

  double trackM(Axle axle) {
    return axle == Axle.FRONT ? fields.frontTrackM() : fields.rearTrackM();
  }

  Height height() {
    return fields.height();
  }

  RollSplit rollSplit() {
    return fields.rollSplit();
  }

  double readingToleranceKg() {
    return Kind.MASS.siValueOf(fields.readingTolerance());
  }

  /** Moment of the mass about the centre line, kg·m; NaN if wheels or tracks are not known. */
  double lateralKgM() {
    WheelLoads wheels = fields.wheels();
    if (wheels == null) {
      return Double.NaN;
    }
    double[] kg = wheels.kg();
    return ((kg[0] - kg[1]) * trackM(Axle.FRONT) + (kg[2] - kg[3]) * trackM(Axle.REAR)) / 2;
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return this == other || (other instanceof WeighedVehicle that && fields.equals(that.fields));
  }

  @Override
  public int hashCode() {
    return fields.hashCode();
  }

  /**
   * Axle loads and wheelbase.
   *
   * @return for example {@code front 560 kg, rear 470 kg, wheelbase 2.31 m}
   */
  @Override
  public String toString() {
    return axles() + ", wheelbase " + wheelbase();
  }
}
