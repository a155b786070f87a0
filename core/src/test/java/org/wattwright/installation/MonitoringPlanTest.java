package org.wattwright.installation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.wattwright.units.Measures.amperes;
import static org.wattwright.units.Measures.metres;
import static org.wattwright.units.Measures.milliohms;
import static org.wattwright.units.Measures.millivolts;
import static org.wattwright.units.Measures.ohmsPerMetre;
import static org.wattwright.units.Measures.volts;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wattwright.check.Check;
import org.wattwright.check.Checks;
import org.wattwright.check.Outcome;
import org.wattwright.testing.Generator;
import org.wattwright.units.InvalidInputException;

class MonitoringPlanTest {
  private static final MonitorUnitType UNIT = MonitorUnitType.of(16, 4, millivolts(5));
  private static final MonitorJoin LINK =
      new MonitorJoin("link", MonitorJoin.Type.LONG_LINK, milliohms(0.2));
  private static final MonitorJoin FUSE =
      new MonitorJoin("main fuse", MonitorJoin.Type.FUSE, milliohms(0.1));

  static Stream<Generator> cases() {
    return Generator.cases(200);
  }

  private static MonitoredModule module(int number, String bay, int cells) {
    return MonitoredModule.of("module " + number, bay, cells);
  }

  private static List<MonitoredModule> van() {
    return List.of(
        module(1, "front", 6),
        module(2, "front", 6),
        module(3, "front", 6).behind(FUSE),
        module(4, "rear", 6).behind(LINK),
        module(5, "rear", 6));
  }

  private static MonitoringPlan plan(List<MonitoredModule> modules, MonitorUnitType type) {
    return MonitoringPlan.of(modules, type, volts(120));
  }

  @Test
  void aUnitEndsAtABayAndAtAFuse() {
    MonitoringPlan plan = plan(van(), UNIT);
    assertThat(plan.units())
        .extracting(MeasuringUnit::name)
        .containsExactly("main unit", "main unit 2", "remote unit rear");
    assertThat(plan.units()).extracting(MeasuringUnit::cells).containsExactly(12, 6, 12);
    assertThat(plan.senseWires()).isEqualTo(33);
    assertThat(plan.toMarkdown()).contains("remote unit rear").contains("12 of 16");
  }

  @Test
  void aUnitThatBearsThePackMaySpanTheFuse() {
    MonitorUnitType wide = MonitorUnitType.of(18, 4, millivolts(5));
    assertThat(plan(van(), wide.withstands(volts(120))).units()).hasSize(2);
    assertThat(plan(van(), wide.withstands(volts(119.9))).units()).hasSize(3);
  }

  @Test
  void aModuleOfMoreCellsThanChannelsFillsSeveralUnits() {
    MonitoringPlan plan = plan(List.of(module(1, "rear", 40)), UNIT);
    assertThat(plan.units()).extracting(MeasuringUnit::cells).containsExactly(16, 16, 8);
    assertThat(plan.units()).extracting(MeasuringUnit::temperatureSensors).containsExactly(1, 0, 0);
  }

  @Test
  void temperatureInputsEndAUnitToo() {
    MonitorUnitType few = MonitorUnitType.of(16, 1, millivolts(5));
    assertThat(plan(List.of(module(1, "rear", 4), module(2, "rear", 4)), few).units()).hasSize(2);
  }

  @Test
  void verdictsReuseTheSenseWiring() {
    MonitoringPlan plan =
        plan(van(), MonitorUnitType.of(18, 4, millivolts(5)).withstands(volts(120)));
    List<Check> checks = plan.checks(amperes(100));
    assertThat(Checks.withCode(checks, "protection.sense-tap-fuse"))
        .extracting(Check::outcome)
        .containsOnly(Outcome.NOT_CHECKED);
    assertThat(Checks.withCode(checks, "protection.sense-tap-interruption")).hasSize(1);
    assertThat(Checks.withCode(checks, "installation.link-drop"))
        .extracting(Check::outcome)
        .containsExactly(Outcome.FAIL);
    assertThat(Checks.withCode(plan.checks(amperes(50)), "installation.link-drop"))
        .extracting(Check::outcome)
        .containsExactly(Outcome.PASS);
    assertThat(fused(plan.tapsFused(true))).containsOnly(Outcome.PASS);
    assertThat(fused(plan.tapsFused(false))).containsOnly(Outcome.FAIL);
  }

  private static List<Outcome> fused(MonitoringPlan plan) {
    return Checks.withCode(plan.checks(amperes(0)), "protection.sense-tap-fuse").stream()
        .map(Check::outcome)
        .toList();
  }

  @Test
  void everyModuleHasASensorAndEverySensorAnInput() {
    MonitoringPlan bare = plan(List.of(module(1, "rear", 4).withTemperatureSensors(0)), UNIT);
    assertThat(Checks.withCode(bare.checks(amperes(1)), "installation.module-sensors"))
        .extracting(Check::outcome)
        .containsExactly(Outcome.FAIL);
    MonitoringPlan many = plan(List.of(module(1, "rear", 4).withTemperatureSensors(5)), UNIT);
    assertThat(Checks.withCode(many.checks(amperes(1)), "installation.temperature-inputs"))
        .extracting(Check::outcome)
        .containsExactly(Outcome.FAIL);
  }

  private static List<MonitoredModule> random(Generator random) {
    List<MonitoredModule> modules = new ArrayList<>();
    int count = random.count(1, 7);
    for (int i = 0; i < count; i++) {
      MonitoredModule module = module(i, random.oneOf(List.of("a", "b")), random.count(2, 9));
      modules.add(random.chance(0.2) ? module.behind(FUSE) : module);
    }
    return modules;
  }

  @ParameterizedTest
  @MethodSource("cases")
  void everyCellIsReadOnceAndNoUnitIsOverfull(Generator random) {
    List<MonitoredModule> modules = random(random);
    MonitoringPlan plan = plan(modules, UNIT);
    assertThat(plan.units().stream().mapToInt(MeasuringUnit::cells).sum())
        .isEqualTo(modules.stream().mapToInt(MonitoredModule::seriesCells).sum());
    assertThat(plan.units()).allMatch(unit -> unit.cells() <= 16);
    assertThat(plan.units())
        .allMatch(
            unit ->
                unit.slices().stream().allMatch(slice -> slice.module().bay().equals(unit.bay())));
    assertThat(plan.units()).allMatch(unit -> unit.joins().stream().noneMatch(FUSE::equals));
  }

  @ParameterizedTest
  @MethodSource("cases")
  void noOtherCutOfTheStringNeedsFewerUnits(Generator random) {
    List<MonitoredModule> modules = random(random);
    int gaps = modules.size() - 1;
    int fewest = Integer.MAX_VALUE;
    for (int cuts = 0; cuts < 1 << gaps; cuts++) {
      if (isAllowed(modules, cuts)) {
        fewest = Math.min(fewest, Integer.bitCount(cuts) + 1);
      }
    }
    assertThat(plan(modules, UNIT).units()).hasSize(fewest);
  }

  private static boolean isAllowed(List<MonitoredModule> modules, int cuts) {
    int cells = 0;
    int sensors = 0;
    for (int i = 0; i < modules.size(); i++) {
      MonitoredModule module = modules.get(i);
      boolean begins = i == 0 || (cuts >> (i - 1) & 1) == 1;
      if (!begins
          && (module.joinBefore().equals(FUSE) || !module.bay().equals(modules.get(i - 1).bay()))) {
        return false;
      }
      cells = (begins ? 0 : cells) + module.seriesCells();
      sensors = (begins ? 0 : sensors) + 1;
      if (cells > 16 || sensors > 4) {
        return false;
      }
    }
    return true;
  }

  @Test
  void tapFuses() {
    SenseWire.TapFuse fuse = new SenseWire.TapFuse(amperes(1), volts(125));
    assertThat(SenseWire.checkTapFuse(fuse, amperes(0.1), amperes(3), volts(110)))
        .extracting(Check::outcome)
        .containsExactly(Outcome.PASS, Outcome.PASS, Outcome.PASS);
    assertThat(SenseWire.checkTapFuse(fuse, amperes(1.1), amperes(0.9), volts(126)))
        .extracting(Check::outcome)
        .containsExactly(Outcome.FAIL, Outcome.FAIL, Outcome.FAIL);
    assertThat(new SenseWire(metres(2), ohmsPerMetre(0.05)).resistance()).hasToString("0.1 Ω");
  }

  @Test
  void rejectsWhatCannotBe() {
    assertThatThrownBy(() -> plan(List.of(), UNIT))
        .isInstanceOf(InvalidInputException.class)
        .hasMessageStartingWith("MonitoringPlan.modules");
    assertThatThrownBy(() -> MonitoringPlan.of(van(), UNIT, volts(0)))
        .hasMessageStartingWith("MonitoringPlan.packVoltage");
    assertThatThrownBy(() -> MonitorUnitType.of(0, 1, millivolts(5)))
        .hasMessageStartingWith("MonitorUnitType.channels");
    assertThatThrownBy(() -> module(1, " ", 4)).hasMessageStartingWith("MonitoredModule.bay");
    assertThatThrownBy(() -> new MonitorJoin("x", MonitorJoin.Type.BAR, milliohms(-1)))
        .hasMessageStartingWith("MonitorJoin.resistance");
    assertThatThrownBy(() -> plan(van(), UNIT).checks(amperes(-1)))
        .hasMessageStartingWith("MonitoringPlan.highestCurrent");
  }
}
