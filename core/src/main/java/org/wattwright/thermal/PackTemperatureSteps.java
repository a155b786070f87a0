package org.wattwright.thermal;

import static org.wattwright.units.WorkshopUnits.CELSIUS;
import static org.wattwright.units.WorkshopUnits.JOULE;
import static org.wattwright.units.WorkshopUnits.KELVIN;
import static org.wattwright.units.WorkshopUnits.KILOJOULE;
import static org.wattwright.units.WorkshopUnits.KILOJOULE_PER_KELVIN;
import static org.wattwright.units.WorkshopUnits.SECOND;
import static org.wattwright.units.WorkshopUnits.WATT;
import static org.wattwright.units.WorkshopUnits.WATT_PER_KELVIN;

import javax.measure.Quantity;
import javax.measure.quantity.Time;
import org.wattwright.battery.CellProperty;
import org.wattwright.battery.Direction;
import org.wattwright.battery.PackState;
import org.wattwright.check.Basis;
import org.wattwright.check.Figure;
import org.wattwright.check.Recorder;
import org.wattwright.check.Source;
import org.wattwright.check.Worksheet;
import org.wattwright.units.Kind;
import org.wattwright.units.WorkshopUnits;

/** Worksheets of a pack's temperature. */
final class PackTemperatureSteps {
  private static final Source BERNARDI =
      Source.literature(
              "D. Bernardi, E. Pawlikowski, J. Newman", "J. Electrochem. Soc. 132 (1985) 5")
          .fromMemory();

  private final PackTemperature pack;
  private final PackHeatModel model;

  PackTemperatureSteps(PackTemperature pack) {
    this.pack = pack;
    this.model = pack.model();
  }

  Worksheet of(PackTemperatureCourse course) {
    Worksheet.Recording recording = Worksheet.record("Pack temperature: " + pack);
    recordLump(recording);
    recordHeat(recording, course.heat());
    recordPeak(recording, course);
    return recording.toWorksheet();
  }

  private void recordLump(Recorder recorder) {
    recorder
        .step("C", "heat capacity of cells and housing")
        .formula("Σ m·c")
        .basis(pack.capacityBasis())
        .gives(model.capacityJPerK(), KILOJOULE_PER_KELVIN);
    pack.cooling().ifPresent(cooling -> cooling.record(recorder));
    recordConductance(recorder);
    pack.body().timeConstant().ifPresent(time -> recordTimeConstant(recorder, time));
  }

  private void recordConductance(Recorder recorder) {
    recorder
        .step("G", "conductance to surroundings and stream")
        .formula("G_a + G_c")
        .with("G_a", model.airWPerK(), WATT_PER_KELVIN)
        .with("G_c", model.streamWPerK(), WATT_PER_KELVIN)
        .gives(model.conductanceWPerK(), WATT_PER_KELVIN);
    recorder
        .step("T_0", "temperature without current")
        .formula("T_a + G_c/G·(T_in − T_a)")
        .with("T_a", model.airK(), KELVIN)
        .with("G_c", model.streamWPerK(), WATT_PER_KELVIN)
        .with("G", model.conductanceWPerK(), WATT_PER_KELVIN)
        .with("T_in", model.streamWPerK() > 0 ? model.streamK() : model.airK(), KELVIN)
        .gives(model.sinkK(), CELSIUS);
  }

  private void recordTimeConstant(Recorder recorder, Quantity<Time> time) {
    recorder
        .step("τ", "time constant")
        .formula("C/G")
        .with("C", model.capacityJPerK(), KILOJOULE_PER_KELVIN)
        .with("G", model.conductanceWPerK(), WATT_PER_KELVIN)
        .basis(pack.capacityBasis())
        .gives(Figure.of(time, SECOND));
  }

  private void recordHeat(Recorder recorder, HeatBalance heat) {
    Basis basis = pack.pack().basis(CellProperty.RESISTANCE);
    recorder
        .step("E_r", "loss in the resistances over the profile")
        .formula("∫I·(OCV − U)·dt")
        .basis(basis)
        .source(BERNARDI)
        .gives(Figure.of(heat.resistive(), KILOJOULE));
    String known = heat.reversibleKnown() ? "" : ", not known and left out";
    recorder
        .step("E_s", "reversible heat over the profile" + known)
        .formula("−∫I·T·dU/dT·dt")
        .basis(pack.pack().basis(CellProperty.HEAT))
        .source(BERNARDI)
        .gives(Figure.of(heat.reversible(), KILOJOULE));
    recordStored(recorder, heat, basis);
  }

  private static void recordStored(Recorder recorder, HeatBalance heat, Basis basis) {
    recorder
        .step("E_C", "heat stored in the pack")
        .formula("E_r + E_s − E_a − E_c")
        .with("E_r", Figure.of(heat.resistive(), KILOJOULE))
        .with("E_s", Figure.of(heat.reversible(), KILOJOULE))
        .with("E_a", Figure.of(heat.toSurroundings(), KILOJOULE))
        .with("E_c", Figure.of(heat.toStream(), KILOJOULE))
        .basis(basis)
        .gives(Figure.of(heat.stored(), KILOJOULE));
  }

  private void recordPeak(Recorder recorder, PackTemperatureCourse course) {
    Basis basis = pack.capacityBasis().and(pack.pack().basis(CellProperty.RESISTANCE));
    recorder
        .step("T_end", "temperature at the end")
        .formula("T_start + E_C/C")
        .with("T_start", Figure.of(course.start(), KELVIN))
        .with("E_C", Figure.of(course.heat().stored(), JOULE))
        .with("C", model.capacityJPerK(), WorkshopUnits.JOULE_PER_KELVIN)
        .basis(basis)
        .gives(Figure.of(course.end(), CELSIUS));
    recorder
        .step("T_peak", "highest temperature, after " + Figure.of(course.peakAt(), SECOND))
        .formula("max T(t)")
        .basis(basis)
        .gives(Figure.of(course.peak(), CELSIUS));
  }

  Worksheet ofContinuous(PackState state, Direction direction) {
    Worksheet.Recording recording =
        Worksheet.record("Current that holds " + state.temperature() + ": " + pack);
    recordLump(recording);
    double atK = Kind.TEMPERATURE.siValueOf(state.temperature());
    double lossW = model.lossW(atK);
    recording
        .step("P", "heat that leaves the pack at this temperature")
        .formula("G·(T − T_0)")
        .with("G", model.conductanceWPerK(), WATT_PER_KELVIN)
        .with("T", atK, KELVIN)
        .with("T_0", model.sinkK(), KELVIN)
        .gives(lossW, WATT);
    SteadyPack.Parabola heat = SteadyPack.of(model).parabola(state, direction);
    recordContinuous(recording, heat, lossW);
    return recording.toWorksheet();
  }

  private void recordContinuous(Recorder recorder, SteadyPack.Parabola heat, double lossW) {
    double currentA = heat.largestA(lossW);
    if (Double.isNaN(currentA)) {
      recorder
          .step("q_0", "heat without current: no current holds this temperature")
          .gives(heat.cW(), WATT);
      return;
    }
    recorder
        .step("I", "current whose heat R·I² + k·I + q_0 equals P")
        .formula("(√(k² + 4·R·(P − q_0)) − k)/(2·R)")
        .with("R", heat.aOhm(), WorkshopUnits.OHM)
        .with("k", heat.bV(), WorkshopUnits.VOLT)
        .with("P", lossW, WATT)
        .with("q_0", heat.cW(), WATT)
        .basis(pack.pack().basis(CellProperty.RESISTANCE))
        .source(BERNARDI)
        .gives(currentA, WorkshopUnits.AMPERE);
  }
}
