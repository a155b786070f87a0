package org.wattwright.voltage;

import static org.wattwright.units.Measures.ampereHours;
import static org.wattwright.units.Measures.amperes;
import static org.wattwright.units.Measures.celsius;
import static org.wattwright.units.Measures.kilograms;
import static org.wattwright.units.Measures.kilowatts;
import static org.wattwright.units.Measures.milliohms;
import static org.wattwright.units.Measures.percentCharge;
import static org.wattwright.units.Measures.seconds;
import static org.wattwright.units.Measures.volts;

import javax.measure.Quantity;
import javax.measure.quantity.ElectricPotential;
import org.wattwright.battery.BatteryModule;
import org.wattwright.battery.Cell;
import org.wattwright.battery.CellBuilder;
import org.wattwright.battery.Chemistry;
import org.wattwright.battery.OpenCircuitCurve;
import org.wattwright.battery.ResistanceTable;
import org.wattwright.battery.TemperatureRange;
import org.wattwright.testing.Generator;
import org.wattwright.units.Kind;

/** Invented parts with round numbers, so that results can be worked out by hand. */
final class TestParts {
  /** 3.0 V to 3.4 V on a straight line at every temperature. */
  static final OpenCircuitCurve STRAIGHT =
      OpenCircuitCurve.at(celsius(25))
          .row(percentCharge(0), volts(3.0))
          .row(percentCharge(100), volts(3.4))
          .build();

  private TestParts() {}

  /** 100 A·h, 1 mΩ, 2.5 V to 3.65 V, 200 A and 400 A for 30 s, charging from 0 °C. */
  static CellBuilder cell() {
    return Cell.of("plain cell", Chemistry.LFP)
        .capacity(ampereHours(100))
        .openCircuit(STRAIGHT)
        .resistance(ResistanceTable.constant(milliohms(1)))
        .minimumVoltage(volts(2.5))
        .maximumVoltage(volts(3.65))
        .continuousDischargeCurrent(amperes(200))
        .pulseDischargeCurrent(amperes(400), seconds(30))
        .continuousChargeCurrent(amperes(100))
        .dischargeTemperatures(TemperatureRange.between(celsius(-20), celsius(55)))
        .chargeTemperatures(TemperatureRange.between(celsius(0), celsius(45)))
        .mass(kilograms(2));
  }

  static BatteryModule module(Cell cell, int series) {
    return BatteryModule.of(cell).name("plain module").series(series).build();
  }

  static BatteryModule module(int series) {
    return module(cell().build(), series);
  }

  static VoltageRange range(double lowestV, double highestV) {
    return VoltageRange.between(volts(lowestV), volts(highestV));
  }

  static VoltageWindow window(double lowestV, double highestV) {
    return VoltageWindow.operating(range(lowestV, highestV));
  }

  static Device inverter(double lowestV, double highestV) {
    return Device.of(
            "inverter",
            DeviceRole.INVERTER,
            window(lowestV, highestV)
                .fullPerformance(range(lowestV, highestV))
                .absoluteMaximum(volts(highestV)))
        .build();
  }

  static Device charger(double lowestV, double highestV) {
    return Device.of(
            "charger",
            DeviceRole.CHARGER,
            window(lowestV, highestV).absoluteMaximum(volts(2 * highestV)))
        .build();
  }

  /** 10 % to 100 %, down to −10 °C, 30 kW for 10 s, 50 A regeneration. */
  static OperatingConditions.Builder conditions() {
    return OperatingConditions.builder()
        .stateOfCharge(percentCharge(10), percentCharge(100))
        .coldest(celsius(-10))
        .peakDischargePower(kilowatts(30), seconds(10))
        .regenerationCurrent(amperes(50));
  }

  /** A cell with curves, resistances over temperature and charge, and limits of every sort. */
  static Cell randomCell(Generator random) {
    double[] ocvV = random.rising(4, 2.8, 3.5);
    double coldFactor = random.between(1.5, 5);
    double milliohm = random.betweenDecades(0.2, 3);
    double emptyFactor = random.between(1, 3);
    double fullFactor = random.between(0.8, 1.5);
    CellBuilder cell =
        cell()
            .openCircuit(
                OpenCircuitCurve.at(celsius(25))
                    .row(percentCharge(0), volts(ocvV[0]))
                    .row(percentCharge(20), volts(ocvV[1]))
                    .row(percentCharge(90), volts(ocvV[2]))
                    .row(percentCharge(100), volts(ocvV[3]))
                    .build())
            .resistance(
                ResistanceTable.at(celsius(-20), celsius(25))
                    .row(
                        percentCharge(0),
                        milliohms(milliohm * emptyFactor * coldFactor),
                        milliohms(milliohm * emptyFactor))
                    .row(percentCharge(50), milliohms(milliohm * coldFactor), milliohms(milliohm))
                    .row(
                        percentCharge(100),
                        milliohms(milliohm * fullFactor * coldFactor),
                        milliohms(milliohm * fullFactor))
                    .build())
            .pulseDischargeCurrent(amperes(random.between(200, 600)), seconds(30));
    if (random.chance(0.5)) {
      cell.chargeResistance(ResistanceTable.constant(milliohms(milliohm * random.between(0.5, 2))));
    }
    return cell.build();
  }

  static OperatingConditions randomConditions(Generator random) {
    OperatingConditions.Builder conditions =
        conditions()
            .stateOfCharge(
                percentCharge(random.typed(0, 30, 0)),
                percentCharge(random.chance(0.5) ? 100 : random.typed(60, 99, 0)))
            .coldest(celsius(random.typed(-15, 10, 0)))
            .regenerationCurrent(amperes(random.typed(0, 200, 0)));
    return random.chance(0.5)
        ? conditions.peakDischargeCurrent(amperes(random.typed(20, 500, 0)), seconds(10)).build()
        : conditions.peakDischargePower(kilowatts(random.typed(5, 60, 1)), seconds(10)).build();
  }

  static double voltsOf(Quantity<ElectricPotential> voltage) {
    return Kind.VOLTAGE.siValueOf(voltage);
  }
}
