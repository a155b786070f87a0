package org.wattwright.installation;

import static org.wattwright.units.WorkshopUnits.AMPERE;
import static org.wattwright.units.WorkshopUnits.MILLIOHM;

import java.io.Serializable;
import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.ElectricPotential;
import org.wattwright.check.CautionBand;
import org.wattwright.check.Check;
import org.wattwright.check.Figure;
import org.wattwright.check.Source;
import org.wattwright.check.Worksheet;
import org.wattwright.internal.Require;
import org.wattwright.units.Kind;
import org.wattwright.units.Measure;

/**
 * An ammeter behind a shunt, one-way or both-way with its zero within the scale.
 *
 * <p>Shown = I·R_shunt/(U_meter/I_meter): right only if the pair of the meter is that of the shunt.
 * Discharge is positive. Immutable and thread-safe.
 *
 * @param scale pair of the meter: current shown at a voltage
 * @param dischargeEnd end of the scale on the discharge side, &gt; 0 A
 * @param chargeEnd end of the scale on the charge side as a positive number, ≥ 0 A; 0 for one-way
 */
public record Ammeter(
    Shunt scale, Quantity<ElectricCurrent> dischargeEnd, Quantity<ElectricCurrent> chargeEnd)
    implements Serializable {
  /**
   * Checks the ranges.
   *
   * @param scale pair of the meter
   * @param dischargeEnd &gt; 0 A
   * @param chargeEnd ≥ 0 A
   * @throws org.wattwright.units.InvalidInputException if a value is outside its range
   */
  public Ammeter {
    Objects.requireNonNull(scale, "scale");
    Require.quantity("Ammeter.dischargeEnd", dischargeEnd, AMPERE).positive();
    Require.quantity("Ammeter.chargeEnd", chargeEnd, AMPERE).nonNegative();
    dischargeEnd = Measure.from(dischargeEnd, Kind.CURRENT);
    chargeEnd = Measure.from(chargeEnd, Kind.CURRENT);
  }

  /**
   * A meter by its pair, both ways alike.
   *
   * @param fullScale current at the end of the scale on either side, &gt; 0 A
   * @param at voltage that shows it, &gt; 0 mV
   * @return the meter
   * @throws org.wattwright.units.InvalidInputException if a value is not positive
   */
  public static Ammeter bothWays(
      Quantity<ElectricCurrent> fullScale, Quantity<ElectricPotential> at) {
    return new Ammeter(new Shunt(fullScale, at), fullScale, fullScale);
  }

  /**
   * What it shows behind a shunt, were its scale long enough.
   *
   * @param current true, discharge positive
   * @param shunt that it sits on
   * @return in A
   */
  public Quantity<ElectricCurrent> shown(Quantity<ElectricCurrent> current, Shunt shunt) {
    double amps = Require.quantity("Ammeter.current", current, AMPERE).any();
    return AMPERE.of(amps * shunt.ohm() / scale.ohm());
  }

  /**
   * The working of what it shows.
   *
   * @param current true, discharge positive
   * @param shunt that it sits on
   * @return the worksheet
   */
  public Worksheet worksheet(Quantity<ElectricCurrent> current, Shunt shunt) {
    Worksheet.Recording sheet = Worksheet.record("What the ammeter shows");
    sheet
        .step("I_shown", "current shown")
        .formula("I·R_s/R_m")
        .with("I", Figure.of(current, AMPERE))
        .with("R_s", Figure.of(shunt.resistance(), MILLIOHM))
        .with("R_m", Figure.of(scale.resistance(), MILLIOHM))
        .gives(Figure.of(shown(current, shunt), AMPERE));
    return sheet.toWorksheet();
  }

  /**
   * The true current behind what it shows.
   *
   * @param display what it shows, discharge positive
   * @param shunt that it sits on
   * @return in A
   */
  public Quantity<ElectricCurrent> trueCurrent(Quantity<ElectricCurrent> display, Shunt shunt) {
    double amps = Require.quantity("Ammeter.display", display, AMPERE).any();
    return AMPERE.of(amps * scale.ohm() / shunt.ohm());
  }

  /**
   * Place of the needle: 0 at the end of the charge side, 1 at the end of the discharge side, held
   * at the ends.
   *
   * @param current true, discharge positive
   * @param shunt that it sits on
   * @return 0 to 1
   */
  public double needle(Quantity<ElectricCurrent> current, Shunt shunt) {
    double chargeA = Kind.CURRENT.siValueOf(chargeEnd);
    double span = Kind.CURRENT.siValueOf(dischargeEnd) + chargeA;
    double shownA = Kind.CURRENT.siValueOf(shown(current, shunt));
    return Math.max(0, Math.min(1, (shownA + chargeA) / span));
  }

  /**
   * The verdicts: {@code installation.ammeter-pair}, {@code installation.ammeter-discharge}, {@code
   * installation.ammeter-charge}.
   *
   * @param shunt that it sits on
   * @param discharge largest current of the drive, ≥ 0 A
   * @param charge largest of regeneration and charging, as a positive number, ≥ 0 A
   * @return three checks
   * @throws org.wattwright.units.InvalidInputException if a current is negative
   */
  public List<Check> checks(
      Shunt shunt, Quantity<ElectricCurrent> discharge, Quantity<ElectricCurrent> charge) {
    Require.quantity("Ammeter.discharge", discharge, AMPERE).nonNegative();
    Require.quantity("Ammeter.charge", charge, AMPERE).nonNegative();
    Source practice = Source.commonPractice("the scale holds what flows");
    double ratio = shunt.ohm() / scale.ohm();
    return List.of(
        Check.named("installation.ammeter-pair", "pair of the meter like that of the shunt")
            .source(practice)
            .note("meter " + scale + ", shunt " + shunt)
            .holds(Math.abs(ratio - 1) <= 1e-9),
        Check.named("installation.ammeter-discharge", "discharge side of the ammeter")
            .source(practice)
            .cautionBand(CautionBand.NONE)
            .atLeast(Figure.of(dischargeEnd, AMPERE), Figure.of(shown(discharge, shunt), AMPERE)),
        Check.named("installation.ammeter-charge", "charge side of the ammeter")
            .source(practice)
            .cautionBand(CautionBand.NONE)
            .atLeast(Figure.of(chargeEnd, AMPERE), Figure.of(shown(charge, shunt), AMPERE)));
  }

  /**
   * Scale and ends.
   *
   * @return for example {@code ammeter 500 A / 50 mV, −200 A … 500 A}
   */
  @Override
  public String toString() {
    return "ammeter " + scale + ", −" + chargeEnd + " … " + dischargeEnd;
  }
}
