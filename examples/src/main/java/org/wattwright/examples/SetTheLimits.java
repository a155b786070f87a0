package org.wattwright.examples;

import static org.wattwright.units.Measures.*;

import org.wattwright.check.*;
import org.wattwright.installation.*;
import org.wattwright.units.*;

/** What do I set on charger, battery management and inverter? Every number here is invented. */
public final class SetTheLimits {
  private SetTheLimits() {}

  /**
   * Prints the settings sheet, the verdicts with tolerances stacked, and the working.
   *
   * @param args not used
   */
  public static void main(String[] args) {
    SettingsLadder ladder =
        SettingsLadder.of(32)
            .step(LadderStep.CELL_MAXIMUM, volts(3.65))
            .step(LadderStep.HIGH_TRIP, volts(3.63))
            .step(LadderStep.HIGH_WARNING, volts(3.60))
            .step(LadderStep.CHARGER_END, volts(3.50))
            .step(LadderStep.CUT_BACK, volts(2.90))
            .step(LadderStep.LOW_WARNING, volts(2.75))
            .step(LadderStep.LOW_TRIP, volts(2.60))
            .step(LadderStep.CELL_MINIMUM, volts(2.50))
            .measuringTolerance(millivolts(10))
            .imbalance(millivolts(30))
            .chargerTolerance(0.005)
            .inverterTolerance(0.01)
            .temperature(TemperatureStep.COLDEST_CHARGE, celsius(0))
            .temperature(TemperatureStep.CHARGE_INHIBIT, celsius(3))
            .temperature(TemperatureStep.HOT_TRIP, celsius(55))
            .temperature(TemperatureStep.HOTTEST_CELL, celsius(60))
            .temperatureTolerance(kelvinsOfRise(2))
            .load(new CellLoad(volts(3.1), milliohms(1.2), amperes(300)))
            .build();
    System.out.println(ladder.toSheet().toMarkdown());
    System.out.println(Checks.toText(ladder.checks()));
    System.out.println(ladder.worksheet().toText());

    BleedBalancing bleed = BleedBalancing.through(ohms(33), volts(3.4));
    var charge = BleedBalancing.chargeToRemove(ampereHours(100), 0.02);
    System.out.println("balancing 2 %: " + format(bleed.timeFor(charge), Kind.TIME));
  }
}
