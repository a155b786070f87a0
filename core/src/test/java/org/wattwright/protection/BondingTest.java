package org.wattwright.protection;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.wattwright.check.Outcome.FAIL;
import static org.wattwright.check.Outcome.NOT_CHECKED;
import static org.wattwright.check.Outcome.PASS;
import static org.wattwright.units.Measures.ampereSquaredSeconds;
import static org.wattwright.units.Measures.amperes;
import static org.wattwright.units.Measures.celsius;
import static org.wattwright.units.Measures.megaohms;
import static org.wattwright.units.Measures.ohms;
import static org.wattwright.units.Measures.squareMillimetres;

import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.wattwright.check.Basis;
import org.wattwright.check.Check;
import org.wattwright.check.Outcome;
import org.wattwright.check.Party;
import org.wattwright.conductor.ConductorSize;
import org.wattwright.conductor.FaultDuty;
import org.wattwright.conductor.StrandClass;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;

/** Bonds and the inlet: measured values against their limits, and the bond in a double fault. */
class BondingTest {
  private static final ConductorSize BOND =
      ConductorSize.metric(squareMillimetres(6), StrandClass.FLEXIBLE);

  private static Check withstand(double jouleIntegral) {
    return Bonding.withstand(
        BOND, FaultDuty.of(ampereSquaredSeconds(jouleIntegral)), celsius(30), celsius(160));
  }

  @Test
  void theBondStandsTheLetThroughOfTheFuse() {
    // k = 143 A√s/mm² for insulated copper from 30 to 160 °C by IEC 60364-5-54 Table A.54.2, whose
    // last printed digit leaves 0.35 %; squared 0.7 %
    double limit =
        Kind.JOULE_INTEGRAL.siValueOf(
            withstand(1).limit().orElseThrow().quantity(Kind.JOULE_INTEGRAL));
    assertThat(limit).isCloseTo(143.0 * 143 * 36, Percentage.withPercentage(0.7));
    assertThat(withstand(limit * 0.8).outcome()).isEqualTo(PASS);
    assertThat(withstand(limit * 1.001).outcome()).isEqualTo(FAIL);
    assertThat(withstand(1).toString()).contains("bonding.withstand");
  }

  @Test
  void theBondMustHaveRoomToHeat() {
    FaultDuty duty = FaultDuty.of(ampereSquaredSeconds(1));
    assertThatThrownBy(() -> Bonding.withstand(BOND, duty, celsius(90), celsius(90)))
        .isInstanceOf(InvalidInputException.class);
  }

  @Test
  void limitsOfResistance() {
    assertThat(Bonding.betweenParts("two boxes", ohms(0.2)).outcome()).isNotEqualTo(FAIL);
    assertThat(Bonding.betweenParts("two boxes", ohms(0.201)).outcome()).isEqualTo(FAIL);
    assertThat(Bonding.toChassis("box", ohms(0.101)).outcome()).isEqualTo(FAIL);
    assertThat(Bonding.toChassis("box", ohms(0.1)).note()).isEqualTo("must be lower than 0.1 Ω");
    assertThat(Bonding.toChassis("box", ohms(0)).basis()).isEqualTo(Basis.MEASURED);
    assertThat(Bonding.testCurrent(amperes(0.2)).outcome()).isEqualTo(PASS);
    assertThat(Bonding.testCurrent(amperes(0.199)).outcome()).isEqualTo(FAIL);
  }

  @Test
  void rejectsNegativeReadings() {
    assertThatThrownBy(() -> Bonding.toChassis("box", ohms(-1)))
        .isInstanceOf(InvalidInputException.class)
        .hasMessageContaining("Bonding.measured");
    assertThatThrownBy(() -> Bonding.betweenParts("boxes", ohms(-1)))
        .isInstanceOf(InvalidInputException.class)
        .hasMessageContaining("Bonding.measured");
    assertThatThrownBy(() -> Bonding.testCurrent(amperes(-1)))
        .isInstanceOf(InvalidInputException.class)
        .hasMessageContaining("Bonding.testCurrent");
  }

  @Test
  void theInletIsMeasured() {
    Check earth = InletProtection.protectiveEarth(ohms(0.02));
    assertThat(earth.code()).isEqualTo("inlet.protective-earth");
    assertThat(earth.outcome()).isEqualTo(PASS);
    assertThat(earth.basis()).isEqualTo(Basis.MEASURED);
    assertThat(InletProtection.protectiveEarth(ohms(0.101)).outcome()).isEqualTo(FAIL);
    assertThat(InletProtection.isolation(megaohms(2)).outcome()).isEqualTo(PASS);
    assertThat(InletProtection.isolation(megaohms(0.99)).outcome()).isEqualTo(FAIL);
    assertThatThrownBy(() -> InletProtection.protectiveEarth(ohms(-1)))
        .isInstanceOf(InvalidInputException.class)
        .hasMessageContaining("InletProtection.protectiveEarth");
    assertThatThrownBy(() -> InletProtection.isolation(ohms(-1)))
        .isInstanceOf(InvalidInputException.class)
        .hasMessageContaining("InletProtection.isolation");
  }

  @Test
  void anAttestedItemSaysWho() {
    assertThat(InletProtection.supplyBreakerUnknown().outcome()).isEqualTo(NOT_CHECKED);
    assertThat(InletProtection.supplyBreakerUnknown().missing())
        .containsExactly("inlet.supplyBreaker");
    assertThat(InletProtection.supplyBreakerUnknown().isSafety()).isTrue();
    Check breaker = InletProtection.supplyBreakerAttested("electrician of the yard", true);
    assertThat(breaker.outcome()).isEqualTo(PASS);
    assertThat(breaker.note()).contains("electrician of the yard");
    assertThat(InletProtection.supplyBreakerAttested("electrician", false).outcome())
        .isEqualTo(FAIL);
    assertThatThrownBy(() -> InletProtection.supplyBreakerAttested(" ", true))
        .hasMessageContaining("InletProtection.by");
    assertThat(InletProtection.residualCurrentUnknown().outcome()).isEqualTo(NOT_CHECKED);
    assertThat(InletProtection.residualCurrentUnknown().missing())
        .containsExactly("inlet.residualCurrentType");
    Check attested = InletProtection.residualCurrentAttested("electrician of the yard", true);
    assertThat(attested.note()).isEqualTo("attested by electrician of the yard");
    assertThat(attested.answeredBy()).isEqualTo(Party.ELECTRICIAN);
    assertThat(attested.outcome()).isEqualTo(Outcome.PASS);
    assertThatThrownBy(() -> InletProtection.residualCurrentAttested(" ", true))
        .isInstanceOf(InvalidInputException.class)
        .hasMessageContaining("InletProtection.by");
  }
}
