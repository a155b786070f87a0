package org.wattwright.layout;

import static org.wattwright.units.WorkshopUnits.AMPERE;
import static org.wattwright.units.WorkshopUnits.KILOWATT;

import org.wattwright.battery.BandEnd;
import org.wattwright.battery.CellProperty;
import org.wattwright.battery.PackState;
import org.wattwright.battery.PowerLimit;
import org.wattwright.check.Basis;
import org.wattwright.check.Figure;
import org.wattwright.check.Recorder;
import org.wattwright.units.Kind;
import org.wattwright.voltage.OperatingConditions;

/**
 * The largest load that the cold and empty pack carries: power, or current where the conditions
 * state a current. An estimated resistance stands at the high end of its band.
 */
final class PeakLoad implements Property {
  private final OperatingConditions conditions;
  private final Bus bus;
  private final boolean isPower;

  PeakLoad(Bus bus) {
    this.bus = bus;
    this.conditions = bus.conditions();
    this.isPower = conditions.peakDischargePower().isPresent();
  }

  /** The load of the conditions, in W or A. */
  double askedSi() {
    return conditions
        .peakDischargePower()
        .map(Kind.POWER::siValueOf)
        .orElseGet(() -> Kind.CURRENT.siValueOf(conditions.peakDischargeCurrent().orElseThrow()));
  }

  @Override
  public String name() {
    return "peak load that the cold and empty pack carries";
  }

  @Override
  public Term on(Variant variant, Recorder recorder) {
    double moduleSi = read(bus.voltagesOf(variant.module()).largest());
    return (series, parallel, to) -> {
      int share = isPower ? series * parallel : parallel;
      double si = share * moduleSi;
      if (to.isOn()) {
        String symbol = isPower ? "P_peak" : "I_peak";
        to.step(symbol, name())
            .formula((isPower ? "n·" : "P·") + symbol + "_module")
            .with(isPower ? "n" : "P", Figure.count(share))
            .with(symbol + "_module", figure(moduleSi))
            .basis(basis(variant))
            .gives(figure(si));
      }
      return si;
    };
  }

  private double read(PowerLimit limit) {
    return isPower ? Kind.POWER.siValueOf(limit.power()) : Kind.CURRENT.siValueOf(limit.current());
  }

  @Override
  public double replayed(Candidate candidate) {
    return read(
        candidate
            .pack()
            .atBandEnd(BandEnd.HIGH)
            .maximumDischargePower(
                PackState.of(conditions.emptiest(), conditions.coldest()),
                conditions.peakDuration()));
  }

  @Override
  public Figure figure(double si) {
    return isPower ? Figure.ofSi(si, KILOWATT) : Figure.ofSi(si, AMPERE);
  }

  @Override
  public Basis basis(Variant variant) {
    return variant
        .module()
        .basis(CellProperty.CURRENT)
        .and(variant.module().basis(CellProperty.VOLTAGE))
        .and(variant.module().basis(CellProperty.RESISTANCE));
  }
}
