package org.wattwright.protection;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.wattwright.units.Measures.amperes;
import static org.wattwright.units.Measures.celsius;
import static org.wattwright.units.Measures.kiloohms;
import static org.wattwright.units.Measures.metres;
import static org.wattwright.units.Measures.microfarads;
import static org.wattwright.units.Measures.minutes;
import static org.wattwright.units.Measures.ohms;
import static org.wattwright.units.Measures.seconds;

import java.util.List;
import java.util.Locale;
import javax.measure.Quantity;
import org.junit.jupiter.api.Test;
import org.wattwright.check.Check;
import org.wattwright.check.Checks;
import org.wattwright.check.Step;
import org.wattwright.check.Worksheet;
import org.wattwright.conductor.Installation;
import org.wattwright.profile.Profile;
import org.wattwright.units.Kind;

/** The workings of a designed circuit: complete, and the same numbers as the checks. */
class CircuitSheetsTest {
  private static DesignedCircuit precharged() {
    Circuit circuit =
        CircuitParts.traction()
            .precharged()
            .loadCapacitance(microfarads(600))
            .bleedResistor(kiloohms(47), 0.05)
            .prechargeTimes(seconds(1), seconds(3))
            .prechargeRepeats(3, minutes(1))
            .build();
    PrechargeResistor resistor =
        PrechargeResistor.of("R", ohms(150))
            .tolerance(0.05)
            .continuousPower(org.wattwright.units.Measures.watts(3000))
            .pulseEnergy(org.wattwright.units.Measures.joules(6000))
            .voltage(org.wattwright.units.Measures.volts(1000));
    CircuitDesign design =
        CircuitParts.designer(List.of(circuit)).prechargeResistors(List.of(resistor)).run();
    assertThat(design.whyNone()).isBlank();
    return design.circuits().get(0);
  }

  private static Worksheet sheet(DesignedCircuit of, String title) {
    return of.worksheets().stream()
        .filter(each -> each.title().equals(title))
        .findFirst()
        .orElseThrow();
  }

  private static <Q extends Quantity<Q>> double gives(
      Worksheet sheet, String symbol, Kind<Q> kind) {
    return kind.siValueOf(sheet.step(symbol).orElseThrow().result().quantity(kind));
  }

  private static <Q extends Quantity<Q>> double actual(
      DesignedCircuit of, String code, Kind<Q> kind) {
    Check check = Checks.withCode(of.checks(), code).get(0);
    return kind.siValueOf(check.actual().orElseThrow().quantity(kind));
  }

  @Test
  void coversEveryTopicInOrder() {
    DesignedCircuit traction = precharged();
    assertThat(traction.worksheets())
        .extracting(Worksheet::title)
        .containsExactly(
            "Cable of traction",
            "Short circuit of traction",
            "Fuse of traction",
            "Faults of traction",
            "Pre-charge of traction",
            "Discharge of traction");
    for (Worksheet sheet : traction.worksheets()) {
      assertThat(sheet.steps()).as(sheet.title()).hasSizeGreaterThan(1);
      for (Step step : sheet.steps()) {
        assertThat(step.meaning()).isNotBlank();
        assertThat(step.source().toString()).isNotBlank();
        assertThat(step.result().toString()).isNotBlank();
      }
    }
  }

  /** Each result is that of the check which it explains. */
  @Test
  void givesTheNumbersOfTheChecks() {
    DesignedCircuit traction = precharged();
    Worksheet cable = sheet(traction, "Cable of traction");
    assertThat(gives(cable, "ΔU", Kind.VOLTAGE))
        .isEqualTo(actual(traction, "conductor.voltage-drop", Kind.VOLTAGE));
    assertThat(gives(cable, "θ_c", Kind.TEMPERATURE))
        .isEqualTo(actual(traction, "conductor.continuous-temperature", Kind.TEMPERATURE));
    Worksheet faults = sheet(traction, "Faults of traction");
    assertThat(gives(faults, "I_min", Kind.CURRENT))
        .isEqualTo(actual(traction, "protection.lowest-fault", Kind.CURRENT));
    assertThat(gives(faults, "I_max", Kind.CURRENT))
        .isCloseTo(Kind.CURRENT.siValueOf(traction.highestFault()), within(1e-9));
    assertThat(gives(faults, "t_clear", Kind.TIME))
        .isEqualTo(Kind.TIME.siValueOf(traction.clearingTime().orElseThrow()));
    assertThat(gives(faults, "τ", Kind.TIME)).isCloseTo(20e-6 / 60e-3, within(1e-12));
    // 125 A and 0.5 %/K over 40 °C, in air of 45 °C.
    Worksheet fuse = sheet(traction, "Fuse of traction");
    assertThat(gives(fuse, "I_c", Kind.CURRENT)).isCloseTo(125 * 0.975, within(1e-9));
    assertThat(gives(fuse, "I", Kind.CURRENT)).isEqualTo(120);
    assertThat(gives(sheet(traction, "Pre-charge of traction"), "t_max", Kind.TIME))
        .isEqualTo(actual(traction, "precharge.time", Kind.TIME));
    assertThat(gives(sheet(traction, "Discharge of traction"), "t", Kind.TIME))
        .isEqualTo(actual(traction, "discharge.time", Kind.TIME));
    Worksheet withstand = sheet(traction, "Short circuit of traction");
    Check letThrough = Checks.withCode(traction.checks(), "fuse.let-through").get(0);
    assertThat(gives(withstand, "k²S²", Kind.JOULE_INTEGRAL))
        .isEqualTo(
            Kind.JOULE_INTEGRAL.siValueOf(
                letThrough.limit().orElseThrow().quantity(Kind.JOULE_INTEGRAL)));
    assertThat(gives(withstand, "I²t", Kind.JOULE_INTEGRAL))
        .isCloseTo(3.5 * 125 * 125, within(1e-6));
  }

  @Test
  void writesNoSheetForWhatACircuitHasNot() {
    Circuit phase =
        Circuit.of("phase", CircuitRole.MOTOR_PHASE)
            .continuousCurrent(amperes(150))
            .length(metres(1))
            .installation(Installation.freeAir(celsius(60)))
            .voltageDropAtMost(org.wattwright.units.Measures.volts(1))
            .currentLimitedTo(amperes(220), "inverter")
            .trip(OvercurrentTrip.at(amperes(180), seconds(0.01), "inverter"))
            .build();
    DesignedCircuit designed = CircuitParts.designer(List.of(phase)).run().circuits().get(0);
    assertThat(designed.worksheets())
        .extracting(Worksheet::title)
        .containsExactly("Cable of phase", "Short circuit of phase");
    assertThat(sheet(designed, "Cable of phase").toText()).contains("√3/2·I·R");
  }

  /** Two runs of the very number chosen, though one of the same cable may serve by itself. */
  @Test
  void writesParallelRunsAsChosen() {
    DesignedCircuit pair =
        CircuitParts.designer(List.of(CircuitParts.traction().build()))
            .cables(CircuitParts.cables().subList(0, 5))
            .parallelRunsUpTo(3)
            .run()
            .circuits()
            .get(0);
    assertThat(pair.parallelRuns()).isGreaterThan(1);
    Worksheet cable = sheet(pair, "Cable of traction");
    assertThat(gives(cable, "ΔU", Kind.VOLTAGE))
        .isEqualTo(actual(pair, "conductor.voltage-drop", Kind.VOLTAGE));
  }

  @Test
  void writesTheSwingingLoadAndWhatIsFedBackwards() {
    Circuit swinging =
        Circuit.of("charger", CircuitRole.CHARGER)
            .continuousCurrent(amperes(20))
            .profile(
                Profile.segments(Kind.CURRENT)
                    .hold(amperes(30), seconds(10))
                    .hold(amperes(0), seconds(10))
                    .build())
            .length(metres(2))
            .installation(Installation.freeAir(celsius(45)))
            .loadCapacitance(microfarads(40))
            .fedBackwards()
            .build();
    DesignedCircuit designed = CircuitParts.designer(List.of(swinging)).run().circuits().get(0);
    Worksheet fuse = sheet(designed, "Fuse of charger");
    assertThat(gives(fuse, "I_rms", Kind.CURRENT)).isCloseTo(30 / Math.sqrt(2), within(1e-9));
    assertThat(gives(fuse, "I_z", Kind.CURRENT))
        .isCloseTo(0.8 * gives(fuse, "I_c", Kind.CURRENT), within(1e-9));
    assertThat(gives(sheet(designed, "Short circuit of charger"), "I²t_C", Kind.JOULE_INTEGRAL))
        .isCloseTo(actual(designed, "protection.fed-backwards", Kind.JOULE_INTEGRAL), within(1e-6));
  }

  /** The current rises by L/R first: the fuse's own time of that very fault is no longer. */
  @Test
  void countsTheRiseInTheClearingTime() {
    DesignedCircuit traction = precharged();
    double lowestA = Kind.CURRENT.siValueOf(traction.lowestFault().orElseThrow());
    FaultCurrent fault =
        FaultCurrent.of(
            org.wattwright.units.Measures.volts(280),
            ohms(280 / lowestA),
            org.wattwright.units.Measures.microhenries(20));
    Clearing clearing =
        traction.fuse().orElseThrow().clearing(fault, org.wattwright.units.Measures.volts(403.2));
    assertThat(clearing).isInstanceOf(Clearing.Cleared.class);
    assertThat(Kind.TIME.siValueOf(traction.clearingTime().orElseThrow()))
        .isGreaterThanOrEqualTo(Kind.TIME.siValueOf(((Clearing.Cleared) clearing).time()));
  }

  @Test
  void joinsThePartsInOneSheet() {
    DesignedCircuit traction = precharged();
    assertThat(traction.worksheet().title()).isEqualTo("Circuit traction");
    assertThat(traction.worksheet().step("I_c")).isPresent();
    assertThat(traction.worksheet().toText().toLowerCase(Locale.ROOT)).contains("lowest fault");
  }
}
