package org.wattwright.installation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.wattwright.installation.InterlockCase.when;
import static org.wattwright.units.Measures.kilometresPerHour;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.wattwright.check.Check;
import org.wattwright.check.Checks;
import org.wattwright.check.Outcome;
import org.wattwright.check.Source;
import org.wattwright.units.InvalidInputException;

class InterlocksTest {
  private static final InterlockCase CRASH = when(InterlockSignal.CRASH, SignalState.ON);

  @Test
  void usualTablesAreCompleteAndNeverForbidden() {
    assertThat(Interlocks.usualChecks())
        .hasSize(12)
        .extracting(Check::outcome)
        .containsOnly(Outcome.PASS);
  }

  @Test
  void everyLineOfTheUsualTablesIsNeeded() {
    for (TruthTable table :
        List.of(Interlocks.start(), Interlocks.direction(), Interlocks.faults())) {
      for (TruthTable.Line line : table.lines()) {
        List<TruthTable.Line> rest = new ArrayList<>(table.lines());
        rest.remove(line);
        TruthTable less = new TruthTable(table.name(), table.signals(), rest);
        assertThat(less.unanswered()).as("%s without %s", table, line).isNotEmpty();
      }
    }
  }

  @Test
  void combinationsAreCounted() {
    assertThat(Interlocks.start().combinations()).hasSize(128).doesNotHaveDuplicates();
    assertThat(Interlocks.direction().combinations()).hasSize(27);
    assertThat(Interlocks.faults().combinations()).hasSize(24);
  }

  @Test
  void aGapIsFoundAndNamed() {
    TruthTable gap =
        TruthTable.of("gap", InterlockSignal.CRASH).line(CRASH, InterlockReaction.OPEN_CONTACTORS);
    Check complete = gap.checks(List.of()).get(0);
    assertThat(complete.code()).isEqualTo("installation.interlock-complete");
    assertThat(complete.outcome()).isEqualTo(Outcome.FAIL);
    assertThat(complete.note()).isEqualTo("first: crash signal off");
    assertThatThrownBy(() -> gap.reaction(when(InterlockSignal.CRASH, SignalState.OFF)))
        .isInstanceOf(InvalidInputException.class)
        .hasMessageStartingWith("TruthTable.reaction");
  }

  @Test
  void contradictionIsFoundWhateverTheOrder() {
    TruthTable table =
        TruthTable.of("both", InterlockSignal.CRASH)
            .line(InterlockCase.any(), InterlockReaction.NO_ACTION)
            .line(CRASH, InterlockReaction.OPEN_CONTACTORS);
    assertThat(table.contradictions()).containsExactly(CRASH);
    assertThat(table.checks(List.of()).get(1).outcome()).isEqualTo(Outcome.FAIL);
    assertThat(table.reactions(CRASH))
        .containsExactly(InterlockReaction.OPEN_CONTACTORS, InterlockReaction.NO_ACTION);
  }

  @Test
  void aForbiddenReactionIsFound() {
    TruthTable careless =
        TruthTable.of("careless", InterlockSignal.CHARGE_PLUG, InterlockSignal.CRASH)
            .line(InterlockCase.any(), InterlockReaction.READY);
    List<Check> checks = Interlocks.checks(List.of(careless));
    assertThat(Checks.withCode(checks, "installation.interlock-plug"))
        .extracting(Check::outcome)
        .containsExactly(Outcome.FAIL);
    assertThat(Checks.withCode(checks, "installation.interlock-crash"))
        .extracting(Check::outcome)
        .containsExactly(Outcome.FAIL);
    assertThat(Checks.withCode(checks, "installation.interlock-precharge"))
        .extracting(Check::outcome)
        .containsExactly(Outcome.NOT_CHECKED);
  }

  @Test
  void oppositeDirectionAtSpeedIsRefusedEitherWay() {
    assertThat(direction(SignalState.FAST, SignalState.REVERSE, SignalState.FORWARD))
        .isEqualTo(InterlockReaction.STAY_REVERSE);
    assertThat(direction(SignalState.STANDING, SignalState.REVERSE, SignalState.FORWARD))
        .isEqualTo(InterlockReaction.FORWARD);
    assertThat(direction(SignalState.FAST, SignalState.NEUTRAL, SignalState.REVERSE))
        .isEqualTo(InterlockReaction.NEUTRAL);
    assertThat(direction(SignalState.FAST, SignalState.FORWARD, SignalState.NEUTRAL))
        .isEqualTo(InterlockReaction.NEUTRAL);
    TruthTable wrong =
        TruthTable.of(
                "wrong", InterlockSignal.SPEED, InterlockSignal.DIRECTION, InterlockSignal.SELECTOR)
            .line(InterlockCase.any(), InterlockReaction.REVERSE);
    assertThat(
            Checks.withCode(
                Interlocks.checks(List.of(wrong)), "installation.interlock-forward-to-reverse"))
        .extracting(Check::outcome)
        .containsExactly(Outcome.FAIL);
  }

  private static InterlockReaction direction(
      SignalState speed, SignalState direction, SignalState selector) {
    return Interlocks.direction()
        .reaction(
            when(InterlockSignal.SPEED, speed)
                .and(InterlockSignal.DIRECTION, direction)
                .and(InterlockSignal.SELECTOR, selector));
  }

  @Test
  void speedStates() {
    assertThat(speed(0)).isEqualTo(SignalState.STANDING);
    assertThat(speed(0.1)).isEqualTo(SignalState.SLOW);
    assertThat(speed(5)).isEqualTo(SignalState.SLOW);
    assertThat(speed(5.01)).isEqualTo(SignalState.FAST);
    assertThatThrownBy(() -> speed(-1)).hasMessageStartingWith("Interlocks.speed");
  }

  private static SignalState speed(double kmh) {
    return Interlocks.speedState(kilometresPerHour(kmh), Interlocks.USUAL_DIRECTION_SPEED);
  }

  @Test
  void tablesPrint() {
    assertThat(Interlocks.start().toMarkdown())
        .contains("charging plug")
        .contains("not ready")
        .contains("any");
    assertThat(Interlocks.start()).hasToString("start (8 lines on 7 signals)");
  }

  @Test
  void rejectsWhatCannotBe() {
    assertThatThrownBy(() -> when(InterlockSignal.CRASH, SignalState.FAST))
        .hasMessage("InterlockCase.crash signal must be one of [on, off], but was fast");
    assertThatThrownBy(() -> CRASH.and(InterlockSignal.CRASH, SignalState.ON))
        .hasMessageStartingWith("InterlockCase.crash signal must be told once");
    TruthTable key = TruthTable.of("key", InterlockSignal.KEY);
    assertThatThrownBy(() -> key.line(CRASH, InterlockReaction.NO_ACTION))
        .hasMessageStartingWith("TruthTable.lines");
    assertThatThrownBy(() -> TruthTable.of("k", InterlockSignal.KEY, InterlockSignal.KEY))
        .hasMessageStartingWith("TruthTable.signals");
    assertThatThrownBy(() -> key.reactions(CRASH)).hasMessageStartingWith("TruthTable.key");
    assertThatThrownBy(() -> key.violations(Interlocks.forbidden().get(0)))
        .hasMessageStartingWith("TruthTable.violations");
    assertThatThrownBy(() -> new ForbiddenReaction("x", "y", CRASH, Set.of(), Source.AS_GIVEN))
        .hasMessageStartingWith("ForbiddenReaction.reactions");
  }
}
