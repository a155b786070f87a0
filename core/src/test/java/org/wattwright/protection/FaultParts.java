package org.wattwright.protection;

import static org.wattwright.units.Measures.ampereHours;
import static org.wattwright.units.Measures.ampereSquaredSeconds;
import static org.wattwright.units.Measures.amperes;
import static org.wattwright.units.Measures.celsius;
import static org.wattwright.units.Measures.henries;
import static org.wattwright.units.Measures.kilograms;
import static org.wattwright.units.Measures.milliseconds;
import static org.wattwright.units.Measures.ohms;
import static org.wattwright.units.Measures.seconds;
import static org.wattwright.units.Measures.volts;

import java.util.ArrayList;
import java.util.List;
import org.wattwright.battery.BatteryModule;
import org.wattwright.battery.Cell;
import org.wattwright.battery.CellBuilder;
import org.wattwright.battery.Chemistry;
import org.wattwright.battery.OpenCircuitCurve;
import org.wattwright.battery.Pack;
import org.wattwright.battery.ResistanceTable;
import org.wattwright.battery.SeriesString;
import org.wattwright.battery.TemperatureRange;
import org.wattwright.units.StateOfCharge;

/** Invented sources, fuses and faults. */
final class FaultParts {
  private FaultParts() {}

  /** A cell that stands for a whole string: 288 V empty, 400 V full, 403.2 V at most. */
  static CellBuilder stringCell() {
    return Cell.of("string", Chemistry.NMC)
        .capacity(ampereHours(60))
        .openCircuit(curve(288, 400))
        .resistance(ResistanceTable.constant(ohms(0.09)))
        .ohmicResistance(ohms(0.06))
        .minimumVoltage(volts(260))
        .maximumVoltage(volts(403.2))
        .continuousDischargeCurrent(amperes(300))
        .continuousChargeCurrent(amperes(100))
        .dischargeTemperatures(TemperatureRange.between(celsius(-20), celsius(55)))
        .chargeTemperatures(TemperatureRange.between(celsius(0), celsius(45)))
        .mass(kilograms(200));
  }

  static OpenCircuitCurve curve(double emptyV, double fullV) {
    return OpenCircuitCurve.at(celsius(25))
        .row(StateOfCharge.EMPTY, volts(emptyV))
        .row(StateOfCharge.FULL, volts(fullV))
        .build();
  }

  static Pack pack(int strings, CellBuilder cell) {
    List<SeriesString> all = new ArrayList<>();
    for (int i = 0; i < strings; i++) {
      all.add(SeriesString.of(BatteryModule.of(cell.build()).build(), 1));
    }
    return Pack.of(all);
  }

  static FaultCurrent fault(double voltageV, double ohm, double henry) {
    return FaultCurrent.of(volts(voltageV), ohms(ohm), henries(henry));
  }

  /** A dead short at once, of a stated current. */
  static FaultCurrent fault(double ampere) {
    return fault(400, 400 / ampere, 0);
  }

  /** 150 A 1000 s, 200 A 100 s, 400 A 2 s, 800 A 0.1 s, 2000 A 8 ms. */
  static TimeCurrentCurve.Builder curve() {
    return TimeCurrentCurve.ofPoints()
        .point(amperes(150), seconds(1000))
        .point(amperes(200), seconds(100))
        .point(amperes(400), seconds(2))
        .point(amperes(800), seconds(0.1))
        .point(amperes(2000), milliseconds(8));
  }

  static FuseBuilder fuse() {
    return Fuse.of("F-100", amperes(100))
        .directVoltage(volts(500))
        .testTimeConstant(milliseconds(5))
        .breakingCapacity(amperes(20_000))
        .partialRange(amperes(400))
        .preArcingCurve(curve().tolerance(0).readingError(0).build())
        .preArcingJouleIntegral(ampereSquaredSeconds(32_000))
        .totalJouleIntegral(ampereSquaredSeconds(60_000), volts(300))
        .totalJouleIntegral(ampereSquaredSeconds(90_000), volts(500))
        .ambientDerating(AmbientDerating.squareRoot(celsius(130), celsius(30)))
        .cyclicFactor(0.8);
  }
}
