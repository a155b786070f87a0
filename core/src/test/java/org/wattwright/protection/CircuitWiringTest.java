package org.wattwright.protection;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.wattwright.units.Measures.amperes;
import static org.wattwright.units.Measures.celsius;
import static org.wattwright.units.Measures.metres;
import static org.wattwright.units.Measures.milliohms;
import static org.wattwright.units.Measures.volts;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.wattwright.check.Given;
import org.wattwright.conductor.Installation;
import org.wattwright.conductor.Wiring;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;
import org.wattwright.units.Price;

/** Conductors of a circuit: their number, metal, price and voltage lost; parallel runs. */
class CircuitWiringTest {
  private static CircuitBuilder phase() {
    return Circuit.of("phase", CircuitRole.MOTOR_PHASE)
        .continuousCurrent(amperes(150))
        .highestOperatingCurrent(amperes(180))
        .installation(Installation.freeAir(celsius(60)))
        .currentLimitedTo(amperes(220), "inverter");
  }

  private static DesignedCircuit designed(CircuitBuilder circuit) {
    CircuitDesign design = CircuitParts.designer(List.of(circuit.build())).run();
    assertThat(design.whyNone()).isBlank();
    return design.circuits().get(0);
  }

  /** Three conductors of 1.5 m at 0.011 kg/m and 0.40 EUR/m for each mm². */
  @Test
  void takesThreeConductorsForAMotor() {
    DesignedCircuit phases = designed(phase().length(metres(1.5)));
    double mm2 = Kind.AREA.siValueOf(phases.cable().size().area()) * 1e6;
    CircuitPart cable = phases.parts().get(0);
    assertThat(cable.name()).startsWith("4.5 m of ");
    assertThat(Kind.MASS.siValueOf(cable.mass().orElseThrow()))
        .isCloseTo(3 * 1.5 * 0.011 * mm2, within(1e-9));
    assertThat(cable.price().orElseThrow().amount().doubleValue())
        .isCloseTo(3 * 1.5 * 0.4 * mm2, within(1e-9));
    assertThat(Kind.VOLTAGE.siValueOf(phases.voltageDrop()))
        .isCloseTo(
            Math.sqrt(3)
                / 2
                * 150
                * Kind.RESISTANCE.siValueOf(
                    phases.conductors().loopResistanceAt(phases.operatingTemperature())),
            within(1e-9));
    assertThat(phase().build().wiring()).isEqualTo(Wiring.THREE_PHASE);
    assertThat(phases.circuit().returnLength()).contains(metres(1.5));
  }

  @Test
  void takesNoReturnAsThreePhasesToo() {
    DesignedCircuit stated = designed(phase().lengths(metres(1.5), metres(0)));
    assertThat(stated.parts()).isEqualTo(designed(phase().length(metres(1.5))).parts());
    CircuitBuilder odd = phase().lengths(metres(1.5), metres(1));
    assertThatThrownBy(odd::build)
        .isInstanceOf(InvalidInputException.class)
        .hasMessage(
            "Circuit.lengthBack of phase must be 0 m or that of the way out, with three phases,"
                + " but was 1 m");
  }

  @Test
  void takesTwoConductorsForAMotorOfDirectCurrent() {
    DesignedCircuit pair = designed(phase().length(metres(1.5)).wiring(Wiring.PAIR));
    assertThat(pair.parts().get(0).name()).startsWith("3 m of ");
  }

  private static CircuitBuilder lamps() {
    return Circuit.of("lamps", CircuitRole.LOW_VOLTAGE_FEED)
        .continuousCurrent(amperes(30))
        .length(metres(2))
        .installation(Installation.freeAir(celsius(45)))
        .currentLimitedTo(amperes(35), "converter");
  }

  /** The body's resistance loses voltage, but no cable is cut for it. */
  @Test
  void returnsLowVoltageThroughTheBody() {
    DesignedCircuit pair = designed(lamps());
    DesignedCircuit body =
        designed(lamps().returningThroughBody(Given.measured(milliohms(5), "four-wire")));
    assertThat(body.parts().get(0).name()).startsWith("2 m of ");
    assertThat(body.cable()).isEqualTo(pair.cable());
    double halfV = Kind.VOLTAGE.siValueOf(pair.voltageDrop()) / 2;
    assertThat(Kind.VOLTAGE.siValueOf(body.voltageDrop()))
        .isCloseTo(halfV + 30 * 5e-3, within(1e-9));
    DesignedCircuit short1 =
        designed(
            lamps()
                .returningThroughBody(Given.measured(milliohms(5), "four-wire"))
                .voltageDropAtMost(volts(0.25)));
    assertThat(Kind.AREA.siValueOf(short1.cable().size().area()))
        .isGreaterThan(Kind.AREA.siValueOf(body.cable().size().area()));
  }

  @Test
  void neverReturnsHighVoltageThroughTheBody() {
    assertThatThrownBy(
            () ->
                CircuitParts.traction()
                    .returningThroughBody(Given.measured(milliohms(5), "four-wire")))
        .isInstanceOf(InvalidInputException.class)
        .hasMessageContaining("only low voltage returns through the body");
    assertThatThrownBy(() -> CircuitParts.traction().wiring(Wiring.CHASSIS_RETURN))
        .hasMessageContaining("Circuit.wiring of traction must be a pair or three phases");
    assertThatThrownBy(
            () -> lamps().returningThroughBody(Given.measured(milliohms(-1), "four-wire")))
        .hasMessageContaining("Circuit.bodyResistance must be ≥ 0");
  }

  @Test
  void limitsTheParallelRunsOfOneCircuit() {
    Circuit one = CircuitParts.traction().parallelRunsUpTo(1).build();
    CircuitDesigner designer =
        CircuitParts.designer(List.of(one))
            .cables(CircuitParts.cables().subList(0, 5))
            .parallelRunsUpTo(3);
    assertThat(designer.run().blocked()).isPresent();
    Circuit two = CircuitParts.traction().parallelRunsUpTo(3).build();
    CircuitDesign found = designer.circuits(List.of(two)).parallelRunsUpTo(1).run();
    assertThat(found.circuits().get(0).parallelRuns()).isBetween(2, 3);
    assertThat(one.parallelRunsUpTo()).hasValue(1);
    assertThat(CircuitParts.traction().build().parallelRunsUpTo()).isEmpty();
    assertThatThrownBy(() -> CircuitParts.traction().parallelRunsUpTo(0))
        .hasMessageContaining("Circuit.parallelRuns must be from 1 to 8");
    assertThatThrownBy(() -> CircuitParts.traction().parallelRunsUpTo(9))
        .hasMessageContaining("Circuit.parallelRuns");
  }

  @Test
  void addsUpThePriceOfAllConductors() {
    DesignedCircuit pair = designed(phase().length(metres(1)).wiring(Wiring.PAIR));
    DesignedCircuit phases = designed(phase().length(metres(1)));
    Price two = pair.parts().get(0).price().orElseThrow();
    Price three = phases.parts().get(0).price().orElseThrow();
    assertThat(three.amount().doubleValue() / two.amount().doubleValue())
        .isCloseTo(1.5, within(1e-12));
  }
}
