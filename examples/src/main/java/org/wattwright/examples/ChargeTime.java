package org.wattwright.examples;

import static org.wattwright.units.Measures.*;

import java.util.Map;
import java.util.TreeMap;
import org.wattwright.battery.*;
import org.wattwright.charging.*;
import org.wattwright.voltage.*;

/** How long does a charge take from three supplies? Every number here is invented. */
public final class ChargeTime {
  private ChargeTime() {}

  /**
   * Prints the time from three supplies, what limits it when, and the working of one.
   *
   * @param args not used
   */
  public static void main(String[] args) {
    Pack pack = Pack.of(module(), 14, 2);
    Charger charger =
        Charger.of("charger", VoltageWindow.operating(VoltageRange.between(volts(120), volts(210))))
            .maximumPower(kilowatts(6.6))
            .maximumCurrent(amperes(42))
            .maximumInputCurrent(amperes(32))
            .efficiency(EfficiencyByLoad.from(0.1, 0.86).and(0.5, 0.94).and(1, 0.93))
            .build();
    ChargeSimulation charge =
        ChargeSimulation.of(pack)
            .charger(charger)
            .from(percentCharge(15))
            .temperature(celsius(12))
            .auxiliaryPower(watts(60));
    Map<String, ChargingPoint> places = new TreeMap<>();
    places.put("bakery yard, 10 A", at(10));
    places.put(
        "harbour kerb, 16 A", at(32).cable(CableCoding.ofResistor(ohms(680))).pilot(offering(16)));
    places.put("workshop, 32 A", at(32).pilot(offering(32)));
    places.forEach(
        (name, place) -> {
          ChargeResult result = charge.at(place).run();
          System.out.println(name + ": " + result);
          result.phases().forEach(phase -> System.out.println("  " + phase));
        });
    System.out.println(charge.at(at(10)).run().worksheet().toText());
  }

  private static ChargingPoint at(double circuitA) {
    return ChargingPoint.of(Supply.singlePhase(volts(230), amperes(circuitA)));
  }

  private static ControlPilot offering(double currentA) {
    return ControlPilot.offering(amperes(currentA)).orElseThrow();
  }

  private static BatteryModule module() {
    Cell cell =
        Cell.of("invented plate cell", Chemistry.LFP)
            .capacity(ampereHours(105))
            .openCircuit(CellEstimates.openCircuit(Chemistry.LFP))
            .resistance(CellEstimates.resistanceOverTemperature(milliohms(0.8)))
            .minimumVoltage(volts(2.5))
            .maximumVoltage(volts(3.65))
            .continuousDischargeCurrent(amperes(105))
            .continuousChargeCurrent(amperes(52))
            .dischargeTemperatures(TemperatureRange.between(celsius(-20), celsius(55)))
            .chargeTemperatures(TemperatureRange.between(celsius(0), celsius(45)))
            .mass(kilograms(1.98))
            .build();
    return BatteryModule.of(cell).name("crate module").series(4).mass(kilograms(8.8)).build();
  }
}
