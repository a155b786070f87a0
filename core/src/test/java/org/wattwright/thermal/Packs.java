package org.wattwright.thermal;

import static org.wattwright.units.Measures.ampereHours;
import static org.wattwright.units.Measures.amperes;
import static org.wattwright.units.Measures.celsius;
import static org.wattwright.units.Measures.joulesPerKilogramKelvin;
import static org.wattwright.units.Measures.kilograms;
import static org.wattwright.units.Measures.milliohms;
import static org.wattwright.units.Measures.millivoltsPerKelvin;
import static org.wattwright.units.Measures.percentCharge;
import static org.wattwright.units.Measures.volts;

import javax.measure.Quantity;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import org.wattwright.battery.BatteryModule;
import org.wattwright.battery.Cell;
import org.wattwright.battery.CellBuilder;
import org.wattwright.battery.Chemistry;
import org.wattwright.battery.OpenCircuitCurve;
import org.wattwright.battery.Pack;
import org.wattwright.battery.PackState;
import org.wattwright.battery.ResistanceTable;
import org.wattwright.battery.TemperatureRange;
import org.wattwright.profile.Profile;
import org.wattwright.units.Kind;

/** Invented packs of one cell type in series. */
final class Packs {
  static final int SERIES = 96;
  static final double MASS_KG = 1.98;
  static final double SPECIFIC_J_PER_KG_K = 1130;
  static final double COLD_OHM = 1.4e-3;
  static final double WARM_OHM = 0.6e-3;
  static final double ENTROPIC_V_PER_K = -0.2e-3;

  private Packs() {}

  static CellBuilder cell(ResistanceTable resistance) {
    return Cell.of("plate cell", Chemistry.LFP)
        .capacity(ampereHours(105))
        .openCircuit(
            OpenCircuitCurve.at(celsius(25))
                .row(percentCharge(0), volts(3.0))
                .row(percentCharge(100), volts(3.4))
                .build())
        .resistance(resistance)
        .minimumVoltage(volts(2))
        .maximumVoltage(volts(4))
        .continuousDischargeCurrent(amperes(300))
        .continuousChargeCurrent(amperes(105))
        .dischargeTemperatures(TemperatureRange.between(celsius(-20), celsius(55)))
        .chargeTemperatures(TemperatureRange.between(celsius(0), celsius(45)))
        .mass(kilograms(MASS_KG));
  }

  /** Straight from 1.4 mΩ at −20 °C to 0.6 mΩ at 60 °C. */
  static ResistanceTable sloped() {
    return ResistanceTable.at(celsius(-20), celsius(60))
        .row(percentCharge(50), milliohms(1.4), milliohms(0.6))
        .build();
  }

  static Pack sloped(boolean entropic) {
    CellBuilder cell = cell(sloped()).specificHeat(joulesPerKilogramKelvin(SPECIFIC_J_PER_KG_K));
    if (entropic) {
      cell = cell.entropicCoefficient(millivoltsPerKelvin(-0.2));
    }
    return of(cell.build(), SERIES);
  }

  /** A constant resistance, in mΩ per cell. */
  static Pack constant(double milliohms, int series) {
    return of(
        cell(ResistanceTable.constant(milliohms(milliohms)))
            .specificHeat(joulesPerKilogramKelvin(SPECIFIC_J_PER_KG_K))
            .build(),
        series);
  }

  static Pack of(Cell cell, int series) {
    return Pack.of(BatteryModule.of(cell).build(), series, 1);
  }

  static PackState state(double percent, double celsius) {
    return PackState.of(percentCharge(percent), celsius(celsius));
  }

  static Profile<ElectricCurrent> hold(double currentA, Quantity<Time> time) {
    return Profile.constant(Kind.CURRENT, amperes(currentA), time);
  }

  static double kelvin(Quantity<Temperature> temperature) {
    return Kind.TEMPERATURE.siValueOf(temperature);
  }
}
