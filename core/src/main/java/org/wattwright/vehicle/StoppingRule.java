package org.wattwright.vehicle;

import static org.wattwright.units.WorkshopUnits.KILOGRAM;
import static org.wattwright.units.WorkshopUnits.KILOJOULE;
import static org.wattwright.units.WorkshopUnits.KILOMETRE_PER_HOUR;
import static org.wattwright.units.WorkshopUnits.METRE;
import static org.wattwright.units.WorkshopUnits.METRE_PER_SECOND_SQUARED;

import java.io.Serializable;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Acceleration;
import javax.measure.quantity.Energy;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Speed;
import org.wattwright.check.Check;
import org.wattwright.check.Figure;
import org.wattwright.check.Source;
import org.wattwright.internal.Require;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;
import org.wattwright.units.Measure;

/**
 * A prescribed stop: from which speed, with what mean deceleration, within what distance.
 *
 * <p>Distance: t·v + v²/(2·d), with t the build-up allowance; UN rules write it 0.1·v +
 * v²/(25.92·d) in km/h and m, t = 0.36 s. Mean fully developed deceleration: from 0.8 to 0.1 of the
 * speed, (v_b² − v_e²)/(25.92·(s_e − s_b)). Whether a rule binds a converted vehicle is for the
 * local code to say. Immutable and thread-safe.
 *
 * @param name what is prescribed
 * @param speed from which, &gt; 0 km/h
 * @param deceleration least mean fully developed deceleration, &gt; 0 m/s²
 * @param source the rule
 */
public record StoppingRule(
    String name, Quantity<Speed> speed, Quantity<Acceleration> deceleration, Source source)
    implements Serializable {
  /** Passenger car, service brake, cold, motor disconnected; UN R13-H, Annex 3, from memory. */
  public static final StoppingRule R13H_SERVICE = r13h("service brake, cold", 6.43);

  /** Passenger car, secondary brake; UN R13-H, Annex 3, from memory. */
  public static final StoppingRule R13H_SECONDARY = r13h("secondary brake", 2.44);

  /**
   * Checks the ranges.
   *
   * @param name what is prescribed
   * @param speed from which, &gt; 0 km/h
   * @param deceleration least mean fully developed deceleration, &gt; 0 m/s²
   * @param source the rule
   * @throws InvalidInputException if an argument is outside its range
   */
  public StoppingRule {
    name = Require.text("StoppingRule.name", name);
    Require.quantity("StoppingRule.speed", speed, KILOMETRE_PER_HOUR).positive();
    Require.quantity("StoppingRule.deceleration", deceleration, METRE_PER_SECOND_SQUARED)
        .positive();
    speed = Measure.from(speed, Kind.SPEED);
    deceleration = Measure.from(deceleration, Kind.ACCELERATION);
    Objects.requireNonNull(source, "source");
  }

  private static StoppingRule r13h(String name, double decelerationMs2) {
    return new StoppingRule(
        name,
        KILOMETRE_PER_HOUR.of(100),
        METRE_PER_SECOND_SQUARED.of(decelerationMs2),
        Source.standard("UN R13-H", "Annex 3, from memory"));
  }

  /**
   * Distance at the constant deceleration alone, without build-up: v²/(2·d).
   *
   * @return in m
   */
  public Quantity<Length> brakingDistance() {
    double speedMs = Kind.SPEED.siValueOf(speed);
    return Si.length(speedMs * speedMs / (2 * Kind.ACCELERATION.siValueOf(deceleration)));
  }

  /**
   * Heat that one stop puts into the brakes: m·v²/2, turning parts and resistance left out.
   *
   * @param mass of the laden vehicle, &gt; 0 kg
   * @return in kJ
   * @throws InvalidInputException if the mass is not positive
   */
  public Quantity<Energy> heat(Quantity<Mass> mass) {
    double massKg = Require.quantity("StoppingRule.mass", mass, KILOGRAM).positive();
    double speedMs = Kind.SPEED.siValueOf(speed);
    return KILOJOULE.of(massKg * speedMs * speedMs / 2 / 1000);
  }

  /**
   * Mean fully developed deceleration of a measured stop: from 0.8 to 0.1 of the speed.
   *
   * @param from speed at which the stop began, &gt; 0 km/h
   * @param between distance rolled between 0.8 and 0.1 of that speed, &gt; 0 m
   * @return in m/s²
   * @throws InvalidInputException if an argument is not positive
   */
  public static Quantity<Acceleration> meanDeceleration(
      Quantity<Speed> from, Quantity<Length> between) {
    double speedMs = Require.quantity("StoppingRule.from", from, KILOMETRE_PER_HOUR).positive();
    double distanceM = Require.quantity("StoppingRule.between", between, METRE).positive();
    return Kind.ACCELERATION.ofSi((0.64 - 0.01) * speedMs * speedMs / (2 * distanceM));
  }

  /**
   * Whether the tyres can give the deceleration before a wheel locks.
   *
   * @param balance brakes and weight split
   * @param adhesion coefficient μ of the road, above 0 and up to 2
   * @return the check {@code brake.deceleration}; worse end of an estimated height
   * @throws InvalidInputException if the coefficient is outside its range
   */
  public Check check(BrakeBalance balance, double adhesion) {
    double lowestMs2 =
        balance.extremes().stream()
            .mapToDouble(end -> Kind.ACCELERATION.siValueOf(end.firstLock(adhesion).deceleration()))
            .min()
            .orElseThrow();
    return Check.named("brake.deceleration", "deceleration at first lock, " + name)
        .source(source)
        .basis(balance.basis())
        .safety()
        .atLeast(
            Figure.ofSi(lowestMs2, METRE_PER_SECOND_SQUARED),
            Figure.of(deceleration, METRE_PER_SECOND_SQUARED));
  }
}
