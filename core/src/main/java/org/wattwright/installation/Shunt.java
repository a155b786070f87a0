package org.wattwright.installation;

import static org.wattwright.units.WorkshopUnits.AMPERE;
import static org.wattwright.units.WorkshopUnits.AMPERE_HOUR;
import static org.wattwright.units.WorkshopUnits.HOUR;
import static org.wattwright.units.WorkshopUnits.MILLIOHM;
import static org.wattwright.units.WorkshopUnits.MILLIVOLT;
import static org.wattwright.units.WorkshopUnits.OHM;
import static org.wattwright.units.WorkshopUnits.WATT;

import java.io.Serializable;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricCharge;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.ElectricPotential;
import javax.measure.quantity.ElectricResistance;
import javax.measure.quantity.Power;
import javax.measure.quantity.Time;
import org.wattwright.check.Check;
import org.wattwright.check.Figure;
import org.wattwright.check.Source;
import org.wattwright.check.Worksheet;
import org.wattwright.internal.Require;
import org.wattwright.units.Kind;
import org.wattwright.units.Measure;
import org.wattwright.units.TemperatureCoefficient;
import org.wattwright.units.TemperatureDifference;
import org.wattwright.units.WorkshopUnits;

/**
 * A measuring shunt by its rated pair, such as 500 A at 50 mV: R = U/I, heat I²·R. Source: Ohm's
 * law. Immutable and thread-safe.
 *
 * @param ratedCurrent &gt; 0 A
 * @param ratedDrop at that current, &gt; 0 mV
 */
public record Shunt(Quantity<ElectricCurrent> ratedCurrent, Quantity<ElectricPotential> ratedDrop)
    implements Serializable {
  /** Continuous current as a share of the rating, without forced cooling: common practice. */
  public static final double USUAL_CONTINUOUS_SHARE = 2.0 / 3;

  /**
   * Checks the ranges.
   *
   * @param ratedCurrent &gt; 0 A
   * @param ratedDrop &gt; 0 mV
   * @throws org.wattwright.units.InvalidInputException if a value is not positive
   */
  public Shunt {
    Require.quantity("Shunt.ratedCurrent", ratedCurrent, AMPERE).positive();
    Require.quantity("Shunt.ratedDrop", ratedDrop, MILLIVOLT).positive();
    ratedCurrent = Measure.from(ratedCurrent, Kind.CURRENT);
    ratedDrop = Measure.from(ratedDrop, Kind.VOLTAGE);
  }

  /**
   * Its resistance.
   *
   * @return in mΩ
   */
  public Quantity<ElectricResistance> resistance() {
    return MILLIOHM.of(ohm() * 1000);
  }

  double ohm() {
    return Kind.VOLTAGE.siValueOf(ratedDrop) / Kind.CURRENT.siValueOf(ratedCurrent);
  }

  /**
   * Heat at a current.
   *
   * @param current steady or root mean square, of either sign
   * @return in W
   */
  public Quantity<Power> heat(Quantity<ElectricCurrent> current) {
    double amps = Require.quantity("Shunt.current", current, AMPERE).any();
    return WATT.of(amps * amps * ohm());
  }

  /**
   * Smallest step of current that a converter shows.
   *
   * @param range of the converter, from minus to plus this voltage, &gt; 0 mV
   * @param bits of the converter, sign included, 2 to 32
   * @return in A
   * @throws org.wattwright.units.InvalidInputException if a value is outside its range
   */
  public Quantity<ElectricCurrent> resolution(Quantity<ElectricPotential> range, int bits) {
    double volts = Require.quantity("Shunt.range", range, MILLIVOLT).positive();
    Require.count("Shunt.bits", bits, 2, 32);
    return AMPERE.of(2 * volts / Math.scalb(1.0, bits) / ohm());
  }

  /**
   * Current that an offset of the amplifier looks like.
   *
   * @param offset of either sign
   * @return in A
   */
  public Quantity<ElectricCurrent> offsetError(Quantity<ElectricPotential> offset) {
    return AMPERE.of(Require.quantity("Shunt.offset", offset, MILLIVOLT).any() / ohm());
  }

  /**
   * Charge that an offset adds up to.
   *
   * @param offset of either sign
   * @param time ≥ 0 h
   * @return in A·h
   * @throws org.wattwright.units.InvalidInputException if the time is negative
   */
  public static Quantity<ElectricCharge> drift(
      Quantity<ElectricCurrent> offset, Quantity<Time> time) {
    double amps = Require.quantity("Shunt.offset", offset, AMPERE).any();
    return AMPERE_HOUR.of(amps * Require.quantity("Shunt.time", time, HOUR).nonNegative() / 3600);
  }

  /**
   * Share by which a reading is off when the shunt warms up.
   *
   * @param coefficient of the material, such as manganin's 20·10⁻⁶ 1/K
   * @param rise of its temperature
   * @return share of the reading
   */
  public static double gainError(
      Quantity<TemperatureCoefficient> coefficient, Quantity<TemperatureDifference> rise) {
    return Require.quantity("Shunt.coefficient", coefficient, WorkshopUnits.PER_KELVIN).any()
        * Require.quantity("Shunt.rise", rise, WorkshopUnits.KELVIN_OF_DIFFERENCE).any();
  }

  /**
   * Share that a moving-coil meter takes past the shunt: R_s/(R_s + R_m).
   *
   * @param meter with its leads, &gt; 0 Ω
   * @return share of the current
   * @throws org.wattwright.units.InvalidInputException if not positive
   */
  public double burdenError(Quantity<ElectricResistance> meter) {
    double meterOhm = Require.quantity("Shunt.meter", meter, OHM).positive();
    return ohm() / (ohm() + meterOhm);
  }

  /**
   * The verdicts: {@code installation.shunt-continuous} and {@code installation.shunt-peak}.
   *
   * @param continuous root mean square of the drive, ≥ 0 A
   * @param peak ≥ 0 A
   * @return two checks
   * @throws org.wattwright.units.InvalidInputException if a value is negative
   */
  public List<Check> checks(Quantity<ElectricCurrent> continuous, Quantity<ElectricCurrent> peak) {
    Require.quantity("Shunt.continuous", continuous, AMPERE).nonNegative();
    Require.quantity("Shunt.peak", peak, AMPERE).nonNegative();
    double ratedA = Kind.CURRENT.siValueOf(ratedCurrent);
    return List.of(
        Check.named("installation.shunt-continuous", "continuous current of the shunt")
            .source(Source.commonPractice("two thirds of the rating without forced cooling"))
            .safety()
            .atMost(
                Figure.of(continuous, AMPERE),
                Figure.ofSi(ratedA * USUAL_CONTINUOUS_SHARE, AMPERE)),
        Check.named("installation.shunt-peak", "peak current against the rating of the shunt")
            .source(Source.dataSheet("shunt"))
            .atMost(Figure.of(peak, AMPERE), Figure.ofSi(ratedA, AMPERE)));
  }

  /**
   * The working of resistance and heat.
   *
   * @param current steady or root mean square
   * @return the worksheet
   */
  public Worksheet worksheet(Quantity<ElectricCurrent> current) {
    Worksheet.Recording sheet = Worksheet.record("Shunt");
    sheet
        .step("R", "resistance of the shunt")
        .formula("U/I")
        .with("U", Figure.of(ratedDrop, MILLIVOLT))
        .with("I", Figure.of(ratedCurrent, AMPERE))
        .gives(ohm(), MILLIOHM);
    sheet
        .step("P", "heat of the shunt")
        .formula("I²·R")
        .with("I", Figure.of(current, AMPERE))
        .with("R", ohm(), MILLIOHM)
        .gives(Figure.of(heat(current), WATT));
    return sheet.toWorksheet();
  }

  /**
   * The pair.
   *
   * @return for example {@code 500 A / 50 mV}
   */
  @Override
  public String toString() {
    return ratedCurrent + " / " + ratedDrop;
  }
}
