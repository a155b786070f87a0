package org.wattwright.protection;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.wattwright.units.Measures.amperes;
import static org.wattwright.units.Measures.celsius;
import static org.wattwright.units.Measures.metres;
import static org.wattwright.units.Measures.microfarads;
import static org.wattwright.units.Measures.newtonMetres;
import static org.wattwright.units.Measures.volts;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.wattwright.check.Check;
import org.wattwright.check.Checks;
import org.wattwright.check.Outcome;
import org.wattwright.conductor.Installation;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;

class CircuitReviewTest {
  private static CircuitBuilder circuit(String name, CircuitRole role) {
    return Circuit.of(name, role)
        .continuousCurrent(amperes(10))
        .length(metres(1))
        .installation(Installation.freeAir(celsius(40)));
  }

  private static List<Check> with(CircuitReview review, String code) {
    return Checks.withCode(review.checks(), code);
  }

  @Test
  void asksForTheCircuitsThatAreForgotten() {
    Circuit main = circuit("traction", CircuitRole.TRACTION_MAIN).build();
    List<Check> listed = with(CircuitReview.of(List.of(main)).bays(3), "protection.circuit-listed");
    assertThat(listed).hasSize(8);
    assertThat(listed.get(0).outcome()).isEqualTo(Outcome.PASS);
    assertThat(listed.stream().skip(1)).allMatch(c -> c.outcome() == Outcome.NOT_CHECKED);
    assertThat(listed.get(1).missing()).containsExactly("circuit of role motor phase");
    assertThat(listed.get(7).missing()).containsExactly("2 of 2 circuits of role inter-bay link");
  }

  @Test
  void doesNotAskForWhatTheVehicleDoesNotHave() {
    CircuitReview review =
        CircuitReview.of(List.of()).without(CircuitRole.AC_INLET).without(CircuitRole.CHARGER);
    assertThat(with(review, "protection.circuit-listed"))
        .hasSize(5)
        .noneMatch(c -> c.what().contains("inlet"));
  }

  @Test
  void cautionsABranchTappedOffWithoutItsOwnFuse() {
    Circuit main = circuit("traction", CircuitRole.TRACTION_MAIN).build();
    Circuit fused = circuit("heater", CircuitRole.HEATER).fedFrom(main).build();
    Circuit bare = circuit("pump", CircuitRole.AUXILIARY).fedFrom(main).withoutFuse().build();
    List<Check> checks =
        with(CircuitReview.of(List.of(main, fused, bare)), "protection.branch-fuse");
    assertThat(checks).extracting(Check::outcome).containsExactly(Outcome.PASS, Outcome.CAUTION);
  }

  @Test
  void wantsAFuseAtTheLowVoltageBatteryAndInEachString() {
    Circuit bare = circuit("12 V", CircuitRole.DCDC_OUTPUT).build();
    Circuit fused = circuit("12 V", CircuitRole.DCDC_OUTPUT).fused().build();
    assertThat(with(CircuitReview.of(List.of(bare, fused)), "protection.low-voltage-fuse"))
        .extracting(Check::outcome)
        .containsExactly(Outcome.FAIL, Outcome.PASS);
    Circuit string = circuit("string 1", CircuitRole.STRING).withoutFuse().build();
    assertThat(with(CircuitReview.of(List.of(string)), "protection.string-fuse")).isEmpty();
    CircuitReview two = CircuitReview.of(List.of(string)).parallelStrings(2);
    assertThat(with(two, "protection.string-fuse").get(0).outcome()).isEqualTo(Outcome.FAIL);
    assertThat(with(two, "protection.circuit-listed").get(7).missing())
        .containsExactly("1 of 2 circuits of role string");
  }

  @Test
  void asksForTheOutputCapacitorsOfACharger() {
    Circuit untold = circuit("charger", CircuitRole.CHARGER).build();
    Circuit told = circuit("charger", CircuitRole.CHARGER).loadCapacitance(microfarads(40)).build();
    assertThat(with(CircuitReview.of(List.of(untold, told)), "protection.fed-backwards"))
        .singleElement()
        .extracting(Check::missing)
        .isEqualTo(List.of("Circuit.loadCapacitance of charger"));
  }

  @Test
  void namesTheDataThatACircuitLacks() {
    Circuit bare = Circuit.of("heater", CircuitRole.HEATER).build();
    assertThat(with(CircuitReview.of(List.of(bare)), "protection.circuit-data").get(0).missing())
        .contains("Circuit.length of heater");
  }

  @Test
  void wantsNothingBetweenTapsThatTheUnitDoesNotBear() {
    SenseWiring unit = SenseWiring.of("unit 1", 13, volts(403));
    assertThat(unit.checks())
        .singleElement()
        .extracting(Check::outcome)
        .isEqualTo(Outcome.NOT_CHECKED);
    SenseWiring broken = unit.fusedTaps(12).interruptedBy("service disconnect");
    assertThat(broken.checks())
        .extracting(Check::outcome)
        .containsExactly(Outcome.FAIL, Outcome.NOT_CHECKED);
    assertThat(broken.fusedTaps(13).withstands(volts(80)).checks())
        .extracting(Check::outcome)
        .containsExactly(Outcome.PASS, Outcome.FAIL);
    assertThat(broken.withstands(volts(500)).checks().get(1).outcome()).isEqualTo(Outcome.PASS);
    assertThatThrownBy(() -> unit.fusedTaps(14)).isInstanceOf(InvalidInputException.class);
  }

  @Test
  void takesThePhaseCurrentFromTheTorque() {
    MotorPhaseCurrent motor = MotorPhaseCurrent.ofPoint(newtonMetres(180), amperes(360));
    assertThat(Kind.CURRENT.siValueOf(motor.turning(newtonMetres(90)))).isEqualTo(180);
    assertThat(Kind.CURRENT.siValueOf(motor.holding(newtonMetres(90))))
        .isEqualTo(180 * Math.sqrt(2));
    assertThatThrownBy(() -> motor.turning(newtonMetres(181)))
        .hasMessageContaining("MotorPhaseCurrent.torque must be from 0 to 180 N·m");
  }

  @Test
  void addsMassAndPriceInWholeNumbers() {
    CircuitPart part = new CircuitPart(CircuitPart.Type.FUSE, "F", 0.25, null);
    assertThat(CircuitObjective.massThenPrice().cost(part))
        .isEqualTo(new PartCost(0, 0, 250_000_000, 1, 0));
    assertThat(CircuitObjective.priceThenMass().cost(part))
        .isEqualTo(new PartCost(0, 1, 0, 0, 250_000_000));
    assertThat(CircuitObjective.own("parts", p -> 1).cost(part))
        .isEqualTo(new PartCost(0, 0, 1_000_000, 0, 250_000_000));
    PartCost known = new PartCost(0, 0, 9, 0, 0);
    assertThat(known).isLessThan(new PartCost(0, 1, 0, 0, 0));
    assertThat(known.plus(known)).isEqualTo(new PartCost(0, 0, 18, 0, 0));
  }
}
