package org.wattwright.examples.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.wattwright.units.Measures.kilograms;
import static org.wattwright.units.Measures.metres;
import static org.wattwright.units.Measures.newtonsPerMillimetre;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.wattwright.check.Basis;
import org.wattwright.examples.DemonstrationFolder;
import org.wattwright.vehicle.Axle;

class VehicleFilesTest {
  private static final VehicleInput VAN =
      JobFolder.read(DemonstrationFolder.PATH).weighed().orElseThrow();

  @TempDir Path folder;

  private VehicleInput readWith(String file, String find, String replacement) throws IOException {
    DemonstrationFolder.copyTo(folder);
    Path path = folder.resolve(file);
    String text = Files.readString(path);
    assertThat(text).contains(find);
    Files.writeString(path, text.replace(find, replacement));
    return JobFolder.read(folder).weighed().orElseThrow();
  }

  @Test
  void readsTheWeighingSheet() {
    assertThat(VAN.scales().wheelbase()).isEqualTo(metres(2.28));
    assertThat(VAN.scales().frontLeft()).isEqualTo(kilograms(281));
    assertThat(VAN.scales().frontRight()).isEqualTo(kilograms(274));
    assertThat(VAN.scales().rearLeft()).isEqualTo(kilograms(193));
    assertThat(VAN.scales().rearRight()).isEqualTo(kilograms(197));
    assertThat(VAN.scales().lift().orElseThrow().frontReading()).isEqualTo(kilograms(589));
    assertThat(VAN.plates().front()).contains(kilograms(760));
    assertThat(VAN.plates().rear()).contains(kilograms(900));
    assertThat(VAN.plates().gross()).contains(kilograms(1500));
    assertThat(VAN.brakes().parkingAxle()).contains(Axle.REAR);
    assertThat(VAN.on(Axle.FRONT).track()).contains(metres(1.24));
    assertThat(VAN.on(Axle.REAR).track()).contains(metres(1.22));
    assertThat(VAN.on(Axle.REAR).wheelRate().orElseThrow().value())
        .isEqualTo(newtonsPerMillimetre(32));
    assertThat(VAN.on(Axle.FRONT).tyre().orElseThrow()).hasToString("165 R13 83T");
    assertThat(VAN.brakes().rearShare().orElseThrow().basis()).isEqualTo(Basis.MEASURED);
    assertThat(VAN.statements()).extracting(Statement::what).contains("wheelbase", "gross mass");
  }

  @Test
  void readsPartsThatLeaveAndGoIn() {
    assertThat(VAN.parts(PartMassInput.Change.REMOVED)).hasSize(8);
    PartMassInput engine = VAN.parts(PartMassInput.Change.REMOVED).get(0);
    assertThat(engine.mass()).isEqualTo(kilograms(131));
    assertThat(engine.place().behind()).isEqualTo(metres(0.08));
    assertThat(engine.place().above()).contains(metres(0.58));
    assertThat(VAN.parts(PartMassInput.Change.REMOVED).get(7).carriedBy())
        .isEqualTo(PartMassInput.CarriedBy.AXLE);
  }

  @Test
  void anAddedDeviceHasTheMassOfItsDataSheet() {
    PartMassInput drive = VAN.parts(PartMassInput.Change.ADDED).get(0);
    assertThat(drive.name()).isEqualTo("rear drive unit");
    assertThat(drive.mass()).isEqualTo(kilograms(64));
  }

  @Test
  void readsBaysWithRoomAndLinks() {
    assertThat(VAN.bays())
        .extracting(BayInput::name)
        .containsExactly("engine bay", "under the floor", "behind the axle");
    BayInput engineBay = VAN.bays().get(0);
    assertThat(engineBay.roomFor("tall module B")).isEqualTo(10);
    assertThat(engineBay.roomFor("no such module")).isZero();
    assertThat(engineBay.links())
        .isEqualTo(Map.of("under the floor", metres(1.4), "behind the axle", metres(3.1)));
    assertThat(VAN.bays().get(2).links())
        .isEqualTo(Map.of("under the floor", metres(1.9), "engine bay", metres(3.1)));
  }

  @Test
  void aBayThatIsKeptFreeHasNoRoom() throws IOException {
    VehicleInput van = readWith("bays.csv", "engine bay,no", "engine bay,yes");
    assertThat(van.bays().get(0).keptFree()).isTrue();
    assertThat(van.bays().get(0).roomFor("tall module B")).isZero();
  }

  @Test
  void whatIsLeftOutIsEmpty() throws IOException {
    DemonstrationFolder.copyTo(folder);
    Path path = folder.resolve("vehicle.csv");
    List<String> required =
        Files.readAllLines(path).stream()
            .filter(line -> line.matches("(key|wheelbase|(front|rear) (left|right) wheel|scale).*"))
            .toList();
    Files.write(path, required);
    VehicleInput van = JobFolder.read(folder).weighed().orElseThrow();
    assertThat(van.scales().lift()).isEmpty();
    assertThat(van.plates().gross()).isEmpty();
    assertThat(van.brakes().rearShare()).isEmpty();
    assertThat(van.on(Axle.FRONT).tyre()).isEmpty();
    assertThat(van.shape()).isEmpty();
    assertThat(van.frontShare()).isEmpty();
  }

  @Test
  void aJobMayBeAboutThePackAlone() throws IOException {
    DemonstrationFolder.copyTo(folder);
    for (String file : VehicleFiles.FILES) {
      Files.delete(folder.resolve(file));
    }
    assertThat(JobFolder.read(folder).weighed()).isEmpty();
  }

  @Test
  void aHalfStatedVehicleIsAMistake() throws IOException {
    DemonstrationFolder.copyTo(folder);
    Files.delete(folder.resolve("seats.csv"));
    Files.delete(folder.resolve("bays.csv"));
    assertThatThrownBy(() -> JobFolder.read(folder))
        .isInstanceOf(JobFileException.class)
        .hasMessage(
            "job folder " + folder + " has files about the vehicle but lacks bays.csv, seats.csv");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "vehicle.csv|wheelbase,2.28|wheelbase,0|"
            + "vehicle.csv line 3, key \"wheelbase\": must be > 0 m, but was 0 m",
        "vehicle.csv|front left wheel,281|front left wheel,-281|must be ≥ 0 kg, but was -281 kg",
        "vehicle.csv|front left wheel,281|front left wheel,NaN|not a number: \"NaN\"",
        "vehicle.csv|wheelbase,|wheel base,|vehicle.csv: missing key \"wheelbase\"",
        "vehicle.csv|front overhang|front hang|unknown key \"front hang\"; known are",
        "vehicle.csv|rise of rear wheels|rise|missing key \"rise of rear wheels\"",
        "vehicle.csv|rear tyre,165 R13 83T|rear tyre,big and round|vehicle.csv line 20: Tyre",
        "vehicle.csv|brake force,23,%|brake force,123,%|must be > 0 % and ≤ 100 %, but was 123 %",
        "vehicle.csv|axle,rear,|axle,middle,|not one of front, rear: \"middle\"",
        "masses.csv|removed,131|removed,-131|"
            + "masses.csv line 3, column \"mass [kg]\": must be > 0 kg, but was -131 kg",
        "masses.csv|removed,131|removed,|masses.csv line 3, column \"mass [kg]\": is empty",
        "masses.csv|rear drive unit,added|front drive unit,added|"
            + "masses.csv line 11: has no mass, and no device of devices.csv is named",
        "masses.csv|rear drive unit,added,,|rear drive unit,added,64,|masses.csv line 11, column"
            + " \"mass [kg]\": must be empty: the mass of a device stands in devices.csv",
        "masses.csv|cabin heater,added,,|cabin warmer,added,3,|masses.csv has no added part"
            + " \"cabin heater\", which is a device of devices.csv: say where it sits",
        "masses.csv|gearbox,removed|gearbox,gone|not one of removed, added: \"gone\"",
        "masses.csv|0.00,0.58|0.00,-0.58|must be ≥ 0 m, but was -0.58 m",
        "masses.csv|fuel,removed|gearbox,removed|name \"gearbox\" stands twice, first in line 4",
        "bays.csv|engine bay,no|engine bay,perhaps|not one of yes, no: \"perhaps\"",
        "bays.csv|130,14|130,-14|must be ≥ 0 kg, but was -14 kg",
        "bay-room.csv|engine bay,tall module B,10|engine bay,tall module B,0|"
            + "must be from 1 to 10000, but was 0",
        "bay-room.csv|engine bay,tall module B|engine bay,flat module A|stands twice for this bay",
        "bay-room.csv|engine bay,tall module B|engine bay,tall module|"
            + "bay-room.csv line 4: no module is named \"tall module\"; modules are flat module A",
        "bay-room.csv|engine bay,tall module B|boot,tall module B|no bay is named \"boot\"",
        "bay-links.csv|engine bay,under the floor|engine bay,engine bay|"
            + "a bay needs no cable to itself: \"engine bay\"",
        "bay-links.csv|under the floor,behind|engine bay,behind|between these bays stands twice",
        "bay-links.csv|under the floor,behind|boot,behind|no bay is named \"boot\"",
        "seats.csv|seat,driver,1|seat,driver,2|must be from 1 to 1, but was 2",
        "seats.csv|seat,driver,1|seat,passengers,1|seats.csv has no row for the driver",
        "seats.csv|seat,passengers,1|seat,driver,1|"
            + "seats.csv line 4: second row for driver, first in line 3",
      })
  void saysWhereAndWhat(String file, String find, String replacement, String message) {
    assertThatThrownBy(() -> readWith(file, find, replacement))
        .isInstanceOf(JobFileException.class)
        .hasMessageContaining(message.strip())
        .hasMessageStartingWith(file);
  }
}
