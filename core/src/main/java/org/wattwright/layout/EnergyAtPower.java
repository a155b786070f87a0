package org.wattwright.layout;

import static org.wattwright.units.WorkshopUnits.KILOWATT_HOUR;
import static org.wattwright.units.WorkshopUnits.WATT;

import java.util.HashMap;
import java.util.Map;
import javax.measure.Quantity;
import javax.measure.quantity.Power;
import org.wattwright.battery.CellProperty;
import org.wattwright.battery.Pack;
import org.wattwright.check.Basis;
import org.wattwright.check.Figure;
import org.wattwright.check.Recorder;
import org.wattwright.units.Kind;
import org.wattwright.voltage.OperatingConditions;

/**
 * Energy that comes out at a constant power: each of n like modules gives one n-th of the power, so
 * the energy is n times that of one module at P/n.
 */
final class EnergyAtPower implements Property {
  private final double powerW;
  private final OperatingConditions conditions;

  EnergyAtPower(Quantity<Power> power, OperatingConditions conditions) {
    this.powerW = Kind.POWER.siValueOf(power);
    this.conditions = conditions;
  }

  @Override
  public String name() {
    return "usable energy at " + Figure.of(Kind.POWER.ofSi(powerW), Kind.POWER);
  }

  private double energyJ(Pack pack, double watts) {
    return Kind.ENERGY.siValueOf(
        pack.usableEnergyAtPower(
                Kind.POWER.ofSi(watts),
                conditions.fullest(),
                conditions.emptiest(),
                conditions.usual())
            .energy());
  }

  @Override
  public Term on(Variant variant, Recorder recorder) {
    Pack one = Pack.of(variant.module(), 1, 1);
    Map<Integer, Double> known = new HashMap<>();
    return (series, parallel, to) -> {
      int count = series * parallel;
      double moduleJ = known.computeIfAbsent(count, n -> energyJ(one, powerW / n));
      double sumJ = count * moduleJ;
      if (to.isOn()) {
        to.step("p", "power of each module")
            .formula("P/n")
            .with("P", powerW, WATT)
            .with("n", Figure.count(count))
            .gives(powerW / count, WATT);
        OneModule.record(
            one.energyWorksheet(
                Kind.POWER.ofSi(powerW / count),
                conditions.fullest(),
                conditions.emptiest(),
                conditions.usual()),
            to);
        to.step("E", name())
            .formula("n·E_module")
            .with("n", Figure.count(count))
            .with("E_module", moduleJ, KILOWATT_HOUR)
            .basis(basis(variant))
            .gives(sumJ, KILOWATT_HOUR);
      }
      return sumJ;
    };
  }

  /**
   * More modules share the power, lose less and reach further, so energy rises with their number:
   * the fewest that give enough are found by bisection, and the rest needs no integration.
   */
  @Override
  public Gate gate(Variant variant, Bound bound, int most) {
    Term term = on(variant, Recorder.OFF);
    if (bound.isAtMost()) {
      return new PlainGate(term, bound);
    }
    int few = 0;
    int enough = most + 1;
    while (enough - few > 1) {
      int middle = (few + enough) >>> 1;
      if (bound.keeps(term.valueAt(middle, 1, Recorder.OFF))) {
        enough = middle;
      } else {
        few = middle;
      }
    }
    return new FromCount(enough, new PlainGate(term, bound));
  }

  /** Kept from a number of modules on. */
  private static final class FromCount implements Gate {
    private final int fewest;
    private final Gate exact;

    FromCount(int fewest, Gate exact) {
      this.fewest = fewest;
      this.exact = exact;
    }

    @Override
    public Verdict judge(int series, int parallel) {
      return series * parallel >= fewest ? Verdict.KEPT : Verdict.BROKEN;
    }

    @Override
    public double shortfallAt(int series, int parallel) {
      return exact.shortfallAt(series, parallel);
    }

    @Override
    public double rounding() {
      return exact.rounding();
    }
  }

  @Override
  public double replayed(Candidate candidate) {
    return energyJ(candidate.pack(), powerW);
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
        .and(variant.module().basis(CellProperty.VOLTAGE))
        .and(variant.module().basis(CellProperty.RESISTANCE));
  }
}
