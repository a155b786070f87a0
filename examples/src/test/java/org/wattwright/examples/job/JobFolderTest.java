package org.wattwright.examples.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.wattwright.units.Measures.ampereHours;
import static org.wattwright.units.Measures.celsius;
import static org.wattwright.units.Measures.kilowattHours;
import static org.wattwright.units.Measures.milliohms;
import static org.wattwright.units.Measures.percentCharge;
import static org.wattwright.units.Measures.volts;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.wattwright.check.Basis;
import org.wattwright.examples.DemonstrationFolder;
import org.wattwright.units.InvalidInputException;
import org.wattwright.voltage.DeviceRole;

class JobFolderTest {
  @TempDir Path folder;

  private JobInput readWith(String file, String find, String replacement) throws IOException {
    DemonstrationFolder.copyTo(folder);
    Path path = folder.resolve(file);
    String text = Files.readString(path);
    assertThat(text).contains(find);
    Files.writeString(path, text.replace(find, replacement));
    return JobFolder.read(folder);
  }

  @Test
  void readsTheDemonstration() {
    JobInput job = JobFolder.read(DemonstrationFolder.PATH);
    assertThat(job.requirement().energy().energy()).isEqualTo(kilowattHours(28));
    assertThat(job.requirement().peak().stateOfCharge()).isEqualTo(percentCharge(20));
    assertThat(job.requirement().objective()).isEqualTo(Objective.LOWEST_MASS);
    assertThat(job.modules())
        .extracting(ModuleInput::name)
        .containsExactly("flat module A", "tall module B", "salvaged module C");
    assertThat(job.devices())
        .extracting(DeviceInput::role)
        .containsExactly(
            DeviceRole.INVERTER, DeviceRole.CHARGER, DeviceRole.CONVERTER, DeviceRole.HEATER);
    assertThat(job.cells()).hasSize(3);
    assertThat(job.statements())
        .extracting(Statement::what)
        .contains("usable energy", "objective")
        .doesNotContain("title", "notes");
  }

  @Test
  void tellsAKeyWhereItsUnitBelongs() {
    assertThatThrownBy(() -> readWith("job.csv", "when full,100,%", "when full,100,"))
        .hasMessage(
            "job.csv line 9, key \"state of charge when full\": needs a unit of a share in column"
                + " \"unit\": one of %, 1");
  }

  @Test
  void rejectsAShareInVolts() {
    assertThatThrownBy(() -> readWith("job.csv", "when full,100,%", "when full,100,V"))
        .hasMessageEndingWith("not a unit of a share: \"V\"; one of %, 1");
  }

  @Test
  void rejectsAnEfficiencyThatIsNoPerCent() {
    assertThatThrownBy(() -> readWith("devices.csv", "98,91,64", "98,0.91,64"))
        .hasMessage(
            "devices.csv line 3, column \"efficiency [%]\": must be from 10 % to 100 %, but was"
                + " 0.91 %");
  }

  @Test
  void bringsTheTablesOfEachCellTogether() {
    CellInput cell = JobFolder.read(DemonstrationFolder.PATH).cells().get(0);
    StateGrid<?> openCircuit = cell.voltages().openCircuit();
    assertThat(openCircuit.temperatures()).isEqualTo(List.of(celsius(0), celsius(25)));
    assertThat(openCircuit.rows().get(12).stateOfCharge()).isEqualTo(percentCharge(100));
    assertThat(openCircuit.rows().get(12).values().get(1)).isEqualTo(volts(3.45));
    StateGrid<?> resistance = cell.resistances().discharge().orElseThrow();
    assertThat(resistance.temperatures()).hasSize(5);
    assertThat(resistance.rows().get(3).values().get(3)).isEqualTo(milliohms(0.75));
    assertThat(cell.charge().byTemperature()).hasSize(5);
    assertThat(cell.discharge().byTemperature()).isEmpty();
  }

  @Test
  void theSalvagedCellIsMeasuredInCapacityAndEstimatedInResistance() {
    CellInput cell = JobFolder.read(DemonstrationFolder.PATH).cells().get(2);
    assertThat(cell.capacity().basis()).isEqualTo(Basis.MEASURED);
    assertThat(cell.capacity().present()).isEqualTo(ampereHours(97));
    assertThat(cell.capacity().rated()).contains(ampereHours(120));
    assertThat(cell.capacity().yearsInService()).isEqualTo(7);
    assertThat(cell.resistances().basis()).isEqualTo(Basis.ESTIMATED);
    assertThat(cell.resistances().discharge()).isEmpty();
    assertThat(cell.basis()).isEqualTo(Basis.DATA_SHEET);
  }

  @Test
  void aPartRemembersItsLine() {
    ModuleInput module = JobFolder.read(DemonstrationFolder.PATH).modules().get(1);
    assertThat(module.origin()).hasToString("modules.csv line 4");
    assertThatThrownBy(
            () ->
                module
                    .origin()
                    .locate(
                        () -> {
                          throw InvalidInputException.of("Cell.mass", "> 0 kg", "-1 kg");
                        }))
        .isInstanceOf(JobFileException.class)
        .hasMessage("modules.csv line 4: Cell.mass must be > 0 kg, but was -1 kg");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "job.csv|usable energy,28,kWh|usable energy,-28,kWh|"
            + "job.csv line 7, key \"usable energy\": must be > 0 kWh, but was -28 kWh",
        "job.csv|usable energy,28,kWh|usable energy,28,kg|"
            + "job.csv line 7, key \"usable energy\": not a unit of energy: \"kg\"",
        "job.csv|usable energy,28,kWh|usable energy,NaN,kWh|"
            + "job.csv line 7, key \"usable energy\": not a number: \"NaN\"",
        "job.csv|usable energy,28|useable energy,28|job.csv: missing key \"usable energy\"",
        "job.csv|peak power,48|usable energy,48|"
            + "job.csv line 12: key \"usable energy\" stands twice, first in line 7",
        "job.csv|notes,|remarks,|job.csv line 6: unknown key \"remarks\"; known are coldest",
        "job.csv|when full,100|when full,5|"
            + "must be above the state of charge when empty, but was 5 %",
        "job.csv|hottest temperature,40|hottest temperature,-40|"
            + "must be above the coldest -5 °C, but was -40 °C",
        "job.csv|lowest mass|prettiest|"
            + "not one of lowest mass, most usable energy, highest peak power",
        "cells.csv|105,LFP|105,LPF|cells.csv line 3, column \"chemistry\": not one of LFP, NMC",
        "cells.csv|2.5,3.65|3.65,2.5|"
            + "cells.csv line 3, column \"maximum voltage [V]\": must be above the minimum voltage"
            + " 3.65 V, but was 2.5 V",
        "cells.csv|-20,55,0,50|-20,-55,0,50|must be above the coldest -20 °C, but was -55 °C",
        "cells.csv|97,120,7|130,120,7|must be ≤ rated capacity 120 A·h, but was 130 A·h",
        "cells.csv|105,315,30|105,315,|pulse discharge current and duration belong together",
        "cells.csv|pouch cell 60,NMC|plate cell 105,NMC|"
            + "cells.csv line 4: name \"plate cell 105\" stands twice, first in line 3",
        "ocv.csv|plate cell 105,100,25,3.4500||"
            + "ocv.csv: cell \"plate cell 105\" lacks a value at 100 % and 25 °C",
        "ocv.csv|plate cell 105,95,25|plate cell 105,100,25|"
            + "cell \"plate cell 105\" at 100 % and 25 °C stands twice, first in line",
        "resistance.csv|pouch cell 60,charge|pouch cell 61,charge|"
            + "no cell is named \"pouch cell 61\"; cells are plate cell 105, pouch cell 60",
        "resistance.csv|direction|directoin|missing column \"direction\"",
        "charge-current.csv|105,0,10|105,0,-10|must be ≥ 0 A, but was -10 A",
        "modules.csv|tall module B,pouch cell 60|tall module B,pouch cell|"
            + "modules.csv line 4: no cell is named \"pouch cell\"",
        "modules.csv|mass [kg]|mass [km]|"
            + "modules.csv line 2, column \"mass [km]\": not a unit of mass: \"km\"",
        "modules.csv|,4,1,0.20|,4.5,1,0.20|"
            + "modules.csv line 3, column \"series\": not a whole number: \"4.5\"",
        "devices.csv|135,54,126|135,126,54|"
            + "devices.csv line 3, column \"operating maximum [V]\": must be ≥ operating minimum"
            + " 126 V, but was 54 V",
        "devices.csv|135,54,126|120,54,126|must be ≥ operating maximum 126 V, but was 120 V",
        "devices.csv|66,120,60|66,127,60|must be ≤ operating maximum 126 V, but was 127 V",
        "devices.csv|66,120,60|50,120,60|must be ≥ operating minimum 54 V, but was 50 V",
        "devices.csv|inverter,135|propeller,135|not one of inverter, charger",
      })
  void saysWhereAndWhat(String file, String find, String replacement, String message) {
    String with = replacement == null ? "" : replacement;
    assertThatThrownBy(() -> readWith(file, find, with))
        .isInstanceOf(JobFileException.class)
        .hasMessageContaining(message.strip())
        .hasMessageStartingWith(file);
  }

  @Test
  void aMisspeltCellInATableShowsBothSpellings() {
    assertThatThrownBy(() -> readWith("ocv.csv", "plate cell 105", "plate cell 1O5"))
        .isInstanceOf(JobFileException.class)
        .hasMessage(
            "cells.csv line 3: ocv.csv has no row for cell \"plate cell 105\","
                + " only for plate cell 1O5, pouch cell 60, salvaged cell 120");
  }

  @Test
  void listsEveryMissingFileAtOnce() throws IOException {
    DemonstrationFolder.copyTo(folder);
    Files.delete(folder.resolve("ocv.csv"));
    Files.delete(folder.resolve("devices.csv"));
    assertThatThrownBy(() -> JobFolder.read(folder))
        .isInstanceOf(JobFileException.class)
        .hasMessage("job folder " + folder + " lacks ocv.csv, devices.csv");
  }

  @Test
  void rejectsAnEmptyFolderAMissingOneAndAFile() throws IOException {
    assertThatThrownBy(() -> JobFolder.read(folder))
        .hasMessageStartingWith("job folder " + folder + " is empty; expected job.csv, cells.csv");
    Path missing = folder.resolve("nowhere");
    assertThatThrownBy(() -> JobFolder.read(missing))
        .hasMessage("job folder " + missing + " does not exist");
    Path file = Files.createFile(folder.resolve("file"));
    assertThatThrownBy(() -> JobFolder.read(file)).hasMessage(file + " is not a folder");
  }

  @Test
  void leavesOtherFilesAlone() throws IOException {
    DemonstrationFolder.copyTo(folder);
    Files.writeString(folder.resolve("notes.csv"), "no, \"header");
    assertThat(JobFolder.read(folder).modules()).hasSize(3);
  }
}
