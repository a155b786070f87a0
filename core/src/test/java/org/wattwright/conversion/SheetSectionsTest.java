package org.wattwright.conversion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.wattwright.units.Measures.amperes;
import static org.wattwright.units.Measures.celsius;
import static org.wattwright.units.Measures.kilowatts;
import static org.wattwright.units.Measures.millimetres;
import static org.wattwright.units.Measures.milliohms;
import static org.wattwright.units.Measures.percentCharge;
import static org.wattwright.units.Measures.seconds;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.wattwright.battery.BatteryModule;
import org.wattwright.battery.Cell;
import org.wattwright.battery.CellEstimates;
import org.wattwright.battery.Dimensions;
import org.wattwright.battery.Pack;
import org.wattwright.battery.SeriesString;
import org.wattwright.check.Check;
import org.wattwright.check.Outcome;
import org.wattwright.check.Party;
import org.wattwright.check.Source;
import org.wattwright.voltage.DeviceRole;
import org.wattwright.voltage.OperatingConditions;

class SheetSectionsTest {
  private static final Cell CELL = InventedVan.cell().build();

  private static Section section(Conversion conversion, String title) {
    return conversion.toSheet().sections().stream()
        .filter(section -> section.title().equals(title))
        .findFirst()
        .orElseThrow();
  }

  private static <B extends Block> B only(Section section, Class<B> kind) {
    List<B> found = section.blocks().stream().filter(kind::isInstance).map(kind::cast).toList();
    assertThat(found).hasSize(1);
    return found.get(0);
  }

  private static List<List<String>> rows(Conversion conversion, String title) {
    return only(section(conversion, title), DataTable.class).rows();
  }

  private static List<String> paragraphs(Section section) {
    return section.blocks().stream()
        .filter(Paragraph.class::isInstance)
        .map(block -> ((Paragraph) block).text())
        .toList();
  }

  @Test
  void sheetBeginsWithCautionsAndEndsWithOpenItems() {
    CalculationSheet sheet =
        InventedVan.conversion()
            .customer("island bakery")
            .vehicle("half-ton van")
            .build()
            .toSheet();
    assertThat(sheet.title()).isEqualTo("bakery van");
    assertThat(sheet.subtitle()).isEqualTo("island bakery – half-ton van");
    assertThat(sheet.sections())
        .extracting(Section::title)
        .startsWith("Cautions")
        .containsSubsequence("Cautions", "Pack", "Voltage windows", "Checks", "Open items")
        .endsWith("Open items");
  }

  @Test
  void subtitleIsTheOneThatIsStated() {
    assertThat(InventedVan.conversion().vehicle("half-ton van").build().toSheet().subtitle())
        .isEqualTo("half-ton van");
  }

  @Test
  void cautionsNameTheDangersAndTheirLimits() {
    Cautions cautions = only(SheetSections.cautions(), Cautions.class);
    assertThat(String.join("\n", cautions.items()))
        .contains("High voltage kills")
        .contains("60 V DC")
        .contains("brake")
        .contains("local codes")
        .contains("licensed engineer")
        .contains("replaces none")
        .contains("NOT CHECKED")
        .contains("estimate");
  }

  /** 32 cells of 100 A·h at 3.2 V on average: 10.24 kW·h. */
  @Test
  void packStandsWithItsNumbers() {
    Conversion van = InventedVan.conversion().build();
    assertThat(rows(van, "Pack"))
        .containsExactly(
            List.of("strings in parallel", van.pack().strings().get(0).toString(), ""),
            List.of("capacity", "100 A·h", "data sheet"),
            List.of("energy at rest voltage, full to empty, 25 °C", "10.24 kW·h", "data sheet"),
            List.of("voltage limits of the cells", "80 V … 116.8 V", "data sheet"),
            List.of("mass of the modules", "64 kg", "data sheet"),
            List.of("volume of the modules", "not known", "data sheet"));
  }

  @Test
  void everyParallelStringHasARowOfItsOwn() {
    BatteryModule module = InventedVan.module(CELL);
    SeriesString string = SeriesString.of(module, 8);
    Conversion van =
        InventedVan.conversion().pack(Pack.of(List.of(string, string, string))).build();
    assertThat(rows(van, "Pack").subList(0, 4))
        .containsExactly(
            List.of("strings in parallel", string.toString(), ""),
            List.of("", string.toString(), ""),
            List.of("", string.toString(), ""),
            List.of("capacity", "300 A·h", "data sheet"));
  }

  /** Eight modules of 100 mm × 200 mm × 250 mm, 5 L each. */
  @Test
  void volumeIsStatedWhereItIsKnown() {
    BatteryModule module =
        BatteryModule.of(CELL)
            .name("boxed module")
            .series(4)
            .dimensions(Dimensions.of(millimetres(100), millimetres(200), millimetres(250)))
            .build();
    Conversion van = InventedVan.conversion().pack(Pack.of(module, 8, 1)).build();
    assertThat(rows(van, "Pack")).contains(List.of("volume of the modules", "40 L", "data sheet"));
  }

  /** 32 cells in series: 3.65 V, 3.4 V, 3.22 V (mean of 10 % to 100 %) and 3.04 V (10 %) each. */
  @Test
  void windowsStateTheVoltagesOfThePack() {
    Conversion van =
        InventedVan.conversion()
            .conditions(
                OperatingConditions.builder()
                    .stateOfCharge(percentCharge(10), percentCharge(100))
                    .coldest(celsius(-10))
                    .peakDischargeCurrent(amperes(200), seconds(10))
                    .regenerationCurrent(amperes(50))
                    .build())
            .build();
    assertThat(rows(van, "Voltage windows"))
        .containsExactly(
            List.of("end of charge", "116.8 V"),
            List.of("full, under charge or regeneration", "116.8 V"),
            List.of("full, at rest", "108.8 V"),
            List.of("nominal", "103 V"),
            List.of("empty, at rest", "97.28 V"),
            // 200 A through 32 mΩ.
            List.of("empty, cold, at 200 A", "90.88 V"));
  }

  @Test
  void windowsShowConditionsBandAndWorking() {
    Conversion van = InventedVan.conversion().build();
    Section windows = section(van, "Voltage windows");
    assertThat(paragraphs(windows))
        .containsExactly(
            "Conditions: " + van.conditions() + ".", "All devices work from 10 % to 100 %.");
    assertThat(windows.parts()).isEmpty();
    Section appendix =
        van.toSheet().appendices().stream()
            .filter(each -> each.title().equals("Working"))
            .findFirst()
            .orElseThrow();
    assertThat(appendix.parts()).extracting(Section::title).startsWith("Voltage windows");
    Section working = appendix.parts().get(0).parts().get(0);
    assertThat(working.title()).isEqualTo("Working of the voltages");
    assertThat(only(working, Working.class).worksheet()).isEqualTo(van.windows().worksheet());
    assertThat(only(working, Working.class).worksheet().steps()).isNotEmpty();
  }

  @Test
  void windowsSayThatNoChargeSuitsAllDevices() {
    Conversion van =
        InventedVan.conversion()
            .device(InventedVan.device("heater", DeviceRole.HEATER, 200, 300))
            .build();
    assertThat(paragraphs(section(van, "Voltage windows")))
        .contains("There is no state of charge at which all devices work.");
  }

  @Test
  void checksShowAreasThenAllThatIsNoPassAndTheAppendixHasThePasses() {
    Conversion van =
        InventedVan.conversion()
            .device(InventedVan.device("heater", DeviceRole.HEATER, 60, 110))
            .build();
    Section checks = section(van, "Checks");
    List<Check> open = only(checks, CheckList.class).checks();
    assertThat(open).isNotEmpty().noneMatch(check -> check.outcome() == Outcome.PASS);
    assertThat(open).isEqualTo(van.review().subList(0, open.size()));
    assertThat(paragraphs(checks).get(0)).startsWith("17 checks: 1 FAIL, 4 NOT CHECKED, 12 PASS.");
    assertThat(rows(van, "Checks"))
        .extracting(row -> row.subList(0, 5))
        .containsExactly(
            List.of("pack", "–", "–", "–", "1"),
            List.of("voltage windows", "1", "–", "–", "11"),
            List.of("masses, axles and tyres", "–", "1", "–", "–"),
            List.of("charging and low voltage", "–", "2", "–", "–"),
            List.of("drive and range", "–", "1", "–", "–"));
    // 116.8 V of 110 V is 106.2 % of the limit.
    assertThat(rows(van, "Checks").get(1).subList(5, 8))
        .containsExactly(
            "full under charge against the upper end of heater", "106.2 %", "116.8 V > 110 V");
    Section passed = SheetSections.of(van).passedChecks();
    List<Check> passes =
        passed.parts().stream()
            .flatMap(part -> only(part, CheckList.class).checks().stream())
            .toList();
    assertThat(passes).hasSize(12).allMatch(check -> check.outcome() == Outcome.PASS);
    assertThat(van.review()).containsAll(passes);
    assertThat(van.toSheet().appendices()).endsWith(passed);
  }

  @Test
  void openItemsNameWhoWhatAndWhy() {
    Check open =
        Check.named("axle.rear", "rear axle load")
            .source(Source.requirement("plate"))
            .answeredBy(Party.CUSTOMER)
            .safety()
            .notChecked("vehicle.rearAxleLimit");
    Conversion van = InventedVan.conversion().requirement(open).build();
    List<DataTable> tables =
        section(van, "Open items").blocks().stream().map(DataTable.class::cast).toList();
    assertThat(tables)
        .extracting(DataTable::caption)
        .containsExactly("To be answered by the customer", "To be answered by the workshop");
    assertThat(tables.get(0).rows())
        .containsExactly(List.of("vehicle.rearAxleLimit", "missing", "yes", "axle.rear"));
    assertThat(tables.get(1).rows())
        .containsExactly(
            List.of("Conversion.lowVoltage", "missing", "yes", "charging.low-voltage"),
            List.of("Conversion.masses", "missing", "yes", "vehicle.masses"),
            List.of("Conversion.charging", "missing", "", "charging.plan"),
            List.of("Conversion.motion", "missing", "", "drive.motion"));
  }

  @Test
  void anEstimatedResistanceIsMarkedInChecksAndOpenItems() {
    Cell estimated =
        InventedVan.cell()
            .resistance(CellEstimates.resistanceOverTemperature(milliohms(1)))
            .build();
    Conversion van = InventedVan.conversion().pack(InventedVan.pack(estimated)).build();
    assertThat(rows(van, "Open items"))
        .filteredOn(row -> row.get(1).startsWith("estimated"))
        .isNotEmpty()
        .allSatisfy(row -> assertThat(row.get(0)).isEqualTo("resistance of plain module"))
        .anySatisfy(row -> assertThat(row.get(3)).contains("battery.peak-load"));
    assertThat(MarkdownSheet.render(van.toSheet()))
        .contains("estimated: resistance of plain module");
  }

  @Test
  void aPackTooWeakFailsAndUnstatedRegenerationIsAskedFor() {
    Conversion van =
        InventedVan.conversion()
            .conditions(
                OperatingConditions.builder()
                    .stateOfCharge(percentCharge(10), percentCharge(100))
                    .coldest(celsius(-10))
                    .peakDischargePower(kilowatts(500), seconds(10))
                    .build())
            .build();
    String sheet = MarkdownSheet.render(van.toSheet());
    assertThat(sheet).containsPattern("\\| FAIL +\\| peak load");
    assertThat(sheet).contains("conditions.regenerationCurrent");
  }

  @Test
  void sheetPrintsTheSameEveryTime() {
    String first = MarkdownSheet.render(InventedVan.conversion().build().toSheet());
    assertThat(MarkdownSheet.render(InventedVan.conversion().build().toSheet())).isEqualTo(first);
  }
}
