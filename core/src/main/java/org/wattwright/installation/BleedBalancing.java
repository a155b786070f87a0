package org.wattwright.installation;

import static org.wattwright.units.WorkshopUnits.AMPERE;
import static org.wattwright.units.WorkshopUnits.AMPERE_HOUR;
import static org.wattwright.units.WorkshopUnits.HOUR;
import static org.wattwright.units.WorkshopUnits.MILLIVOLT;
import static org.wattwright.units.WorkshopUnits.OHM;
import static org.wattwright.units.WorkshopUnits.VOLT;
import static org.wattwright.units.WorkshopUnits.WATT;

import java.io.Serializable;
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

/**
 * Balancing that bleeds charge from the fuller cells: t = ΔQ/(I·duty). Source: charge balance. One
 * cell bleeds at the same time as all others. Immutable and thread-safe.
 *
 * @param current of one bleed resistor, &gt; 0 A
 * @param duty share of the time it is on, &gt; 0 to 1; taps read while bleeding are read wrong
 */
public record BleedBalancing(Quantity<ElectricCurrent> current, double duty)
    implements Serializable {
  /**
   * Checks the ranges.
   *
   * @param current &gt; 0 A
   * @param duty &gt; 0 to 1
   * @throws org.wattwright.units.InvalidInputException if a value is outside its range
   */
  public BleedBalancing {
    Require.quantity("BleedBalancing.current", current, AMPERE).positive();
    Require.positive("BleedBalancing.duty", duty);
    Require.fraction("BleedBalancing.duty", duty);
    current = Measure.from(current, Kind.CURRENT);
  }

  /**
   * Through a resistor: I = U/R.
   *
   * @param resistor &gt; 0 Ω
   * @param cell voltage, &gt; 0 V
   * @return always on
   * @throws org.wattwright.units.InvalidInputException if a value is not positive
   */
  public static BleedBalancing through(
      Quantity<ElectricResistance> resistor, Quantity<ElectricPotential> cell) {
    double ohm = Require.quantity("BleedBalancing.resistor", resistor, OHM).positive();
    double volts = Require.quantity("BleedBalancing.cell", cell, VOLT).positive();
    return new BleedBalancing(AMPERE.of(volts / ohm), 1);
  }

  /**
   * Charge between the fullest and the emptiest cell.
   *
   * @param capacity &gt; 0 A·h
   * @param imbalance difference of their states of charge, 0 to 1
   * @return in A·h
   * @throws org.wattwright.units.InvalidInputException if a value is outside its range
   */
  public static Quantity<ElectricCharge> chargeToRemove(
      Quantity<ElectricCharge> capacity, double imbalance) {
    double chargeC =
        Require.quantity("BleedBalancing.capacity", capacity, AMPERE_HOUR).positive()
            * Require.fraction("BleedBalancing.imbalance", imbalance);
    return AMPERE_HOUR.of(chargeC / 3600);
  }

  /**
   * Time to remove a charge.
   *
   * @param charge ≥ 0 A·h
   * @return in h
   * @throws org.wattwright.units.InvalidInputException if negative
   */
  public Quantity<Time> timeFor(Quantity<ElectricCharge> charge) {
    double chargeC = Require.quantity("BleedBalancing.charge", charge, AMPERE_HOUR).nonNegative();
    return HOUR.of(chargeC / (currentA() * duty) / 3600);
  }

  /**
   * Current that just holds the balance against unlike self-discharge: ΔQ/t, on all the time.
   *
   * @param spread of the charges lost in that time, ≥ 0 A·h
   * @param time &gt; 0 h
   * @return in A
   * @throws org.wattwright.units.InvalidInputException if a value is outside its range
   */
  public static Quantity<ElectricCurrent> holdingCurrent(
      Quantity<ElectricCharge> spread, Quantity<Time> time) {
    double chargeC = Require.quantity("BleedBalancing.spread", spread, AMPERE_HOUR).nonNegative();
    return AMPERE.of(chargeC / Require.quantity("BleedBalancing.time", time, HOUR).positive());
  }

  /**
   * Heat while all cells of a unit bleed: n·U·I.
   *
   * @param cells 1 to 1000
   * @param cell voltage, &gt; 0 V
   * @return in W
   * @throws org.wattwright.units.InvalidInputException if a value is outside its range
   */
  public Quantity<Power> heat(int cells, Quantity<ElectricPotential> cell) {
    Require.count("BleedBalancing.cells", cells, 1, 1000);
    double volts = Require.quantity("BleedBalancing.cell", cell, VOLT).positive();
    return WATT.of(cells * volts * currentA());
  }

  /**
   * How far a reading is off while the cell bleeds: 2·R·I, go and return.
   *
   * @param wire resistance of one sense wire, ≥ 0 Ω
   * @return in mV
   * @throws org.wattwright.units.InvalidInputException if negative
   */
  public Quantity<ElectricPotential> readingError(Quantity<ElectricResistance> wire) {
    double ohm = Require.quantity("BleedBalancing.wire", wire, OHM).nonNegative();
    return MILLIVOLT.of(2 * ohm * currentA() * 1000);
  }

  /**
   * {@code installation.balancing-time}: time for a charge against what is allowed.
   *
   * @param charge ≥ 0 A·h
   * @param allowed &gt; 0 h
   * @return the check
   * @throws org.wattwright.units.InvalidInputException if a value is outside its range
   */
  public Check check(Quantity<ElectricCharge> charge, Quantity<Time> allowed) {
    Require.quantity("BleedBalancing.allowed", allowed, HOUR).positive();
    return Check.named("installation.balancing-time", "time to balance")
        .source(Source.requirement("balancing time"))
        .atMost(Figure.of(timeFor(charge), HOUR), Figure.of(allowed, HOUR));
  }

  /**
   * The working.
   *
   * @param charge ≥ 0 A·h
   * @return the worksheet
   * @throws org.wattwright.units.InvalidInputException if negative
   */
  public Worksheet worksheet(Quantity<ElectricCharge> charge) {
    Worksheet.Recording sheet = Worksheet.record("Balancing");
    sheet
        .step("t", "time to balance")
        .formula("ΔQ/(I·d)")
        .with("ΔQ", Figure.of(charge, AMPERE_HOUR))
        .with("I", currentA(), AMPERE)
        .with("d", Figure.share(duty))
        .gives(Figure.of(timeFor(charge), HOUR));
    return sheet.toWorksheet();
  }

  private double currentA() {
    return Kind.CURRENT.siValueOf(current);
  }
}
