package org.wattwright.thermal;

import static org.wattwright.units.WorkshopUnits.KILOMETRE;
import static org.wattwright.units.WorkshopUnits.KILOMETRE_PER_HOUR;
import static org.wattwright.units.WorkshopUnits.KILOWATT_HOUR;
import static org.wattwright.units.WorkshopUnits.WATT;
import static org.wattwright.units.WorkshopUnits.WATT_HOUR_PER_KILOMETRE;

import java.io.Serializable;
import javax.measure.Quantity;
import javax.measure.quantity.Energy;
import javax.measure.quantity.Length;
import javax.measure.quantity.Power;
import javax.measure.quantity.Speed;
import org.wattwright.check.Figure;
import org.wattwright.check.Recorder;
import org.wattwright.check.Worksheet;
import org.wattwright.internal.Require;
import org.wattwright.units.EnergyPerDistance;
import org.wattwright.units.Kind;
import org.wattwright.units.Measure;

/**
 * What a heater costs in range: e + P/v in place of e; slower means more per kilometre.
 *
 * <p>The power is that drawn from the battery. Immutable and thread-safe.
 *
 * @param usableEnergy of the battery, &gt; 0
 * @param driving consumption without heater, &gt; 0
 * @param heater mean electrical power, ≥ 0 W
 * @param meanSpeed &gt; 0, stops included
 */
public record HeaterRange(
    Quantity<Energy> usableEnergy,
    Quantity<EnergyPerDistance> driving,
    Quantity<Power> heater,
    Quantity<Speed> meanSpeed)
    implements Serializable {

  /**
   * Checks the range.
   *
   * @param usableEnergy &gt; 0
   * @param driving &gt; 0
   * @param heater ≥ 0 W
   * @param meanSpeed &gt; 0
   * @throws org.wattwright.units.InvalidInputException if a value is outside its range
   */
  public HeaterRange {
    Require.quantity("HeaterRange.usableEnergy", usableEnergy, KILOWATT_HOUR).positive();
    Require.quantity("HeaterRange.driving", driving, WATT_HOUR_PER_KILOMETRE).positive();
    Require.quantity("HeaterRange.heater", heater, WATT).nonNegative();
    Require.quantity("HeaterRange.meanSpeed", meanSpeed, KILOMETRE_PER_HOUR).positive();
    usableEnergy = Measure.from(usableEnergy, Kind.ENERGY);
    driving = Measure.from(driving, Kind.ENERGY_PER_DISTANCE);
    heater = Measure.from(heater, Kind.POWER);
    meanSpeed = Measure.from(meanSpeed, Kind.SPEED);
  }

  /**
   * A heater on a drive.
   *
   * @param usableEnergy of the battery, &gt; 0
   * @param driving consumption without heater, &gt; 0
   * @param heater mean electrical power, ≥ 0 W
   * @param meanSpeed &gt; 0, stops included
   * @return the comparison
   * @throws org.wattwright.units.InvalidInputException if a value is outside its range
   */
  public static HeaterRange of(
      Quantity<Energy> usableEnergy,
      Quantity<EnergyPerDistance> driving,
      Quantity<Power> heater,
      Quantity<Speed> meanSpeed) {
    return new HeaterRange(usableEnergy, driving, heater, meanSpeed);
  }

  /**
   * Consumption that the heater adds: P/v.
   *
   * @return in W·h/km
   */
  public Quantity<EnergyPerDistance> added() {
    return Kind.ENERGY_PER_DISTANCE.ofSi(addedJPerM());
  }

  /**
   * Range with the heater off.
   *
   * @return E/e
   */
  public Quantity<Length> without() {
    return Kind.LENGTH.ofSi(Kind.ENERGY.siValueOf(usableEnergy) / drivingJPerM());
  }

  /**
   * Range with the heater on.
   *
   * @return E/(e + P/v)
   */
  public Quantity<Length> with() {
    return Kind.LENGTH.ofSi(withM(Recorder.OFF));
  }

  /**
   * Share of the battery's energy that the heater takes; the range is shorter by it.
   *
   * @return 0 to 1
   */
  public double share() {
    return addedJPerM() / (drivingJPerM() + addedJPerM());
  }

  /**
   * The working of the range with the heater on.
   *
   * @return the steps as computed
   */
  public Worksheet worksheet() {
    Worksheet.Recording recording = Worksheet.record("Range with a heater of " + heater);
    withM(recording);
    return recording.toWorksheet();
  }

  private double addedJPerM() {
    return Kind.POWER.siValueOf(heater) / Kind.SPEED.siValueOf(meanSpeed);
  }

  private double drivingJPerM() {
    return Kind.ENERGY_PER_DISTANCE.siValueOf(driving);
  }

  private double withM(Recorder recorder) {
    double rangeM = Kind.ENERGY.siValueOf(usableEnergy) / (drivingJPerM() + addedJPerM());
    if (recorder.isOn()) {
      recorder
          .step("e_h", "consumption of the heater")
          .formula("P/v")
          .with("P", Figure.of(heater, WATT))
          .with("v", Figure.of(meanSpeed, KILOMETRE_PER_HOUR))
          .gives(addedJPerM(), WATT_HOUR_PER_KILOMETRE);
      recorder
          .step("s", "range with the heater on")
          .formula("E/(e + e_h)")
          .with("E", Figure.of(usableEnergy, KILOWATT_HOUR))
          .with("e", Figure.of(driving, WATT_HOUR_PER_KILOMETRE))
          .with("e_h", addedJPerM(), WATT_HOUR_PER_KILOMETRE)
          .gives(rangeM, KILOMETRE);
    }
    return rangeM;
  }

  /**
   * Range with and without.
   *
   * @return for example {@code 100 km with 2.4 kW, 142.9 km without}
   */
  @Override
  public String toString() {
    return Figure.of(with(), KILOMETRE)
        + " with "
        + Figure.of(heater, WATT)
        + ", "
        + Figure.of(without(), KILOMETRE)
        + " without";
  }
}
