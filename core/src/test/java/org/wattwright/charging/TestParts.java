package org.wattwright.charging;

import static org.wattwright.units.Measures.ampereHours;
import static org.wattwright.units.Measures.amperes;
import static org.wattwright.units.Measures.celsius;
import static org.wattwright.units.Measures.joulesPerKilogramKelvin;
import static org.wattwright.units.Measures.kilograms;
import static org.wattwright.units.Measures.kilowatts;
import static org.wattwright.units.Measures.milliohms;
import static org.wattwright.units.Measures.ohms;
import static org.wattwright.units.Measures.percent;
import static org.wattwright.units.Measures.percentCharge;
import static org.wattwright.units.Measures.volts;
import static org.wattwright.units.Measures.watts;

import org.wattwright.battery.BatteryModule;
import org.wattwright.battery.Cell;
import org.wattwright.battery.CellBuilder;
import org.wattwright.battery.Chemistry;
import org.wattwright.battery.CurrentByTemperature;
import org.wattwright.battery.OpenCircuitCurve;
import org.wattwright.battery.Pack;
import org.wattwright.battery.ResistanceTable;
import org.wattwright.battery.TemperatureRange;
import org.wattwright.testing.FlatCell;
import org.wattwright.units.StateOfCharge;
import org.wattwright.voltage.VoltageRange;
import org.wattwright.voltage.VoltageWindow;

/** Invented packs, chargers and supplies. */
final class TestParts {
  static final ChargingPoint GARAGE = ChargingPoint.of(Supply.singlePhase(volts(230), amperes(32)));

  private TestParts() {}

  /** OCV = a + b·s behind a constant resistance, one cell that stands for a pack. */
  static Pack linear(double emptyV, double slopeV, double ohm, double ampereHours) {
    return Pack.of(
        BatteryModule.of(
                wide(Cell.of("source", Chemistry.NMC))
                    .capacity(ampereHours(ampereHours))
                    .openCircuit(
                        OpenCircuitCurve.at(celsius(25))
                            .row(StateOfCharge.EMPTY, volts(emptyV))
                            .row(StateOfCharge.FULL, volts(emptyV + slopeV))
                            .build())
                    .resistance(ResistanceTable.constant(ohms(ohm)))
                    .build())
            .build(),
        1,
        1);
  }

  private static CellBuilder wide(CellBuilder cell) {
    return cell.minimumVoltage(volts(1e-3))
        .maximumVoltage(volts(1e5))
        .continuousDischargeCurrent(amperes(1e6))
        .continuousChargeCurrent(amperes(1e6))
        .dischargeTemperatures(TemperatureRange.between(celsius(-100), celsius(200)))
        .chargeTemperatures(TemperatureRange.between(celsius(-100), celsius(200)))
        .mass(kilograms(1));
  }

  /** A flat-curve cell with limits as a data sheet would state them. */
  static CellBuilder flatCell() {
    return FlatCell.of(2.55, 2.6, 3.6)
        .continuousDischargeCurrent(amperes(105))
        .continuousChargeCurrent(amperes(52))
        .chargeCurrentByTemperature(
            CurrentByTemperature.from(celsius(0), amperes(0)).and(celsius(15), amperes(105)))
        .specificHeat(joulesPerKilogramKelvin(1100));
  }

  /** 96 cells in series, about 32 kW·h. */
  static Pack flatPack() {
    return Pack.of(
        BatteryModule.of(flatCell().build())
            .name("flat module")
            .series(12)
            .interconnectResistance(milliohms(0.3))
            .build(),
        8,
        1);
  }

  static VoltageWindow window(double lowV, double highV) {
    return VoltageWindow.operating(VoltageRange.between(volts(lowV), volts(highV)));
  }

  static ChargerBuilder charger() {
    return Charger.of("charger", window(200, 420))
        .maximumPower(kilowatts(6.6))
        .maximumInputCurrent(amperes(32))
        .maximumCurrent(amperes(25))
        .efficiency(EfficiencyByLoad.from(0.1, 0.86).and(0.5, 0.94).and(1, 0.93));
  }

  static ChargeSimulation usual() {
    return ChargeSimulation.of(flatPack())
        .charger(charger().build())
        .at(GARAGE)
        .from(percentCharge(20))
        .temperature(celsius(25));
  }

  /** A bench supply that holds a current and gives any power. */
  static DcStation bench(double currentA) {
    return DcStation.of(
            "bench", VoltageRange.between(volts(0), volts(1000)), amperes(currentA), kilowatts(1e6))
        .withEfficiency(0.92);
  }

  static ControlPilot pilot(double dutyPercent) {
    return ControlPilot.of(percent(dutyPercent));
  }

  static LowVoltageBudget budget() {
    return LowVoltageBudget.of(
        java.util.List.of(
            LowVoltageLoad.of("dipped beam", amperes(8.5)).essential(),
            LowVoltageLoad.of("wipers", amperes(4.5)).duty(0.5).peak(amperes(12)).essential(),
            LowVoltageLoad.ofPower("pump", watts(50)).duty(0.6),
            LowVoltageLoad.keyOff("alarm", org.wattwright.units.Measures.milliamperes(20))),
        LowVoltageBattery.of(ampereHours(45)).usable(0.6),
        volts(13.8));
  }

  static DcDcConverterBuilder converter() {
    return DcDcConverter.of("converter", window(200, 420))
        .outputVoltage(volts(13.8))
        .maximumOutputPower(watts(900))
        .efficiency(EfficiencyByLoad.constant(0.9));
  }
}
