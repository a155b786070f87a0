package org.wattwright.protection;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.data.Percentage.withPercentage;
import static org.wattwright.units.Measures.ampereSquaredSeconds;
import static org.wattwright.units.Measures.amperes;
import static org.wattwright.units.Measures.celsius;
import static org.wattwright.units.Measures.metres;
import static org.wattwright.units.Measures.volts;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.wattwright.check.Check;
import org.wattwright.check.Outcome;
import org.wattwright.conductor.Installation;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;

/** Fuses of parallel strings against the one that should act alone. */
class StringSelectivityTest {
  private static final FaultRange HIGH =
      FaultRange.of(FaultParts.fault(15_000), FaultParts.fault(8000));

  /** Total 90 000 A²s, and 32 000 A²s to melt, in a short circuit. */
  private static final Fuse LINK = FaultParts.fuse().fullRange().build();

  private static Check carrying(double share) {
    return Selectivity.of(LINK).carrying(share).over(LINK).check(HIGH, volts(400));
  }

  @ParameterizedTest
  @ValueSource(doubles = {1, 0.6, 0.55, 1.1 / 3, 0.1})
  void aShareOfTheCurrentBringsItsSquareOfTheHeat(double share) {
    Check check = carrying(share);
    double a2s = share * share * 90_000;
    assertThat(
            Kind.JOULE_INTEGRAL.siValueOf(
                check.actual().orElseThrow().quantity(Kind.JOULE_INTEGRAL)))
        .isCloseTo(a2s, withPercentage(1e-9));
    assertThat(check.outcome() == Outcome.FAIL).isEqualTo(a2s > 32_000);
  }

  /** At 4 kA in all each of four sees 1 kA, where its curve, not its stated I²t, holds. */
  @Test
  void theCurveIsReadAtTheShare() {
    FaultRange faults = FaultRange.of(FaultParts.fault(4000), FaultParts.fault(4000));
    Check check = Selectivity.of(LINK).carrying(0.25).over(LINK).check(faults, volts(400));
    // ln t is linear in ln I from 0.1 s at 800 A to 8 ms at 2 kA.
    double timeS = 0.1 * Math.pow(1000.0 / 800, Math.log(0.008 / 0.1) / Math.log(2000.0 / 800));
    assertThat(
            Kind.JOULE_INTEGRAL.siValueOf(
                check.limit().orElseThrow().quantity(Kind.JOULE_INTEGRAL)))
        .isCloseTo(1e6 * timeS, withPercentage(1e-9));
  }

  @Test
  void refusesAShareOutsideItsRange() {
    for (double bad : new double[] {0, -0.1, 1.01, Double.NaN}) {
      assertThatExceptionOfType(InvalidInputException.class)
          .isThrownBy(() -> Selectivity.of(LINK).carrying(bad))
          .withMessageContaining("Selectivity.share must be > 0 to 1");
    }
    assertThat(Selectivity.of(LINK).carrying(0.5).over(LINK))
        .hasToString("F-100, carrying 0.5000 of it, over F-100")
        .isNotEqualTo(Selectivity.of(LINK).over(LINK))
        .hasSameHashCodeAs(Selectivity.of(LINK).carrying(0.5).over(LINK));
  }

  private static Circuit circuit(String name, CircuitRole role) {
    return Circuit.of(name, role)
        .continuousCurrent(amperes(role == CircuitRole.STRING ? 60 : 20))
        .length(metres(1))
        .installation(Installation.freeAir(celsius(40)))
        .build();
  }

  private static List<Check> checks(int strings, Fuse stringFuse, Fuse mainFuse) {
    List<Circuit> circuits = new ArrayList<>();
    circuits.add(circuit("heater", CircuitRole.HEATER));
    for (int i = 1; i <= strings; i++) {
      circuits.add(circuit("string " + i, CircuitRole.STRING));
    }
    CircuitDesign design =
        CircuitParts.designer(circuits).fuses(List.of(stringFuse, mainFuse)).run();
    assertThat(design.whyNone()).isBlank();
    return design.checks().stream()
        .filter(check -> check.code().equals("protection.string-selectivity"))
        .toList();
  }

  @Test
  void theDesignComparesEachStringWithTheBusAndTheOtherStrings() {
    Fuse string = CircuitParts.fuse("F-100", 100, 1);
    Fuse small = CircuitParts.fuse("F-32", 32, 1);
    List<Check> three = checks(3, string, small);
    assertThat(three).hasSize(6);
    assertThat(three)
        .filteredOn(c -> c.toString().contains("fuse of heater"))
        .hasSize(3)
        .allSatisfy(check -> assertThat(check.outcome()).isEqualTo(Outcome.PASS));
    // 3.5·100² A²s and 1.1/2 of the current: 10 587 A²s against 8000.
    assertThat(three)
        .filteredOn(c -> !c.toString().contains("fuse of heater"))
        .hasSize(3)
        .allSatisfy(check -> assertThat(check.outcome()).isEqualTo(Outcome.CAUTION));
    // Of five the four others outlast it: 1.1/4.
    assertThat(checks(5, string, small))
        .hasSize(10)
        .allSatisfy(check -> assertThat(check.outcome()).isEqualTo(Outcome.PASS));
    // Two see the same current.
    assertThat(checks(2, string, small)).filteredOn(c -> c.outcome() == Outcome.CAUTION).hasSize(2);
    assertThat(checks(1, string, small)).isEmpty();
  }

  @Test
  void whatIsNotKnownIsNotChecked() {
    Fuse string = CircuitParts.fuse("F-100", 100, 1);
    Fuse silent =
        Fuse.of("F-32", amperes(32))
            .directVoltage(volts(500))
            .testTimeConstant(org.wattwright.units.Measures.milliseconds(5))
            .breakingCapacity(amperes(20_000))
            .fullRange()
            .preArcingJouleIntegral(ampereSquaredSeconds(800))
            .build();
    assertThat(Selectivity.of(string).carrying(0.5).over(silent).check(HIGH, volts(400)).outcome())
        .isEqualTo(Outcome.NOT_CHECKED);
  }

  /** Of two circuits at the bus the one that is not selective is named; one behind is not asked. */
  @Test
  void theWorstCircuitAtTheBusIsNamed() {
    Circuit main =
        Circuit.of("main", CircuitRole.TRACTION_MAIN)
            .continuousCurrent(amperes(130))
            .length(metres(1))
            .installation(Installation.freeAir(celsius(40)))
            .build();
    Circuit behind =
        Circuit.of("behind", CircuitRole.HEATER)
            .fedFrom(main)
            .continuousCurrent(amperes(20))
            .length(metres(1))
            .installation(Installation.freeAir(celsius(40)))
            .build();
    List<Circuit> circuits = new ArrayList<>(List.of(circuit("heater", CircuitRole.HEATER), main));
    circuits.add(behind);
    for (int i = 1; i <= 3; i++) {
      circuits.add(circuit("string " + i, CircuitRole.STRING));
    }
    List<Fuse> fuses =
        List.of(
            CircuitParts.fuse("F-32", 32, 1),
            CircuitParts.fuse("F-100", 100, 1),
            CircuitParts.fuse("F-250", 250, 1));
    CircuitDesign design = CircuitParts.designer(circuits).fuses(fuses).run();
    assertThat(design.whyNone()).isBlank();
    List<Check> atTheBus =
        design.checks().stream()
            .filter(check -> check.code().equals("protection.string-selectivity"))
            .filter(check -> !check.toString().contains("fuse of string"))
            .toList();
    assertThat(atTheBus)
        .hasSize(3)
        .allSatisfy(check -> assertThat(check.toString()).contains("fuse of main"))
        .allSatisfy(check -> assertThat(check.outcome()).isEqualTo(Outcome.CAUTION));
  }
}
