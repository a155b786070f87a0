package org.wattwright.examples.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.wattwright.units.Measures.amperes;
import static org.wattwright.units.Measures.kilometres;
import static org.wattwright.units.Measures.kilometresPerHour;
import static org.wattwright.units.Measures.metres;
import static org.wattwright.units.Measures.newtonMetres;
import static org.wattwright.units.Measures.percentCharge;
import static org.wattwright.units.Measures.revolutionsPerMinute;
import static org.wattwright.units.Measures.squareMetres;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.wattwright.battery.Ageing;
import org.wattwright.check.Basis;
import org.wattwright.examples.DemonstrationFolder;

class DriveFilesTest {
  private static final DriveInput VAN =
      JobFolder.read(DemonstrationFolder.PATH).drive().orElseThrow();

  @TempDir Path folder;

  @Test
  void readsDriveUnitAndDriveline() {
    assertThat(VAN.motor().device()).isEqualTo("rear drive unit");
    assertThat(VAN.motor().curve()).hasSize(9);
    assertThat(VAN.motor().curve().get(5).speed()).isEqualTo(revolutionsPerMinute(4000));
    assertThat(VAN.motor().curve().get(5).peak()).isEqualTo(newtonMetres(126));
    assertThat(VAN.motor().curve().get(5).continuous()).isEqualTo(newtonMetres(65));
    assertThat(VAN.motor().highestSpeed()).isEqualTo(revolutionsPerMinute(5996));
    assertThat(VAN.motor().efficiency()).isEqualTo(0.87);
    assertThat(VAN.motor().magnet().orElseThrow().polePairs()).isEqualTo(4);
    assertThat(VAN.line().ratio()).isEqualTo(8.05);
    assertThat(VAN.line().circumference().value()).isEqualTo(metres(1.79));
    assertThat(VAN.line().circumference().basis()).isEqualTo(Basis.MEASURED);
  }

  @Test
  void readsRoadUseAndWishes() {
    assertThat(VAN.road().rolling().value()).isEqualTo(0.013);
    assertThat(VAN.road().dragArea()).isEqualTo(squareMetres(1.25));
    assertThat(VAN.use().reserve()).isEqualTo(percentCharge(10));
    assertThat(VAN.use().aged().value()).isEqualTo(Ageing.of(0.8, 2));
    assertThat(VAN.use().aged().basis()).isEqualTo(Basis.ESTIMATED);
    assertThat(VAN.wanted().hold().orElseThrow().speed()).isEqualTo(kilometresPerHour(50));
    assertThat(VAN.wanted().rangeWinter().orElseThrow().value()).isEqualTo(kilometres(90));
    assertThat(VAN.currentLimits()).hasSize(6).contains(amperes(250));
    assertThat(VAN.statements()).extracting(Statement::what).contains("drag area");
  }

  @Test
  void aJobMayLeaveTheDriveOut() throws IOException {
    DemonstrationFolder.copyTo(folder);
    for (String file : DriveFiles.FILES) {
      Files.delete(folder.resolve(file));
    }
    assertThat(JobFolder.read(folder).drive()).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"drive.csv", "motor.csv", "current-limits.csv"})
  void aHalfStatedDriveIsAMistake(String file) throws IOException {
    DemonstrationFolder.copyTo(folder);
    Files.delete(folder.resolve(file));
    assertThatThrownBy(() -> JobFolder.read(folder))
        .isInstanceOf(JobFileException.class)
        .hasMessageEndingWith("has files about the drive but lacks " + file);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "drive.csv | drag area,1.25 | drag area,-1 | must be > 0",
        "drive.csv | drag area,1.25,m² | drag area,1.25,kg | drive.csv line",
        "drive.csv | when aged,2, | when aged,0.5, | Ageing.resistanceFactor",
        "drive.csv | drive ratio | driving ratio | drive ratio",
        "drive.csv | hold grade | held grade | hold grade",
        "motor.csv | 1000,150 | 1000,-150 | motor.csv line",
        "current-limits.csv | 120 | 0 | current-limits.csv line"
      })
  void badInputNamesItsPlace(String file, String find, String replacement, String message)
      throws IOException {
    DemonstrationFolder.copyTo(folder);
    Path path = folder.resolve(file);
    String text = Files.readString(path);
    assertThat(text).contains(find);
    Files.writeString(path, text.replace(find, replacement));
    assertThatThrownBy(() -> JobFolder.read(folder))
        .isInstanceOf(JobFileException.class)
        .hasMessageContaining(message);
  }
}
