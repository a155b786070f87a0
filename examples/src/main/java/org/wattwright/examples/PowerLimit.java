package org.wattwright.examples;

import static org.wattwright.units.Measures.*;

import java.util.List;
import org.wattwright.drive.*;

/** What does a current limit cost, and how low may it go? Every number here is invented. */
public final class PowerLimit {
  private PowerLimit() {}

  /**
   * Prints a table over the limit and the smallest limit that will do.
   *
   * @param args not used
   */
  public static void main(String[] args) {
    RoadLoad laden = InventedVan.LOAD.withMass(kilograms(1600));
    PowerLimitStudy study =
        PowerLimitStudy.of(
            InventedVan.build(), StandardCycle.ECE_15.cycle(), percentCharge(10), laden);
    System.out.println(
        PowerLimitStudy.toMarkdown(
            study.byCurrent(List.of(amperes(150), amperes(250), amperes(400)))));
    System.out.println(
        study.smallestCurrent(
            List.of(Ability.hold(kilometresPerHour(80), 0.03), Ability.startOn(0.15).with(laden))));
  }
}
