package org.wattwright.protection;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.wattwright.units.Measures.amperes;
import static org.wattwright.units.Measures.celsius;
import static org.wattwright.units.Measures.grams;
import static org.wattwright.units.Measures.joules;
import static org.wattwright.units.Measures.kiloohms;
import static org.wattwright.units.Measures.metres;
import static org.wattwright.units.Measures.microfarads;
import static org.wattwright.units.Measures.minutes;
import static org.wattwright.units.Measures.ohms;
import static org.wattwright.units.Measures.seconds;
import static org.wattwright.units.Measures.volts;
import static org.wattwright.units.Measures.watts;

import java.util.List;
import javax.measure.Quantity;
import org.junit.jupiter.api.Test;
import org.wattwright.check.Basis;
import org.wattwright.check.Check;
import org.wattwright.check.Checks;
import org.wattwright.check.Outcome;
import org.wattwright.conductor.Installation;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;

/** Pre-charge as the designer chooses it: tolerances, running loads, discharge. */
class DesignedPrechargeTest {
  private static final double U = 403.2;

  private static CircuitBuilder circuit() {
    return CircuitParts.traction()
        .precharged()
        .loadCapacitance(microfarads(600))
        .prechargeTimes(seconds(0.45), seconds(3))
        .prechargeRepeats(3, minutes(1));
  }

  /** Bears a shorted bus for ever, so that time and energy alone decide. */
  private static PrechargeResistor resistor(double ohm, double pulseJ) {
    return PrechargeResistor.of("R-" + (int) ohm, ohms(ohm))
        .tolerance(0.05)
        .continuousPower(watts(3000))
        .pulseEnergy(joules(pulseJ))
        .voltage(volts(1000))
        .mass(grams(ohm > 200 ? 50 : 100));
  }

  private static CircuitDesign design(CircuitBuilder circuit, PrechargeResistor... resistors) {
    return CircuitParts.designer(List.of(circuit.build()))
        .prechargeResistors(List.of(resistors))
        .run();
  }

  private static PrechargeResult found(CircuitDesign design) {
    assertThat(design.whyNone()).isBlank();
    return design.circuits().get(0).precharge().orElseThrow();
  }

  private static Check check(CircuitDesign design, String code) {
    return Checks.withCode(design.circuits().get(0).checks(), code).get(0);
  }

  private static <Q extends Quantity<Q>> double actual(Check check, Kind<Q> kind) {
    return kind.siValueOf(check.actual().orElseThrow().quantity(kind));
  }

  /**
   * R-220 needs (231 + 0.06) Ω · 600 µF · ln 20 = 415 ms, but 498 ms with a fifth more capacitance:
   * not within 450 ms.
   */
  @Test
  void takesTheSlowestBusThatTheToleranceAllows() {
    PrechargeResistor[] both = {resistor(220, 6000), resistor(150, 6000)};
    CircuitDesign usual = design(circuit(), both);
    assertThat(found(usual).resistor().name()).isEqualTo("R-150");
    CircuitDesign exact = design(circuit().loadCapacitanceTolerance(0), both);
    assertThat(found(exact).resistor().name()).isEqualTo("R-220");
    double ohm = 150 * 1.05 + 0.06;
    assertThat(actual(check(usual, "precharge.time"), Kind.TIME))
        .isCloseTo(ohm * 720e-6 * Math.log(20), within(1e-9));
    assertThat(found(usual).slowest().timeToTarget().orElseThrow())
        .isNotEqualTo(found(usual).nominal().timeToTarget().orElseThrow());
  }

  /** ½·C·U² = 48.8 J at the stated capacitance and 58.5 J at the upper tolerance. */
  @Test
  void takesTheEnergyOfTheLargestBus() {
    CircuitDesign weak = design(circuit(), resistor(150, 55));
    assertThat(weak.blocked().orElseThrow().ruledOut()).containsKey("precharge.pulse-energy");
    CircuitDesign exact = design(circuit().loadCapacitanceTolerance(0.05), resistor(150, 55));
    double shareLeft = 0.05 * 0.05;
    double most = 0.5 * 630e-6 * U * U * (1 - shareLeft);
    assertThat(actual(check(exact, "precharge.pulse-energy"), Kind.ENERGY))
        .isCloseTo(most, within(most * 5e-4));
    CircuitDesign larger = design(circuit(), resistor(150, 6000));
    assertThat(actual(check(larger, "precharge.pulse-energy"), Kind.ENERGY))
        .isCloseTo(most * 720 / 630, within(most * 5e-4));
  }

  @Test
  void marksTheUsualToleranceAsAnEstimate() {
    CircuitDesign usual = design(circuit(), resistor(150, 6000));
    Check energy = check(usual, "precharge.pulse-energy");
    assertThat(energy.basis()).isEqualTo(Basis.ESTIMATED);
    assertThat(energy.outcome()).isEqualTo(Outcome.CAUTION);
    assertThat(energy.estimates()).containsExactly("precharge.capacitanceTolerance");
    assertThat(check(usual, "precharge.resistor-voltage").outcome()).isEqualTo(Outcome.PASS);
    CircuitDesign told = design(circuit().loadCapacitanceTolerance(0.2), resistor(150, 6000));
    assertThat(check(told, "precharge.pulse-energy").outcome()).isEqualTo(Outcome.PASS);
    assertThat(actual(check(told, "precharge.pulse-energy"), Kind.ENERGY))
        .isEqualTo(actual(energy, Kind.ENERGY));
    Circuit stated = circuit().build();
    assertThat(stated.loadCapacitanceTolerance()).isEqualTo(Circuit.USUAL_CAPACITANCE_TOLERANCE);
    assertThat(stated.loadCapacitanceTolerance().value()).isEqualTo(0.2);
    String sheet = found(usual).worksheet().toText();
    assertThat(sheet).contains("by which share it may be more or less [estimated]");
    assertThat(sheet).contains("common practice: bus capacitors");
  }

  /** 0.2 A through 157.56 Ω leave 31.5 V missing, more than the 20.2 V at which it may close. */
  @Test
  void saysThatARunningLoadKeepsItFromCompleting() {
    CircuitDesign never =
        design(
            circuit().runsDuringPrecharge(PrechargeLoad.current("pump", amperes(0.2))),
            resistor(150, 6000));
    BlockedCircuit blocked = never.blocked().orElseThrow();
    assertThat(blocked.ruledOut())
        .containsKey("precharge.completes")
        .doesNotContainKeys("precharge.time", "precharge.time-out");
    assertThat(never.whyNone())
        .contains("never completes: a load keeps the bus down at 371.7 V of 383 V");
    CircuitDesign slower =
        design(
            circuit().runsDuringPrecharge(PrechargeLoad.current("pump", amperes(0.05))),
            resistor(150, 6000));
    double ohm = 150 * 1.05 + 0.06;
    double endV = U - ohm * 0.05;
    assertThat(actual(check(slower, "precharge.time"), Kind.TIME))
        .isCloseTo(ohm * 720e-6 * Math.log(endV / (endV - 0.95 * U)), within(1e-9));
  }

  @Test
  void picksAResistorWithWhichTheLoadStillLetsItComplete() {
    CircuitDesign design =
        design(
            circuit()
                .prechargeTimes(seconds(0.6), seconds(3))
                .runsDuringPrecharge(PrechargeLoad.current("pump", amperes(0.1))),
            resistor(220, 6000),
            resistor(150, 6000));
    assertThat(found(design).resistor().name()).isEqualTo("R-150");
  }

  /** 47 kΩ·1.05·720 µF·ln(403.2/60) = 67.7 s; in pre-charge it draws at its lowest resistance. */
  @Test
  void countsTheBleedResistorBothWays() {
    CircuitBuilder bled = circuit().bleedResistor(kiloohms(47), 0.05);
    CircuitDesign design = design(bled, resistor(150, 6000));
    Check time = check(design, "discharge.time");
    assertThat(actual(time, Kind.TIME))
        .isCloseTo(47e3 * 1.05 * 720e-6 * Math.log(U / 60), within(1e-6));
    assertThat(time.outcome()).isEqualTo(Outcome.PASS);
    double ohm = 150 * 1.05 + 0.06;
    assertThat(Kind.VOLTAGE.siValueOf(found(design).slowest().finalVoltage()))
        .isCloseTo(U / (1 + ohm / (47e3 * 0.95)), within(1e-9));
    assertThat(bled.build().runningLoads()).singleElement().hasToString("bleed resistor (44650 Ω)");
    CircuitDesign slow = design(circuit().bleedResistor(kiloohms(100), 0), resistor(150, 6000));
    assertThat(slow.blocked().orElseThrow().code()).isEqualTo("discharge.time");
  }

  @Test
  void countsTheUpperToleranceOfWhatIsFedBackwards() {
    double exact = backwards(0);
    assertThat(backwards(0.2) / exact).isCloseTo(1.2, within(1e-9));
  }

  private static double backwards(double tolerance) {
    Circuit charger =
        Circuit.of("charger", CircuitRole.CHARGER)
            .continuousCurrent(amperes(20))
            .length(metres(2))
            .installation(Installation.freeAir(celsius(45)))
            .loadCapacitance(microfarads(40))
            .loadCapacitanceTolerance(tolerance)
            .fedBackwards()
            .build();
    CircuitDesign design = CircuitParts.designer(List.of(charger)).run();
    return actual(check(design, "protection.fed-backwards"), Kind.JOULE_INTEGRAL);
  }

  @Test
  void rejectsWhatMakesNoSense() {
    CircuitBuilder circuit = circuit();
    assertThatThrownBy(() -> circuit.loadCapacitanceTolerance(Double.NaN))
        .isInstanceOf(InvalidInputException.class)
        .hasMessageContaining("Circuit.loadCapacitanceTolerance");
    assertThatThrownBy(() -> circuit.loadCapacitanceTolerance(-0.1))
        .hasMessageContaining("Circuit.loadCapacitanceTolerance");
    assertThatThrownBy(() -> circuit.loadCapacitanceTolerance(20))
        .hasMessageContaining("Circuit.loadCapacitanceTolerance");
    assertThatThrownBy(() -> circuit.bleedResistor(ohms(0), 0.05))
        .hasMessageContaining("Circuit.bleedResistor must be > 0 Ω");
    assertThatThrownBy(() -> circuit.bleedResistor(ohms(10), 0.6))
        .hasMessageContaining("Circuit.bleedResistorTolerance");
  }
}
