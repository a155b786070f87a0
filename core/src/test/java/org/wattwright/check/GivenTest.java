package org.wattwright.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatNullPointerException;

import org.junit.jupiter.api.Test;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Measures;

class GivenTest {
  private static final Given<Integer> MEASURED = Given.measured(2, "counted");
  private static final Given<Integer> STATED = Given.dataSheet(3, "module");
  private static final Given<Integer> GUESSED =
      Given.estimated(4, Source.commonPractice("as ever"));

  @Test
  void basesCombineToTheWeaker() {
    for (Basis one : Basis.values()) {
      for (Basis other : Basis.values()) {
        assertThat(one.and(other)).isEqualTo(other.and(one)).isIn(one, other);
        assertThat(one.and(other)).isGreaterThanOrEqualTo(one);
      }
    }
    assertThat(Basis.MEASURED.and(Basis.DATA_SHEET)).isEqualTo(Basis.DATA_SHEET);
    assertThat(Basis.DATA_SHEET.and(Basis.ESTIMATED)).isEqualTo(Basis.ESTIMATED);
  }

  @Test
  void weakestOfSeveral() {
    assertThat(Given.weakestOf(MEASURED)).isEqualTo(Basis.MEASURED);
    assertThat(Given.weakestOf(MEASURED, STATED)).isEqualTo(Basis.DATA_SHEET);
    assertThat(Given.weakestOf(GUESSED, MEASURED, STATED)).isEqualTo(Basis.ESTIMATED);
    assertThatExceptionOfType(InvalidInputException.class).isThrownBy(() -> Given.weakestOf());
  }

  @Test
  void whatFollowsKeepsBasisAndSource() {
    assertThat(STATED.map(n -> "x" + n)).isEqualTo(Given.dataSheet("x3", "module"));
  }

  @Test
  void whatFollowsFromTwoHasTheWeakerBasisAndItsSource() {
    assertThat(MEASURED.with(STATED, Integer::sum)).isEqualTo(Given.dataSheet(5, "module"));
    assertThat(STATED.with(MEASURED, Integer::sum)).isEqualTo(Given.dataSheet(5, "module"));
    assertThat(GUESSED.with(MEASURED, Integer::sum))
        .isEqualTo(Given.estimated(6, Source.commonPractice("as ever")));
    Given<Integer> twin = Given.dataSheet(7, "other");
    assertThat(STATED.with(twin, Integer::sum)).isEqualTo(Given.dataSheet(10, "module"));
  }

  @Test
  void readsWell() {
    assertThat(MEASURED).hasToString("2 (measured: counted)");
    assertThat(Given.dataSheet(Measures.volts(3.65), "cell"))
        .hasToString("3.65 V (data sheet: cell)");
    assertThat(GUESSED).hasToString("4 (estimated, common practice: as ever)");
  }

  @Test
  void labelsReadAsWords() {
    assertThat(Basis.DATA_SHEET).hasToString("data sheet");
    assertThat(Outcome.NOT_CHECKED).hasToString("NOT CHECKED");
    assertThat(Outcome.PASS).hasToString("PASS");
    assertThat(Party.PARTS_SUPPLIER).hasToString("parts supplier");
  }

  @Test
  void rejectsNullByName() {
    assertThatNullPointerException()
        .isThrownBy(() -> Given.measured(null, "x"))
        .withMessage("value");
    assertThatNullPointerException()
        .isThrownBy(() -> new Given<>(1, null, Source.PHYSICS))
        .withMessage("basis");
    assertThatNullPointerException()
        .isThrownBy(() -> Given.estimated(1, null))
        .withMessage("source");
  }

  @Test
  void sourcesReadAsInAReferenceList() {
    assertThat(Source.standard("IEC 60228", "Table 2, 2004"))
        .hasToString("IEC 60228, Table 2, 2004");
    assertThat(Source.literature("Somebody, A book", "")).hasToString("Somebody, A book");
    assertThat(Source.dataSheet("inverter")).hasToString("data sheet: inverter");
    assertThat(Source.measurement("scales")).hasToString("measured: scales");
    assertThat(Source.requirement("customer")).hasToString("requirement: customer");
    assertThat(Source.commonPractice("one third")).hasToString("common practice: one third");
    assertThat(Source.PHYSICS).hasToString("law of physics");
    assertThat(Source.AS_GIVEN).hasToString("as given");
  }

  @Test
  void recalledSourceSaysSo() {
    assertThat(Source.standard("IEC 60228", "Table 2").fromMemory())
        .hasToString("IEC 60228, Table 2, from memory");
    assertThat(Source.literature("A book", "").fromMemory())
        .isEqualTo(Source.literature("A book", "from memory"));
  }

  @Test
  void rejectsSourceWithoutTitle() {
    assertThatExceptionOfType(InvalidInputException.class)
        .isThrownBy(() -> Source.standard(" ", "x"))
        .withMessage("Source.title must be a text, but was \" \"");
    assertThatNullPointerException()
        .isThrownBy(() -> Source.standard("x", null))
        .withMessage("detail");
    assertThatNullPointerException()
        .isThrownBy(() -> new Source(null, "x", ""))
        .withMessage("type");
  }
}
