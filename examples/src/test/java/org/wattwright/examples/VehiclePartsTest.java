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
import org.wattwright.check.Basis;
import org.wattwright.check.Check;
import org.wattwright.check.Outcome;
import org.wattwright.examples.job.JobFileException;
import org.wattwright.examples.job.JobFolder;
import org.wattwright.examples.job.PartMassInput;
import org.wattwright.examples.job.VehicleInput;
import org.wattwright.units.Kind;
import org.wattwright.vehicle.LoadCase;
import org.wattwright.vehicle.LoadState;
import org.wattwright.vehicle.MassItem;
import org.wattwright.vehicle.MassLedger;
import org.wattwright.vehicle.WeighedVehicle;

class VehiclePartsTest {
  private static final VehicleInput VAN =
      JobFolder.read(DemonstrationFolder.PATH).weighed().orElseThrow();

  @TempDir Path folder;

  private VehicleInput vanWith(String file, String find, String replacement) throws IOException {
    DemonstrationFolder.copyTo(folder);
    Path path = folder.resolve(file);
    String text = Files.readString(path);
    assertThat(text).contains(find);
    Files.writeString(path, text.replace(find, replacement));
    return JobFolder.read(folder).weighed().orElseThrow();
  }

  /** By hand: sin θ = 0.6/2.28, h = 0.285 m + 2.28 m · 34 kg/(945 kg · tan θ) = 0.5857 m. */
  @Test
  void theHeightComesFromTheRaisedWeighing() {
    WeighedVehicle van = VehicleParts.weighed(VAN);
    assertThat(van.axles()).hasToString("front 555 kg, rear 390 kg");
    assertThat(Kind.LENGTH.siValueOf(van.centreOfGravityHeight().orElseThrow()))
        .isCloseTo(0.285 + 2.28 * 34 / (945 * Math.tan(Math.asin(0.6 / 2.28))), within(1e-9));
    assertThat(van.heightBasis()).isEqualTo(Basis.MEASURED);
  }

  /** By hand, each part by the lever rule: 178.22 kg off the front axle, 67.78 kg off the rear. */
  @Test
  void thePartsThatLeaveLightenTheAxlesAsTheLeverRuleSays() {
    MassLedger ledger =
        MassLedger.of(VehicleParts.weighed(VAN))
            .removing(VehicleParts.items(VAN, PartMassInput.Change.REMOVED));
    LoadState kerb = ledger.after(LoadCase.KERB);
    assertThat(Kind.MASS.siValueOf(kerb.change().front())).isCloseTo(-178.22, within(0.01));
    assertThat(Kind.MASS.siValueOf(kerb.change().rear())).isCloseTo(-67.78, within(0.01));
    assertThat(Kind.MASS.siValueOf(kerb.total())).isCloseTo(699, within(1e-9));
  }

  @Test
  void theChosenVanIsReviewedInFourLoadCases() {
    Design.Chosen chosen =
        Design.of(JobFolder.read(DemonstrationFolder.PATH)).chosen().orElseThrow();
    VehicleDesign vehicle = chosen.vehicle().orElseThrow();
    assertThat(vehicle.loadCases())
        .extracting(LoadCase::name)
        .containsExactly("kerb", "with driver", "all seats taken", "fully laden");
    // Modules and enclosures are all there.
    double packKg =
        vehicle.packItems().stream().map(MassItem::mass).mapToDouble(Kind.MASS::siValueOf).sum();
    double boxesKg =
        vehicle.placement().bays().stream()
            .mapToDouble(filled -> Kind.MASS.siValueOf(filled.bay().enclosureTare()))
            .sum();
    assertThat(packKg)
        .isCloseTo(Kind.MASS.siValueOf(chosen.conversion().pack().mass()) + boxesKg, within(1e-9));
    List<LoadState> states = chosen.conversion().masses().orElseThrow().states();
    assertThat(Kind.MASS.siValueOf(states.get(3).total())).isCloseTo(1500, within(1e-6));
    assertThat(chosen.conversion().review())
        .filteredOn(check -> check.code().startsWith("axle."))
        .extracting(Check::outcome)
        .doesNotContain(Outcome.FAIL, Outcome.NOT_CHECKED);
  }

  @Test
  void moreRemovedThanWeighedIsOneErrorWithItsPlace() throws IOException {
    VehicleInput van = vanWith("masses.csv", "removed,131", "removed,1310");
    assertThatThrownBy(() -> VehicleDesign.withoutPack(van))
        .isInstanceOf(JobFileException.class)
        .hasMessageStartingWith("masses.csv line 10: MassLedger.removed must be < 945 kg");
  }

  @Test
  void aReadingOfNothingOnAnAxleIsOneErrorWithItsPlace() throws IOException {
    VehicleInput van =
        vanWith("vehicle.csv", "front axle with rear raised,589", "front axle with rear raised,5");
    assertThatThrownBy(() -> VehicleParts.weighed(van))
        .isInstanceOf(JobFileException.class)
        .hasMessageStartingWith("vehicle.csv line 11: AxleLift.reading must be such that");
  }

  @Test
  void whatIsNotStatedIsLeftOutOfLimitsAndChassis() throws IOException {
    VehicleInput van = vanWith("vehicle.csv", "parking brake force,3700,N,measured", "#");
    assertThat(VehicleParts.chassis(van).toString()).contains("parking brake");
    VehicleInput noPlate = vanWithout("gross mass");
    assertThat(VehicleParts.limits(noPlate).grossMass()).isEmpty();
  }

  private VehicleInput vanWithout(String key) throws IOException {
    Path path = folder.resolve("vehicle.csv");
    Files.write(
        path,
        Files.readAllLines(path).stream().filter(line -> !line.startsWith(key + ",")).toList());
    return JobFolder.read(folder).weighed().orElseThrow();
  }
}
