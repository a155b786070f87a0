package org.wattwright.protection;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import javax.measure.Quantity;
import org.wattwright.check.Basis;
import org.wattwright.check.Check;
import org.wattwright.check.Given;
import org.wattwright.check.Source;
import org.wattwright.conductor.Installation;
import org.wattwright.units.JouleIntegral;
import org.wattwright.units.Kind;

/**
 * Judges every part of the catalogues by itself in one circuit: what it must pass whatever the
 * others are.
 */
final class PartStage {
  /** A limit that no other part sets yet. */
  private static final double OPEN = 1e30;

  private final DesignSpec spec;
  private final Circuit circuit;
  private final List<CircuitSupply> supplies;
  private final double highestV;

  PartStage(DesignSpec spec, Circuit circuit, List<CircuitSupply> supplies, double highestV) {
    this.spec = spec;
    this.circuit = circuit;
    this.supplies = supplies;
    this.highestV = highestV;
  }

  List<CableCase> cables() {
    return CableCase.all(
        circuit, spec.cables(), circuit.parallelRunsUpTo().orElse(spec.mostRuns()), highestV);
  }

  List<FuseCase> fuses() {
    List<FuseCase> cases = new ArrayList<>();
    if (circuit.isFused()) {
      List<FuseDuty> duties = supplies.stream().map(this::ownDuty).toList();
      for (Fuse fuse : spec.fuses()) {
        List<Check> checks = new ArrayList<>();
        duties.forEach(duty -> checks.addAll(fuse.checks(duty)));
        cases.add(new FuseCase(fuse, highestV, capacitors(), checks));
      }
    }
    return cases;
  }

  /** Of whichever supply has the largest. */
  private List<CapacitorDischarge> capacitors() {
    return supplies.stream()
        .map(supply -> supply.faults().capacitors())
        .max(Comparator.comparingDouble(all -> CapacitorInfeed.of(all).jouleA2S()))
        .orElse(List.of());
  }

  /** What a fuse must pass at the highest fault; cable and trip are left open. */
  private FuseDuty ownDuty(CircuitSupply supply) {
    FaultCurrent highest = supply.faults().highest().orElseThrow();
    return duty(supply.between(highest, highest))
        .clearWithin(circuit.faultClearedWithin())
        .otherDeviceUpTo(Kind.CURRENT.ofSi(OPEN))
        .withstand(open())
        .build();
  }

  private static Given<Quantity<JouleIntegral>> open() {
    return new Given<>(Kind.JOULE_INTEGRAL.ofSi(OPEN), Basis.DATA_SHEET, Source.AS_GIVEN);
  }

  /** The duty of a fuse but for what it must clear and what others bear. */
  FuseDuty.Builder duty(FaultRange faults) {
    FuseDuty.Builder duty =
        FuseDuty.of(faults)
            .highestVoltage(Kind.VOLTAGE.ofSi(highestV))
            .continuousCurrent(Kind.CURRENT.ofSi(circuit.continuousA()))
            .air(circuit.installation().map(Installation::air).orElseThrow());
    circuit.profile().ifPresent(duty::profile);
    return duty;
  }

  List<SwitchCase> switches() {
    List<SwitchCase> cases = new ArrayList<>();
    if (circuit.isSwitched()) {
      for (Contactor contactor : spec.contactors()) {
        cases.add(switchCase(contactor));
      }
    }
    return cases;
  }

  private SwitchCase switchCase(Contactor contactor) {
    List<Check> checks = ownChecks(contactor);
    if (!circuit.isPrecharged()) {
      return new SwitchCase(contactor, null, checks, highestV);
    }
    if (Verdict.of(checks) == Verdict.FAILS) {
      return new SwitchCase(contactor, null, checks, highestV);
    }
    PrechargeResult chosen = new PrechargeStage(spec, circuit, supplies, highestV).best(contactor);
    if (chosen == null) {
      checks.add(
          Check.named("protection.precharge", "pre-charge resistor for " + contactor.name())
              .source(Source.requirement("the circuit is pre-charged"))
              .safety()
              .notChecked("a catalogue of pre-charge resistors"));
      return new SwitchCase(contactor, null, checks, highestV);
    }
    checks.addAll(chosen.checks());
    return new SwitchCase(contactor, new PrechargeCase(chosen), checks, highestV);
  }

  private List<Check> ownChecks(Contactor contactor) {
    ContactorChecks asked = contactor.checks();
    List<Check> checks = new ArrayList<>();
    checks.add(asked.voltage(Kind.VOLTAGE.ofSi(highestV)));
    checks.add(asked.carry(Kind.CURRENT.ofSi(circuit.continuousA())));
    circuit.profile().ifPresent(profile -> checks.add(asked.carry(profile)));
    if (circuit.role().feedsBattery()) {
      checks.add(
          asked.breaks(
              BreakRating.reverse(
                  Kind.CURRENT.ofSi(circuit.operatingA()), Kind.VOLTAGE.ofSi(highestV))));
    }
    checks.addAll(TripChecks.of(circuit));
    if (circuit.quickestTrip() != null && contactor.openingTime().isEmpty()) {
      checks.add(
          Check.named("protection.opening-time", "opening time of " + contactor.name())
              .source(contactor.source())
              .safety()
              .notChecked("contactor.openingTime"));
    }
    return checks;
  }
}
