package org.wattwright.examples;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.wattwright.units.Measures.amperes;
import static org.wattwright.units.Measures.celsius;
import static org.wattwright.units.Measures.kilograms;
import static org.wattwright.units.Measures.kilowatts;
import static org.wattwright.units.Measures.milliohms;
import static org.wattwright.units.Measures.percentCharge;
import static org.wattwright.units.Measures.seconds;
import static org.wattwright.units.Measures.volts;
import static org.wattwright.units.WorkshopUnits.KILOWATT;
import static org.wattwright.units.WorkshopUnits.KILOWATT_HOUR;
import static org.wattwright.units.WorkshopUnits.MILLIOHM;
import static org.wattwright.units.WorkshopUnits.VOLT;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wattwright.battery.BatteryModule;
import org.wattwright.battery.Cell;
import org.wattwright.battery.CellProperty;
import org.wattwright.battery.Direction;
import org.wattwright.battery.Pack;
import org.wattwright.battery.PackState;
import org.wattwright.battery.PulseCurrent;
import org.wattwright.check.Basis;
import org.wattwright.examples.job.JobFileException;
import org.wattwright.examples.job.JobFolder;
import org.wattwright.examples.job.JobInput;
import org.wattwright.voltage.Device;

class PartsTest {
  private static final JobInput JOB = JobFolder.read(DemonstrationFolder.PATH);
  private static final PackState LOW_AND_COLD = PackState.of(percentCharge(20), celsius(0));

  @TempDir Path folder;

  @Test
  void aCellHasWhatItsFilesState() {
    Cell cell = Parts.cell(JOB.cells().get(0));
    assertThat(cell.openCircuit().at(PackState.of(percentCharge(20), celsius(25))))
        .isEqualTo(volts(3.22));
    assertThat(cell.resistance(Direction.DISCHARGE).at(LOW_AND_COLD)).isEqualTo(milliohms(1.848));
    assertThat(cell.resistance(Direction.CHARGE).at(LOW_AND_COLD)).isEqualTo(milliohms(1.733));
    assertThat(cell.pulseCurrent(Direction.DISCHARGE))
        .contains(new PulseCurrent(amperes(315), seconds(30)));
    assertThat(cell.pulseCurrent(Direction.CHARGE))
        .contains(new PulseCurrent(amperes(105), seconds(10)));
    assertThat(cell.chargeCurrentByTemperature().orElseThrow().at(celsius(5)))
        .isEqualTo(amperes(22.5));
    assertThat(cell.temperatures(Direction.CHARGE).coldest()).isEqualTo(celsius(0));
    assertThat(cell.temperatures(Direction.DISCHARGE).hottest()).isEqualTo(celsius(55));
    assertThat(cell.ohmicResistance()).contains(milliohms(0.35));
    for (CellProperty property : CellProperty.values()) {
      assertThat(cell.basis(property)).isEqualTo(Basis.DATA_SHEET);
    }
  }

  @Test
  void whatIsNotKnownOfASalvagedCellIsEstimated() {
    Cell cell = Parts.cell(JOB.cells().get(2));
    assertThat(cell.basis(CellProperty.CAPACITY)).isEqualTo(Basis.MEASURED);
    assertThat(cell.basis(CellProperty.RESISTANCE)).isEqualTo(Basis.ESTIMATED);
    assertThat(cell.basis(CellProperty.OHMIC_RESISTANCE)).isEqualTo(Basis.ESTIMATED);
    assertThat(cell.basis(CellProperty.HEAT)).isEqualTo(Basis.ESTIMATED);
    assertThat(cell.basis(CellProperty.CURRENT)).isEqualTo(Basis.DATA_SHEET);
    // 50 mΩ·Ah / 120 Ah when new, times 1 + (23/120)/0.2 for its age.
    double expected = 50.0 / 120 * (1 + 23.0 / 120 / 0.2);
    assertThat(
            MILLIOHM.valueOf(
                cell.resistance(Direction.DISCHARGE)
                    .at(PackState.of(percentCharge(50), celsius(25)))))
        .isCloseTo(expected, within(1e-12));
  }

  @Test
  void resistanceHasDoubledAtEightyPerCent() {
    assertThat(Parts.resistanceFactor(1)).isEqualTo(1);
    assertThat(Parts.resistanceFactor(0.9)).isCloseTo(1.5, within(1e-12));
    assertThat(Parts.resistanceFactor(0.8)).isCloseTo(2, within(1e-12));
  }

  @Test
  void modulesHaveWhatTheirFileStates() {
    List<BatteryModule> modules = JOB.modules().stream().map(Parts::module).toList();
    assertThat(modules).extracting(BatteryModule::series).containsExactly(4, 4, 12);
    assertThat(modules).extracting(BatteryModule::parallel).containsExactly(1, 2, 1);
    assertThat(modules.get(1).mass()).isEqualTo(kilograms(10.8));
    assertThat(modules.get(1).interconnectResistance()).isEqualTo(milliohms(0.18));
    assertThat(modules.get(2).price().orElseThrow()).hasToString("310 EUR");
    assertThat(modules.get(0).dimensions().orElseThrow()).hasToString("355 mm × 152 mm × 108 mm");
  }

  @Test
  void devicesHaveWhatTheirFileStates() {
    List<Device> devices = JOB.devices().stream().map(Parts::device).toList();
    Device inverter = devices.get(0);
    assertThat(inverter.maximumPower()).contains(kilowatts(60));
    assertThat(inverter.maximumCurrent()).contains(amperes(720));
    assertThat(inverter.window().operating()).hasToString("54 V … 126 V");
    assertThat(inverter.window().absoluteMaximum()).contains(volts(135));
    assertThat(inverter.window().deratingAt(volts(60))).isCloseTo(0.5, within(1e-12));
    assertThat(devices.get(1).maximumPower()).contains(kilowatts(6.6));
  }

  @Test
  void aWindowMayLackTheFullPerformanceBandOrOneEndOfIt() throws IOException {
    DemonstrationFolder.copyTo(folder);
    replace("devices.csv", "135,54,126,66,120,60", "135,54,126,,,60");
    replace("devices.csv", "140,48,118.8,60,118.8", "140,48,118.8,60,");
    JobInput job = JobFolder.read(folder);
    assertThat(Parts.device(job.devices().get(0)).window().fullPerformance()).isEmpty();
    assertThat(Parts.device(job.devices().get(1)).window().fullPerformance().orElseThrow())
        .hasToString("60 V … 118.8 V");
  }

  /** By hand: 24 cells in series, 3 strings; both numbers from a separate script, to 1 %. */
  @Test
  void theDemonstrationCanBeMetByTheTallModule() {
    Pack pack =
        Pack.of(Parts.module(JOB.modules().get(1)), 6, 3).withLeadResistance(milliohms(0.3));
    assertThat(
            KILOWATT_HOUR.valueOf(
                pack.usableEnergyAtPower(
                        kilowatts(8), percentCharge(100), percentCharge(10), celsius(15))
                    .energy()))
        .isCloseTo(29.3, within(0.3));
    assertThat(KILOWATT.valueOf(pack.maximumDischargePower(LOW_AND_COLD, seconds(10)).power()))
        .isGreaterThan(48);
    assertThat(VOLT.valueOf(pack.maximumVoltage())).isCloseTo(100.8, within(1e-9));
  }

  @Test
  void whatTheLibraryRejectsIsReportedWithItsLine() throws IOException {
    DemonstrationFolder.copyTo(folder);
    replace("modules.csv", ",8.8,", ",5,");
    JobInput job = JobFolder.read(folder);
    assertThatThrownBy(() -> Parts.module(job.modules().get(0)))
        .isInstanceOf(JobFileException.class)
        .hasMessageStartingWith("modules.csv line 3: BatteryModule.mass must be ≥");
    replace("cells.csv", "105,315,30", "105,90,30");
    JobInput weak = JobFolder.read(folder);
    assertThatThrownBy(() -> Parts.cell(weak.cells().get(0)))
        .hasMessageStartingWith("cells.csv line 3: Cell.pulseDischargeCurrent must be ≥");
  }

  private void replace(String file, String find, String replacement) throws IOException {
    String text = Files.readString(folder.resolve(file));
    assertThat(text).contains(find);
    Files.writeString(folder.resolve(file), text.replace(find, replacement));
  }
}
