package org.wattwright.examples;

import static org.wattwright.units.Measures.*;

import org.wattwright.battery.*;
import org.wattwright.drive.*;

/** How far does it go, new, aged and in winter? Every number here is invented. */
public final class RangeOnACycle {
  private RangeOnACycle() {}

  /**
   * Prints the range in three states and where the energy goes.
   *
   * @param args not used
   */
  public static void main(String[] args) {
    DriveCycle cycle = StandardCycle.NEDC.cycle();
    ElectricVehicle van = InventedVan.build();
    ElectricVehicle aged = van.toBuilder().pack(van.pack().aged(Ageing.of(0.8, 1.5))).build();
    ElectricVehicle winter =
        van.toBuilder()
            .at(PackState.of(percentCharge(95), celsius(-10)))
            .heater(kilowatts(2))
            .build();
    System.out.println("new:    " + CycleRun.of(van).range(cycle, percentCharge(10)));
    System.out.println("aged:   " + CycleRun.of(aged).range(cycle, percentCharge(10)));
    System.out.println("winter: " + CycleRun.of(winter).range(cycle, percentCharge(10)));
    System.out.println(CycleRun.of(van).once(cycle).balance().toMarkdown());
  }
}
