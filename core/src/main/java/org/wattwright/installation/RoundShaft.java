package org.wattwright.installation;

import static org.wattwright.units.WorkshopUnits.MEGAPASCAL;
import static org.wattwright.units.WorkshopUnits.MILLIMETRE;
import static org.wattwright.units.WorkshopUnits.NEWTON_METRE;
import static org.wattwright.units.WorkshopUnits.REVOLUTION_PER_MINUTE;

import java.io.Serializable;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import javax.measure.quantity.Pressure;
import org.wattwright.check.Basis;
import org.wattwright.check.Check;
import org.wattwright.check.Figure;
import org.wattwright.check.Given;
import org.wattwright.check.Source;
import org.wattwright.internal.Require;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;
import org.wattwright.units.Measure;
import org.wattwright.units.RotationalSpeed;
import org.wattwright.units.Torque;

/**
 * A round steel shaft, solid or tube: torsion, twist and whirling.
 *
 * <p>τ = 16·T·D/(π·(D⁴ − d⁴)); first yield at τ = σ_y/√3; twist T·L/(G·J); critical speed n =
 * (30/π)·(π/L)²·√(E/ρ·(D² + d²)/16), an even beam held at its ends: joints, end pieces and splines
 * lower it. Steel: E 207 GPa, G 80 GPa, ρ 7850 kg/m³. Source: strength of materials. The smallest
 * section counts, at the root of the splines. Immutable and thread-safe.
 *
 * @param outer diameter D, &gt; 0 mm
 * @param inner diameter d, 0 for a solid shaft, below the outer
 * @param length between the supports, &gt; 0 mm
 * @param yieldStrength σ_y in tension, &gt; 0 MPa, with its basis
 */
public record RoundShaft(
    Quantity<Length> outer,
    Quantity<Length> inner,
    Quantity<Length> length,
    Given<Quantity<Pressure>> yieldStrength)
    implements Serializable {
  /** Highest running speed as a share of the critical one; 0.65 to 0.75 in use. */
  public static final double USUAL_SPEED_SHARE = 0.75;

  private static final double YOUNG_PA = 207e9;
  private static final double SHEAR_PA = 80e9;
  private static final double DENSITY = 7850;
  private static final Source TORSION =
      Source.literature("strength of materials", "torsion of a round bar, von Mises criterion");

  /**
   * Checks the values.
   *
   * @param outer &gt; 0 mm
   * @param inner 0 up to below the outer
   * @param length &gt; 0 mm
   * @param yieldStrength &gt; 0 MPa
   * @throws InvalidInputException if a value is outside its range
   */
  public RoundShaft {
    double outerM = Require.quantity("RoundShaft.outer", outer, MILLIMETRE).positive();
    double innerM = Require.quantity("RoundShaft.inner", inner, MILLIMETRE).nonNegative();
    if (!(innerM < outerM)) {
      throw InvalidInputException.of("RoundShaft.inner", "< " + outer, inner.toString());
    }
    Require.quantity("RoundShaft.length", length, MILLIMETRE).positive();
    Require.quantity("RoundShaft.yieldStrength", yieldStrength.value(), MEGAPASCAL).positive();
    outer = Measure.from(outer, Kind.LENGTH);
    inner = Measure.from(inner, Kind.LENGTH);
    length = Measure.from(length, Kind.LENGTH);
  }

  /**
   * A solid shaft.
   *
   * @param diameter smallest, &gt; 0 mm
   * @param length between the supports, &gt; 0 mm
   * @param yieldStrength in tension, &gt; 0 MPa
   * @return the shaft
   * @throws InvalidInputException if a value is not positive
   */
  public static RoundShaft solid(
      Quantity<Length> diameter, Quantity<Length> length, Given<Quantity<Pressure>> yieldStrength) {
    return new RoundShaft(diameter, MILLIMETRE.of(0), length, yieldStrength);
  }

  private double outerM() {
    return Kind.LENGTH.siValueOf(outer);
  }

  private double innerM() {
    return Kind.LENGTH.siValueOf(inner);
  }

  /** W = π·(D⁴ − d⁴)/(16·D). */
  private double polarModulusM3() {
    return Math.PI * (Math.pow(outerM(), 4) - Math.pow(innerM(), 4)) / (16 * outerM());
  }

  /**
   * Highest shear stress: 16·T·D/(π·(D⁴ − d⁴)).
   *
   * @param torque either sign
   * @return ≥ 0 MPa
   */
  public Quantity<Pressure> torsionStress(Quantity<Torque> torque) {
    return Kind.PRESSURE.ofSi(Math.abs(Kind.TORQUE.siValueOf(torque)) / polarModulusM3());
  }

  /**
   * Torque at which the surface begins to yield: W·σ_y/√3.
   *
   * @return in N·m
   */
  public Quantity<Torque> yieldTorque() {
    return NEWTON_METRE.of(shearYieldPa() * polarModulusM3());
  }

  /**
   * Torque at which the whole section yields: π·(D³ − d³)/12·σ_y/√3, 4/3 of first yield if solid.
   *
   * @return in N·m
   */
  public Quantity<Torque> plasticTorque() {
    double m3 = Math.PI * (Math.pow(outerM(), 3) - Math.pow(innerM(), 3)) / 12;
    return NEWTON_METRE.of(shearYieldPa() * m3);
  }

  private double shearYieldPa() {
    return Kind.PRESSURE.siValueOf(yieldStrength.value()) / Math.sqrt(3);
  }

  /**
   * Smallest solid diameter for a torque: (16·T/(π·τ))^⅓.
   *
   * @param torque &gt; 0 N·m
   * @param allowedShear τ, &gt; 0 MPa
   * @return in mm
   * @throws InvalidInputException if a value is not positive
   */
  public static Quantity<Length> smallestSolidDiameter(
      Quantity<Torque> torque, Quantity<Pressure> allowedShear) {
    double torqueNm = Require.quantity("RoundShaft.torque", torque, NEWTON_METRE).positive();
    double shearPa =
        Require.quantity("RoundShaft.allowedShear", allowedShear, MEGAPASCAL).positive();
    return Kind.LENGTH.ofSi(Math.cbrt(16 * torqueNm / (Math.PI * shearPa)));
  }

  /**
   * Twist over its length: T·L/(G·J).
   *
   * @param torque either sign
   * @return with the sign of the torque
   */
  public Quantity<Angle> twist(Quantity<Torque> torque) {
    double polarM4 = polarModulusM3() * outerM() / 2;
    return Kind.ANGLE.ofSi(
        Kind.TORQUE.siValueOf(torque) * Kind.LENGTH.siValueOf(length) / (SHEAR_PA * polarM4));
  }

  /**
   * Speed at which it whirls: (30/π)·(π/L)²·√(E/ρ·(D² + d²)/16).
   *
   * @return in 1/min
   */
  public Quantity<RotationalSpeed> criticalSpeed() {
    return Kind.ROTATIONAL_SPEED.ofSi(criticalRadPerS());
  }

  private double criticalRadPerS() {
    double waveM = Math.PI / Kind.LENGTH.siValueOf(length);
    double gyration2 = (outerM() * outerM() + innerM() * innerM()) / 16;
    return waveM * waveM * Math.sqrt(YOUNG_PA / DENSITY * gyration2);
  }

  /**
   * What a half-shaft must carry: half of what the tyres can take or of what the motor gives,
   * whichever is less. The tyres are the fuse.
   *
   * @param atTyreSlip torque of the whole axle at tyre slip, &gt; 0 N·m
   * @param fromMotor torque of the whole axle from the motor, &gt; 0 N·m
   * @return of one half-shaft, in N·m
   * @throws InvalidInputException if a value is not positive
   */
  public static Quantity<Torque> halfShaftTorque(
      Quantity<Torque> atTyreSlip, Quantity<Torque> fromMotor) {
    double slipNm = Require.quantity("RoundShaft.atTyreSlip", atTyreSlip, NEWTON_METRE).positive();
    double motorNm = Require.quantity("RoundShaft.fromMotor", fromMotor, NEWTON_METRE).positive();
    return NEWTON_METRE.of(Math.min(slipNm, motorNm) / 2);
  }

  /**
   * Whether it stays elastic.
   *
   * @param torque ≥ 0 N·m, with its basis
   * @return check {@code installation.shaft-torque}
   * @throws InvalidInputException if the torque is negative
   */
  public Check checkTorque(Given<Quantity<Torque>> torque) {
    Require.quantity("RoundShaft.torque", torque.value(), NEWTON_METRE).nonNegative();
    return Check.named("installation.shaft-torque", "torque against first yield of the shaft")
        .source(TORSION)
        .basisOf(torque, yieldStrength)
        .safety()
        .atMost(Figure.of(torque.value(), NEWTON_METRE), Figure.of(yieldTorque(), NEWTON_METRE));
  }

  /**
   * Whether it runs far enough below its critical speed: n ≤ share·n_crit.
   *
   * @param speed highest running speed, ≥ 0
   * @param basis what the length and the speed rest on
   * @param share of the critical speed that is allowed, above 0 and at most 1; see {@link
   *     #USUAL_SPEED_SHARE}
   * @return check {@code installation.critical-speed}
   * @throws InvalidInputException if a value is outside its range
   */
  public Check checkSpeed(Quantity<RotationalSpeed> speed, Basis basis, double share) {
    Require.quantity("RoundShaft.speed", speed, REVOLUTION_PER_MINUTE).nonNegative();
    Require.positive("RoundShaft.share", share);
    Require.fraction("RoundShaft.share", share);
    Objects.requireNonNull(basis, "basis");
    return Check.named("installation.critical-speed", "highest speed against critical speed")
        .source(Source.commonPractice("0.65 to 0.75 of the critical speed of an ideal beam"))
        .basis(basis)
        .safety()
        .atMost(
            Figure.of(speed, REVOLUTION_PER_MINUTE),
            Figure.ofSi(share * criticalRadPerS(), REVOLUTION_PER_MINUTE));
  }
}
