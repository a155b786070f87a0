package org.wattwright.layout;

import static org.wattwright.units.WorkshopUnits.KILOWATT;

import java.util.List;
import org.wattwright.battery.CellProperty;
import org.wattwright.battery.Pack;
import org.wattwright.check.Basis;
import org.wattwright.check.Figure;
import org.wattwright.check.Recorder;

/**
 * The largest power in a state, or the least of those in several states. All limits of like strings
 * scale with the number of modules: the current with the strings, the voltage with the series.
 */
final class LeastPower implements Property {
  private final List<PowerState> states;

  LeastPower(List<PowerState> states) {
    this.states = states;
  }

  @Override
  public String name() {
    return states.size() == 1 ? states.get(0).toString() : "least power of the states asked for";
  }

  @Override
  public Term on(Variant variant, Recorder recorder) {
    Pack one = Pack.of(variant.module(), 1, 1);
    double moduleW = Double.POSITIVE_INFINITY;
    for (PowerState state : states) {
      moduleW = Math.min(moduleW, state.largestW(one));
      if (recorder.isOn()) {
        OneModule.record(
            one.powerWorksheet(state.state(), state.direction(), state.duration()), recorder);
      }
    }
    return scaled(variant, moduleW);
  }

  private Term scaled(Variant variant, double moduleW) {
    return (series, parallel, to) -> {
      int count = series * parallel;
      double powerW = count * moduleW;
      if (to.isOn()) {
        to.step("P", name())
            .formula("n·P_module")
            .with("n", Figure.count(count))
            .with("P_module", moduleW, KILOWATT)
            .basis(basis(variant))
            .gives(powerW, KILOWATT);
      }
      return powerW;
    };
  }

  @Override
  public double replayed(Candidate candidate) {
    Pack pack = candidate.pack();
    return states.stream().mapToDouble(state -> state.largestW(pack)).min().orElseThrow();
  }

  @Override
  public Figure figure(double si) {
    return Figure.ofSi(si, KILOWATT);
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
