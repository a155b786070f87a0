package org.wattwright.conversion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.wattwright.units.Measures.celsius;
import static org.wattwright.units.Measures.kilograms;
import static org.wattwright.units.Measures.kilometres;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.wattwright.battery.Pack;
import org.wattwright.check.Check;
import org.wattwright.check.Figure;
import org.wattwright.check.Outcome;
import org.wattwright.check.Source;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;
import org.wattwright.vehicle.LoadCase;

class ComparisonTest {
  private static Conversion van(int series) {
    return InventedVan.conversion()
        .pack(Pack.of(InventedVan.module(InventedVan.cell().build()), series, 1))
        .build();
  }

  private static ComparedFigure figure(Comparison comparison, String name) {
    return comparison.figures().stream()
        .filter(each -> each.name().equals(name))
        .findFirst()
        .orElseThrow();
  }

  /** Eight modules of 8 kg, 1.28 kW·h and 14.6 V when full; then nine. */
  @Test
  void figuresStandSideBySideWithTheirDifference() {
    Comparison comparison = van(8).compare(van(9));
    assertThat(figure(comparison, "modules")).hasToString("modules: 8 → 9 (+1)");
    assertThat(figure(comparison, "mass of the modules"))
        .hasToString("mass of the modules: 64 kg → 72 kg (+8 kg)");
    assertThat(figure(comparison, "energy at rest voltage, full to empty, 25 °C"))
        .hasToString(
            "energy at rest voltage, full to empty, 25 °C: 10.24 kW·h → 11.52 kW·h (+1.28 kW·h)");
    assertThat(figure(comparison, "capacity")).hasToString("capacity: 100 A·h → 100 A·h (0 A·h)");
    assertThat(figure(comparison, "voltage, full under charge or regeneration"))
        .hasToString("voltage, full under charge or regeneration: 116.8 V → 131.4 V (+14.6 V)");
    assertThat(figure(van(9).compare(van(8)), "mass of the modules").signedDifference())
        .isEqualTo("-8 kg");
  }

  /** 131.4 V are above the 120 V of the charger, and still below the 135 V of the inverter. */
  @Test
  void checksThatBecameWorseComeFirst() {
    Comparison comparison = van(8).compare(van(9));
    ChangedCheck first = comparison.changedChecks().get(0);
    assertThat(first.isWorse()).isTrue();
    assertThat(first.isOfVerdict()).isTrue();
    assertThat(first.code()).isEqualTo("voltage.charger-reach");
    assertThat(first.before().map(Check::outcome)).contains(Outcome.PASS);
    assertThat(first.after().map(Check::outcome)).contains(Outcome.FAIL);
    assertThat(first)
        .hasToString(
            first.what()
                + ": PASS: 116.8 V ≤ 120 V, margin 3.2 V → FAIL: 131.4 V > 120 V, margin -11.4 V");
    assertThat(comparison.changedChecks())
        .extracting(ChangedCheck::isWorse)
        .isSortedAccordingTo(java.util.Comparator.reverseOrder());
    assertThat(comparison.changedChecks()).anyMatch(check -> !check.isOfVerdict());
    assertThat(comparison.only(ChangedCheck::isOfVerdict).changedChecks())
        .allMatch(ChangedCheck::isOfVerdict);
    ChangedCheck back =
        van(9).compare(van(8)).only(ChangedCheck::isOfVerdict).changedChecks().get(0);
    assertThat(back.isWorse()).isFalse();
  }

  @Test
  void nothingChangesAgainstItself() {
    Comparison same = van(8).compare(van(8));
    assertThat(same.changedChecks()).isEmpty();
    assertThat(same.figures())
        .isNotEmpty()
        .allSatisfy(each -> assertThat(each.signedDifference()).startsWith("0"));
    assertThat(same.toText()).endsWith("no check changed\n");
    assertThat(same.toSection().blocks()).contains(new Paragraph("No check changed."));
    assertThat(same)
        .hasToString(
            "bakery van against bakery van: 0 checks worse, 0 changed, 0 with another margin");
  }

  @Test
  void aCheckThatOnlyOneHasIsTold() {
    Check wish =
        Check.named("own.wish", "a wish")
            .source(Source.PHYSICS)
            .atMost(Figure.number(3), Figure.number(2));
    Conversion with = InventedVan.conversion().requirement(wish).build();
    ChangedCheck added = van(8).compare(with).changedChecks().get(0);
    assertThat(added.before()).isEmpty();
    assertThat(added.after()).contains(wish);
    assertThat(added.isWorse()).isTrue();
    assertThat(added).hasToString("a wish: – → FAIL: 3 > 2, margin -1");
    ChangedCheck gone = with.compare(van(8)).changedChecks().get(0);
    assertThat(gone.after()).isEmpty();
    assertThat(gone.what()).isEqualTo("a wish");
    assertThat(gone.isWorse()).isFalse();
  }

  /** Two checks of the same words are told apart by their order. */
  @Test
  void checksOfTheSameWordsArePairedOneByOne() {
    Check low = Check.named("own.a", "same").source(Source.PHYSICS).holds(true);
    Check high = Check.named("own.a", "same").source(Source.PHYSICS).holds(false);
    assertThat(CheckPairs.changed(List.of(low, low), List.of(low, high)))
        .singleElement()
        .satisfies(check -> assertThat(check.after()).contains(high));
  }

  /** Kerb: 1000 kg − 200 kg + 250 kg; the driver is in the first alone. */
  @Test
  void loadCasesOfBothAreCompared() {
    Conversion first =
        InventedVan.conversion()
            .masses(WeighedVan.ledger(WeighedVan.full()))
            .loadCases(LoadCase.KERB, WeighedVan.driver())
            .build();
    Conversion second =
        InventedVan.conversion()
            .masses(WeighedVan.ledger(WeighedVan.full()).adding(WeighedVan.item("heater", 10, 0)))
            .build();
    Comparison comparison = first.compare(second);
    assertThat(figure(comparison, "total, kerb"))
        .hasToString("total, kerb: 1050 kg → 1060 kg (+10 kg)");
    assertThat(figure(comparison, "front axle, kerb").signedDifference()).isEqualTo("+10 kg");
    assertThat(figure(comparison, "rear axle, kerb").signedDifference()).isEqualTo("0 kg");
    // 450/1050 = 42.86 %, 460/1060 = 43.40 %: 0.539 points.
    assertThat(figure(comparison, "front share, kerb").signedDifference())
        .isEqualTo("+0.5391 points");
    assertThat(comparison.figures())
        .extracting(ComparedFigure::name)
        .noneMatch(name -> name.contains("driver"));
    assertThat(first.compare(van(8)).figures())
        .extracting(ComparedFigure::name)
        .noneMatch(name -> name.contains("kerb"));
  }

  @Test
  void furtherFiguresAndNamesMayBeGiven() {
    Comparison comparison =
        van(8)
            .compare(van(9))
            .named("eight", "nine")
            .with(
                ComparedFigure.of(
                    "range",
                    Kind.LENGTH,
                    new ComparedFigure.Sides<>(Optional.of(kilometres(80)), Optional.empty())));
    assertThat(comparison.toText())
        .startsWith("eight against nine\n  modules: 8 → 9 (+1)\n")
        .contains("  range: 80 km → not known\n")
        .contains("checks that changed\n  worse: ");
    assertThat(comparison.table().rows())
        .contains(List.of("range", "80 km", "not known", ""))
        .contains(List.of("modules", "8", "9", "+1"));
    assertThat(comparison.checkTable().rows().get(0))
        .startsWith("worse")
        .endsWith("voltage.charger-reach");
    assertThatExceptionOfType(InvalidInputException.class)
        .isThrownBy(() -> comparison.named(" ", "nine"))
        .withMessageContaining("Comparison.first");
  }

  @Test
  void theDifferenceStandsInTheUnitOfTheSecond() {
    assertThat(
            ComparedFigure.of(
                "range",
                Kind.LENGTH,
                new ComparedFigure.Sides<>(
                    Optional.of(kilometres(80)), Optional.of(kilometres(96)))))
        .hasToString("range: 80 km → 96 km (+16 km)");
  }

  @Test
  void whatRoundingLeavesIsNoDifference() {
    ComparedFigure figure =
        ComparedFigure.of(
            "total",
            Kind.MASS,
            new ComparedFigure.Sides<>(
                Optional.of(kilograms(1500)), Optional.of(kilograms(Math.nextUp(1500.0)))));
    assertThat(figure.signedDifference()).isEqualTo("0 kg");
  }

  /** 20 °C less 10 °C is 10 K, which is another kind. */
  @Test
  void temperaturesAreRefused() {
    assertThatExceptionOfType(InvalidInputException.class)
        .isThrownBy(
            () ->
                ComparedFigure.of(
                    "pack",
                    Kind.TEMPERATURE,
                    new ComparedFigure.Sides<>(Optional.of(celsius(10)), Optional.of(celsius(20)))))
        .withMessageContaining("ComparedFigure.kind");
  }
}
