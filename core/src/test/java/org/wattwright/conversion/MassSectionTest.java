package org.wattwright.conversion;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.wattwright.check.Step;
import org.wattwright.vehicle.AxleLimits;
import org.wattwright.vehicle.LoadCase;
import org.wattwright.vehicle.WeighedVehicle;

class MassSectionTest {
  private static Section section(WeighedVehicle vehicle, AxleLimits limits, Chassis chassis) {
    Conversion van =
        InventedVan.conversion()
            .masses(WeighedVan.ledger(vehicle))
            .loadCases(LoadCase.KERB, WeighedVan.driver())
            .axleLimits(limits)
            .chassis(chassis)
            .build();
    return SheetSections.of(van).masses();
  }

  private static Section full() {
    return section(WeighedVan.full(), WeighedVan.limits(), WeighedVan.chassis());
  }

  private static DataTable table(Section section, String caption) {
    return section.blocks().stream()
        .filter(DataTable.class::isInstance)
        .map(DataTable.class::cast)
        .filter(table -> table.caption().startsWith(caption))
        .findFirst()
        .orElseThrow();
  }

  private static List<String> paragraphs(Section section) {
    return section.blocks().stream()
        .filter(Paragraph.class::isInstance)
        .map(block -> ((Paragraph) block).text())
        .toList();
  }

  @Test
  void showsLoadsBeforeAndAfterInEveryCase() {
    assertThat(table(full(), "Axle loads").rows())
        .startsWith(
            List.of("kerb", "before", "600 kg", "400 kg", "1000 kg", "60 %", "0.8 m", "0.5 m"),
            List.of("", "after", "450 kg", "600 kg", "1050 kg", "42.86 %", "1.143 m", "0.5 m"),
            List.of("", "change", "-150 kg", "200 kg", "50 kg", "-17.14 points", "", ""))
        .hasSize(6);
  }

  @Test
  void showsWheelLoadsWhereTheyAreDetermined() {
    assertThat(table(full(), "Wheel loads").rows())
        .startsWith(List.of("kerb", "225 kg", "225 kg", "300 kg", "300 kg"));
    assertThat(paragraphs(section(WeighedVan.axlesOnly(), WeighedVan.limits(), Chassis.unknown())))
        .anyMatch(text -> text.startsWith("Wheel loads are not determined; missing: Weighed"))
        .contains("Brake balance: the brake split or a height is not known.");
  }

  @Test
  void showsOneRowACheckAndOneColumnACase() {
    DataTable verdicts = table(full(), "Axles, tyres");
    assertThat(verdicts.columns())
        .extracting(DataTable.Column::heading)
        .containsExactly("Check", "Limit", "kerb", "with driver");
    assertThat(verdicts.rows())
        .contains(
            List.of(
                "front axle load against its plate", "≤ 700 kg", "450 kg, PASS", "487.5 kg, PASS"));
    // The limit is the factor before, which the driver changes.
    assertThat(verdicts.rows())
        .filteredOn(row -> row.get(0).startsWith("static stability factor"))
        .allSatisfy(
            row ->
                assertThat(row.subList(1, 3)).containsExactly("by load case", "1.2 ≥ 1.2, PASS"));
    assertThat(
            table(
                    section(
                        WeighedVan.axlesOnly(), AxleLimits.builder().build(), Chassis.unknown()),
                    "Axles, tyres")
                .rows())
        .contains(List.of("brake balance", "", "NOT CHECKED", "NOT CHECKED"));
  }

  @Test
  void showsTheBrakesBeforeAndAfter() {
    List<String> kerb = table(full(), "Brake balance").rows().get(0);
    assertThat(kerb.get(0)).isEqualTo("kerb");
    assertThat(kerb.get(1)).startsWith("rear locks first");
    assertThat(kerb.get(2)).startsWith("front locks first");
    assertThat(kerb.subList(3, 5)).containsExactly("0.4", "1.086");
  }

  @Test
  void listsPartsAndShowsTheWorking() {
    Section section = full();
    assertThat(section.parts())
        .extracting(Section::title)
        .containsExactly(
            "Parts removed and added",
            "Working of the masses",
            "Working of the masses before the conversion",
            "Working of the tolerances",
            "Working of the brakes",
            "Working of springs, stability, steering and tyres");
    DataTable parts = (DataTable) section.parts().get(0).blocks().get(0);
    assertThat(parts.rows())
        .extracting(row -> row.get(0) + " " + row.get(1))
        .containsExactly("out engine", "in front box", "in drive unit (on the axle)");
    List<Block> masses = section.parts().get(1).blocks();
    DataTable ledger = (DataTable) masses.get(1);
    assertThat(ledger.rows())
        .containsExactly(
            List.of("out", "engine", "-200 kg", "0 m", "-200 kg", "0 kg", "0", "-100"),
            List.of("in", "front box", "100 kg", "1 m", "50 kg", "50 kg", "0", "50"),
            List.of("in", "drive unit", "150 kg", "2 m", "0 kg", "150 kg", "0", "75"),
            List.of("", "sum", "50 kg", "", "-150 kg", "200 kg", "0", "25"));
    // The sums once, and what the driver adds; no part stands in it again.
    assertThat(masses.subList(2, masses.size())).hasSize(2).allMatch(Working.class::isInstance);
    assertThat(masses.subList(2, masses.size()))
        .flatExtracting(block -> ((Working) block).worksheet().steps())
        .noneMatch(step -> ((Step) step).meaning().contains("engine"));
  }

  @Test
  void theSheetSaysThatNothingWasWeighed() {
    Section section = SheetSections.of(InventedVan.conversion().build()).masses();
    assertThat(section.title()).isEqualTo("Masses and axles");
    assertThat(paragraphs(section))
        .containsExactly(
            "The vehicle was not weighed: nothing is said about axles, tyres and brakes.");
    assertThat(InventedVan.conversion().build().toSheet().sections()).contains(section);
  }
}
