package org.wattwright.protection;

import static org.wattwright.units.Measures.amperes;
import static org.wattwright.units.Measures.microhenries;
import static org.wattwright.units.Measures.milliohms;
import static org.wattwright.units.Measures.newtonMetres;
import static org.wattwright.units.Measures.seconds;
import static org.wattwright.units.Measures.volts;

import java.util.List;
import org.junit.jupiter.api.Nested;
import org.wattwright.testing.ValueTypeContract;
import org.wattwright.units.Price;

/** Equality, text and serialisation of what circuits are made of. */
class CircuitValueTypesTest {
  private static FaultRange faults(double milliohm) {
    return FaultRange.of(
        FaultCurrent.of(volts(400), milliohms(milliohm), microhenries(20)),
        FaultCurrent.of(volts(280), milliohms(130), microhenries(20)));
  }

  @Nested
  class Trips extends ValueTypeContract<OvercurrentTrip> {
    @Override
    protected OvercurrentTrip sample() {
      return OvercurrentTrip.at(amperes(400), seconds(0.2), "battery management");
    }

    @Override
    protected List<OvercurrentTrip> different() {
      return List.of(
          OvercurrentTrip.at(amperes(401), seconds(0.2), "battery management"),
          OvercurrentTrip.at(amperes(400), seconds(0.3), "battery management"),
          OvercurrentTrip.at(amperes(400), seconds(0.2), "inverter"));
    }
  }

  @Nested
  class PhaseCurrents extends ValueTypeContract<MotorPhaseCurrent> {
    @Override
    protected MotorPhaseCurrent sample() {
      return MotorPhaseCurrent.ofPoint(newtonMetres(180), amperes(360));
    }

    @Override
    protected List<MotorPhaseCurrent> different() {
      return List.of(
          MotorPhaseCurrent.ofPoint(newtonMetres(181), amperes(360)),
          MotorPhaseCurrent.ofPoint(newtonMetres(180), amperes(361)));
    }
  }

  @Nested
  class SenseWirings extends ValueTypeContract<SenseWiring> {
    @Override
    protected SenseWiring sample() {
      return SenseWiring.of("unit 1", 13, volts(403)).fusedTaps(13);
    }

    @Override
    protected List<SenseWiring> different() {
      return List.of(
          SenseWiring.of("unit 2", 13, volts(403)).fusedTaps(13),
          SenseWiring.of("unit 1", 12, volts(403)).fusedTaps(12),
          SenseWiring.of("unit 1", 13, volts(404)).fusedTaps(13),
          SenseWiring.of("unit 1", 13, volts(403)),
          sample().interruptedBy("link"),
          sample().withstands(volts(80)));
    }
  }

  @Nested
  class Supplies extends ValueTypeContract<CircuitSupply> {
    @Override
    protected CircuitSupply sample() {
      return CircuitSupply.of("battery", volts(403), faults(60));
    }

    @Override
    protected List<CircuitSupply> different() {
      return List.of(
          CircuitSupply.of("half", volts(403), faults(60)),
          CircuitSupply.of("battery", volts(404), faults(60)),
          CircuitSupply.of("battery", volts(403), faults(61)));
    }
  }

  @Nested
  class PartsOfCircuits extends ValueTypeContract<CircuitPart> {
    @Override
    protected CircuitPart sample() {
      return new CircuitPart(CircuitPart.Type.FUSE, "F", 0.2, Price.of("20", "EUR"));
    }

    @Override
    protected List<CircuitPart> different() {
      return List.of(
          new CircuitPart(CircuitPart.Type.CABLE, "F", 0.2, Price.of("20", "EUR")),
          new CircuitPart(CircuitPart.Type.FUSE, "G", 0.2, Price.of("20", "EUR")),
          new CircuitPart(CircuitPart.Type.FUSE, "F", 0.3, Price.of("20", "EUR")),
          new CircuitPart(CircuitPart.Type.FUSE, "F", 0.2, null));
    }
  }
}
