package org.wattwright.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.wattwright.units.Measures.celsius;
import static org.wattwright.units.Measures.volts;
import static org.wattwright.units.WorkshopUnits.CELSIUS;
import static org.wattwright.units.WorkshopUnits.VOLT;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wattwright.testing.Generator;
import org.wattwright.testing.Locales;

class ChecksTest {
  private static final Check PASS = voltage("b.pass", 80);
  private static final Check CAUTION = voltage("b.caution", 98);
  private static final Check FAIL = voltage("b.fail", 116);
  private static final Check UNKNOWN =
      Check.named("b.unknown", "conductor temperature at continuous current")
          .source(Source.standard("Invented standard", "Table 2").fromMemory())
          .answeredBy(Party.PARTS_SUPPLIER)
          .notChecked(Figure.of(celsius(81), CELSIUS), "cable.temperatureClass");
  private static final Check SAFETY =
      Check.named("c.fail", "creepage distance in the box")
          .source(Source.PHYSICS)
          .safety()
          .holds(false);
  private static final Check ESTIMATED =
      Check.named("b.estimated", "pack full against inverter maximum")
          .source(Source.dataSheet("inverter"))
          .estimated("cell.resistance")
          .safety()
          .note("salvaged cells")
          .atMost(Figure.of(volts(50), VOLT), Figure.of(volts(100), VOLT));

  private static Check voltage(String code, double volts) {
    return Check.named(code, "pack full against inverter maximum")
        .source(Source.dataSheet("inverter"))
        .atMost(Figure.of(volts(volts), VOLT), Figure.of(volts(100), VOLT));
  }

  static Stream<Generator> cases() {
    return Generator.cases(20);
  }

  @ParameterizedTest
  @MethodSource("cases")
  void orderIsBySeverityWhateverTheOrderGiven(Generator random) {
    Check twin = voltage("b.fail", 120);
    List<Check> mixed =
        new ArrayList<>(List.of(PASS, UNKNOWN, FAIL, CAUTION, SAFETY, ESTIMATED, twin));
    Collections.shuffle(mixed, new Random(random.count(0, 1_000_000)));
    assertThat(Checks.bySeverity(mixed))
        .containsExactly(SAFETY, FAIL, twin, UNKNOWN, ESTIMATED, CAUTION, PASS);
  }

  @Test
  void worstOfManyIsTheWorst() {
    assertThat(Outcome.worstOf(List.of())).isEqualTo(Outcome.PASS);
    assertThat(Outcome.worstOf(List.of(PASS))).isEqualTo(Outcome.PASS);
    assertThat(Outcome.worstOf(List.of(PASS, CAUTION))).isEqualTo(Outcome.CAUTION);
    assertThat(Outcome.worstOf(List.of(UNKNOWN, CAUTION))).isEqualTo(Outcome.NOT_CHECKED);
    assertThat(Outcome.worstOf(List.of(UNKNOWN, FAIL, PASS))).isEqualTo(Outcome.FAIL);
  }

  @Test
  void outcomesCombineToTheWorse() {
    for (Outcome one : Outcome.values()) {
      for (Outcome other : Outcome.values()) {
        assertThat(one.and(other)).isEqualTo(other.and(one)).isIn(one, other);
        assertThat(one.and(other)).isGreaterThanOrEqualTo(one);
      }
    }
    assertThat(Outcome.FAIL.and(Outcome.NOT_CHECKED)).isEqualTo(Outcome.FAIL);
    assertThat(Outcome.NOT_CHECKED.and(Outcome.CAUTION)).isEqualTo(Outcome.NOT_CHECKED);
    assertThat(Outcome.CAUTION.and(Outcome.PASS)).isEqualTo(Outcome.CAUTION);
  }

  @Test
  void worseOfTwoIsByVerdictThenByMargin() {
    assertThat(Checks.worse(PASS, FAIL)).isSameAs(FAIL);
    assertThat(Checks.worse(FAIL, PASS)).isSameAs(FAIL);
    Check closer = voltage("b.pass", 90);
    assertThat(Checks.worse(PASS, closer)).isSameAs(closer);
    assertThat(Checks.worse(closer, PASS)).isSameAs(closer);
    assertThat(Checks.worse(SAFETY, FAIL)).isSameAs(FAIL);
    Check equal = voltage("b.pass", 80);
    assertThat(Checks.worse(PASS, equal)).isSameAs(PASS);
  }

  @Test
  void foundAgainByCode() {
    List<Check> all = List.of(PASS, FAIL, voltage("b.fail", 120));
    assertThat(Checks.withCode(all, "b.fail")).hasSize(2).startsWith(FAIL);
    assertThat(Checks.withCode(all, "b")).isEmpty();
  }

  @Test
  void summaryCountsEachVerdictWorstFirst() {
    assertThat(Checks.summary(List.of(PASS, FAIL, UNKNOWN, PASS, CAUTION, SAFETY)))
        .isEqualTo("2 FAIL, 1 NOT CHECKED, 1 CAUTION, 2 PASS");
    assertThat(Checks.summary(List.of(PASS))).isEqualTo("1 PASS");
    assertThat(Checks.summary(List.of())).isEqualTo("nothing was checked");
  }

  @Test
  void textHasVerdictFiguresSourceBasisAndRemark() {
    assertThat(Checks.toText(List.of(SAFETY, FAIL, UNKNOWN, ESTIMATED, PASS)))
        .isEqualTo(
            """
            FAIL        creepage distance in the box [safety]
                        c.fail; limit: law of physics; inputs: data sheet
            FAIL        pack full against inverter maximum: 116 V > 100 V, margin -16 V
                        b.fail; limit: data sheet: inverter; inputs: data sheet
            NOT CHECKED conductor temperature at continuous current: 81 °C
                        b.unknown; limit: Invented standard, Table 2, from memory; inputs: data sheet; missing:
                        cable.temperatureClass
            CAUTION     pack full against inverter maximum [safety]: 50 V ≤ 100 V, margin 50 V
                        b.estimated; limit: data sheet: inverter; inputs: estimated; estimated: cell.resistance;
                        an estimate gives at most a caution; salvaged cells
            PASS        pack full against inverter maximum: 80 V ≤ 100 V, margin 20 V
                        b.pass; limit: data sheet: inverter; inputs: data sheet
            """);
    assertThat(Checks.toText(List.of())).isEmpty();
  }

  @Test
  void markdownIsAnAlignedTable() {
    assertThat(Checks.toMarkdown(List.of(FAIL, UNKNOWN)))
        .isEqualTo(
            """
            | Verdict     | Check                                       | Actual and limit | Margin | Basis      | Source                                  | Remark                          | Code      |
            | ----------- | ------------------------------------------- | ---------------- | ------ | ---------- | --------------------------------------- | ------------------------------- | --------- |
            | FAIL        | pack full against inverter maximum          | 116 V > 100 V    | -16 V  | data sheet | data sheet: inverter                    |                                 | b.fail    |
            | NOT CHECKED | conductor temperature at continuous current | 81 °C            |        | data sheet | Invented standard, Table 2, from memory | missing: cable.temperatureClass | b.unknown |
            """);
  }

  @Test
  void textIsTheSameUnderEveryLocale() {
    List<Check> all = List.of(SAFETY, FAIL, UNKNOWN, ESTIMATED, PASS);
    String text = Checks.toText(all) + Checks.toMarkdown(all) + Checks.summary(all);
    for (var locale : Locales.ALL) {
      Locales.with(
          locale,
          () ->
              assertThat(Checks.toText(all) + Checks.toMarkdown(all) + Checks.summary(all))
                  .isEqualTo(text));
    }
  }

  @Test
  void openItemsAreFoundInChecksAndMerged() {
    Check alsoUnknown =
        Check.named("a.unknown", "x")
            .source(Source.PHYSICS)
            .answeredBy(Party.PARTS_SUPPLIER)
            .safety()
            .notChecked("cable.temperatureClass", "cable.size");
    Check unnamed =
        Check.named("a.guess", "range in winter")
            .source(Source.requirement("customer"))
            .answeredBy(Party.CUSTOMER)
            .basis(Basis.ESTIMATED)
            .holds(true);
    List<OpenItem> items =
        OpenItems.of(List.of(PASS, UNKNOWN, ESTIMATED, alsoUnknown, unnamed, FAIL));
    assertThat(items)
        .containsExactly(
            new OpenItem(
                Party.CUSTOMER,
                OpenItem.Reason.ESTIMATED,
                "an input of: range in winter",
                List.of("a.guess"),
                false),
            new OpenItem(
                Party.WORKSHOP,
                OpenItem.Reason.ESTIMATED,
                "cell.resistance",
                List.of("b.estimated"),
                true),
            new OpenItem(
                Party.PARTS_SUPPLIER,
                OpenItem.Reason.MISSING,
                "cable.size",
                List.of("a.unknown"),
                true),
            new OpenItem(
                Party.PARTS_SUPPLIER,
                OpenItem.Reason.MISSING,
                "cable.temperatureClass",
                List.of("a.unknown", "b.unknown"),
                true));
    assertThat(OpenItems.toText(items))
        .isEqualTo(
            """
            customer
              estimated: an input of: range in winter, for a.guess
            workshop
              estimated [safety]: cell.resistance, for b.estimated
            parts supplier
              missing [safety]: cable.size, for a.unknown
              missing [safety]: cable.temperatureClass, for a.unknown, b.unknown
            """);
    assertThat(OpenItems.toMarkdown(items))
        .contains("| customer       | an input of: range in winter | estimated |        | a.guess")
        .contains(
            "| parts supplier | cable.size                   | missing   | yes    | a.unknown ");
  }

  @Test
  void safetyComesFirstAmongTheItemsOfOneParty() {
    Check plain = Check.named("a", "x").source(Source.PHYSICS).notChecked("aaa");
    Check grave = Check.named("b", "x").source(Source.PHYSICS).safety().notChecked("zzz");
    assertThat(OpenItems.of(List.of(plain, grave)))
        .extracting(OpenItem::input)
        .containsExactly("zzz", "aaa");
  }

  @Test
  void openItemReadsWell() {
    OpenItem item =
        new OpenItem(
            Party.ELECTRICIAN,
            OpenItem.Reason.MISSING,
            " supply.rating ",
            List.of("b", "a", "b"),
            false);
    assertThat(item).hasToString("electrician: supply.rating is missing (a, b)");
    assertThat(item.checks()).containsExactly("a", "b").isUnmodifiable();
    assertThat(
            new OpenItem(
                Party.APPROVING_ENGINEER, OpenItem.Reason.ESTIMATED, "x", List.of(), false))
        .hasToString("approving engineer: x is estimated");
    assertThat(OpenItems.of(List.of(PASS))).isEmpty();
    assertThat(
            OpenItems.toText(
                List.of(
                    new OpenItem(Party.CUSTOMER, OpenItem.Reason.MISSING, "x", List.of(), false))))
        .isEqualTo("customer\n  missing: x\n");
  }
}
