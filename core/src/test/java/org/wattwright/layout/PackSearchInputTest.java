package org.wattwright.layout;

import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatNullPointerException;
import static org.wattwright.units.Measures.amperes;
import static org.wattwright.units.Measures.celsius;
import static org.wattwright.units.Measures.kilograms;
import static org.wattwright.units.Measures.kilowattHours;
import static org.wattwright.units.Measures.kilowatts;
import static org.wattwright.units.Measures.litres;
import static org.wattwright.units.Measures.percentCharge;
import static org.wattwright.units.Measures.seconds;

import java.util.List;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.wattwright.battery.BatteryModule;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Measures;
import org.wattwright.units.Price;
import org.wattwright.units.WorkshopUnits;

/** Nonsense at the door: which field, which value, which bound. */
class PackSearchInputTest {
  private static final PackSearch SEARCH = PackSearch.over(List.of(InventedParts.flat()));

  private static void rejects(ThrowingCallable call, String... parts) {
    assertThatExceptionOfType(InvalidInputException.class)
        .isThrownBy(call)
        .satisfies(e -> org.assertj.core.api.Assertions.assertThat(e.getMessage()).contains(parts));
  }

  @Test
  void rejectsNoModules() {
    rejects(
        () -> PackSearch.over(List.of()),
        "PackSearch.modules must be a list with at least one element, but was empty");
  }

  @Test
  void rejectsTwoThingsOfOneName() {
    BatteryModule other = BatteryModule.of(InventedParts.flatCell()).name("flat module").build();
    rejects(
        () -> PackSearch.over(List.of(InventedParts.flat(), other)),
        "PackSearch.modules must be told apart by name, but was two called \"flat module\"");
    rejects(
        () -> SEARCH.device(InventedParts.charger()).device(InventedParts.charger(300)),
        "PackSearch.devices",
        "\"charger\"");
    rejects(
        () ->
            SEARCH
                .enclosure(Enclosure.of("box", 2, kilograms(3)))
                .enclosure(Enclosure.of("box", 3, kilograms(3))),
        "PackSearch.enclosures",
        "\"box\"");
  }

  @Test
  void rejectsLimitsThatAreNotPositive() {
    rejects(
        () -> SEARCH.massAtMost(kilograms(-290)),
        "PackSearch.mass must be > 0 kg, but was -290 kg");
    rejects(() -> SEARCH.massAtMost(kilograms(0)), "PackSearch.mass", "0 kg");
    rejects(() -> SEARCH.volumeAtMost(litres(-1)), "PackSearch.volume must be > 0 L");
    rejects(
        () -> SEARCH.usableEnergyAtLeast(kilowattHours(-28)),
        "PackSearch.usableEnergy must be > 0 kW·h, but was -28 kW·h");
    rejects(() -> SEARCH.meanPower(kilowatts(0)), "PackSearch.meanPower must be > 0 kW");
    rejects(
        () -> SEARCH.peakPowerAtLeast(kilowatts(-1), seconds(10), percentCharge(20), celsius(0)),
        "PackSearch.peakPower must be > 0 kW, but was -1 kW");
    rejects(
        () -> SEARCH.chargePowerAtLeast(kilowatts(1), seconds(-10), percentCharge(20), celsius(0)),
        "PackSearch.chargePower.duration must be ≥ 0 s, but was -10 s");
  }

  @Test
  void rejectsNotANumber() {
    rejects(() -> SEARCH.massAtMost(kilograms(Double.NaN)), "finite", "NaN");
  }

  @Test
  void rejectsCountsOutsideTheirRange() {
    rejects(
        () -> SEARCH.seriesAtMost(0), "PackSearch.seriesAtMost must be from 1 to 10000, but was 0");
    rejects(() -> SEARCH.parallelAtMost(10_001), "PackSearch.parallelAtMost", "10001");
    rejects(() -> SEARCH.candidateBudget(0), "PackSearch.candidateBudget must be ≥ 1, but was 0");
    rejects(() -> SEARCH.seriesAtMost(1).run().top(-1), "count must be ≥ 0, but was -1");
    rejects(() -> SEARCH.seriesAtMost(1).run().paretoFront(), "criteria");
  }

  @Test
  void rejectsBlankNames() {
    rejects(() -> Enclosure.of(" ", 2, kilograms(3)), "Enclosure.name");
    rejects(
        () -> Requirement.atMost("", WorkshopUnits.AMPERE, amperes(1), c -> amperes(1)),
        "Requirement.name");
    rejects(() -> Criterion.smallest(" ", WorkshopUnits.AMPERE, c -> amperes(1)), "Criterion.name");
  }

  @Test
  void rejectsEnclosuresThatHoldNothingOrWeighLess() {
    rejects(() -> Enclosure.of("box", 0, kilograms(3)), "Enclosure.modules must be ≥ 1");
    rejects(
        () -> Enclosure.of("box", 1, kilograms(-3)),
        "Enclosure.tareMass must be ≥ 0 kg, but was -3 kg");
  }

  @Test
  void saysWhichConditionsAreMissing() {
    rejects(
        () -> SEARCH.device(InventedParts.charger()).run(),
        "PackSearch.conditions must be given by under(…), but was missing",
        "devices");
    rejects(() -> SEARCH.usableEnergyAtLeast(kilowattHours(1)).run(), "states of charge");
    rejects(() -> SEARCH.rankBy(Criterion.PEAK_POWER).run(), "peak states");
    PackSearch twoPeaks =
        SEARCH
            .peakPowerAtLeast(kilowatts(1), seconds(10), percentCharge(20), celsius(0))
            .peakPowerAtLeast(kilowatts(2), seconds(10), percentCharge(30), celsius(0));
    rejects(() -> twoPeaks.device(InventedParts.charger()).run(), "PackSearch.conditions");
  }

  @Test
  void neverComparesPricesOfTwoCurrencies() {
    PackSearch search = SEARCH.priceAtMost(Price.of("100", "GBP"));
    rejects(search::run, "PackSearch.price must be in one currency, but was EUR and GBP");
    rejects(
        () -> SEARCH.rankBy(Criterion.PRICE).enclosure(pounds()).run(),
        "PackSearch.price",
        "EUR and GBP");
    org.assertj.core.api.Assertions.assertThat(SEARCH.enclosure(pounds()).run().best()).isPresent();
  }

  private static Enclosure pounds() {
    return Enclosure.of("box", 2, kilograms(3)).withPrice(Price.of("50", "GBP"));
  }

  @Test
  void namesWhatIsNull() {
    assertThatNullPointerException().isThrownBy(() -> SEARCH.rankBy(null)).withMessage("criterion");
    assertThatNullPointerException().isThrownBy(() -> SEARCH.under(null)).withMessage("conditions");
    assertThatNullPointerException()
        .isThrownBy(
            () ->
                SEARCH
                    .require(
                        Requirement.atMost(
                            "own", WorkshopUnits.KILOGRAM, Measures.kilograms(1), c -> null))
                    .run())
        .withMessage("own");
  }
}
