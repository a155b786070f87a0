package org.wattwright.thermal;

import static org.wattwright.units.WorkshopUnits.WATT;

import java.io.Serializable;
import javax.measure.Quantity;
import javax.measure.quantity.Power;
import org.wattwright.check.Figure;
import org.wattwright.check.Worksheet;
import org.wattwright.internal.Require;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;
import org.wattwright.units.Measure;

/**
 * A heater that switches between two steps: P = P_lower + d·(P_upper − P_lower).
 *
 * <p>Immutable and thread-safe.
 *
 * @param lower the lower step, ≥ 0 W
 * @param upper the upper step, above the lower
 * @param upperShare share of the time in the upper step, 0 to 1
 */
public record HeaterDuty(Quantity<Power> lower, Quantity<Power> upper, double upperShare)
    implements Serializable {

  /**
   * Checks the range.
   *
   * @param lower ≥ 0 W
   * @param upper above the lower
   * @param upperShare 0 to 1
   * @throws InvalidInputException if a value is outside its range
   */
  public HeaterDuty {
    double lowerW = Require.quantity("HeaterDuty.lower", lower, WATT).nonNegative();
    double upperW = Require.quantity("HeaterDuty.upper", upper, WATT).positive();
    if (!(upperW > lowerW)) {
      throw InvalidInputException.of("HeaterDuty.upper", "> lower " + lower, upper.toString());
    }
    Require.fraction("HeaterDuty.upperShare", upperShare);
    lower = Measure.from(lower, Kind.POWER);
    upper = Measure.from(upper, Kind.POWER);
  }

  /**
   * Mean power.
   *
   * @return between the two steps
   */
  public Quantity<Power> mean() {
    double lowerW = Kind.POWER.siValueOf(lower);
    return Kind.POWER.ofSi(lowerW + upperShare * (Kind.POWER.siValueOf(upper) - lowerW));
  }

  /**
   * The working of the share.
   *
   * @return the steps
   */
  public Worksheet worksheet() {
    Worksheet.Recording recording = Worksheet.record("Heater between " + lower + " and " + upper);
    recording
        .step("d", "share of the time in the upper step")
        .formula("(P − P_1)/(P_2 − P_1)")
        .with("P", Figure.of(mean(), WATT))
        .with("P_1", Figure.of(lower, WATT))
        .with("P_2", Figure.of(upper, WATT))
        .gives(Figure.share(upperShare));
    return recording.toWorksheet();
  }

  /**
   * Both steps and the share.
   *
   * @return for example {@code 2 kW, 43 % of the time 3 kW}
   */
  @Override
  public String toString() {
    return Figure.of(lower, WATT)
        + ", "
        + Figure.share(upperShare)
        + " of the time "
        + Figure.of(upper, WATT);
  }
}
