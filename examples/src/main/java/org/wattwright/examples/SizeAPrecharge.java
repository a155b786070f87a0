package org.wattwright.examples;

import static org.wattwright.units.Measures.*;

import org.wattwright.check.*;
import org.wattwright.protection.*;

/** Which resistor charges this bus, and which one empties it? Every number here is invented. */
public final class SizeAPrecharge {
  private SizeAPrecharge() {}

  /**
   * Prints the resistor that closes in time, its checks and working, and the bleed resistor.
   *
   * @param args not used
   */
  public static void main(String[] args) {
    Contactor contactor = Contactor.of("K-250", volts(150)).makeLimit(amperes(600)).build();
    Precharge precharge =
        Precharge.from(volts(116.8))
            .capacitance(microfarads(3300))
            .capacitanceTolerance(0.2)
            .supplyResistance(milliohms(18))
            .load(PrechargeLoad.resistance("bleed", kiloohms(39)))
            .contactor(contactor)
            .within(seconds(1))
            .timeOut(seconds(2))
            .repeats(3, minutes(1))
            .build();
    System.out.println(precharge);
    PreferredValues series = PreferredValues.E12;
    var ohms = precharge.largestResistance(seconds(1), series, 0.05).orElseThrow();
    PrechargeResistor resistor =
        PrechargeResistor.of("W-25", ohms)
            .tolerance(0.05)
            .continuousPower(watts(25))
            .pulseEnergy(joules(500))
            .voltage(volts(500));
    PrechargeResult result = precharge.with(resistor);
    System.out.println(result);
    System.out.println(Checks.toText(result.checks()));
    System.out.println(result.worksheet().toText());

    var atMost = microfarads(3300 * 1.2);
    var bleed = BusDischarge.largestResistance(atMost, volts(116.8), DischargeRule.BLEED);
    var sold = series.atMost(bleed.divide(1.05));
    BusDischarge discharge = new BusDischarge(atMost, volts(116.8), sold.multiply(1.05));
    System.out.println("bleed " + sold + ": " + discharge.check(DischargeRule.BLEED));
    System.out.println(discharge.worksheet(DischargeRule.BLEED).toText());
  }
}
