package org.wattwright.installation;

import static org.wattwright.units.WorkshopUnits.KILOMETRE_PER_HOUR;
import static org.wattwright.units.WorkshopUnits.METRE_PER_SECOND_SQUARED;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Acceleration;
import javax.measure.quantity.Speed;
import org.wattwright.check.CautionBand;
import org.wattwright.check.Check;
import org.wattwright.check.CheckBuilder;
import org.wattwright.check.Figure;
import org.wattwright.check.Source;
import org.wattwright.internal.Require;

/**
 * When regeneration on release of the accelerator lights the stop lamps.
 *
 * <p>Up to 0.7 m/s² it shall not, up to 1.3 m/s² it may, above that it shall; once lit, off at the
 * latest below 0.7 m/s². Source: UN R13-H, para 5.2.22.4; later series changed the wording, and
 * local rules may differ.
 */
public final class StopLampRule {
  private static final double SHALL_NOT_UP_TO = 0.7;
  private static final double MAY_UP_TO = 1.3;
  private static final double EMERGENCY_ABOVE = 6;
  private static final double EMERGENCY_OFF_BELOW = 2.5;
  private static final double EMERGENCY_SPEED_KMH = 50;

  private static final Source R13H = Source.standard("UN R13-H", "para 5.2.22.4");

  /** What the lamps have to do. */
  public enum Signal {
    /** They stay dark. */
    SHALL_NOT,
    /** Both are allowed. */
    MAY,
    /** They light. */
    SHALL
  }

  private StopLampRule() {}

  /**
   * What a deceleration asks for.
   *
   * @param deceleration on release of the accelerator, ≥ 0 m/s²; exactly 0.7 and 1.3 belong to the
   *     lower class
   * @return the signal
   * @throws org.wattwright.units.InvalidInputException if negative
   */
  public static Signal signalFor(Quantity<Acceleration> deceleration) {
    double rate = rate("StopLampRule.deceleration", deceleration);
    if (rate <= SHALL_NOT_UP_TO) {
      return Signal.SHALL_NOT;
    }
    return rate <= MAY_UP_TO ? Signal.MAY : Signal.SHALL;
  }

  /**
   * Below this the signal is off at the latest, once lit.
   *
   * @return 0.7 m/s²
   */
  public static Quantity<Acceleration> offBelow() {
    return METRE_PER_SECOND_SQUARED.of(SHALL_NOT_UP_TO);
  }

  /**
   * Above this the signal must be lit.
   *
   * @return 1.3 m/s²
   */
  public static Quantity<Acceleration> onAbove() {
    return METRE_PER_SECOND_SQUARED.of(MAY_UP_TO);
  }

  /**
   * Whether the flashing emergency stop signal may start: above 6 m/s² and 50 km/h.
   *
   * @param deceleration ≥ 0 m/s²
   * @param speed ≥ 0 km/h
   * @return whether it may start
   * @throws org.wattwright.units.InvalidInputException if a value is negative
   */
  public static boolean mayStartEmergencySignal(
      Quantity<Acceleration> deceleration, Quantity<Speed> speed) {
    Require.quantity("StopLampRule.speed", speed, KILOMETRE_PER_HOUR).nonNegative();
    return rate("StopLampRule.deceleration", deceleration) > EMERGENCY_ABOVE
        && KILOMETRE_PER_HOUR.valueOf(speed) > EMERGENCY_SPEED_KMH;
  }

  /**
   * Whether the emergency stop signal must be off: below 2.5 m/s².
   *
   * @param deceleration ≥ 0 m/s²
   * @return whether it must be off
   * @throws org.wattwright.units.InvalidInputException if negative
   */
  public static boolean mustEndEmergencySignal(Quantity<Acceleration> deceleration) {
    return rate("StopLampRule.deceleration", deceleration) < EMERGENCY_OFF_BELOW;
  }

  private static double rate(String field, Quantity<Acceleration> value) {
    return Require.quantity(field, value, METRE_PER_SECOND_SQUARED).nonNegative();
  }

  private static CheckBuilder named(String code, String what) {
    return Check.named(code, what).source(R13H).cautionBand(CautionBand.NONE).safety();
  }

  /**
   * Regeneration that lights no lamp: {@code installation.stop-lamp}.
   *
   * @param strongest deceleration on release of the accelerator, at the least mass, ≥ 0 m/s²
   * @return FAIL where the lamps have to light
   * @throws org.wattwright.units.InvalidInputException if negative
   */
  public static Check checkWithoutSignal(Quantity<Acceleration> strongest) {
    rate("StopLampRule.deceleration", strongest);
    return named("installation.stop-lamp", "regeneration on release, lamps not connected to it")
        .atMost(
            Figure.of(strongest, METRE_PER_SECOND_SQUARED),
            Figure.of(onAbove(), METRE_PER_SECOND_SQUARED));
  }

  /**
   * Where the drive lights and puts out the lamps.
   *
   * @param lightsAbove ≥ 0 m/s²
   * @return a switch that puts them out at the same deceleration
   * @throws org.wattwright.units.InvalidInputException if negative
   */
  public static Switch lightsAbove(Quantity<Acceleration> lightsAbove) {
    double on = rate("StopLampRule.lightsAbove", lightsAbove);
    return new Switch(on, on);
  }

  /** Where a drive lights and puts out the stop lamps, with hysteresis. */
  public static final class Switch {
    private final double on;
    private final double off;

    private Switch(double on, double off) {
      this.on = on;
      this.off = off;
    }

    /**
     * With hysteresis.
     *
     * @param value 0 m/s² to where the lamps light
     * @return a new switch
     * @throws org.wattwright.units.InvalidInputException if outside its range
     */
    public Switch putsOutBelow(Quantity<Acceleration> value) {
      Require.quantity("StopLampRule.putsOutBelow", value, METRE_PER_SECOND_SQUARED).between(0, on);
      return new Switch(on, rate("StopLampRule.putsOutBelow", value));
    }

    /**
     * The verdicts: {@code installation.stop-lamp-on}, {@code installation.stop-lamp-dark}, {@code
     * installation.stop-lamp-off}.
     *
     * @return three checks
     */
    public List<Check> checks() {
      Figure lights = Figure.ofSi(on, METRE_PER_SECOND_SQUARED);
      return List.of(
          named("installation.stop-lamp-on", "deceleration that lights the stop lamps")
              .atMost(lights, Figure.of(onAbove(), METRE_PER_SECOND_SQUARED)),
          named("installation.stop-lamp-dark", "deceleration up to which they stay dark")
              .atLeast(lights, Figure.of(offBelow(), METRE_PER_SECOND_SQUARED)),
          named("installation.stop-lamp-off", "deceleration that puts them out")
              .atLeast(
                  Figure.ofSi(off, METRE_PER_SECOND_SQUARED),
                  Figure.of(offBelow(), METRE_PER_SECOND_SQUARED)));
    }

    /**
     * Both thresholds.
     *
     * @return for example {@code lit above 1 m/s², out below 0.8 m/s²}
     */
    @Override
    public String toString() {
      return "lit above "
          + METRE_PER_SECOND_SQUARED.of(on)
          + ", out below "
          + METRE_PER_SECOND_SQUARED.of(off);
    }
  }
}
