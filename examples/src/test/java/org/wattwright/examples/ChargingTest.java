package org.wattwright.examples;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.wattwright.charging.AcLimit;
import org.wattwright.charging.ChargeResult;
import org.wattwright.charging.Charger;
import org.wattwright.check.Checks;
import org.wattwright.check.Outcome;
import org.wattwright.conversion.Conversion;
import org.wattwright.conversion.DataTable;
import org.wattwright.conversion.Drawing;
import org.wattwright.conversion.LowVoltage;
import org.wattwright.conversion.PlannedCharge;
import org.wattwright.conversion.Section;
import org.wattwright.examples.job.JobFileException;
import org.wattwright.units.WorkshopUnits;

class ChargingTest {
  @TempDir Path folder;

  @BeforeEach
  void copyTheDemonstration() throws IOException {
    DemonstrationFolder.copyTo(folder);
  }

  private void replace(String file, String find, String replacement) throws IOException {
    String text = Files.readString(folder.resolve(file));
    assertThat(text).contains(find);
    Files.writeString(folder.resolve(file), text.replace(find, replacement));
  }

  private Conversion conversion() {
    return JobConversion.of(folder).orElseThrow();
  }

  private static double hours(ChargeResult result) {
    return WorkshopUnits.HOUR.valueOf(result.time());
  }

  /**
   * The charger holds its output while current from the mains limits it: 230 V · 20 A · 0.93 =
   * 4.278 kW from the post, 230 V · 10 A · 0.93 = 2.139 kW from the box. Time = energy into the
   * pack over that.
   */
  @Test
  void timesFromThreeSuppliesByHand() {
    List<PlannedCharge> charges = conversion().charging().orElseThrow().charges();
    assertThat(charges)
        .extracting(PlannedCharge::label)
        .containsExactly("bakery wall box", "harbour kerb", "portable box at a socket");
    assertThat(charges)
        .extracting(charge -> charge.current().orElseThrow().governing())
        .containsExactly(AcLimit.PILOT, AcLimit.CABLE, AcLimit.PILOT);
    double[] powersKw = {4.278, 2.139};
    for (int i = 0; i < powersKw.length; i++) {
      ChargeResult result = charges.get(i + 1).result();
      double energyKwh = WorkshopUnits.KILOWATT_HOUR.valueOf(result.packEnergy());
      assertThat(hours(result)).isCloseTo(energyKwh / powersKw[i], within(1e-3));
    }
  }

  /** Common practice: a 6.6 kW charger refills a pack of about 30 kW·h in around six hours. */
  @Test
  void theWallBoxRefillsThePackOvernight() {
    ChargeResult night = conversion().charging().orElseThrow().charges().get(0).result();
    assertThat(WorkshopUnits.KILOWATT_HOUR.valueOf(night.storedEnergy())).isBetween(27.0, 33.0);
    assertThat(hours(night)).isBetween(4.5, 7.0);
  }

  @Test
  void aNightTooShortFails() throws IOException {
    replace("charging-points.csv", "32,32,,8,", "32,32,,4,");
    assertThat(Checks.withCode(conversion().review(), "charging.time"))
        .singleElement()
        .satisfies(check -> assertThat(check.outcome()).isEqualTo(Outcome.FAIL))
        .satisfies(check -> assertThat(check.what()).endsWith(", bakery wall box"));
  }

  @Test
  void theChargerOfThePlanIsTheDeviceOfTheWindows() {
    assertThat(conversion().devices().stream().filter(Charger.class::isInstance)).hasSize(1);
  }

  @Test
  void aChargerOfUnknownInputCurrentIsNotCharged() throws IOException {
    replace("devices.csv", "charger\",32", "charger\",");
    assertThat(Checks.withCode(conversion().review(), "charging.plan")).hasSize(1);
  }

  @Test
  void withoutPlacesNothingIsClaimed() throws IOException {
    Files.delete(folder.resolve("charging-points.csv"));
    Conversion van = conversion();
    assertThat(Checks.withCode(van.review(), "charging.plan")).hasSize(1);
    assertThat(ChargingSection.of(van).blocks()).noneMatch(Drawing.class::isInstance);
  }

  @Test
  void theSectionHasTablesAndTwoDrawings() {
    Section section = ChargingSection.of(conversion());
    assertThat(section.blocks().stream().filter(DataTable.class::isInstance)).hasSize(2);
    assertThat(section.blocks().stream().filter(Drawing.class::isInstance).map(Drawing.class::cast))
        .hasSize(2)
        .allMatch(drawing -> drawing.toString().contains("time"));
  }

  /**
   * The converter takes 1.5 kW from the bus at 90 %: 1.35 kW for the loads. Essential: 8.5 + 2 +
   * 0.2 · 3.75 + 0.1 · 3.5 + 0.5 · 4.5 + 2.4 + 3 = 19.25 A; of 45 A·h · 60 % = 27 A·h that is 84.2
   * min; parked at 15 mA: 1800 h = 75 d.
   */
  @Test
  void lowVoltageByHand() {
    LowVoltage side = conversion().lowVoltage().orElseThrow();
    assertThat(WorkshopUnits.WATT.valueOf(side.converter().maximumOutputPower()))
        .isCloseTo(1350, within(1e-6));
    assertThat(WorkshopUnits.AMPERE.valueOf(side.budget().essentialCurrent()))
        .isCloseTo(19.25, within(1e-9));
    assertThat(WorkshopUnits.MINUTE.valueOf(side.budget().holdUp().orElseThrow()))
        .isCloseTo(27 / 19.25 * 60, within(1e-6));
    assertThat(WorkshopUnits.DAY.valueOf(side.budget().parkedUntilFlat().orElseThrow()))
        .isCloseTo(75, within(1e-6));
  }

  @Test
  void halfOfTheLowVoltageIsAMistakeAndNoneIsNotChecked() throws IOException {
    Files.delete(folder.resolve("low-voltage.csv"));
    assertThatThrownBy(this::conversion).hasMessageEndingWith("but lacks low-voltage.csv");
    Files.delete(folder.resolve("low-voltage-loads.csv"));
    assertThat(Checks.withCode(conversion().review(), "charging.low-voltage")).hasSize(1);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "230,3,32,32,680|230,2,32,32,680|column \"phases\": must be 1 or 3, but was 2",
        "230,1,32,32,|230,1,32,3,|must be a current that a pilot can offer, but was 3 A",
        "230,1,32,32,|0,1,32,32,|line 3, column \"voltage [V]\"",
        "harbour kerb|bakery wall box|name \"bakery wall box\" stands twice",
        "32,32,,8,|32,32,,-8,|column \"time allowed [h]\"",
      })
  void badPlacesAreNamed(String find, String replacement, String message) throws IOException {
    replace("charging-points.csv", find, replacement);
    assertThatThrownBy(this::conversion)
        .isInstanceOf(JobFileException.class)
        .hasMessageContaining("charging-points.csv line ")
        .hasMessageContaining(message);
  }
}
