package org.wattwright.protection;

import static org.wattwright.units.WorkshopUnits.AMPERE;
import static org.wattwright.units.WorkshopUnits.MICROHENRY;
import static org.wattwright.units.WorkshopUnits.MILLIOHM;
import static org.wattwright.units.WorkshopUnits.MILLISECOND;
import static org.wattwright.units.WorkshopUnits.VOLT;

import java.util.ArrayList;
import java.util.List;
import javax.measure.Quantity;
import org.wattwright.check.Basis;
import org.wattwright.check.Figure;
import org.wattwright.check.Given;
import org.wattwright.check.Recorder;
import org.wattwright.check.StepBuilder;
import org.wattwright.units.NamedUnit;

/** Writes the working of a fault current: each part with its source, then the sums. */
final class FaultLoopSheet {
  private final Recorder recorder;
  private final FaultLoop loop;

  FaultLoopSheet(Recorder recorder, FaultLoop loop) {
    this.recorder = recorder;
    this.loop = loop;
  }

  void describe(FaultCurrent current) {
    given("U_0", "open-circuit voltage", loop.openCircuit(), VOLT);
    given("U_arc", "arc voltage", loop.arc(), VOLT);
    StepBuilder driving =
        recorder
            .step("U", "driving voltage")
            .formula("U_0 − U_arc")
            .with("U_0", loop.openCircuit(), VOLT);
    driving.with("U_arc", loop.arc(), VOLT).gives(figure(current.drivingVoltage(), VOLT));
    sum("R", "loop resistance", loop.resistances(), MILLIOHM)
        .gives(figure(current.resistance(), MILLIOHM));
    recorder
        .step("I∞", "prospective fault current")
        .formula("U/R")
        .with("U", figure(current.drivingVoltage(), VOLT))
        .with("R", figure(current.resistance(), MILLIOHM))
        .basis(currentBasis())
        .gives(current.prospectiveA(), AMPERE);
    sum("L", "loop inductance", loop.inductances(), MICROHENRY)
        .gives(figure(current.inductance(), MICROHENRY));
    recorder
        .step("τ", "time constant")
        .formula("L/R")
        .with("L", figure(current.inductance(), MICROHENRY))
        .with("R", figure(current.resistance(), MILLIOHM))
        .basis(new LoopBasis(loop).weakest())
        .gives(current.timeConstantS(), MILLISECOND);
  }

  private Basis currentBasis() {
    Basis weakest = loop.openCircuit().basis().and(loop.arc().basis());
    for (FaultLoop.Part<?> part : loop.resistances()) {
      weakest = weakest.and(part.value().basis());
    }
    return weakest;
  }

  private <Q extends Quantity<Q>> StepBuilder sum(
      String symbol, String meaning, List<FaultLoop.Part<Q>> parts, NamedUnit<Q> unit) {
    List<String> symbols = new ArrayList<>();
    for (FaultLoop.Part<Q> part : parts) {
      String own = symbol + "_" + (symbols.size() + 1);
      symbols.add(own);
      given(own, part.name(), part.value(), unit);
    }
    StepBuilder total = recorder.step(symbol, meaning).formula(String.join(" + ", symbols));
    for (int i = 0; i < symbols.size(); i++) {
      total.with(symbols.get(i), parts.get(i).value(), unit);
    }
    return total;
  }

  private <Q extends Quantity<Q>> void given(
      String symbol, String meaning, Given<Quantity<Q>> value, NamedUnit<Q> unit) {
    recorder
        .step(symbol, meaning)
        .basis(value.basis())
        .source(value.source())
        .gives(figure(value.value(), unit));
  }

  private static <Q extends Quantity<Q>> Figure figure(Quantity<Q> value, NamedUnit<Q> unit) {
    return Figure.of(value, unit);
  }
}
