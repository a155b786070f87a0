package org.wattwright.vehicle;

import static org.wattwright.units.WorkshopUnits.KILOGRAM;
import static org.wattwright.units.WorkshopUnits.METRE;
import static org.wattwright.units.WorkshopUnits.NEWTON_METRE_PER_RADIAN;

import java.io.Serializable;
import java.util.Objects;
import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import org.jspecify.annotations.Nullable;
import org.wattwright.check.Basis;
import org.wattwright.check.Estimate;
import org.wattwright.check.Given;
import org.wattwright.internal.MissingFields;
import org.wattwright.internal.Require;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;
import org.wattwright.units.Measure;
import org.wattwright.units.RollStiffness;

/**
 * Takes down a weighing sheet and ends with {@link #build}.
 *
 * <p>Either all four wheels or both axles are required. Where wheels, axles and total are given
 * side by side they must agree within the tolerance of the readings they are made of.
 */
public final class WeighedVehicleBuilder {
  /**
   * Half a step of a scale that shows whole kilograms; used only to compare sums; common practice.
   */
  private static final double LEAST_READING_TOLERANCE_KG = 0.5;

  private final Quantity<Length> wheelbase;
  private @Nullable Quantity<Mass> frontLeft;
  private @Nullable Quantity<Mass> frontRight;
  private @Nullable Quantity<Mass> rearLeft;
  private @Nullable Quantity<Mass> rearRight;
  private @Nullable Quantity<Mass> frontAxle;
  private @Nullable Quantity<Mass> rearAxle;
  private @Nullable Quantity<Mass> total;
  private Quantity<Mass> readingTolerance = KILOGRAM.of(0);
  private double frontTrackM = Double.NaN;
  private double rearTrackM = Double.NaN;
  private WeighedVehicle.Height height = WeighedVehicle.Height.UNKNOWN;
  private double frontRollStiffness = Double.NaN;
  private double rearRollStiffness = Double.NaN;
  private Basis rollBasis = Basis.MEASURED;

  WeighedVehicleBuilder(Quantity<Length> wheelbase) {
    Require.quantity("WeighedVehicle.wheelbase", wheelbase, METRE).positive();
    this.wheelbase = Measure.from(wheelbase, Kind.LENGTH);
  }

  /** What has been taken down, in one piece. */
  record Fields(
      Quantity<Length> wheelbase,
      AxleLoads axles,
      @Nullable WheelLoads wheels,
      Quantity<Mass> readingTolerance,
      double frontTrackM,
      double rearTrackM,
      WeighedVehicle.Height height,
      WeighedVehicle.RollSplit rollSplit)
      implements Serializable {}

  /**
   * Reading below the front left wheel.
   *
   * @param mass ≥ 0 kg
   * @return this builder
   */
  public WeighedVehicleBuilder frontLeft(Quantity<Mass> mass) {
    frontLeft = reading("frontLeft", mass);
    return this;
  }

  /**
   * Reading below the front right wheel.
   *
   * @param mass ≥ 0 kg
   * @return this builder
   */
  public WeighedVehicleBuilder frontRight(Quantity<Mass> mass) {
    frontRight = reading("frontRight", mass);
    return this;
  }

  /**
   * Reading below the rear left wheel.
   *
   * @param mass ≥ 0 kg
   * @return this builder
   */
  public WeighedVehicleBuilder rearLeft(Quantity<Mass> mass) {
    rearLeft = reading("rearLeft", mass);
    return this;
  }

  /**
   * Reading below the rear right wheel.
   *
   * @param mass ≥ 0 kg
   * @return this builder
   */
  public WeighedVehicleBuilder rearRight(Quantity<Mass> mass) {
    rearRight = reading("rearRight", mass);
    return this;
  }

  /**
   * Reading of the front axle.
   *
   * @param mass ≥ 0 kg
   * @return this builder
   */
  public WeighedVehicleBuilder frontAxle(Quantity<Mass> mass) {
    frontAxle = reading("frontAxle", mass);
    return this;
  }

  /**
   * Reading of the rear axle.
   *
   * @param mass ≥ 0 kg
   * @return this builder
   */
  public WeighedVehicleBuilder rearAxle(Quantity<Mass> mass) {
    rearAxle = reading("rearAxle", mass);
    return this;
  }

  /**
   * Reading of the whole vehicle, used only to check the others.
   *
   * @param mass &gt; 0 kg
   * @return this builder
   */
  public WeighedVehicleBuilder total(Quantity<Mass> mass) {
    Require.quantity("WeighedVehicle.total", mass, KILOGRAM).positive();
    total = Measure.from(mass, Kind.MASS);
    return this;
  }

  /**
   * Tolerance of each reading, for the spread of results; none unless told.
   *
   * @param tolerance half-width, ≥ 0 kg
   * @return this builder
   */
  public WeighedVehicleBuilder readingTolerance(Quantity<Mass> tolerance) {
    readingTolerance = reading("readingTolerance", tolerance);
    return this;
  }

  /**
   * Distance between the front wheel centres.
   *
   * @param track &gt; 0 m
   * @return this builder
   */
  public WeighedVehicleBuilder frontTrack(Quantity<Length> track) {
    frontTrackM = Require.quantity("WeighedVehicle.frontTrack", track, METRE).positive();
    return this;
  }

  /**
   * Distance between the rear wheel centres.
   *
   * @param track &gt; 0 m
   * @return this builder
   */
  public WeighedVehicleBuilder rearTrack(Quantity<Length> track) {
    rearTrackM = Require.quantity("WeighedVehicle.rearTrack", track, METRE).positive();
    return this;
  }

  /**
   * Measured height of the centre of gravity, as from a weighing with one axle raised.
   *
   * @param aboveGround &gt; 0 m
   * @return this builder
   */
  public WeighedVehicleBuilder centreOfGravityHeight(Quantity<Length> aboveGround) {
    return centreOfGravityHeight(Given.measured(aboveGround, "centre of gravity height"));
  }

  /**
   * Height of the centre of gravity with what it rests on.
   *
   * @param aboveGround &gt; 0 m
   * @return this builder
   */
  public WeighedVehicleBuilder centreOfGravityHeight(Given<Quantity<Length>> aboveGround) {
    double m = heightM(aboveGround.value());
    height = new WeighedVehicle.Height(m, m, m, aboveGround.basis());
    return this;
  }

  /**
   * Height of the centre of gravity from a weighing with one axle raised; checks then look at both
   * ends of what the stated tolerances make of it.
   *
   * @param lift the weighing
   * @return this builder
   * @throws InvalidInputException if its worst case reaches the ground
   */
  public WeighedVehicleBuilder centreOfGravityHeight(AxleLift lift) {
    double m = Kind.LENGTH.siValueOf(lift.height());
    double worstM = Kind.LENGTH.siValueOf(lift.worstCase());
    height =
        new WeighedVehicle.Height(
            heightM(Si.length(m - worstM)), m, heightM(Si.length(m + worstM)), Basis.MEASURED);
    return this;
  }

  /**
   * Estimated height of the centre of gravity; checks then look at both ends of its band.
   *
   * @param aboveGround low end &gt; 0 m
   * @return this builder
   */
  public WeighedVehicleBuilder centreOfGravityHeight(Estimate<Length> aboveGround) {
    height =
        new WeighedVehicle.Height(
            heightM(aboveGround.low()),
            heightM(aboveGround.typical()),
            heightM(aboveGround.high()),
            Basis.ESTIMATED);
    return this;
  }

  /**
   * Roll stiffness of the front axle, springs and anti-roll bar.
   *
   * @param stiffness ≥ 0 N·m/rad
   * @return this builder
   */
  public WeighedVehicleBuilder frontRollStiffness(Given<Quantity<RollStiffness>> stiffness) {
    frontRollStiffness = rollStiffness("frontRollStiffness", stiffness);
    return this;
  }

  /**
   * Roll stiffness of the rear axle, springs and anti-roll bar.
   *
   * @param stiffness ≥ 0 N·m/rad
   * @return this builder
   */
  public WeighedVehicleBuilder rearRollStiffness(Given<Quantity<RollStiffness>> stiffness) {
    rearRollStiffness = rollStiffness("rearRollStiffness", stiffness);
    return this;
  }

  private double rollStiffness(String field, Given<Quantity<RollStiffness>> stiffness) {
    rollBasis = rollBasis.and(stiffness.basis());
    return Require.quantity("WeighedVehicle." + field, stiffness.value(), NEWTON_METRE_PER_RADIAN)
        .nonNegative();
  }

  private static double heightM(Quantity<Length> aboveGround) {
    return Require.quantity("WeighedVehicle.centreOfGravityHeight", aboveGround, METRE).positive();
  }

  private static Quantity<Mass> reading(String field, Quantity<Mass> mass) {
    Require.quantity("WeighedVehicle." + field, mass, KILOGRAM).nonNegative();
    return Measure.from(mass, Kind.MASS);
  }

  /**
   * Checks that the readings agree and makes the vehicle.
   *
   * @return the weighed vehicle
   * @throws InvalidInputException if readings are missing, do not sum, or an axle carries nothing
   */
  public WeighedVehicle build() {
    WheelLoads wheels = wheels();
    AxleLoads axles = wheels != null ? wheels.axles() : weighedAxles();
    if (wheels != null) {
      requireSum("frontAxle", frontAxle, axles.front(), 3);
      requireSum("rearAxle", rearAxle, axles.rear(), 3);
    }
    requireSum("total", total, axles.total(), wheels != null ? 5 : 3);
    Require.quantity("WeighedVehicle.frontAxle", axles.front(), KILOGRAM).positive();
    Require.quantity("WeighedVehicle.rearAxle", axles.rear(), KILOGRAM).positive();
    return new WeighedVehicle(
        new Fields(
            wheelbase,
            axles,
            wheels,
            readingTolerance,
            frontTrackM,
            rearTrackM,
            height,
            rollSplit()));
  }

  private @Nullable WheelLoads wheels() {
    if (Stream.of(frontLeft, frontRight, rearLeft, rearRight).allMatch(Objects::isNull)) {
      return null;
    }
    new MissingFields("WeighedVehicle")
        .field("frontLeft", frontLeft)
        .field("frontRight", frontRight)
        .field("rearLeft", rearLeft)
        .field("rearRight", rearRight)
        .rejectIfAny();
    return new WheelLoads(
        MissingFields.present(frontLeft),
        MissingFields.present(frontRight),
        MissingFields.present(rearLeft),
        MissingFields.present(rearRight));
  }

  private AxleLoads weighedAxles() {
    new MissingFields("WeighedVehicle")
        .field("frontAxle", frontAxle)
        .field("rearAxle", rearAxle)
        .rejectIfAny();
    return new AxleLoads(MissingFields.present(frontAxle), MissingFields.present(rearAxle));
  }

  /** A reading given beside its parts must agree with their sum. */
  private void requireSum(
      String field, @Nullable Quantity<Mass> given, Quantity<Mass> sum, int readings) {
    if (given == null) {
      return;
    }
    double perReadingKg =
        Math.max(LEAST_READING_TOLERANCE_KG, Kind.MASS.siValueOf(readingTolerance));
    double allowedKg = readings * perReadingKg;
    double differenceKg = Math.abs(Kind.MASS.siValueOf(given) - Kind.MASS.siValueOf(sum));
    if (!(differenceKg <= allowedKg)) {
      throw InvalidInputException.of(
          "WeighedVehicle." + field,
          "within " + Si.mass(allowedKg) + " of the sum of its parts, " + sum,
          given.toString());
    }
  }

  private WeighedVehicle.RollSplit rollSplit() {
    double sum = frontRollStiffness + rearRollStiffness;
    if (Double.isNaN(sum)) {
      return WeighedVehicle.RollSplit.UNKNOWN;
    }
    if (!(sum > 0)) {
      throw InvalidInputException.of(
          "WeighedVehicle.frontRollStiffness + rearRollStiffness", "> 0 N·m/rad", "0 N·m/rad");
    }
    return new WeighedVehicle.RollSplit(frontRollStiffness / sum, rollBasis);
  }
}
