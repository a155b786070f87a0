package org.wattwright.layout;

import static org.wattwright.units.Measures.ampereHours;
import static org.wattwright.units.Measures.amperes;
import static org.wattwright.units.Measures.celsius;
import static org.wattwright.units.Measures.kilograms;
import static org.wattwright.units.Measures.kilowattHours;
import static org.wattwright.units.Measures.kilowatts;
import static org.wattwright.units.Measures.litres;
import static org.wattwright.units.Measures.millimetres;
import static org.wattwright.units.Measures.milliohms;
import static org.wattwright.units.Measures.percentCharge;
import static org.wattwright.units.Measures.seconds;
import static org.wattwright.units.Measures.volts;

import java.util.ArrayList;
import java.util.List;
import org.wattwright.battery.BatteryModule;
import org.wattwright.battery.Cell;
import org.wattwright.battery.CellBuilder;
import org.wattwright.battery.CellEstimates;
import org.wattwright.battery.Chemistry;
import org.wattwright.battery.Dimensions;
import org.wattwright.battery.OpenCircuitCurve;
import org.wattwright.battery.RcPair;
import org.wattwright.battery.ResistanceTable;
import org.wattwright.battery.TemperatureRange;
import org.wattwright.testing.Generator;
import org.wattwright.units.Price;
import org.wattwright.voltage.Device;
import org.wattwright.voltage.DeviceRole;
import org.wattwright.voltage.OperatingConditions;
import org.wattwright.voltage.VoltageRange;
import org.wattwright.voltage.VoltageWindow;

/** Random but sensible modules, devices, conditions and demands. */
record RandomSearch(
    List<BatteryModule> modules,
    List<Device> devices,
    OperatingConditions conditions,
    Demands demands) {
  static final int SERIES = 14;
  static final int PARALLEL = 3;

  /** NaN: not asked for. */
  record Demands(
      double massKg,
      double energyKwh,
      double powerKw,
      double chargeKw,
      double volumeL,
      double meanKw) {}

  static RandomSearch of(Generator random) {
    List<BatteryModule> modules = new ArrayList<>();
    for (int i = random.count(1, 3); i > 0; i--) {
      modules.add(module(random, "module " + i));
    }
    List<Device> devices = new ArrayList<>();
    for (int i = random.count(0, 3); i > 0; i--) {
      devices.add(device(random, "device " + i));
    }
    return new RandomSearch(modules, devices, conditions(random), demands(random));
  }

  PackSearch search() {
    PackSearch search =
        PackSearch.over(modules).under(conditions).seriesAtMost(SERIES).parallelAtMost(PARALLEL);
    for (Device device : devices) {
      search = search.device(device);
    }
    return withDemands(search);
  }

  private PackSearch withDemands(PackSearch bare) {
    PackSearch search = bare;
    if (!Double.isNaN(demands.massKg)) {
      search = search.massAtMost(kilograms(demands.massKg));
    }
    if (!Double.isNaN(demands.energyKwh)) {
      search = search.usableEnergyAtLeast(kilowattHours(demands.energyKwh));
    }
    if (!Double.isNaN(demands.meanKw)) {
      search = search.meanPower(kilowatts(demands.meanKw));
    }
    if (!Double.isNaN(demands.powerKw)) {
      search =
          search.peakPowerAtLeast(
              kilowatts(demands.powerKw), seconds(10), percentCharge(20), celsius(0));
    }
    if (!Double.isNaN(demands.chargeKw)) {
      search =
          search.chargePowerAtLeast(
              kilowatts(demands.chargeKw), seconds(5), percentCharge(80), celsius(20));
    }
    if (!Double.isNaN(demands.volumeL)) {
      search = search.volumeAtMost(litres(demands.volumeL));
    }
    return search;
  }

  private static Demands demands(Generator random) {
    return new Demands(
        perhaps(random, 40, 500),
        perhaps(random, 2, 30),
        perhaps(random, 10, 90),
        perhaps(random, 2, 30),
        perhaps(random, 60, 500),
        random.chance(0.3) ? random.typed(3, 20, 1) : Double.NaN);
  }

  private static double perhaps(Generator random, double low, double high) {
    return random.chance(0.6) ? random.typed(low, high, 1) : Double.NaN;
  }

  static BatteryModule module(Generator random, String name) {
    BatteryModule.Builder module =
        BatteryModule.of(cell(random))
            .name(name)
            .series(random.count(1, 12))
            .parallel(random.count(1, 2))
            .interconnectResistance(milliohms(random.typed(0, 2, 2)))
            .overheadMass(kilograms(random.typed(0, 3, 1)));
    if (random.chance(0.8)) {
      module.dimensions(
          Dimensions.of(
              millimetres(random.count(200, 600)),
              millimetres(random.count(150, 350)),
              millimetres(random.count(90, 250))));
    }
    if (random.chance(0.8)) {
      module.price(Price.of(Integer.toString(random.count(200, 2000)), "EUR"));
    }
    return module.build();
  }

  private static Cell cell(Generator random) {
    double capacityAh = random.typed(40, 200, 0);
    double lowV = random.typed(2.8, 3.3, 2);
    CellBuilder cell =
        Cell.of("cell", Chemistry.NMC)
            .capacity(ampereHours(capacityAh))
            .openCircuit(
                OpenCircuitCurve.at(celsius(-10), celsius(25))
                    .row(percentCharge(0), volts(lowV - 0.05), volts(lowV))
                    .row(percentCharge(40), volts(lowV + 0.3), volts(lowV + 0.4))
                    .row(percentCharge(100), volts(lowV + 0.8), volts(lowV + 0.85))
                    .build())
            .resistance(
                ResistanceTable.at(celsius(-10), celsius(25))
                    .row(percentCharge(0), milliohms(random.typed(2, 6, 2)), milliohms(1.4))
                    .row(percentCharge(100), milliohms(random.typed(1, 2, 2)), milliohms(0.6))
                    .build())
            .minimumVoltage(volts(2.5))
            .maximumVoltage(volts(4.2))
            .continuousDischargeCurrent(amperes(2 * capacityAh))
            .continuousChargeCurrent(amperes(capacityAh))
            .dischargeTemperatures(TemperatureRange.between(celsius(-20), celsius(55)))
            .chargeTemperatures(TemperatureRange.between(celsius(0), celsius(45)))
            .mass(kilograms(random.typed(0.8, 4, 2)));
    if (random.chance(0.4)) {
      cell.rcPair(RcPair.of(milliohms(random.typed(0.2, 1, 2)), seconds(random.count(5, 60))));
    }
    if (random.chance(0.3)) {
      cell.resistance(CellEstimates.resistance(Chemistry.NMC, ampereHours(capacityAh)));
    }
    if (random.chance(0.6)) {
      cell.pulseDischargeCurrent(amperes(3.5 * capacityAh), seconds(random.count(5, 30)));
    }
    return cell.build();
  }

  private static Device device(Generator random, String name) {
    double lowV = random.typed(10, 150, 0);
    double highV = lowV + random.typed(60, 400, 0);
    VoltageWindow window = VoltageWindow.operating(VoltageRange.between(volts(lowV), volts(highV)));
    if (random.chance(0.85)) {
      window = window.absoluteMaximum(volts(highV + random.count(0, 40)));
    }
    return Device.of(name, random.oneOf(List.of(DeviceRole.values())), window).build();
  }

  private static OperatingConditions conditions(Generator random) {
    OperatingConditions.Builder conditions =
        OperatingConditions.builder()
            .stateOfCharge(
                percentCharge(random.count(5, 25)), percentCharge(random.oneOf(List.of(90, 100))))
            .coldest(celsius(random.count(-15, 10)));
    if (random.chance(0.85)) {
      conditions.regenerationCurrent(amperes(random.count(0, 150)));
    }
    return random.chance(0.7)
        ? conditions
            .peakDischargePower(kilowatts(random.typed(3, 50, 1)), seconds(random.count(1, 20)))
            .build()
        : conditions
            .peakDischargeCurrent(amperes(random.count(30, 500)), seconds(random.count(1, 20)))
            .build();
  }
}
