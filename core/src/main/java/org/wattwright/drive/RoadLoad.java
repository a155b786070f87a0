package org.wattwright.drive;

import static org.wattwright.units.WorkshopUnits.KILOGRAM;
import static org.wattwright.units.WorkshopUnits.KILOGRAM_PER_CUBIC_METRE;
import static org.wattwright.units.WorkshopUnits.KILOMETRE_PER_HOUR;
import static org.wattwright.units.WorkshopUnits.KILOWATT;
import static org.wattwright.units.WorkshopUnits.METRE;
import static org.wattwright.units.WorkshopUnits.METRE_PER_SECOND_SQUARED;
import static org.wattwright.units.WorkshopUnits.NEWTON;
import static org.wattwright.units.WorkshopUnits.SQUARE_METRE;
import static org.wattwright.units.WorkshopUnits.WATT_HOUR_PER_KILOMETRE;

import java.io.Serializable;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Acceleration;
import javax.measure.quantity.Area;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Power;
import javax.measure.quantity.Speed;
import org.jspecify.annotations.Nullable;
import org.wattwright.check.Basis;
import org.wattwright.check.Figure;
import org.wattwright.check.Recorder;
import org.wattwright.check.Source;
import org.wattwright.check.Worksheet;
import org.wattwright.internal.Require;
import org.wattwright.units.Density;
import org.wattwright.units.EnergyPerDistance;
import org.wattwright.units.ForcePerSpeed;
import org.wattwright.units.ForcePerSpeedSquared;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;
import org.wattwright.units.Measures;

/**
 * What holds a vehicle back: rolling resistance, air, grade; and the mass to accelerate.
 *
 * <p>R = m·g·(f(v)·cos θ + sin θ) + ½·ρ·c_d·A·(v + w)·|v + w|, θ = atan(grade), w the wind from
 * ahead: force comes from air speed, power R·v from road speed. From a coast-down, f₀ + f₁·v stands
 * in place of m·g·f(v) and grows with mass, f₂·v² in place of the air at its density. Source: J. Y.
 * Wong, Theory of Ground Vehicles (Wiley), chapter 3.
 *
 * <pre>{@code
 * RoadLoad load = RoadLoad.of(kilograms(1180), RollingResistance.radialTyre(), squareMetres(0.9));
 * load.at(kilometresPerHour(80));          // 394.8 N
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 */
public final class RoadLoad implements Serializable {
  private static final long serialVersionUID = 1L;
  private static final double STANDARD_GRAVITY = 9.80665;

  /** Steepest grade taken, as a tangent. */
  private static final double STEEPEST = 1;

  private static final Source WONG =
      Source.literature("J. Y. Wong, Theory of Ground Vehicles", "chapter 3, Wiley");

  private final Terms terms;

  private RoadLoad(Terms terms) {
    this.terms = terms;
  }

  /**
   * Numbers in SI: rolling force for each kilogram and unit of gravity, and drag ½·ρ·c_d·A.
   *
   * @param f0 at rest
   * @param f1 for each m/s
   * @param f2 for each (m/s)²
   */
  private record Terms(
      double massKg,
      double massFactor,
      double f0,
      double f1,
      double f2,
      double dragAreaM2,
      double densityKgPerM3,
      double windMs,
      double gravity,
      Basis basis)
      implements Serializable {}

  /**
   * From mass, rolling resistance and drag area, in still air of 1.189 kg/m³ (WLTP reference), with
   * 3 % of the mass for turning parts (UN GTR No. 15).
   *
   * @param mass of the vehicle with its load, &gt; 0 kg
   * @param rolling the coefficient
   * @param dragArea drag coefficient times frontal area, ≥ 0 m²
   * @return the road load
   * @throws InvalidInputException if an argument is outside its range
   */
  public static RoadLoad of(
      Quantity<Mass> mass, RollingResistance rolling, Quantity<Area> dragArea) {
    double[] f = rolling.terms();
    return new RoadLoad(
        new Terms(
            massKg(mass),
            RotatingMass.WLTP_FACTOR,
            f[0],
            f[1],
            f[2],
            Require.quantity("RoadLoad.dragArea", dragArea, SQUARE_METRE).nonNegative(),
            AirDensity.WLTP_KG_PER_M3,
            0,
            STANDARD_GRAVITY,
            rolling.basis()));
  }

  /**
   * From a coast-down: F = f₀ + f₁·v + f₂·v², measured at that mass in air of 1.189 kg/m³.
   *
   * @param mass of the vehicle as measured, &gt; 0 kg
   * @param f0 ≥ 0 N
   * @param f1 may be negative; the force may not be up to 200 km/h
   * @param f2 ≥ 0
   * @return the road load
   * @throws InvalidInputException if an argument is outside its range
   */
  public static RoadLoad coastDown(
      Quantity<Mass> mass,
      Quantity<Force> f0,
      Quantity<ForcePerSpeed> f1,
      Quantity<ForcePerSpeedSquared> f2) {
    double kg = massKg(mass);
    double f0N = Require.quantity("RoadLoad.f0", f0, NEWTON).nonNegative();
    double f1NsPerM = Kind.FORCE_PER_SPEED.siValueOf(f1);
    double f2Ns2PerM2 =
        Require.nonNegative("RoadLoad.f2", Kind.FORCE_PER_SPEED_SQUARED.siValueOf(f2));
    RoadLoad made =
        new RoadLoad(
            new Terms(
                kg,
                RotatingMass.WLTP_FACTOR,
                f0N / (kg * STANDARD_GRAVITY),
                f1NsPerM / (kg * STANDARD_GRAVITY),
                0,
                2 * f2Ns2PerM2 / AirDensity.WLTP_KG_PER_M3,
                AirDensity.WLTP_KG_PER_M3,
                0,
                STANDARD_GRAVITY,
                Basis.MEASURED));
    for (double speedMs = 0; speedMs <= 200 / 3.6; speedMs += 0.5) {
      if (!(made.rollingN(speedMs, 1) + made.dragN(speedMs) >= 0)) {
        throw InvalidInputException.of(
            "RoadLoad.f1", "such that f₀ + f₁·v + f₂·v² ≥ 0 N up to 200 km/h", f1.toString());
      }
    }
    return made;
  }

  /**
   * The default of the WLTP where nothing was measured, on the high side for most cars: 0.140·m·(1
   * + 0.00002·V²) + 0.0170·width·height·V² in N, V in km/h. Source: UN GTR No. 15, Annex 4,
   * paragraph 5.2.
   *
   * @param testMass &gt; 0 kg
   * @param width of the vehicle, &gt; 0 m
   * @param height of the vehicle, &gt; 0 m
   * @return the road load, estimated
   * @throws InvalidInputException if an argument is not positive
   */
  public static RoadLoad wltpDefault(
      Quantity<Mass> testMass, Quantity<Length> width, Quantity<Length> height) {
    double kg = massKg(testMass);
    double areaM2 =
        Require.quantity("RoadLoad.width", width, METRE).positive()
            * Require.quantity("RoadLoad.height", height, METRE).positive();
    double f0 = 0.140 / STANDARD_GRAVITY;
    double kmhPerMs2 = 3.6 * 3.6;
    return new RoadLoad(
        new Terms(
            kg,
            RotatingMass.WLTP_FACTOR,
            f0,
            0,
            f0 * 0.00002 * kmhPerMs2,
            2 * 0.0170 * areaM2 * kmhPerMs2 / AirDensity.WLTP_KG_PER_M3,
            AirDensity.WLTP_KG_PER_M3,
            0,
            STANDARD_GRAVITY,
            Basis.ESTIMATED));
  }

  private static double massKg(Quantity<Mass> mass) {
    return Require.quantity("RoadLoad.mass", mass, KILOGRAM).positive();
  }

  /**
   * With another mass, such as laden; rolling resistance grows with it.
   *
   * @param mass &gt; 0 kg
   * @return a new road load
   * @throws InvalidInputException if not positive
   */
  public RoadLoad withMass(Quantity<Mass> mass) {
    return with(massKg(mass), terms.massFactor, terms.densityKgPerM3, terms.windMs);
  }

  /**
   * With another factor for turning parts.
   *
   * @param factor from 1 to 3
   * @return a new road load
   * @throws InvalidInputException if it is outside its range
   */
  public RoadLoad withRotatingMassFactor(double factor) {
    double checked = Require.between("RoadLoad.rotatingMassFactor", factor, 1, 3);
    return with(terms.massKg, checked, terms.densityKgPerM3, terms.windMs);
  }

  /**
   * In other air.
   *
   * @param density &gt; 0 kg/m³
   * @return a new road load
   * @throws InvalidInputException if not positive
   */
  public RoadLoad withAirDensity(Quantity<Density> density) {
    double kgPerM3 =
        Require.quantity("RoadLoad.airDensity", density, KILOGRAM_PER_CUBIC_METRE).positive();
    return with(terms.massKg, terms.massFactor, kgPerM3, terms.windMs);
  }

  /**
   * With wind along the road.
   *
   * @param fromAhead positive against the vehicle, negative from behind; −50 m/s to 50 m/s
   * @return a new road load
   * @throws InvalidInputException if it is outside its range
   */
  public RoadLoad withWind(Quantity<Speed> fromAhead) {
    double windMs =
        Require.quantity("RoadLoad.wind", fromAhead, KILOMETRE_PER_HOUR).between(-180, 180);
    return with(terms.massKg, terms.massFactor, terms.densityKgPerM3, windMs);
  }

  /**
   * Under another gravity; 9.80665 m/s² unless told.
   *
   * @param acceleration &gt; 0 m/s²
   * @return a new road load
   * @throws InvalidInputException if not positive
   */
  public RoadLoad withGravity(Quantity<Acceleration> acceleration) {
    double g =
        Require.quantity("RoadLoad.gravity", acceleration, METRE_PER_SECOND_SQUARED).positive();
    Terms t = terms;
    return new RoadLoad(
        new Terms(
            t.massKg,
            t.massFactor,
            t.f0,
            t.f1,
            t.f2,
            t.dragAreaM2,
            t.densityKgPerM3,
            t.windMs,
            g,
            t.basis));
  }

  private RoadLoad with(double massKg, double massFactor, double density, double windMs) {
    Terms t = terms;
    return new RoadLoad(
        new Terms(
            massKg,
            massFactor,
            t.f0,
            t.f1,
            t.f2,
            t.dragAreaM2,
            density,
            windMs,
            t.gravity,
            t.basis));
  }

  /** Rolling resistance and drag area each times a factor. */
  RoadLoad scaled(double rollingFactor, double dragFactor) {
    Terms t = terms;
    return new RoadLoad(
        new Terms(
            t.massKg,
            t.massFactor,
            t.f0 * rollingFactor,
            t.f1 * rollingFactor,
            t.f2 * rollingFactor,
            t.dragAreaM2 * dragFactor,
            t.densityKgPerM3,
            t.windMs,
            t.gravity,
            t.basis));
  }

  /**
   * Mass of the vehicle with its load.
   *
   * @return in kg
   */
  public Quantity<Mass> mass() {
    return KILOGRAM.of(terms.massKg);
  }

  /**
   * Drag coefficient times frontal area.
   *
   * @return in m²
   */
  public Quantity<Area> dragArea() {
    return SQUARE_METRE.of(terms.dragAreaM2);
  }

  /**
   * What it rests on.
   *
   * @return weakest basis of its inputs
   */
  public Basis basis() {
    return terms.basis;
  }

  /**
   * Force at steady speed on the level.
   *
   * @param speed ≥ 0
   * @return in N
   * @throws InvalidInputException if the speed is negative
   */
  public Quantity<Force> at(Quantity<Speed> speed) {
    return at(speed, 0);
  }

  /**
   * Force at steady speed on a grade.
   *
   * @param speed ≥ 0
   * @param grade tangent of the slope, from −1 to 1, positive uphill
   * @return in N; negative where the slope drives
   * @throws InvalidInputException if an argument is outside its range
   */
  public Quantity<Force> at(Quantity<Speed> speed, double grade) {
    return Kind.FORCE.ofSi(forceN(speedMs(speed), grade, Recorder.OFF));
  }

  /**
   * Power at the wheels to hold a speed on a grade: R·v.
   *
   * @param speed ≥ 0
   * @param grade tangent of the slope, from −1 to 1, positive uphill
   * @return in kW
   * @throws InvalidInputException if an argument is outside its range
   */
  public Quantity<Power> powerAt(Quantity<Speed> speed, double grade) {
    double speedMs = speedMs(speed);
    return Kind.POWER.ofSi(forceN(speedMs, grade, Recorder.OFF) * speedMs);
  }

  /**
   * Energy at the wheels for each distance at steady speed on the level: the force in other words.
   *
   * @param speed ≥ 0
   * @return in W·h/km
   * @throws InvalidInputException if the speed is negative
   */
  public Quantity<EnergyPerDistance> wheelEnergyAt(Quantity<Speed> speed) {
    return WATT_HOUR_PER_KILOMETRE.of(forceN(speedMs(speed), 0, Recorder.OFF) / 3.6);
  }

  /**
   * The working of force and power at a speed.
   *
   * @param speed ≥ 0
   * @param grade tangent of the slope, from −1 to 1, positive uphill
   * @return the steps as computed
   * @throws InvalidInputException if an argument is outside its range
   */
  public Worksheet worksheet(Quantity<Speed> speed, double grade) {
    Worksheet.Recording recording =
        Worksheet.record("Road load at " + speed + ", grade " + Figure.share(grade));
    double speedMs = speedMs(speed);
    double forceN = forceN(speedMs, grade, recording);
    recording
        .step("P", "power at the wheels")
        .formula("R·v")
        .with("R", forceN, NEWTON)
        .with("v", Figure.of(speed, KILOMETRE_PER_HOUR))
        .basis(terms.basis)
        .gives(forceN * speedMs, KILOWATT);
    return recording.toWorksheet();
  }

  private static double speedMs(Quantity<Speed> speed) {
    return Require.quantity("RoadLoad.speed", speed, KILOMETRE_PER_HOUR).nonNegative();
  }

  private double forceN(double speedMs, double grade, Recorder recorder) {
    double slope = Math.atan(Require.between("RoadLoad.grade", grade, -STEEPEST, STEEPEST));
    double rollingN = rollingN(speedMs, Math.cos(slope));
    double dragN = dragN(speedMs);
    double gradeN = gradeN(Math.sin(slope));
    double forceN = rollingN + dragN + gradeN;
    if (recorder.isOn()) {
      record(speedMs, slope, new double[] {rollingN, dragN, gradeN, forceN}, recorder);
    }
    return forceN;
  }

  private void record(double speedMs, double slope, double[] forcesN, Recorder recorder) {
    Figure angle = Figure.of(Kind.ANGLE.ofSi(slope), Kind.ANGLE);
    recorder
        .step("R_r", "rolling resistance")
        .formula("m·g·f·cos(θ)")
        .with("m", terms.massKg, KILOGRAM)
        .with("g", terms.gravity, METRE_PER_SECOND_SQUARED)
        .with("f", Figure.number(coefficient(speedMs)))
        .with("θ", angle)
        .basis(terms.basis)
        .source(WONG)
        .gives(forcesN[0], NEWTON);
    recorder
        .step("R_a", "air drag")
        .formula("½·ρ·c_d·A·(v + w)²")
        .with("ρ", terms.densityKgPerM3, KILOGRAM_PER_CUBIC_METRE)
        .with("c_d·A", terms.dragAreaM2, SQUARE_METRE)
        .with("v", speedMs, KILOMETRE_PER_HOUR)
        .with("w", terms.windMs, KILOMETRE_PER_HOUR)
        .basis(terms.basis)
        .source(WONG)
        .gives(forcesN[1], NEWTON);
    recorder
        .step("R_g", "grade resistance")
        .formula("m·g·sin(θ)")
        .with("m", terms.massKg, KILOGRAM)
        .with("g", terms.gravity, METRE_PER_SECOND_SQUARED)
        .with("θ", angle)
        .gives(forcesN[2], NEWTON);
    recorder
        .step("R", "road load")
        .formula("R_r + R_a + R_g")
        .with("R_r", forcesN[0], NEWTON)
        .with("R_a", forcesN[1], NEWTON)
        .with("R_g", forcesN[2], NEWTON)
        .basis(terms.basis)
        .gives(forcesN[3], NEWTON);
  }

  double massKg() {
    return terms.massKg;
  }

  double inertiaKg() {
    return terms.massKg * terms.massFactor;
  }

  double gravity() {
    return terms.gravity;
  }

  /** Factor of turning parts other than a stated rotor. */
  double massFactor() {
    return terms.massFactor;
  }

  private double coefficient(double speedMs) {
    return terms.f0 + (terms.f1 + terms.f2 * speedMs) * speedMs;
  }

  double rollingN(double speedMs, double cosine) {
    return terms.massKg * terms.gravity * cosine * coefficient(speedMs);
  }

  double dragN(double speedMs) {
    double airMs = speedMs + terms.windMs;
    return 0.5 * terms.densityKgPerM3 * terms.dragAreaM2 * airMs * Math.abs(airMs);
  }

  double gradeN(double sine) {
    return terms.massKg * terms.gravity * sine;
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof RoadLoad that && terms.equals(that.terms);
  }

  @Override
  public int hashCode() {
    return Objects.hash(terms);
  }

  /**
   * Mass, drag area and force at 80 km/h.
   *
   * @return for example {@code 1180 kg, c_d·A 0.9 m², 394.8 N at 80 km/h}
   */
  @Override
  public String toString() {
    Quantity<Speed> speed = KILOMETRE_PER_HOUR.of(80);
    return Measures.format(mass(), Kind.MASS)
        + ", c_d·A "
        + Measures.format(dragArea(), SQUARE_METRE, 3)
        + ", "
        + Measures.format(at(speed), Kind.FORCE)
        + " at 80 km/h";
  }
}
