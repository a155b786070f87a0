package org.wattwright.layout;

import static org.wattwright.units.WorkshopUnits.AMPERE_HOUR;
import static org.wattwright.units.WorkshopUnits.KILOWATT_HOUR;
import static org.wattwright.units.WorkshopUnits.VOLT;

import org.wattwright.battery.BatteryModule;
import org.wattwright.battery.CellProperty;
import org.wattwright.battery.Pack;
import org.wattwright.check.Basis;
import org.wattwright.check.Figure;
import org.wattwright.check.Recorder;
import org.wattwright.units.Kind;
import org.wattwright.voltage.OperatingConditions;

/**
 * Energy at rest voltage over the states of charge in use, usual temperature: capacity times mean
 * open-circuit voltage times the width of the band.
 */
final class EnergyAtRest implements Property {
  private final OperatingConditions conditions;
  private final double width;

  EnergyAtRest(OperatingConditions conditions) {
    this.conditions = conditions;
    this.width = conditions.fullest().fraction() - conditions.emptiest().fraction();
  }

  @Override
  public String name() {
    return "usable energy at rest voltage";
  }

  @Override
  public Term on(Variant variant, Recorder recorder) {
    BatteryModule module = variant.module();
    double capacityC = Kind.CHARGE.siValueOf(module.capacity());
    double meanV = meanCellV(module) * module.series();
    double moduleJ = capacityC * meanV * width;
    if (recorder.isOn()) {
      recorder
          .step(
              "E_module",
              "energy of one module, " + conditions.fullest() + " to " + conditions.emptiest())
          .formula("Q·u_mean·Δs")
          .with("Q", capacityC, AMPERE_HOUR)
          .with("u_mean", meanV, VOLT)
          .with("Δs", Figure.share(width))
          .basis(basis(variant))
          .gives(moduleJ, KILOWATT_HOUR);
    }
    return (series, parallel, to) -> scaled(variant, series * parallel, moduleJ, to);
  }

  private double scaled(Variant variant, int count, double moduleJ, Recorder recorder) {
    double sumJ = count * moduleJ;
    if (recorder.isOn()) {
      recorder
          .step("E", name())
          .formula("n·E_module")
          .with("n", Figure.count(count))
          .with("E_module", moduleJ, KILOWATT_HOUR)
          .basis(basis(variant))
          .gives(sumJ, KILOWATT_HOUR);
    }
    return sumJ;
  }

  private double meanCellV(BatteryModule module) {
    return Kind.VOLTAGE.siValueOf(
        module
            .cell()
            .openCircuit()
            .meanBetween(conditions.emptiest(), conditions.fullest(), conditions.usual()));
  }

  @Override
  public double replayed(Candidate candidate) {
    Pack pack = candidate.pack();
    return Kind.CHARGE.siValueOf(pack.capacity())
        * pack.strings().get(0).cellsInSeries()
        * meanCellV(candidate.module())
        * width;
  }

  @Override
  public Figure figure(double si) {
    return Figure.ofSi(si, KILOWATT_HOUR);
  }

  @Override
  public Basis basis(Variant variant) {
    return variant
        .module()
        .basis(CellProperty.CAPACITY)
        .and(variant.module().basis(CellProperty.VOLTAGE));
  }
}
