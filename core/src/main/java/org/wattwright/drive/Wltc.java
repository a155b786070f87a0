package org.wattwright.drive;

import static org.wattwright.units.WorkshopUnits.KILOGRAM;
import static org.wattwright.units.WorkshopUnits.KILOMETRE_PER_HOUR;
import static org.wattwright.units.WorkshopUnits.KILOWATT;

import javax.measure.Quantity;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Power;
import javax.measure.quantity.Speed;
import org.wattwright.internal.Require;
import org.wattwright.units.InvalidInputException;

/**
 * Which WLTC a vehicle drives, and how it is slowed down for one that is too weak.
 *
 * <p>Source: UN GTR No. 15, Annex 1, paragraphs 2 and 8 (the constants of the downscaling from
 * memory; the speeds and times among them agree with the tables).
 */
public final class Wltc {
  private static final double DRIVER_KG = 75;
  private static final double CLASS_1_W_PER_KG = 22;
  private static final double CLASS_2_W_PER_KG = 34;
  private static final double CLASS_3B_KMH = 120;
  private static final double LEAST_FACTOR = 0.010;

  private Wltc() {}

  /**
   * Cycle of a battery-electric vehicle: class 3 whatever its power; 3a below 120 km/h, 3b at or
   * above. Paragraph 2.3.
   *
   * @param topSpeed highest speed of the vehicle, &gt; 0
   * @return class 3a or 3b
   * @throws InvalidInputException if not positive
   */
  public static StandardCycle forElectric(Quantity<Speed> topSpeed) {
    double kmh = Require.quantity("Wltc.topSpeed", topSpeed, KILOMETRE_PER_HOUR).positive() * 3.6;
    return kmh < CLASS_3B_KMH ? StandardCycle.WLTC_CLASS_3A : StandardCycle.WLTC_CLASS_3B;
  }

  /**
   * Cycle by power to mass: class 1 up to 22 W/kg, class 2 up to 34 W/kg, class 3 above, with the
   * mass in running order less 75 kg. Paragraph 2.
   *
   * @param ratedPower &gt; 0 kW
   * @param massInRunningOrder with driver, &gt; 75 kg
   * @param topSpeed highest speed, &gt; 0; parts class 3a from 3b
   * @return the cycle
   * @throws InvalidInputException if an argument is outside its range
   */
  public static StandardCycle byPowerToMass(
      Quantity<Power> ratedPower, Quantity<Mass> massInRunningOrder, Quantity<Speed> topSpeed) {
    double powerW = Require.quantity("Wltc.ratedPower", ratedPower, KILOWATT).positive();
    double massKg =
        Require.quantity("Wltc.massInRunningOrder", massInRunningOrder, KILOGRAM).positive();
    if (!(massKg > DRIVER_KG)) {
      throw InvalidInputException.of(
          "Wltc.massInRunningOrder", "> 75 kg", massInRunningOrder.toString());
    }
    double ratio = powerW / (massKg - DRIVER_KG);
    if (ratio <= CLASS_1_W_PER_KG) {
      return StandardCycle.WLTC_CLASS_1;
    }
    return ratio <= CLASS_2_W_PER_KG ? StandardCycle.WLTC_CLASS_2 : forElectric(topSpeed);
  }

  /**
   * Where and how a class is slowed down.
   *
   * @param from first second of the stretch
   * @param peak second of the highest power
   * @param to second at which the trace is met again
   */
  private record Law(
      int from, int peak, int to, double kmh, double ms2, double r0, double a1, double b1) {
    static Law of(StandardCycle cycle) {
      return switch (cycle) {
        case WLTC_CLASS_1 -> new Law(651, 764, 907, 61.4, 0.18, 0.978, 0.680, 0.665);
        case WLTC_CLASS_2 -> new Law(1520, 1574, 1743, 109.9, 0.36, 0.866, 0.606, 0.525);
        case WLTC_CLASS_3A, WLTC_CLASS_3B ->
            new Law(1533, 1566, 1763, 111.9, 0.50, 0.867, 0.588, 0.510);
        default -> throw InvalidInputException.of("Wltc.cycle", "a WLTC", cycle.toString());
      };
    }
  }

  /**
   * Factor of the downscaling: a₁·r + b₁ with r the power that the hardest point needs over the
   * rated power; 0 if r is below r₀, or if the factor would be 0.010 or less. Rounded to three
   * places. Paragraph 8.3.
   *
   * @param cycle a WLTC
   * @param load road load at the test mass; its power is (R(v)·v + 1.03·m·v·a)
   * @param ratedPower &gt; 0 kW
   * @return 0 (none) to below 1
   * @throws InvalidInputException if the cycle is no WLTC or the power is not positive
   */
  public static double downscalingFactor(
      StandardCycle cycle, RoadLoad load, Quantity<Power> ratedPower) {
    Law law = Law.of(cycle);
    double powerW = Require.quantity("Wltc.ratedPower", ratedPower, KILOWATT).positive();
    double speedMs = law.kmh / 3.6;
    double forceN =
        load.rollingN(speedMs, 1)
            + load.dragN(speedMs)
            + RotatingMass.WLTP_FACTOR * load.massKg() * law.ms2;
    double ratio = forceN * speedMs / powerW;
    double factor = Math.rint((law.a1 * ratio - law.b1) * 1000) / 1000;
    boolean none = ratio < law.r0 || factor <= LEAST_FACTOR;
    return none ? 0 : Math.min(factor, 0.999);
  }

  /**
   * The cycle, slowed down by a factor: accelerations up to the hardest point times (1 − f), what
   * follows scaled so that the trace is met again. Paragraph 8.2.
   *
   * @param cycle a WLTC
   * @param factor of the downscaling, 0 to below 1
   * @return the cycle to drive
   * @throws InvalidInputException if the cycle is no WLTC or the factor is outside its range
   */
  public static DriveCycle downscaled(StandardCycle cycle, double factor) {
    Law law = Law.of(cycle);
    double kept = 1 - Require.between("Wltc.factor", factor, 0, 0.999);
    DriveCycle original = cycle.cycle();
    if (factor == 0) {
      return original;
    }
    double[] speedsMs = original.speedsMs();
    double baseMs = speedsMs[law.from];
    double endMs = speedsMs[law.to];
    double peakMs = speedsMs[law.peak];
    double newPeakMs = baseMs + (peakMs - baseMs) * kept;
    double correction = (newPeakMs - endMs) / (peakMs - endMs);
    for (int i = law.from + 1; i < law.to; i++) {
      speedsMs[i] =
          i <= law.peak
              ? baseMs + (speedsMs[i] - baseMs) * kept
              : newPeakMs + (speedsMs[i] - peakMs) * correction;
    }
    return original.withSpeeds(original.name() + ", downscaled by " + factor, speedsMs);
  }
}
