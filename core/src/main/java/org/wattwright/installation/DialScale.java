package org.wattwright.installation;

import static org.wattwright.units.WorkshopUnits.KELVIN;
import static org.wattwright.units.WorkshopUnits.KILOMETRE;

import java.io.Serializable;
import javax.measure.Quantity;
import javax.measure.quantity.Frequency;
import javax.measure.quantity.Length;
import javax.measure.quantity.Temperature;
import org.wattwright.internal.Require;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;
import org.wattwright.units.Measure;
import org.wattwright.units.RotationalSpeed;
import org.wattwright.units.StateOfCharge;
import org.wattwright.units.WorkshopUnits;

/** What an old dial shows: level 0 to 1 from charge, range or temperature; pulses from speed. */
public final class DialScale {
  private DialScale() {}

  /**
   * Level from the state of charge: (s − s_empty)/(s_full − s_empty), held within 0 to 1.
   *
   * @param charge now
   * @param marks the dial's empty and full
   * @return 0 to 1
   */
  public static double level(StateOfCharge charge, ChargeMarks marks) {
    double low = marks.empty().fraction();
    return held((charge.fraction() - low) / (marks.full().fraction() - low));
  }

  /**
   * States of charge at the dial's marks.
   *
   * @param empty shown as empty
   * @param full shown as full, above the first
   */
  public record ChargeMarks(StateOfCharge empty, StateOfCharge full) implements Serializable {
    /**
     * Checks the order.
     *
     * @param empty shown as empty
     * @param full shown as full, above the first
     * @throws InvalidInputException if it is not above
     */
    public ChargeMarks {
      if (!(full.fraction() > empty.fraction())) {
        throw InvalidInputException.of("DialScale.full", "> " + empty, full.toString());
      }
    }
  }

  /**
   * Level from the range left.
   *
   * @param left ≥ 0 km
   * @param full range that the dial shows as full, &gt; 0 km
   * @return 0 to 1
   * @throws InvalidInputException if a value is outside its range
   */
  public static double level(Quantity<Length> left, Quantity<Length> full) {
    double leftM = Require.quantity("DialScale.left", left, KILOMETRE).nonNegative();
    return held(leftM / Require.quantity("DialScale.full", full, KILOMETRE).positive());
  }

  /**
   * Level from the motor's temperature, for the dial that showed the engine's.
   *
   * @param motor absolute
   * @param marks the dial's cold and hot
   * @return 0 to 1
   */
  public static double level(Quantity<Temperature> motor, TemperatureMarks marks) {
    double now = Kind.TEMPERATURE.siValueOf(motor);
    double cold = Kind.TEMPERATURE.siValueOf(marks.cold());
    return held((now - cold) / (Kind.TEMPERATURE.siValueOf(marks.hot()) - cold));
  }

  /**
   * Temperatures at the dial's marks; hot is best where the drive begins to cut back.
   *
   * @param cold absolute
   * @param hot absolute, above the first
   */
  public record TemperatureMarks(Quantity<Temperature> cold, Quantity<Temperature> hot)
      implements Serializable {
    /**
     * Checks the order.
     *
     * @param cold absolute
     * @param hot absolute, above the first
     * @throws InvalidInputException if it is not above
     */
    public TemperatureMarks {
      double coldK = Require.quantity("DialScale.cold", cold, KELVIN).any();
      if (!(Require.quantity("DialScale.hot", hot, KELVIN).any() > coldK)) {
        throw InvalidInputException.of("DialScale.hot", "> " + cold, hot.toString());
      }
      cold = Measure.from(cold, Kind.TEMPERATURE);
      hot = Measure.from(hot, Kind.TEMPERATURE);
    }
  }

  /**
   * Pulse rate for an old tachometer: pulses per turn times turns per second; a four-cylinder
   * four-stroke ignition gave two pulses a turn.
   *
   * @param pulsesPerTurn 1 to 1000
   * @param motor ≥ 0 1/min
   * @return in Hz
   * @throws InvalidInputException if a value is outside its range
   */
  public static Quantity<Frequency> pulseRate(int pulsesPerTurn, Quantity<RotationalSpeed> motor) {
    Require.count("DialScale.pulsesPerTurn", pulsesPerTurn, 1, 1000);
    double perSecond =
        Require.quantity("DialScale.motor", motor, WorkshopUnits.REVOLUTION_PER_MINUTE)
                .nonNegative()
            / (2 * Math.PI);
    return WorkshopUnits.HERTZ.of(pulsesPerTurn * perSecond);
  }

  private static double held(double level) {
    return Math.max(0, Math.min(1, level));
  }
}
