package org.wattwright.conversion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.wattwright.units.Measures.amperes;
import static org.wattwright.units.Measures.celsius;
import static org.wattwright.units.Measures.kilowatts;
import static org.wattwright.units.Measures.milliohms;
import static org.wattwright.units.Measures.ohms;
import static org.wattwright.units.Measures.percentCharge;
import static org.wattwright.units.Measures.seconds;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import org.junit.jupiter.api.Test;
import org.wattwright.battery.ResistanceTable;
import org.wattwright.check.Check;
import org.wattwright.check.Source;
import org.wattwright.units.InvalidInputException;
import org.wattwright.vehicle.LoadCase;
import org.wattwright.vehicle.MassItem;
import org.wattwright.vehicle.MassLedger;
import org.wattwright.voltage.OperatingConditions;

class FingerprintTest {
  private static Check wish(String code) {
    return Check.named(code, code).source(Source.PHYSICS).holds(true);
  }

  /** FIPS 180-4, example "abc", as NIST publishes it. */
  @Test
  void isThatOfTheStandard() {
    assertThat(Fingerprint.ofText("abc").hex())
        .isEqualTo("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
    assertThat(Fingerprint.ofText("abc")).hasToString("ba78 16bf 8f01");
  }

  @Test
  void partsCountByNameWhateverTheirOrder() {
    Map<String, String> one = new LinkedHashMap<>();
    one.put("a", "1");
    one.put("b", "2");
    Map<String, String> other = new LinkedHashMap<>();
    other.put("b", "2");
    other.put("a", "1");
    assertThat(Fingerprint.ofParts(one)).isEqualTo(Fingerprint.ofParts(other));
    assertThat(Fingerprint.ofParts(Map.of("a", "2", "b", "1")))
        .isNotEqualTo(Fingerprint.ofParts(one));
    assertThat(Fingerprint.ofParts(Map.of("a", "1b2"))).isNotEqualTo(Fingerprint.ofParts(one));
  }

  @Test
  void rejectsWhatIsNoSum() {
    assertThatExceptionOfType(InvalidInputException.class)
        .isThrownBy(() -> new Fingerprint("BA78"))
        .withMessageContaining("Fingerprint.hex");
  }

  @Test
  void theSameInputsHaveTheSameFingerprint() {
    Fingerprint first = InventedVan.conversion().build().fingerprint();
    assertThat(InventedVan.conversion().build().fingerprint()).isEqualTo(first);
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag("ar-EG"));
      assertThat(InventedVan.conversion().build().fingerprint()).isEqualTo(first);
    } finally {
      Locale.setDefault(before);
    }
    assertThat(InventedVan.conversion().build().toSheet().imprint().inputs()).contains(first);
  }

  /** A change of the text would make every sheet of before look revised. */
  @Test
  void theTextOfADeviceStays() {
    assertThat(CanonicalText.of(InventedVan.inverter()))
        .isEqualTo(
            "PlainDevice{capacitance=-;mass=-;maximumCurrent=-;maximumPower=-;name=\"inverter\";"
                + "role=INVERTER;window=VoltageWindow{absoluteMaximum=voltage 168.75;"
                + "fullPerformance=VoltageRange{highest=voltage 135;"
                + "lowest=voltage 7E+1;};"
                + "operating=VoltageRange{highest=voltage 135;"
                + "lowest=voltage 7E+1;};};}");
  }

  @Test
  void theOrderOfDevicesRequirementsAndPartsPlaysNoPart() {
    Conversion.Builder forwards =
        Conversion.of("van")
            .pack(InventedVan.pack(InventedVan.cell().build()))
            .conditions(InventedVan.conditions())
            .device(InventedVan.inverter())
            .device(InventedVan.charger())
            .requirement(wish("own.a"))
            .requirement(wish("own.b"));
    Conversion.Builder backwards =
        Conversion.of("van")
            .pack(InventedVan.pack(InventedVan.cell().build()))
            .conditions(InventedVan.conditions())
            .device(InventedVan.charger())
            .device(InventedVan.inverter())
            .requirement(wish("own.b"))
            .requirement(wish("own.a"));
    assertThat(forwards.build().fingerprint()).isEqualTo(backwards.build().fingerprint());
    MassLedger ledger = WeighedVan.ledger(WeighedVan.full());
    assertThat(ledger.added()).hasSizeGreaterThan(1);
    MassLedger turned =
        MassLedger.of(ledger.vehicle()).removing(ledger.removed()).adding(reversed(ledger.added()));
    assertThat(forwards.masses(ledger).loadCases(LoadCase.KERB, twin()).build().fingerprint())
        .isEqualTo(backwards.masses(turned).loadCases(twin(), LoadCase.KERB).build().fingerprint());
  }

  private static LoadCase twin() {
    return LoadCase.KERB.named("kerb again");
  }

  private static List<MassItem> reversed(List<MassItem> items) {
    List<MassItem> turned = new java.util.ArrayList<>(items);
    java.util.Collections.reverse(turned);
    return turned;
  }

  @Test
  void everyInputThatChangesShows() {
    Fingerprint first = InventedVan.conversion().build().fingerprint();
    List<Supplier<Conversion.Builder>> changes =
        List.of(
            () -> InventedVan.conversion().customer("bakery"),
            () -> InventedVan.conversion().vehicle("van"),
            () -> InventedVan.conversion().requirement(wish("own.a")),
            () -> InventedVan.conversion().device(InventedVan.charger()),
            () ->
                InventedVan.conversion()
                    .pack(
                        InventedVan.pack(
                            InventedVan.cell()
                                .resistance(ResistanceTable.constant(milliohms(1.0000001)))
                                .build())),
            () ->
                InventedVan.conversion()
                    .conditions(
                        OperatingConditions.builder()
                            .stateOfCharge(percentCharge(10), percentCharge(100))
                            .coldest(celsius(-10.5))
                            .peakDischargePower(kilowatts(10), seconds(10))
                            .regenerationCurrent(amperes(0))
                            .build()),
            () -> InventedVan.conversion().masses(WeighedVan.ledger(WeighedVan.full())),
            () ->
                InventedVan.conversion()
                    .masses(WeighedVan.ledger(WeighedVan.full()))
                    .loadCases(LoadCase.KERB, twin()));
    assertThat(changes.stream().map(change -> change.get().build().fingerprint()))
        .doesNotContain(first)
        .doesNotHaveDuplicates();
  }

  @Test
  void theUnitThatSomethingWasTypedInPlaysNoPart() {
    assertThat(CanonicalText.of(ohms(0.1))).isEqualTo(CanonicalText.of(milliohms(100)));
    assertThat(CanonicalText.of(ohms(0.1))).isNotEqualTo(CanonicalText.of(ohms(0.1000001)));
  }

  @Test
  void textsOfEverySortAreTold() {
    assertThat(CanonicalText.of(null)).isEqualTo("-");
    assertThat(CanonicalText.of(Optional.empty())).isEqualTo("-");
    assertThat(CanonicalText.of(Optional.of(3))).isEqualTo("3");
    assertThat(CanonicalText.of(-0.0)).isEqualTo(CanonicalText.of(0.0));
    assertThat(CanonicalText.of(0.1 + 0.2)).isEqualTo("0.3");
    assertThat(CanonicalText.of(Double.POSITIVE_INFINITY)).isEqualTo("Infinity");
    assertThat(CanonicalText.of("a\"b")).isEqualTo("\"a\\\"b\"");
    assertThat(CanonicalText.of(List.of("b", "a"))).isEqualTo("[\"b\",\"a\",]");
    assertThat(CanonicalText.of(Set.of("b", "a"))).isEqualTo("[\"a\", \"b\"]");
    assertThat(CanonicalText.of(Map.of("b", 1, "a", 2))).isEqualTo("[\"a\"=2, \"b\"=1]");
    assertThat(CanonicalText.of(new double[] {1})).isEqualTo("[1,]");
    Supplier<String> function = () -> "x";
    assertThat(CanonicalText.of(function)).isEqualTo("function");
    assertThat(CanonicalText.of(new Object())).isEqualTo("java.lang.Object");
    assertThat(CanonicalText.of(LoadCase.KERB)).isEqualTo("LoadCase{load=[];name=\"kerb\";}");
  }

  @Test
  void aValueWithinItselfEnds() {
    Ring ring = new Ring();
    ring.next = ring;
    assertThat(CanonicalText.of(ring)).isEqualTo("Ring{next=above;}");
  }

  private static final class Ring {
    @org.jspecify.annotations.Nullable Ring next;
  }

  @Test
  void theVersionIsOneOrSaysThatThereIsNone() {
    assertThat(LibraryVersion.current()).isNotBlank().doesNotContain("${");
    assertThat(LibraryVersion.parsed("${project.version}\n")).isEqualTo(LibraryVersion.UNBUILT);
    assertThat(LibraryVersion.parsed("")).isEqualTo(LibraryVersion.UNBUILT);
    assertThat(LibraryVersion.parsed(" 1.2.0\n")).isEqualTo("1.2.0");
  }

  @Test
  void theImprintStandsOnTheSheet() {
    Fingerprint print = Fingerprint.ofText("abc");
    assertThat(Imprint.of(print))
        .hasToString(
            "Calculated with Wattwright "
                + LibraryVersion.current()
                + ", fingerprint of the inputs ba78 16bf 8f01")
        .isEqualTo(Imprint.of(Fingerprint.ofText("abc")))
        .hasSameHashCodeAs(Imprint.of(Fingerprint.ofText("abc")))
        .isNotEqualTo(Imprint.withoutInputs());
    assertThat(Imprint.withoutInputs().inputs()).isEmpty();
    assertThat(Imprint.of(print).libraryVersion()).isEqualTo(LibraryVersion.current());
    CalculationSheet sheet = new CalculationSheet("van", "", List.of());
    assertThat(sheet.imprint()).isEqualTo(Imprint.withoutInputs());
    assertThat(MarkdownSheet.render(sheet.withInputs(print)))
        .contains("fingerprint of the inputs ba78 16bf 8f01.");
  }
}
