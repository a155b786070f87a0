package org.wattwright.thermal;

import java.io.Serializable;
import org.jspecify.annotations.Nullable;
import org.wattwright.battery.BatteryModule;
import org.wattwright.battery.Cell;
import org.wattwright.battery.CellEstimates;
import org.wattwright.battery.CellProperty;
import org.wattwright.battery.Pack;
import org.wattwright.battery.SeriesString;
import org.wattwright.check.Basis;
import org.wattwright.check.Estimate;
import org.wattwright.units.Kind;
import org.wattwright.units.SpecificHeatCapacity;

/** Heat capacity of a pack with both ends of its band; all alike unless it is estimated. */
record PackCapacity(double joulePerK, double lowJPerK, double highJPerK, Basis basis)
    implements Serializable {

  /** From the cells' own specific heat; null if one is not known. */
  static @Nullable PackCapacity known(Pack pack) {
    return pack.heatCapacity()
        .map(Kind.HEAT_CAPACITY::siValueOf)
        .map(value -> known(pack, value))
        .orElse(null);
  }

  private static PackCapacity known(Pack pack, double joulePerK) {
    Basis basis = pack.basis(CellProperty.HEAT);
    if (basis != Basis.ESTIMATED) {
      return new PackCapacity(joulePerK, joulePerK, joulePerK, basis);
    }
    PackCapacity band = byChemistry(pack);
    double lowJPerK = Math.min(joulePerK, band.lowJPerK);
    return new PackCapacity(joulePerK, lowJPerK, Math.max(joulePerK, band.highJPerK), basis);
  }

  static PackCapacity byChemistry(Pack pack) {
    double joulePerK = 0;
    double lowJPerK = 0;
    double highJPerK = 0;
    for (SeriesString string : pack.strings()) {
      for (SeriesString.Group group : string.groups()) {
        double massKg = cellMassKg(group);
        Estimate<SpecificHeatCapacity> specific =
            CellEstimates.specificHeat(group.module().cell().chemistry());
        joulePerK += massKg * Kind.SPECIFIC_HEAT_CAPACITY.siValueOf(specific.typical());
        lowJPerK += massKg * Kind.SPECIFIC_HEAT_CAPACITY.siValueOf(specific.low());
        highJPerK += massKg * Kind.SPECIFIC_HEAT_CAPACITY.siValueOf(specific.high());
      }
    }
    return new PackCapacity(joulePerK, lowJPerK, highJPerK, Basis.ESTIMATED);
  }

  private static double cellMassKg(SeriesString.Group group) {
    BatteryModule module = group.module();
    Cell cell = module.cell();
    double cells = (double) group.count() * module.series() * module.parallel();
    return cells * Kind.MASS.siValueOf(cell.mass());
  }

  PackCapacity plus(double moreJPerK) {
    return new PackCapacity(
        joulePerK + moreJPerK, lowJPerK + moreJPerK, highJPerK + moreJPerK, basis);
  }
}
