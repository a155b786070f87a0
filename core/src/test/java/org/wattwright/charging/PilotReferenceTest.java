package org.wattwright.charging;

import static org.assertj.core.api.Assertions.assertThat;
import static org.wattwright.units.Measures.amperes;
import static org.wattwright.units.Measures.ohms;
import static org.wattwright.units.Measures.volts;

import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wattwright.testing.ReferenceRow;
import org.wattwright.testing.ReferenceRows;
import org.wattwright.testing.Validation;
import org.wattwright.units.Kind;
import org.wattwright.units.WorkshopUnits;

class PilotReferenceTest {
  @RegisterExtension static final Validation VALIDATION = Validation.of("charging");

  static final ReferenceRows ROWS = ReferenceRows.read("/protection/protection-and-charging.csv");

  private static final Map<String, Double> MEANT =
      Map.of("CHG-022", 0.0, "CHG-023", 5.0, "CHG-024", 7.5, "CHG-025", 100.0);

  static double numberIn(String text) {
    return Double.parseDouble(text.replaceAll("[^0-9.]*([0-9.]+).*", "$1"));
  }

  private static String condition(ReferenceRow row) {
    return row.conditions().keySet().iterator().next();
  }

  static Stream<ReferenceRow> currents() {
    return Stream.concat(ROWS.quantity("maximum current"), Stream.of(ROWS.row("CHG-020")));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("currents")
  void currentOfADutyCycle(ReferenceRow row) {
    ControlPilot pilot = TestParts.pilot(numberIn(condition(row)));
    VALIDATION.computed(row, pilot.current().orElseThrow(), Kind.CURRENT);
  }

  static Stream<ReferenceRow> meanings() {
    return ROWS.quantity("meaning of duty cycle");
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("meanings")
  void meaningOfADutyCycle(ReferenceRow row) {
    ControlPilot pilot = TestParts.pilot(MEANT.get(row.id()));
    assertThat(pilot.current()).isEmpty();
    VALIDATION.computed(row, pilot.meaning().toString());
  }

  @Test
  void editionsDifferAtTheEnds() {
    VALIDATION.transcribed(ROWS.row("CHG-026"), 100 * PilotEdition.SAE_J1772.lowestDutyCycle());
    VALIDATION.transcribed(ROWS.row("CHG-027"), 100 * PilotEdition.SAE_J1772.highestDutyCycle());
    assertThat(TestParts.pilot(9).readBy(PilotEdition.SAE_J1772).current()).isEmpty();
    assertThat(TestParts.pilot(9.5).readBy(PilotEdition.SAE_J1772).current()).hasValue(amperes(6));
    assertThat(TestParts.pilot(97).readBy(PilotEdition.SAE_J1772).current()).isEmpty();
    assertThat(TestParts.pilot(96.5).readBy(PilotEdition.SAE_J1772).current())
        .hasValue(amperes(80));
  }

  static Stream<ReferenceRow> duties() {
    return ROWS.quantity("duty cycle that offers a current");
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("duties")
  void dutyCycleOfACurrent(ReferenceRow row) {
    ControlPilot pilot = ControlPilot.offering(row.given("I", Kind.CURRENT)).orElseThrow();
    VALIDATION.computed(row, WorkshopUnits.PERCENT.valueOf(pilot.dutyCycle()));
    assertThat(Kind.CURRENT.siValueOf(pilot.current().orElseThrow()))
        .isCloseTo(row.givenNumber("I"), org.assertj.core.data.Offset.offset(1e-9));
  }

  static Stream<ReferenceRow> states() {
    return ROWS.quantity("pilot voltage, nominal (positive peak in states A to D)");
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("states")
  void voltageOfAState(ReferenceRow row) {
    PilotState state = PilotState.valueOf(condition(row).replaceAll("state (.).*", "$1"));
    VALIDATION.transcribed(row, state.nominalVoltage(), Kind.VOLTAGE);
    assertThat(PilotState.of(volts(row.number() + 1))).hasValue(state);
    assertThat(PilotState.of(volts(row.number() - 1.01)))
        .isNotEqualTo(java.util.Optional.of(state));
  }

  static Stream<ReferenceRow> windows() {
    return Stream.concat(
        ROWS.quantity("pilot voltage window, low"), ROWS.quantity("pilot voltage window, high"));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("windows")
  void windowOfAState(ReferenceRow row) {
    var window =
        PilotState.valueOf(condition(row).replaceAll("state (.).*", "$1")).window().orElseThrow();
    boolean low = row.quantity().endsWith("low");
    VALIDATION.transcribed(row, low ? window.lowest() : window.highest(), Kind.VOLTAGE);
  }

  @Test
  void circuitOfTheVehicle() {
    PilotCircuit connected = PilotCircuit.of(ohms(2740));
    VALIDATION.computed(ROWS.row("CHG-045"), connected.voltage(), Kind.VOLTAGE);
    assertThat(connected.state()).hasValue(PilotState.B);
    PilotCircuit ready = connected.inParallelWith(ohms(1300));
    VALIDATION.computed(ROWS.row("CHG-046"), Kind.RESISTANCE.siValueOf(ready.resistance()));
    assertThat(ready.state()).hasValue(PilotState.C);
    VALIDATION.transcribed(ROWS.row("CHG-047"), ControlPilot.FREQUENCY, Kind.FREQUENCY);
  }

  static Stream<ReferenceRow> codes() {
    return ROWS.quantity("cable current from coding resistor");
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("codes")
  void currentOfACable(ReferenceRow row) {
    CableCoding cable = CableCoding.ofResistor(ohms(row.givenNumber("Rc")));
    VALIDATION.transcribed(row, cable.current().orElseThrow(), Kind.CURRENT);
    assertThat(CableCoding.resistorFor(amperes(row.number())))
        .hasValue(ohms(row.givenNumber("Rc")));
  }

  @Test
  void cableOutsideTheBands() {
    VALIDATION.computed(ROWS.row("CHG-105"), CableCoding.ofResistor(ohms(74.9)).meaning());
    VALIDATION.computed(ROWS.row("CHG-106"), CableCoding.ofResistor(ohms(2200.1)).meaning());
    assertThat(CableCoding.ofResistor(ohms(74.9)).current()).isEmpty();
    assertThat(CableCoding.ofResistor(ohms(75)).current()).hasValue(amperes(63));
    assertThat(CableCoding.ofResistor(ohms(100)).singlePhaseOnly().current()).hasValue(amperes(70));
    assertThat(CableCoding.ofResistor(ohms(220)).singlePhaseOnly().current()).hasValue(amperes(32));
  }

  static Stream<ReferenceRow> boundaries() {
    return ROWS.quantity("band boundary of the coding resistor");
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("boundaries")
  void boundaryBetweenCodes(ReferenceRow row) {
    String[] currents = condition(row).replace(" A", "").split("/");
    VALIDATION.transcribed(
        row,
        CableCoding.highestResistanceFor(amperes(Double.parseDouble(currents[0]))).orElseThrow(),
        Kind.RESISTANCE);
    assertThat(CableCoding.ofResistor(ohms(row.number())).current())
        .hasValue(amperes(Double.parseDouble(currents[0])));
    double aboveA =
        CableCoding.ofResistor(ohms(row.number() * 1.001))
            .current()
            .map(Kind.CURRENT::siValueOf)
            .orElse(0.0);
    assertThat(aboveA).isEqualTo(Double.parseDouble(currents[1]));
  }

  @Test
  void unknownCurrentHasNoPilotAndNoCable() {
    assertThat(ControlPilot.offering(amperes(5.9))).isEmpty();
    assertThat(ControlPilot.offering(amperes(80.1))).isEmpty();
    assertThat(CableCoding.resistorFor(amperes(16))).isEmpty();
    assertThat(CableCoding.highestResistanceFor(amperes(16))).isEmpty();
  }
}
