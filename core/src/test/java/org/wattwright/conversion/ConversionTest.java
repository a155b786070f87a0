package org.wattwright.conversion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatNullPointerException;
import static org.wattwright.units.Measures.milliohms;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.wattwright.battery.CellEstimates;
import org.wattwright.battery.Pack;
import org.wattwright.check.Basis;
import org.wattwright.check.Check;
import org.wattwright.check.Figure;
import org.wattwright.check.OpenItem;
import org.wattwright.check.Outcome;
import org.wattwright.check.Party;
import org.wattwright.check.Source;
import org.wattwright.units.InvalidInputException;
import org.wattwright.voltage.DeviceRole;
import org.wattwright.voltage.WindowReview;

class ConversionTest {
  private static final Check ENERGY_SHORT =
      Check.named("requirement.energy", "usable energy")
          .source(Source.requirement("job"))
          .atLeast(Figure.number(9), Figure.number(12));
  private static final Check MASS_OPEN =
      Check.named("requirement.mass", "mass on the rear axle")
          .source(Source.requirement("job"))
          .answeredBy(Party.CUSTOMER)
          .notChecked("vehicle.rearAxleLimit");
  private static final Check PRICE_CLOSE =
      Check.named("requirement.price", "price of the modules")
          .source(Source.requirement("job"))
          .recommends(false);

  private static List<Outcome> outcomes(Conversion conversion) {
    return conversion.review().stream().map(Check::outcome).toList();
  }

  @Test
  void holdsWhatItWasGiven() {
    Pack pack = InventedVan.pack(InventedVan.cell().build());
    Conversion van =
        Conversion.of(" bakery van ")
            .customer("island bakery")
            .vehicle("half-ton van")
            .pack(pack)
            .device(InventedVan.inverter())
            .device(InventedVan.charger())
            .conditions(InventedVan.conditions())
            .build();
    assertThat(van.title()).isEqualTo("bakery van");
    assertThat(van.customer()).contains("island bakery");
    assertThat(van.vehicle()).contains("half-ton van");
    assertThat(van.pack()).isEqualTo(pack);
    assertThat(van.devices()).containsExactly(InventedVan.inverter(), InventedVan.charger());
    assertThat(van.conditions()).isEqualTo(InventedVan.conditions());
  }

  @Test
  void customerAndVehicleMayBeLeftOut() {
    Conversion van = InventedVan.conversion().build();
    assertThat(van.customer()).isEmpty();
    assertThat(van.vehicle()).isEmpty();
    assertThat(van.toSheet().subtitle()).isEmpty();
  }

  @Test
  void listsEverythingThatIsMissingAtOnce() {
    assertThatExceptionOfType(InvalidInputException.class)
        .isThrownBy(() -> Conversion.of("van").build())
        .withMessage("Conversion is missing 3 of 3 required fields: pack, device, conditions")
        .satisfies(e -> assertThat(e.field()).isEqualTo("Conversion.pack"));
  }

  @Test
  void namesOnlyWhatIsMissing() {
    Conversion.Builder withoutDevice =
        Conversion.of("van")
            .pack(InventedVan.pack(InventedVan.cell().build()))
            .conditions(InventedVan.conditions());
    assertThatExceptionOfType(InvalidInputException.class)
        .isThrownBy(withoutDevice::build)
        .withMessage("Conversion is missing 1 of 3 required fields: device");
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "  ", "\t"})
  void rejectsBlankTexts(String blank) {
    Conversion.Builder van = InventedVan.conversion();
    assertThatExceptionOfType(InvalidInputException.class)
        .isThrownBy(() -> Conversion.of(blank))
        .withMessageStartingWith("Conversion.title must be a text, but was");
    assertThatExceptionOfType(InvalidInputException.class)
        .isThrownBy(() -> van.customer(blank))
        .withMessageStartingWith("Conversion.customer must be a text");
    assertThatExceptionOfType(InvalidInputException.class)
        .isThrownBy(() -> van.vehicle(blank))
        .withMessageStartingWith("Conversion.vehicle must be a text");
  }

  @Test
  void namesTheNullParameter() {
    Conversion.Builder van = InventedVan.conversion();
    assertThatNullPointerException().isThrownBy(() -> van.pack(null)).withMessage("pack");
    assertThatNullPointerException().isThrownBy(() -> van.device(null)).withMessage("device");
    assertThatNullPointerException()
        .isThrownBy(() -> van.conditions(null))
        .withMessage("conditions");
    assertThatNullPointerException()
        .isThrownBy(() -> van.requirement(null))
        .withMessage("requirement");
    assertThatNullPointerException()
        .isThrownBy(() -> Conversion.of(null))
        .withMessage("Conversion.title");
  }

  @Test
  void reviewHoldsEveryCheckOnce() {
    Conversion van =
        InventedVan.conversion().requirement(ENERGY_SHORT).requirement(MASS_OPEN).build();
    List<Check> expected = new ArrayList<>(van.windows().checks());
    expected.add(ENERGY_SHORT);
    expected.add(MASS_OPEN);
    assertThat(van.review()).containsAll(expected);
    assertThat(van.review()).doesNotHaveDuplicates();
  }

  @Test
  void reviewBeginsWithTheWorst() {
    Conversion van =
        InventedVan.conversion()
            .requirement(PRICE_CLOSE)
            .requirement(MASS_OPEN)
            .requirement(ENERGY_SHORT)
            .build();
    assertThat(van.review())
        .startsWith(ENERGY_SHORT)
        .containsSubsequence(ENERGY_SHORT, MASS_OPEN, PRICE_CLOSE);
    assertThat(outcomes(van)).contains(Outcome.PASS).isSortedAccordingTo(Comparator.reverseOrder());
  }

  @Test
  void orderOfRequirementsDoesNotMatter() {
    Conversion oneWay =
        InventedVan.conversion().requirement(MASS_OPEN).requirement(ENERGY_SHORT).build();
    Conversion otherWay =
        InventedVan.conversion().requirement(ENERGY_SHORT).requirement(MASS_OPEN).build();
    assertThat(oneWay.review()).isEqualTo(otherWay.review());
  }

  @Test
  void outcomeIsThatOfTheWorstCheck() {
    Conversion.Builder builder = InventedVan.conversion().requirement(MASS_OPEN);
    assertThat(builder.build().outcome()).isEqualTo(Outcome.NOT_CHECKED);
    Conversion failing = builder.requirement(ENERGY_SHORT).build();
    assertThat(failing.outcome()).isEqualTo(Outcome.FAIL);
    assertThat(failing.outcome()).isEqualTo(failing.review().get(0).outcome());
  }

  @Test
  void windowsAreThoseOfPackDevicesAndConditions() {
    Conversion van = InventedVan.conversion().build();
    WindowReview alone = WindowReview.of(van.pack(), van.devices(), van.conditions());
    assertThat(van.windows().checks()).isEqualTo(alone.checks());
    assertThat(van.windows().envelope()).isEqualTo(alone.envelope());
  }

  @Test
  void aDeviceThatDoesNotFitFailsTheReview() {
    // 32 cells charged to 3.65 V: 116.8 V.
    Conversion van =
        InventedVan.conversion()
            .device(InventedVan.device("heater", DeviceRole.HEATER, 60, 110))
            .build();
    assertThat(van.review().get(0).toString())
        .startsWith("FAIL")
        .contains("116.8 V > 110 V, margin -6.8 V");
  }

  @Test
  void openItemsNameMissingInputAndWhoMustAnswer() {
    Conversion van =
        InventedVan.conversion().requirement(MASS_OPEN).requirement(ENERGY_SHORT).build();
    assertThat(van.openItems())
        .contains(
            new OpenItem(
                Party.CUSTOMER,
                OpenItem.Reason.MISSING,
                "vehicle.rearAxleLimit",
                List.of("requirement.mass"),
                false));
  }

  @Test
  void anEstimatedInputIsAnOpenItem() {
    Conversion van =
        InventedVan.conversion()
            .pack(
                InventedVan.pack(
                    InventedVan.cell()
                        .resistance(CellEstimates.resistanceOverTemperature(milliohms(1)))
                        .build()))
            .build();
    assertThat(van.openItems())
        .filteredOn(item -> item.reason() == OpenItem.Reason.ESTIMATED)
        .isNotEmpty()
        .extracting(OpenItem::input)
        .containsOnly("resistance of plain module");
  }

  @Test
  void listsCannotBeChanged() {
    Conversion van = InventedVan.conversion().requirement(MASS_OPEN).build();
    assertThatExceptionOfType(UnsupportedOperationException.class)
        .isThrownBy(() -> van.devices().clear());
    assertThatExceptionOfType(UnsupportedOperationException.class)
        .isThrownBy(() -> van.review().clear());
    assertThatExceptionOfType(UnsupportedOperationException.class)
        .isThrownBy(() -> van.openItems().clear());
  }

  @Test
  void theBuilderDoesNotReachIntoABuiltConversion() {
    Conversion.Builder builder = InventedVan.conversion();
    Conversion van = builder.build();
    List<Check> before = van.review();
    builder
        .device(InventedVan.device("heater", DeviceRole.HEATER, 60, 110))
        .requirement(ENERGY_SHORT);
    assertThat(van.devices()).hasSize(2);
    assertThat(van.review()).isEqualTo(before).doesNotContain(ENERGY_SHORT);
  }

  @Test
  void textHasTitleVerdictAndPack() {
    Conversion van = InventedVan.conversion().build();
    assertThat(van).hasToString("bakery van: " + van.outcome() + ", " + van.pack());
  }

  /**
   * Whoever must answer finds every input that a check lacks or guesses, and the check beside it.
   */
  @Test
  void everyMissingOrEstimatedInputIsAnOpenItem() {
    Conversion van =
        InventedVan.conversion()
            .pack(
                InventedVan.pack(
                    InventedVan.cell()
                        .resistance(CellEstimates.resistanceOverTemperature(milliohms(1)))
                        .build()))
            .masses(WeighedVan.ledger(WeighedVan.axlesOnly()))
            .requirement(MASS_OPEN)
            .build();
    List<OpenItem> items = van.openItems();
    assertThat(van.review())
        .filteredOn(check -> check.outcome() == Outcome.NOT_CHECKED)
        .hasSizeGreaterThan(5)
        .allSatisfy(
            check ->
                assertThat(check.missing())
                    .isNotEmpty()
                    .allSatisfy(
                        input ->
                            assertThat(items)
                                .anyMatch(
                                    item ->
                                        item.input().equals(input)
                                            && item.answeredBy() == check.answeredBy()
                                            && item.checks().contains(check.code()))));
    assertThat(van.review())
        .filteredOn(check -> check.basis() == Basis.ESTIMATED)
        .isNotEmpty()
        .allSatisfy(
            check ->
                assertThat(items)
                    .anyMatch(
                        item ->
                            item.reason() == OpenItem.Reason.ESTIMATED
                                && item.checks().contains(check.code())));
    assertThat(items)
        .extracting(OpenItem::answeredBy)
        .isSortedAccordingTo(java.util.Comparator.naturalOrder());
  }
}
