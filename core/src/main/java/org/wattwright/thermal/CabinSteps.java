package org.wattwright.thermal;

import static org.wattwright.units.WorkshopUnits.CUBIC_METRE_PER_HOUR;
import static org.wattwright.units.WorkshopUnits.KELVIN_OF_DIFFERENCE;
import static org.wattwright.units.WorkshopUnits.KILOGRAM_PER_CUBIC_METRE;
import static org.wattwright.units.WorkshopUnits.WATT;
import static org.wattwright.units.WorkshopUnits.WATT_PER_KELVIN;

import org.wattwright.check.Figure;
import org.wattwright.check.Recorder;
import org.wattwright.check.Source;
import org.wattwright.units.WorkshopUnits;

/** Worksheet lines of a cabin's steady load. */
record CabinSteps(Recorder recorder, double riseK) {

  void body(double bodyWPerK, double bodyW) {
    recorder
        .step("P_b", "heat through the body")
        .formula("UA·ΔT")
        .with("UA", bodyWPerK, WATT_PER_KELVIN)
        .with("ΔT", riseK, KELVIN_OF_DIFFERENCE)
        .source(Cabin.BALANCE)
        .gives(bodyW, WATT);
  }

  void air(double freshM3PerS, double outsideK, double airW) {
    recorder
        .step("P_a", "heat for fresh air, measured outside")
        .formula("V̇·ρ·c_p·ΔT")
        .with("V̇", freshM3PerS, CUBIC_METRE_PER_HOUR)
        .with("ρ", Air.densityKgPerM3(outsideK), KILOGRAM_PER_CUBIC_METRE)
        .with("c_p", Air.SPECIFIC_HEAT_J_PER_KG_K, WorkshopUnits.JOULE_PER_KILOGRAM_KELVIN)
        .with("ΔT", riseK, KELVIN_OF_DIFFERENCE)
        .source(Air.SOURCE)
        .gives(airW, WATT);
  }

  void occupants(int count, Source source, double eachW) {
    recorder
        .step("P_o", "heat of the occupants who are counted")
        .formula("n·q")
        .with("n", Figure.count(count))
        .with("q", eachW, WATT)
        .source(source)
        .gives(count * eachW, WATT);
  }

  void load(double[] bodyAirOccupantsW, double loadW) {
    recorder
        .step("P", "steady heating power, at least 0 W")
        .formula("P_b + P_a − P_o")
        .with("P_b", bodyAirOccupantsW[0], WATT)
        .with("P_a", bodyAirOccupantsW[1], WATT)
        .with("P_o", bodyAirOccupantsW[2], WATT)
        .source(Cabin.BALANCE)
        .gives(loadW, WATT);
  }
}
