package org.wattwright.protection;

import static org.wattwright.units.Measures.amperes;
import static org.wattwright.units.Measures.celsius;
import static org.wattwright.units.Measures.henries;
import static org.wattwright.units.Measures.microhenries;
import static org.wattwright.units.Measures.millifarads;
import static org.wattwright.units.Measures.milliohms;
import static org.wattwright.units.Measures.ohms;
import static org.wattwright.units.Measures.percentPerKelvin;
import static org.wattwright.units.Measures.seconds;
import static org.wattwright.units.Measures.volts;

import java.util.List;
import org.junit.jupiter.api.Nested;
import org.wattwright.check.Given;
import org.wattwright.testing.ValueTypeContract;
import org.wattwright.units.Measures;

/** Equality, text and serialisation of faults and fuses. */
class FaultValueTypesTest {
  private static FaultPath path(double milliohm) {
    return FaultPath.EMPTY
        .with("cable", Given.measured(milliohms(milliohm), "four-wire"))
        .withInductance("loop", Given.measured(microhenries(20), "bridge"));
  }

  private static CapacitorDischarge capacitor(double ohm) {
    return CapacitorDischarge.of("inverter", millifarads(1), volts(400))
        .through(ohms(ohm), henries(1e-6));
  }

  @Nested
  class FaultCurrents extends ValueTypeContract<FaultCurrent> {
    @Override
    protected FaultCurrent sample() {
      return FaultParts.fault(400, 0.05, 1e-5);
    }

    @Override
    protected List<FaultCurrent> different() {
      return List.of(
          FaultParts.fault(401, 0.05, 1e-5),
          FaultParts.fault(400, 0.06, 1e-5),
          FaultParts.fault(400, 0.05, 0));
    }
  }

  @Nested
  class FaultLoops extends ValueTypeContract<FaultLoop> {
    @Override
    protected FaultLoop sample() {
      return FaultLoop.of(volts(400)).with("pack", ohms(0.1));
    }

    @Override
    protected List<FaultLoop> different() {
      return List.of(
          FaultLoop.of(volts(401)).with("pack", ohms(0.1)),
          sample().withArcVoltage(volts(20)),
          sample().with("cable", ohms(0.01)),
          sample().withInductance("cable", microhenries(1)));
    }
  }

  @Nested
  class FaultPaths extends ValueTypeContract<FaultPath> {
    @Override
    protected FaultPath sample() {
      return path(4);
    }

    @Override
    protected List<FaultPath> different() {
      return List.of(FaultPath.EMPTY, path(5));
    }
  }

  @Nested
  class FaultSources extends ValueTypeContract<FaultSource> {
    @Override
    protected FaultSource sample() {
      return FaultSource.of(FaultParts.pack(2, FaultParts.stringCell()));
    }

    @Override
    protected List<FaultSource> different() {
      return List.of(
          sample().intoString(0),
          sample().withPolarisationTime(seconds(30)),
          sample().withCapacitor(capacitor(0.1)),
          sample().withArcVoltage(Given.measured(volts(0), "bolted")));
    }
  }

  @Nested
  class FaultRanges extends ValueTypeContract<FaultRange> {
    @Override
    protected FaultRange sample() {
      return FaultRange.of(FaultParts.fault(5000), FaultParts.fault(1000));
    }

    @Override
    protected List<FaultRange> different() {
      return List.of(
          FaultRange.of(FaultParts.fault(5000), FaultParts.fault(900)),
          FaultRange.of(FaultParts.fault(6000), FaultParts.fault(1000)),
          sample().withCapacitors(List.of(capacitor(0.1))),
          FaultSource.of(FaultParts.pack(1, FaultParts.stringCell())).range(path(1), path(4)));
    }
  }

  @Nested
  class Capacitors extends ValueTypeContract<CapacitorDischarge> {
    @Override
    protected CapacitorDischarge sample() {
      return capacitor(0.1);
    }

    @Override
    protected List<CapacitorDischarge> different() {
      return List.of(
          capacitor(0.2),
          CapacitorDischarge.of("heater", millifarads(1), volts(400))
              .through(ohms(0.1), henries(1e-6)));
    }
  }

  @Nested
  class CombinedFaults extends ValueTypeContract<CombinedFault> {
    @Override
    protected CombinedFault sample() {
      return CombinedFault.of(FaultParts.fault(5000), List.of(capacitor(0.1)));
    }

    @Override
    protected List<CombinedFault> different() {
      return List.of(
          CombinedFault.of(FaultParts.fault(5000), List.of()),
          CombinedFault.of(FaultParts.fault(4000), List.of(capacitor(0.1))));
    }
  }

  @Nested
  class Curves extends ValueTypeContract<TimeCurrentCurve> {
    @Override
    protected TimeCurrentCurve sample() {
      return FaultParts.curve().build();
    }

    @Override
    protected List<TimeCurrentCurve> different() {
      return List.of(
          FaultParts.curve().tolerance(0.2).build(),
          FaultParts.curve().readingError(0).build(),
          FaultParts.curve().point(amperes(4000), seconds(0.001)).build());
    }
  }

  @Nested
  class Deratings extends ValueTypeContract<AmbientDerating> {
    @Override
    protected AmbientDerating sample() {
      return AmbientDerating.squareRoot(celsius(130), celsius(30));
    }

    @Override
    protected List<AmbientDerating> different() {
      return List.of(
          sample().withUprating(),
          AmbientDerating.squareRoot(celsius(150), celsius(30)),
          AmbientDerating.linear(percentPerKelvin(0.5), celsius(40)),
          AmbientDerating.table(List.of(new AmbientDerating.Point(celsius(25), 1))));
    }
  }

  @Nested
  class Fuses extends ValueTypeContract<Fuse> {
    @Override
    protected Fuse sample() {
      return FaultParts.fuse().build();
    }

    @Override
    protected List<Fuse> different() {
      return List.of(
          FaultParts.fuse().fullRange().build(),
          FaultParts.fuse().directVoltage(volts(600)).build(),
          FaultParts.fuse().mass(Measures.grams(200)).build());
    }
  }

  @Nested
  class Duties extends ValueTypeContract<FuseDuty> {
    private FuseDuty.Builder duty() {
      return FuseDuty.of(FaultRange.of(FaultParts.fault(5000), FaultParts.fault(1000)))
          .highestVoltage(volts(400))
          .continuousCurrent(amperes(60))
          .air(celsius(40));
    }

    @Override
    protected FuseDuty sample() {
      return duty().build();
    }

    @Override
    protected List<FuseDuty> different() {
      return List.of(duty().air(celsius(50)).build(), duty().clearWithin(seconds(1)).build());
    }
  }

  @Nested
  class Pairs extends ValueTypeContract<Selectivity> {
    @Override
    protected Selectivity sample() {
      Fuse fuse = FaultParts.fuse().build();
      return Selectivity.of(fuse.toBuilder().fullRange().build()).over(fuse);
    }

    @Override
    protected List<Selectivity> different() {
      return List.of(Selectivity.of(FaultParts.fuse().build()).over(FaultParts.fuse().build()));
    }
  }

  @Nested
  class Gates extends ValueTypeContract<FuseGates> {
    @Override
    protected FuseGates sample() {
      return FuseGates.generalPurpose(amperes(63)).orElseThrow();
    }

    @Override
    protected List<FuseGates> different() {
      return List.of(FuseGates.generalPurpose(amperes(100)).orElseThrow());
    }
  }
}
