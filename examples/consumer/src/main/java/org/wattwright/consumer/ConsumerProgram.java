package org.wattwright.consumer;

import static org.wattwright.units.Measures.ampereHours;
import static org.wattwright.units.Measures.amperes;
import static org.wattwright.units.Measures.celsius;
import static org.wattwright.units.Measures.kilograms;
import static org.wattwright.units.Measures.milliohms;
import static org.wattwright.units.Measures.percentCharge;
import static org.wattwright.units.Measures.seconds;
import static org.wattwright.units.Measures.volts;

import org.wattwright.battery.BatteryModule;
import org.wattwright.battery.Cell;
import org.wattwright.battery.CellEstimates;
import org.wattwright.battery.Chemistry;
import org.wattwright.battery.Pack;
import org.wattwright.battery.PackState;
import org.wattwright.battery.TemperatureRange;

/** What may an invented pack give for ten seconds? The argument says where the library came from. */
public final class ConsumerProgram {
  private ConsumerProgram() {}

  /**
   * Prints one line; throws if the library is not a module where it should be one.
   *
   * @param arguments {@code module path} or {@code class path}
   */
  public static void main(String[] arguments) {
    boolean named = Pack.class.getModule().isNamed();
    if (named != arguments[0].equals("module path")) {
      throw new IllegalStateException("not loaded from the " + arguments[0]);
    }
    Pack pack = Pack.of(module(), 8, 2);
    System.out.println(
        arguments[0]
            + ": "
            + pack
            + "; "
            + pack.maximumDischargePower(
                PackState.of(percentCharge(20), celsius(0)), seconds(10)));
  }

  private static BatteryModule module() {
    Cell cell =
        Cell.of("plate cell", Chemistry.LFP)
            .capacity(ampereHours(105))
            .openCircuit(CellEstimates.openCircuit(Chemistry.LFP))
            .resistance(CellEstimates.resistanceOverTemperature(milliohms(0.8)))
            .minimumVoltage(volts(2.5))
            .maximumVoltage(volts(3.65))
            .continuousDischargeCurrent(amperes(105))
            .pulseDischargeCurrent(amperes(315), seconds(30))
            .continuousChargeCurrent(amperes(52))
            .dischargeTemperatures(TemperatureRange.between(celsius(-20), celsius(55)))
            .chargeTemperatures(TemperatureRange.between(celsius(0), celsius(50)))
            .mass(kilograms(1.98))
            .build();
    return BatteryModule.of(cell).name("flat module").series(4).mass(kilograms(8.8)).build();
  }
}
