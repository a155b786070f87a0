package org.wattwright.vehicle;

import static org.wattwright.units.WorkshopUnits.DEGREE;
import static org.wattwright.units.WorkshopUnits.KILOGRAM;
import static org.wattwright.units.WorkshopUnits.METRE;

import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import org.jspecify.annotations.Nullable;
import org.wattwright.check.Figure;
import org.wattwright.check.Source;
import org.wattwright.internal.MissingFields;
import org.wattwright.internal.Require;
import org.wattwright.units.InvalidInputException;

/** Takes down a weighing with one axle raised and ends with {@link #build}. */
public final class AxleLiftBuilder {
  static final Source ISO_10392 = Source.standard("ISO 10392", "axle-lift method, 2011");

  private static final double STEEPEST_DEGREES = 45;

  private final WeighedVehicle level;
  private final Axle lifted;
  private @Nullable Double readingKg;
  private @Nullable Double riseM;
  private @Nullable Double angleRad;
  private @Nullable Double frontRadiusM;
  private @Nullable Double rearRadiusM;
  private @Nullable Double groundRadiusRaisedM;
  private double readingToleranceKg;
  private double lengthToleranceM;
  private double angleToleranceRad;

  AxleLiftBuilder(WeighedVehicle level, Axle lifted) {
    this.level = level;
    this.lifted = lifted;
    this.readingToleranceKg = (level.wheels().isPresent() ? 2 : 1) * level.readingToleranceKg();
  }

  /**
   * Reading below the axle on the ground while the other is raised.
   *
   * @param mass &gt; 0 kg
   * @return this builder
   */
  public AxleLiftBuilder reading(Quantity<Mass> mass) {
    readingKg = Require.quantity("AxleLift.reading", mass, KILOGRAM).positive();
    return this;
  }

  /**
   * Rise of the wheel centres of the lifted axle.
   *
   * @param height &gt; 0 m, less than the wheelbase
   * @return this builder
   * @throws InvalidInputException if it is outside its range
   */
  public AxleLiftBuilder rise(Quantity<Length> height) {
    double m = Require.quantity("AxleLift.rise", height, METRE).positive();
    double highestM = level.wheelbaseM() * Math.sin(Math.toRadians(STEEPEST_DEGREES));
    if (!(m <= highestM)) {
      throw InvalidInputException.of(
          "AxleLift.rise", "≤ " + Figure.ofSi(highestM, METRE) + " (45°)", height.toString());
    }
    riseM = m;
    return this;
  }

  /**
   * Angle of the vehicle while raised, measured instead of the rise.
   *
   * @param angle &gt; 0°, at most 45°
   * @return this builder
   */
  public AxleLiftBuilder angle(Quantity<Angle> angle) {
    angleRad = Require.quantity("AxleLift.angle", angle, DEGREE).positiveUpTo(STEEPEST_DEGREES);
    return this;
  }

  /**
   * Height of the front wheel centres above the ground, vehicle level.
   *
   * @param radius &gt; 0 m
   * @return this builder
   */
  public AxleLiftBuilder frontLoadedRadius(Quantity<Length> radius) {
    frontRadiusM = Require.quantity("AxleLift.frontLoadedRadius", radius, METRE).positive();
    return this;
  }

  /**
   * Height of the rear wheel centres above the ground, vehicle level.
   *
   * @param radius &gt; 0 m
   * @return this builder
   */
  public AxleLiftBuilder rearLoadedRadius(Quantity<Length> radius) {
    rearRadiusM = Require.quantity("AxleLift.rearLoadedRadius", radius, METRE).positive();
    return this;
  }

  /**
   * Height of the wheel centres of the axle on the ground while the other is raised: its tyres
   * carry more and sink. Needed only where the rise was measured from the ground; the level value
   * unless told.
   *
   * @param radius &gt; 0 m
   * @return this builder
   */
  public AxleLiftBuilder groundRadiusRaised(Quantity<Length> radius) {
    groundRadiusRaisedM = Require.quantity("AxleLift.groundRadiusRaised", radius, METRE).positive();
    return this;
  }

  /**
   * Step of the scales; each axle reading is taken as right within half a step. Unless told, the
   * tolerance of the scales of the level weighing, twice for an axle that stood on two of them.
   *
   * @param step ≥ 0 kg
   * @return this builder
   */
  public AxleLiftBuilder scaleResolution(Quantity<Mass> step) {
    readingToleranceKg =
        Require.quantity("AxleLift.scaleResolution", step, KILOGRAM).nonNegative() / 2;
    return this;
  }

  /**
   * Tolerance of each length: wheelbase, radii, rise.
   *
   * @param tolerance half-width, ≥ 0 m
   * @return this builder
   */
  public AxleLiftBuilder lengthTolerance(Quantity<Length> tolerance) {
    lengthToleranceM = Require.quantity("AxleLift.lengthTolerance", tolerance, METRE).nonNegative();
    return this;
  }

  /**
   * Tolerance of a measured angle.
   *
   * @param tolerance half-width, ≥ 0°
   * @return this builder
   */
  public AxleLiftBuilder angleTolerance(Quantity<Angle> tolerance) {
    angleToleranceRad =
        Require.quantity("AxleLift.angleTolerance", tolerance, DEGREE).nonNegative();
    return this;
  }

  /**
   * Works out the height.
   *
   * @return the weighing with its result
   * @throws InvalidInputException if readings are missing, both rise and angle are given, or the
   *     centre of gravity would lie below the ground
   */
  public AxleLift build() {
    new MissingFields("AxleLift")
        .field("reading", readingKg)
        .field("rise or angle", riseM != null ? riseM : angleRad)
        .field("frontLoadedRadius", frontRadiusM)
        .field("rearLoadedRadius", rearRadiusM)
        .rejectIfAny();
    if (riseM != null && angleRad != null) {
      throw InvalidInputException.of(
          "AxleLift.angle",
          "left out where the rise is given",
          Figure.ofSi(angleRad, DEGREE).toString());
    }
    return new AxleLift(new AxleLiftKernel(inputs(), tolerances(), angleRad != null));
  }

  /** In the order of the constants of {@link AxleLiftKernel}. */
  private double[] inputs() {
    boolean rear = lifted == Axle.REAR;
    double frontM = MissingFields.present(frontRadiusM);
    double rearM = MissingFields.present(rearRadiusM);
    double groundM = rear ? frontM : rearM;
    return new double[] {
      rear ? level.frontKg() : level.rearKg(),
      rear ? level.rearKg() : level.frontKg(),
      MissingFields.present(readingKg),
      level.wheelbaseM(),
      groundM,
      rear ? rearM : frontM,
      groundRadiusRaisedM != null ? groundM - groundRadiusRaisedM : 0,
      MissingFields.present(angleRad != null ? angleRad : riseM)
    };
  }

  private double[] tolerances() {
    double last = angleRad != null ? angleToleranceRad : lengthToleranceM;
    return new double[] {
      readingToleranceKg,
      readingToleranceKg,
      readingToleranceKg,
      lengthToleranceM,
      lengthToleranceM,
      lengthToleranceM,
      groundRadiusRaisedM != null ? lengthToleranceM : 0,
      last
    };
  }
}
