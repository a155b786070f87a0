package org.wattwright.layout;

import static org.wattwright.units.WorkshopUnits.KILOGRAM;
import static org.wattwright.units.WorkshopUnits.KILOWATT_HOUR;
import static org.wattwright.units.WorkshopUnits.LITRE;

import java.util.List;
import org.wattwright.battery.BatteryModule;
import org.wattwright.battery.CellProperty;
import org.wattwright.battery.Pack;
import org.wattwright.check.Figure;
import org.wattwright.units.Kind;
import org.wattwright.units.StateOfCharge;
import org.wattwright.voltage.OperatingConditions;

/** The sums over modules and enclosures that a search knows. */
final class SumProperties {
  private SumProperties() {}

  /** Modules and empty enclosures. */
  static Property mass() {
    return new SumProperty(
        new SumProperty.Words("pack mass", "m", "mass"),
        new SumProperty.Parts(
            module -> Kind.MASS.siValueOf(module.mass()),
            enclosure -> Kind.MASS.siValueOf(enclosure.tareMass()),
            candidate -> Kind.MASS.siValueOf(candidate.mass())),
        si -> Figure.ofSi(si, KILOGRAM),
        List.of(CellProperty.MASS));
  }

  /** The modules' outer boxes. */
  static Property volume() {
    return new SumProperty(
        new SumProperty.Words("pack volume", "V", "dimensions"),
        new SumProperty.Parts(
            module -> module.volume().map(Kind.VOLUME::siValueOf).orElse(Double.NaN),
            enclosure -> 0,
            candidate -> candidate.volume().map(Kind.VOLUME::siValueOf).orElse(Double.NaN)),
        si -> Figure.ofSi(si, LITRE),
        List.of(CellProperty.MASS));
  }

  /** Modules and enclosures, all in one currency. */
  static Property price(String currencyCode) {
    String name = currencyCode.isEmpty() ? "pack price" : "pack price in " + currencyCode;
    return new SumProperty(
        new SumProperty.Words(name, "C", "price"),
        new SumProperty.Parts(
            module -> module.price().map(p -> p.amount().doubleValue()).orElse(Double.NaN),
            enclosure -> enclosure.price().map(p -> p.amount().doubleValue()).orElse(Double.NaN),
            candidate -> candidate.price().map(p -> p.amount().doubleValue()).orElse(Double.NaN)),
        Figure::number,
        List.of());
  }

  /** Number of modules. */
  static Property moduleCount() {
    return new SumProperty(
        new SumProperty.Words("module count", "n", "count"),
        new SumProperty.Parts(module -> 1, enclosure -> 0, Candidate::moduleCount),
        si -> Figure.count((long) si),
        List.of());
  }

  /** Capacity times open-circuit voltage over the states of charge in use, usual temperature. */
  static Property energyAtRest(OperatingConditions conditions) {
    return new SumProperty(
        new SumProperty.Words("usable energy at rest voltage", "E", "energy"),
        new SumProperty.Parts(
            module -> energyOfModuleJ(module, conditions),
            enclosure -> 0,
            candidate -> energyOfPackJ(candidate.pack(), conditions)),
        si -> Figure.ofSi(si, KILOWATT_HOUR),
        List.of(CellProperty.CAPACITY, CellProperty.VOLTAGE));
  }

  private static double energyOfModuleJ(BatteryModule module, OperatingConditions conditions) {
    return Kind.CHARGE.siValueOf(module.capacity())
        * module.series()
        * meanCellVoltageTimesShare(module, conditions);
  }

  /** The strings of a searched pack are alike, so the first speaks for all. */
  private static double energyOfPackJ(Pack pack, OperatingConditions conditions) {
    BatteryModule module = pack.strings().get(0).groups().get(0).module();
    return Kind.CHARGE.siValueOf(pack.capacity())
        * pack.strings().get(0).cellsInSeries()
        * meanCellVoltageTimesShare(module, conditions);
  }

  private static double meanCellVoltageTimesShare(
      BatteryModule module, OperatingConditions conditions) {
    StateOfCharge fullest = conditions.fullest();
    StateOfCharge emptiest = conditions.emptiest();
    double meanV =
        Kind.VOLTAGE.siValueOf(
            module.cell().openCircuit().meanBetween(emptiest, fullest, conditions.usual()));
    return meanV * (fullest.fraction() - emptiest.fraction());
  }
}
