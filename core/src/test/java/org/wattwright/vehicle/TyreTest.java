package org.wattwright.vehicle;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.wattwright.units.Measures.kilograms;
import static org.wattwright.units.Measures.kilopascals;

import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.wattwright.testing.Generator;
import org.wattwright.units.Kind;

/** Designations, their text, and what they say. */
class TyreTest {
  @ParameterizedTest
  @CsvSource({
    "175/70 R14 84T, 175/70 R14 84T",
    "175/70R14 84 T, 175/70 R14 84T",
    "185R14C 102/100Q, 185 R14C 102/100Q",
    "185 R14 C 102/100Q, 185 R14C 102/100Q",
    "165 SR15, 165 SR15",
    "165SR 15, 165 SR15",
    "145-10, 145-10",
    "195/65 R15 95H REINFORCED, 195/65 R15 95H XL",
    "195/65 R15 95H extra load, 195/65 R15 95H XL",
    "5.60-15, 5.60-15",
    "5.60 - 15, 5.60-15",
    "6.40-13 4PR, 6.40-13 4PR",
    "7.00 R16C 117/116L, 7.00 R16C 117/116L",
    "205/55 ZR16, 205/55 ZR16",
  })
  void readsAndWritesDesignations(String text, String canonical) {
    Tyre tyre = Tyre.parse(text);
    assertThat(tyre).hasToString(canonical);
    assertThat(Tyre.parse(canonical)).isEqualTo(tyre);
  }

  @Test
  void saysWhatIsMarked() {
    Tyre van = Tyre.parse("185R14C 102/100Q");
    assertThat(van.isCommercial()).isTrue();
    assertThat(van.isRadial()).isTrue();
    assertThat(van.isAspectMarked()).isFalse();
    assertThat(van.loadIndex()).contains(new LoadIndex(102));
    assertThat(van.twinLoadIndex()).contains(new LoadIndex(100));
    assertThat(van.speedSymbol()).contains(SpeedSymbol.Q);
    assertThat(van.referencePressure()).isEmpty();
    assertThat(InflationLaw.of(van)).isEmpty();
    Tyre old = Tyre.parse("6.40-13");
    assertThat(old.isRadial()).isFalse();
    assertThat(old.maximumLoad()).isEmpty();
    assertThat(old.speedSymbol()).isEmpty();
    assertThat(old.referencePressure()).isEmpty();
    assertThat(Tyre.parse("175/70 R14 84T").isExtraLoad()).isFalse();
  }

  @ParameterizedTest
  @CsvSource({"165 SR15, S", "165 HR15, H", "165 SR15 86T, T"})
  void oldSpeedLetterCountsUnlessThereIsAServiceDescription(String text, SpeedSymbol expected) {
    assertThat(Tyre.parse(text).speedSymbol()).contains(expected);
  }

  @Test
  void vrAndZrStateNoUpperSpeed() {
    assertThat(Tyre.parse("205/70 VR15").speedSymbol()).isEmpty();
    assertThat(Tyre.parse("205/55 ZR16").speedSymbol()).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({
    "5.60-15, 0.95",
    "6.00-13, 0.88",
    "5.50-12, 0.88",
    "6.00-16, 0.95",
    "145-10, 0.95",
    "165 R15, 0.82",
    "165/70 R15, 0.70"
  })
  void aspectRatio(String text, double expected) {
    assertThat(Tyre.parse(text).aspectRatio()).isEqualTo(expected);
  }

  @Test
  void rollingRadiusOfCrossPlyLiesBetweenLoadedAndFreeRadius() {
    Tyre tyre = Tyre.parse("5.60-15");
    double rolling = Kind.LENGTH.siValueOf(tyre.rollingRadius().typical());
    double design = Kind.LENGTH.siValueOf(tyre.designDiameter());
    assertThat(rolling / design).isCloseTo(0.49, within(1e-12));
    assertThat(Kind.LENGTH.siValueOf(tyre.rollingRadius().low()) / design)
        .isCloseTo(0.47, within(1e-12));
    assertThat(Kind.LENGTH.siValueOf(tyre.rollingCircumference().high()) / design)
        .isCloseTo(Math.PI, within(1e-12));
  }

  @Test
  void loadIndexTableRisesAndFollowsThePreferredNumbers() {
    IntStream.rangeClosed(60, 130)
        .forEach(
            i -> {
              double kg = Kind.MASS.siValueOf(new LoadIndex(i).load());
              assertThat(kg / (45 * Math.pow(10, i / 80.0))).isCloseTo(1, within(0.018));
              assertThat(i == 60 || kg > Kind.MASS.siValueOf(new LoadIndex(i - 1).load())).isTrue();
            });
  }

  @Test
  void lowestIndexRoundsTheLoadUp() {
    assertThat(LoadIndex.lowestFor(kilograms(450))).contains(new LoadIndex(80));
    assertThat(LoadIndex.lowestFor(kilograms(450.1))).contains(new LoadIndex(81));
    assertThat(LoadIndex.lowestFor(kilograms(0))).contains(new LoadIndex(60));
    assertThat(LoadIndex.lowestFor(kilograms(1901))).isEmpty();
    assertThat(new LoadIndex(84)).hasToString("84 (500 kg)");
  }

  static java.util.stream.Stream<Generator> cases() {
    return Generator.cases(50);
  }

  @ParameterizedTest
  @MethodSource("cases")
  void loadAndPressureAreInverse(Generator random) {
    InflationLaw law = InflationLaw.of(kilograms(random.between(250, 1000)), kilopascals(250));
    double kpa = random.between(50, 250);
    assertThat(Kind.PRESSURE.siValueOf(law.pressureFor(law.loadAt(kilopascals(kpa)))))
        .isCloseTo(1000 * kpa, within(1e-6));
  }

  @Test
  void pressureAboveTheReferenceCarriesNoMore() {
    InflationLaw law = InflationLaw.of(kilograms(500), kilopascals(250));
    assertThat(law.loadAt(kilopascals(400))).isEqualTo(kilograms(500));
    assertThat(law).hasToString("500 kg at 250 kPa");
  }
}
