package org.wattwright.examples;

import static org.wattwright.units.Measures.*;

import org.wattwright.check.*;
import org.wattwright.protection.*;

/** Does this fuse protect this circuit? Every number here is invented. */
public final class CoordinateAFuse {
  private CoordinateAFuse() {}

  /**
   * Prints the faults, what the fuse does with each, and the checks that it must pass.
   *
   * @param args not used
   */
  public static void main(String[] args) {
    FaultLoop near =
        FaultLoop.of(volts(116.8))
            .with("pack, warm and new", milliohms(18))
            .with("fuse holder", microohms(200))
            .withInductance("pack and bay link", microhenries(6));
    FaultLoop far =
        FaultLoop.of(volts(92))
            .withArcVoltage(volts(20))
            .with("pack, cold and aged", milliohms(68))
            .with("cable", milliohms(3.4))
            .withInductance("pack, bay link and cable", microhenries(9));
    Fuse fuse =
        Fuse.of("F-200", amperes(200))
            .directVoltage(volts(150))
            .testTimeConstant(milliseconds(2))
            .breakingCapacity(kiloamperes(10))
            .partialRange(amperes(800))
            .preArcingCurve(
                TimeCurrentCurve.ofPoints()
                    .point(amperes(400), seconds(100))
                    .point(amperes(800), seconds(2))
                    .point(amperes(1600), milliseconds(60))
                    .point(amperes(3000), milliseconds(8))
                    .build())
            .preArcingJouleIntegral(ampereSquaredSeconds(54_000))
            .totalJouleIntegral(ampereSquaredSeconds(160_000), volts(150))
            .ambientDerating(AmbientDerating.squareRoot(celsius(130), celsius(30)))
            .build();
    FuseDuty duty =
        FuseDuty.of(FaultRange.of(near.current(), far.current()))
            .highestVoltage(volts(116.8))
            .continuousCurrent(amperes(120))
            .air(celsius(60))
            .clearWithin(seconds(5))
            .withstand(Given.dataSheet(ampereSquaredSeconds(6_000_000), "35 mm² cable"))
            .otherDeviceUpTo(amperes(1000))
            .build();
    System.out.println(duty);
    System.out.println("near: " + fuse.clearing(near.current(), duty.highestVoltage()));
    System.out.println("far:  " + fuse.clearing(far.current(), duty.highestVoltage()));
    System.out.println(Checks.toText(fuse.checks(duty)));
    System.out.println(far.worksheet().toText());
  }
}
