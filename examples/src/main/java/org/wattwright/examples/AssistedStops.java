package org.wattwright.examples;

import static org.wattwright.units.Measures.*;

import org.wattwright.check.*;
import org.wattwright.installation.*;
import org.wattwright.units.*;

/**
 * How many assisted stops does this reservoir hold once the pump dies? All numbers are invented.
 */
public final class AssistedStops {
  private AssistedStops() {}

  /**
   * Prints the reserve at home and in the hills, the reservoir it takes, and the working.
   *
   * @param args not used
   */
  public static void main(String[] args) {
    VacuumSystem home =
        VacuumSystem.of(BrakeServo.of(litres(0.35), litres(1.8)))
            .reservoir(litres(4))
            .pump(
                VacuumPump.ofSpeed("VP-30", litresPerMinute(30), kilopascals(12))
                    .current(amperes(9))
                    .startingCurrent(amperes(25)))
            .pumpStopsAt(VacuumLevel.absolute(kilopascals(22)))
            .pumpRestartsAt(VacuumLevel.absolute(kilopascals(30)))
            .warnsAt(VacuumLevel.absolute(kilopascals(36)));
    VacuumReserve reserve = VacuumReserve.of(4, kilopascals(35));
    VacuumSystem hills = home.altitude(metres(1500));

    System.out.println("at home: " + home.stops(kilopascals(30), reserve) + " stops");
    System.out.println("in the hills: " + hills.stops(kilopascals(30), reserve) + " stops");
    var reservoir = hills.reservoirFor(kilopascals(30), reserve).orElseThrow();
    System.out.println("reservoir for the hills: " + format(reservoir, Kind.VOLUME));
    System.out.println(home.load(minutes(1)).orElseThrow());
    System.out.println(Checks.toText(home.checks(reserve)));
    System.out.println(home.worksheet(reserve).toText());
  }
}
