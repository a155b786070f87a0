package org.wattwright.examples.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.wattwright.units.Measures.amperes;
import static org.wattwright.units.Measures.celsius;
import static org.wattwright.units.Measures.kiloamperes;
import static org.wattwright.units.Measures.metres;
import static org.wattwright.units.Measures.millimetres;
import static org.wattwright.units.Measures.milliohms;
import static org.wattwright.units.Measures.ohms;
import static org.wattwright.units.Measures.seconds;
import static org.wattwright.units.Measures.volts;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.wattwright.conductor.Cable;
import org.wattwright.examples.DemonstrationFolder;
import org.wattwright.protection.BreakingRange;
import org.wattwright.protection.CircuitRole;
import org.wattwright.protection.Contactor;
import org.wattwright.protection.Fuse;

class CircuitFilesTest {
  private static final CircuitsInput JOB =
      JobFolder.read(DemonstrationFolder.PATH).circuits().orElseThrow();

  @TempDir Path folder;

  private CircuitsInput readWith(String file, String find, String replacement) throws IOException {
    DemonstrationFolder.copyTo(folder);
    Path path = folder.resolve(file);
    String text = Files.readString(path);
    assertThat(text).contains(find);
    Files.writeString(path, text.replace(find, replacement));
    return JobFolder.read(folder).circuits().orElseThrow();
  }

  private static CircuitInput circuit(String name) {
    return JOB.circuits().stream().filter(c -> c.name().equals(name)).findFirst().orElseThrow();
  }

  @Test
  void readsTheTractionCircuit() {
    CircuitInput main = circuit("traction main");
    assertThat(main.role()).isEqualTo(CircuitRole.TRACTION_MAIN);
    assertThat(main.load().continuous()).contains(amperes(340));
    assertThat(main.load().highest()).contains(amperes(720));
    assertThat(main.load().duty())
        .containsExactly(
            new CircuitInput.DutyStep(seconds(10), amperes(720)),
            new CircuitInput.DutyStep(seconds(50), amperes(380)),
            new CircuitInput.DutyStep(seconds(60), amperes(150)));
    assertThat(main.route().out()).contains(metres(2.6));
    assertThat(main.route().installation().orElseThrow().air()).isEqualTo(celsius(50));
    assertThat(main.route().joints()).isEqualTo(6);
    assertThat(main.guard().fused()).isTrue();
    assertThat(main.guard().switching()).isEqualTo(CircuitInput.Switching.PRECHARGED);
    assertThat(main.guard().trip().orElseThrow().current()).isEqualTo(amperes(720));
    assertThat(main.guard().disconnect()).isEmpty();
  }

  @Test
  void readsABranchAndALink() {
    assertThat(circuit("charger").feed().from()).contains("traction main");
    assertThat(circuit("charger").load().fedBackwards()).isTrue();
    assertThat(circuit("link of string 3").route().back()).contains(metres(0));
    assertThat(circuit("link of string 3").guard().disconnect()).contains(volts(150));
    assertThat(circuit("motor phases").feed().limit()).contains(amperes(780));
    assertThat(circuit("motor phases").guard().fused()).isFalse();
  }

  @Test
  void readsTheParts() {
    Cable cable = JOB.catalogue().cables().get(9);
    assertThat(cable.size().name()).isEqualTo("70 mm²");
    assertThat(cable.outerDiameter()).contains(millimetres(15.2));
    assertThat(cable.temperatureLimit()).isEqualTo(celsius(125));
    Fuse fuse =
        JOB.catalogue().fuses().stream()
            .filter(f -> f.name().equals("fast link 500"))
            .findFirst()
            .orElseThrow();
    assertThat(fuse.directVoltage()).contains(volts(250));
    assertThat(fuse.breakingCapacity()).contains(kiloamperes(50));
    assertThat(fuse.breakingRange()).contains(BreakingRange.FULL);
    assertThat(fuse.preArcingCurve().orElseThrow().timeAt(amperes(1000))).contains(seconds(120));
    Contactor contactor = JOB.catalogue().contactors().get(2);
    assertThat(contactor.name()).isEqualTo("C400");
    assertThat(contactor.makeLimit()).contains(amperes(900));
    assertThat(JOB.catalogue().resistors().get(1).resistance()).isEqualTo(ohms(47));
  }

  @Test
  void readsWhatProtectionRestsOn() {
    assertThat(JOB.faults().oldest().value()).isEqualTo(1.5);
    assertThat(JOB.faults().cells().coldest()).isEqualTo(celsius(-5));
    assertThat(JOB.faults().arc().orElseThrow().value()).isEqualTo(volts(20));
    assertThat(JOB.precharge().timeOut()).isEqualTo(seconds(4));
    assertThat(JOB.shock().joined()).isTrue();
    assertThat(JOB.shock().bondBetweenBays()).contains(milliohms(4));
    assertThat(JOB.isolation()).hasSize(7);
    assertThat(JOB.supplies()).hasSize(1);
  }

  @Test
  void aJobMayLeaveTheCircuitsOut() throws IOException {
    DemonstrationFolder.copyTo(folder);
    for (String file : ProtectionFiles.FILES) {
      Files.delete(folder.resolve(file));
    }
    assertThat(JobFolder.read(folder).circuits()).isEmpty();
  }

  @Test
  void halfStatedCircuitsAreAnError() throws IOException {
    DemonstrationFolder.copyTo(folder);
    Files.delete(folder.resolve("fuses.csv"));
    Files.delete(folder.resolve("duty.csv"));
    assertThatThrownBy(() -> JobFolder.read(folder))
        .isInstanceOf(JobFileException.class)
        .hasMessageEndingWith("has files about circuits but lacks duty.csv, fuses.csv");
  }

  @Test
  void whatACellLeavesOpenStaysUnknown() throws IOException {
    CircuitsInput job =
        readWith("fuses.csv", "fast link 500,500,250,10,50000,", "fast link 500,500,,10,,");
    Fuse fuse =
        job.catalogue().fuses().stream()
            .filter(f -> f.name().equals("fast link 500"))
            .findFirst()
            .orElseThrow();
    assertThat(fuse.directVoltage()).isEmpty();
    assertThat(fuse.breakingCapacity()).isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "circuits.csv|heater,heater,traction main|heater,heater,tractor|no circuit before it is"
            + " named \"tractor\"",
        "circuits.csv|heater,heater,traction|heater,stove,traction|not one of traction main,"
            + " inter-bay link",
        "circuits.csv|heater,heater,traction main,battery,42|heater,heater,traction"
            + " main,battery,-42|must be > 0 A, but was -42 A",
        "circuits.csv|instruments,auxiliary|heater,auxiliary|name \"heater\" stands twice",
        "circuits.csv|50,bundled,2|50,bundled,20|Installation.loadedCables must be from 1 to 9, but"
            + " was 20",
        "circuits.csv|continuous current [A]|continuous current [V]|not a unit of current",
        "duty.csv|traction main,10|tractor,10|no circuit is named \"tractor\"",
        "cables.csv|vehicle cable,70,class 5|vehicle cable,71,class 5|71 mm²",
        "fuses.csv|,50000,full|,50000,most|not one of full, partial",
        "fuse-curves.csv|fast link 10,16,3000|fast link 11,16,3000|no fuse is named \"fast link"
            + " 11\"",
        "fuse-curves.csv|fast link 10,20,120|fast link 10,15,120|TimeCurrentCurve[1].current must"
            + " be > 16 A, but was 15 A",
        "contactors.csv|10,either|10,sideways|not one of forward, reverse, either",
        "contactor-loads.csv|C100,150|C101,150|no contactor is named \"C101\"",
        "contactors.csv|C100,150,100,|C100,150,160,|above the continuous current",
        "precharge-resistors.csv|resistor 47R,47|resistor 22R,47|name \"resistor 22R\" stands"
            + " twice",
        "isolation.csv|rear drive unit,2,2|rear drive unit,0,2|must be > 0 MΩ, but was 0 MΩ",
        "supplies.csv|14.8,14.8,6|14.8,14.8,-6|must be > 0 mΩ, but was -6 mΩ",
        "protection.csv|AC and DC,joined|AC and DC,apart|not one of joined, separate",
        "protection.csv|bleed resistance|bleeding resistance|unknown key \"bleeding resistance\"",
        "protection.csv|coldest cells,-5|coldest cells,50|hottest",
      })
  void badInputIsOneLineThatSaysWhere(String file, String find, String replacement, String message)
      throws IOException {
    assertThatThrownBy(() -> readWith(file, find, replacement))
        .isInstanceOf(JobFileException.class)
        .hasMessageStartingWith(file + " line ")
        .hasMessageContaining(message)
        .hasMessageNotContaining("\n");
  }
}
