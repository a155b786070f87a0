package org.wattwright.examples;

import static org.wattwright.units.Measures.*;

import java.util.List;
import org.wattwright.battery.*;
import org.wattwright.check.Basis;
import org.wattwright.layout.*;
import org.wattwright.vehicle.*;

/** Which bay takes how many modules? Every number here is invented. */
public final class SplitThePack {
  private SplitThePack() {}

  /**
   * Prints the best split, the next best two, and the working.
   *
   * @param args not used
   */
  public static void main(String[] args) {
    var module =
        BatteryModule.whole("crate module", Chemistry.LFP, 4)
            .capacity(ampereHours(105))
            .cellOpenCircuit(CellEstimates.openCircuit(Chemistry.LFP))
            .resistance(milliohms(2.6), Basis.ESTIMATED)
            .minimumVoltage(volts(10))
            .maximumVoltage(volts(14.6))
            .continuousDischargeCurrent(amperes(157))
            .continuousChargeCurrent(amperes(105))
            .dischargeTemperatures(TemperatureRange.between(celsius(-20), celsius(55)))
            .chargeTemperatures(TemperatureRange.between(celsius(0), celsius(45)))
            .mass(kilograms(11.5))
            .build();
    Bay bonnet = Bay.at("bonnet", at(0.10, 0.72)).next(at(0.22, 0.72)).holds(module, 8);
    Bay tunnel = Bay.at("tunnel", at(1.20, 0.38)).next(at(1.45, 0.38)).holds(module, 5);
    Bay boot = Bay.at("boot", at(2.45, 0.55)).next(at(2.57, 0.55)).holds(module, 10);
    WeighedVehicle van =
        WeighedVehicle.withWheelbase(metres(2.31))
            .frontAxle(kilograms(395))
            .rearAxle(kilograms(430))
            .build();
    AllocationResult found =
        BayAllocator.over(MassLedger.of(van), List.of(bonnet, tunnel, boot))
            .modules(module, 14)
            .frontShareTarget(0.5, 0.01, LoadCase.KERB)
            .alternatives(2)
            .run();
    System.out.println(found);
    found.alternatives().forEach(System.out::println);
    found.best().ifPresent(best -> System.out.println(best.worksheet().toText()));
  }

  private static Position at(double behindM, double upM) {
    return Position.behindFrontAxle(metres(behindM)).aboveGround(metres(upM));
  }
}
