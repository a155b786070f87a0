package org.wattwright.examples;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wattwright.check.Check;
import org.wattwright.check.Outcome;
import org.wattwright.conversion.Circuits;
import org.wattwright.examples.job.JobFileException;
import org.wattwright.examples.job.JobFolder;
import org.wattwright.protection.DesignedCircuit;
import org.wattwright.units.Kind;

class CircuitPlanTest {
  private static final Circuits VAN = plan(DemonstrationFolder.PATH);

  @TempDir Path folder;

  private static Circuits plan(Path folder) {
    return Design.of(JobFolder.read(folder))
        .chosen()
        .orElseThrow()
        .conversion()
        .circuits()
        .orElseThrow();
  }

  private Circuits planWith(String file, String find, String replacement) throws IOException {
    DemonstrationFolder.copyTo(folder);
    Path path = folder.resolve(file);
    String text = Files.readString(path);
    assertThat(text).contains(find);
    Files.writeString(path, text.replace(find, replacement));
    return plan(folder);
  }

  private static DesignedCircuit designed(String name) {
    return VAN.design().circuit(name).orElseThrow();
  }

  @Test
  void everyCircuitHasPartsAndNothingFails() {
    assertThat(VAN.design().isComplete()).isTrue();
    assertThat(VAN.design().circuits()).hasSize(14);
    assertThat(VAN.checks())
        .extracting(Check::outcome)
        .doesNotContain(Outcome.FAIL, Outcome.NOT_CHECKED);
    assertThat(VAN.design().circuits())
        .allMatch(each -> each.cover().isComplete(), "no current left open");
  }

  /**
   * By hand: cells at 0 %, −5 °C 3.0406 V and 4.909 mΩ (between 5.890 at −10 °C and 3.927 at 0 °C),
   * aged 1.5 times. A string of six 4s2p modules: U = 72.97 V, R = 6 · (4 · 7.363 / 2 + 0.18) mΩ =
   * 89.4 mΩ. Two strings left, 20 V of arc: 52.97 V. Behind it 2 × 70 mm² over 5.2 m at 125 °C,
   * 0.272 mΩ/m · 1.413 · 5.2 m / 2 = 1.0 mΩ, and six lugs of 0.04 mΩ: 52.97 V / (44.7 + 1.0 + 0.24)
   * mΩ.
   */
  @Test
  void theLowestFaultOfTheTractionCircuitIsThatByHand() {
    double lowestA = Kind.CURRENT.siValueOf(designed("traction main").lowestFault().orElseThrow());
    assertThat(lowestA).isCloseTo(52.97 / 0.04594, within(0.005 * lowestA));
  }

  /**
   * By hand: a string is 6 · (4 · 0.55 mΩ / 2 + 0.18 mΩ) = 7.68 mΩ; 102 V is above what the cells
   * drive, 100.8 V: three strings 39.4 kA. The capacitors, 5.8 mF through 3 µH and 2 mΩ, add at
   * most 102 V · √(C/L) = 4.48 kA.
   */
  @Test
  void theHighestFaultIsThatByHand() {
    double highestA = Kind.CURRENT.siValueOf(designed("traction main").highestFault());
    assertThat(highestA).isBetween(100.8 / 0.00256, 100.8 / 0.00256 + 4480);
  }

  @Test
  void theMainContactorIsPrechargedAndOpensAboveItsOperatingCurrent() {
    DesignedCircuit main = designed("traction main");
    assertThat(main.precharge().orElseThrow().slowest().completes()).isTrue();
    assertThat(main.fuse()).isPresent();
    assertThat(main.clearingTime().map(Kind.TIME::siValueOf).orElseThrow())
        .isCloseTo(0.3 + 0.020, within(1e-9));
  }

  @Test
  void missingCatalogueDataIsNotCheckedAndNamed() throws IOException {
    DemonstrationFolder.copyTo(folder);
    Path path = folder.resolve("contactors.csv");
    String text = Files.readString(path);
    for (String peak : List.of(",9000,", ",16000,", ",28000,", ",32000,")) {
      text = text.replace(peak, ",,");
    }
    Files.writeString(path, text);
    assertThat(plan(folder).checks())
        .filteredOn(check -> check.outcome() == Outcome.NOT_CHECKED)
        .isNotEmpty()
        .allMatch(check -> check.code().startsWith("contactor."))
        .flatExtracting(Check::missing)
        .allMatch(missing -> missing.contains("peakWithstand"));
  }

  @Test
  void aDeviceWithoutABondOrBleedIsNotCheckedByName() throws IOException {
    planWith("isolation.csv", ",470,6,", ",470,,");
    Path path = folder.resolve("protection.csv");
    String text = Files.readString(path);
    Files.writeString(
        path,
        text.replace("bond between bays,", "#")
            .replace("bleed resistance,", "#")
            .replace("supply breaker attested by,", "#")
            .replace("residual-current device attested by,", "#"));
    assertThat(plan(folder).checks())
        .filteredOn(check -> check.outcome() == Outcome.NOT_CHECKED)
        .flatExtracting(Check::missing)
        .containsExactlyInAnyOrder(
            "bond to chassis of rear drive unit",
            "bond between bays",
            "bleed resistance",
            "inlet.residualCurrentType",
            "inlet.supplyBreaker");
  }

  @Test
  void aCircuitWithoutALengthIsNotCheckedByName() throws IOException {
    Circuits open = planWith("circuits.csv", "battery,42,,0.9,0.9,", "battery,42,,,,");
    assertThat(open.checks())
        .filteredOn(check -> check.outcome() == Outcome.NOT_CHECKED)
        .flatExtracting(Check::missing)
        .contains("Circuit.length of heater");
  }

  @Test
  void aForgottenCircuitIsAskedFor() throws IOException {
    Circuits short1 = planWith("circuits.csv", "\nAC inlet,", "\n#AC inlet,");
    assertThat(short1.checks())
        .filteredOn(check -> check.outcome() == Outcome.NOT_CHECKED)
        .extracting(Check::what)
        .containsExactly("AC inlet among the circuits");
  }

  @Test
  void aCatalogueThatServesNobodyFailsAndSaysWhy() throws IOException {
    Circuits none = planWith("fuses.csv", ",250,10,50000,", ",48,10,50000,");
    assertThat(none.design().blocked()).isPresent();
    assertThat(none.checks())
        .filteredOn(check -> check.code().equals("protection.parts"))
        .singleElement()
        .satisfies(check -> assertThat(check.outcome()).isEqualTo(Outcome.FAIL))
        .satisfies(check -> assertThat(check.note()).contains("fuse.voltage"));
  }

  @Test
  void anUnknownSupplyIsNamedWithItsLine() throws IOException {
    DemonstrationFolder.copyTo(folder);
    Path path = folder.resolve("circuits.csv");
    Files.writeString(
        path,
        Files.readString(path).replace("string 1,string,,other strings", "string 1,string,,grid"));
    assertThatThrownBy(() -> plan(folder))
        .isInstanceOf(JobFileException.class)
        .hasMessageStartingWith("circuits.csv line 3: no supply is named \"grid\"");
  }

  @Test
  void twoFaultsThroughTheChassisAreClearedByTheFusesInTheBays() {
    List<Check> loops =
        VAN.furtherChecks().stream()
            .filter(check -> check.code().equals("isolation.two-faults"))
            .toList();
    assertThat(loops).isNotEmpty().allMatch(check -> check.outcome() == Outcome.PASS);
  }
}
