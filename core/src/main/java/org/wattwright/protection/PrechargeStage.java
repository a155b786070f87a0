package org.wattwright.protection;

import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wattwright.units.Kind;

/** Picks the pre-charge resistor for a circuit and a contactor: nothing else depends on it. */
final class PrechargeStage {
  private final DesignSpec spec;
  private final Circuit circuit;
  private final List<CircuitSupply> supplies;
  private final double highestV;

  PrechargeStage(DesignSpec spec, Circuit circuit, List<CircuitSupply> supplies, double highestV) {
    this.spec = spec;
    this.circuit = circuit;
    this.supplies = supplies;
    this.highestV = highestV;
  }

  /**
   * The resistor that passes with the least by the objective; if none passes one that lacks data,
   * else one that fails; null without a catalogue.
   */
  @Nullable PrechargeResult best(Contactor contactor) {
    Precharge precharge = precharge(contactor);
    return spec.resistors().stream()
        .map(precharge::with)
        .map(result -> new Judged(result, Verdict.of(result.checks())))
        .min(
            Comparator.comparing(Judged::verdict)
                .thenComparing(judged -> spec.cost(new PrechargeCase(judged.result()).asPart())))
        .map(Judged::result)
        .orElse(null);
  }

  private record Judged(PrechargeResult result, Verdict verdict) {}

  private Precharge precharge(Contactor contactor) {
    PrechargeBuilder builder =
        Precharge.from(Kind.VOLTAGE.ofSi(highestV))
            .capacitance(circuit.loadCapacitance().orElseThrow())
            .capacitanceTolerance(circuit.loadCapacitanceTolerance())
            .contactor(contactor);
    circuit.runningLoads().forEach(builder::load);
    // The inrush is highest where the battery has least resistance, which is at its highest fault.
    supplies.stream()
        .findFirst()
        .flatMap(supply -> supply.faults().highest())
        .ifPresent(highest -> builder.supplyResistance(highest.resistance()));
    PrechargeWish wish = circuit.guard().precharge();
    if (wish.withinS() != null && wish.timeOutS() != null) {
      builder.within(Kind.TIME.ofSi(wish.withinS())).timeOut(Kind.TIME.ofSi(wish.timeOutS()));
    }
    if (wish.periodS() != null) {
      builder.repeats(wish.shots(), Kind.TIME.ofSi(wish.periodS()));
    }
    return builder.build();
  }
}
