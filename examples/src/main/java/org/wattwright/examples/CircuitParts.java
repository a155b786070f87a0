package org.wattwright.examples;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javax.measure.quantity.ElectricCurrent;
import org.wattwright.conductor.Joint;
import org.wattwright.examples.job.CircuitInput;
import org.wattwright.examples.job.CircuitsInput;
import org.wattwright.profile.Profile;
import org.wattwright.profile.ProfileBuilder;
import org.wattwright.protection.Circuit;
import org.wattwright.protection.CircuitBuilder;
import org.wattwright.protection.CircuitRole;
import org.wattwright.units.Kind;

/**
 * Makes the library's circuits out of what a job states; what is wrong is reported with its line.
 */
final class CircuitParts {
  private final CircuitsInput input;
  private final FaultSupplies supplies;
  private final Map<String, Circuit> made = new LinkedHashMap<>();

  private CircuitParts(CircuitsInput input, FaultSupplies supplies) {
    this.input = input;
    this.supplies = supplies;
  }

  static List<Circuit> circuits(CircuitsInput input, FaultSupplies supplies) {
    CircuitParts parts = new CircuitParts(input, supplies);
    for (CircuitInput circuit : input.circuits()) {
      parts.made.put(circuit.name(), circuit.origin().locate(() -> parts.circuit(circuit)));
    }
    return List.copyOf(parts.made.values());
  }

  private Circuit circuit(CircuitInput stated) {
    CircuitBuilder circuit = Circuit.of(stated.name(), stated.role());
    addFeed(circuit, stated);
    addLoad(circuit, stated.load());
    addRoute(circuit, stated.route());
    addGuard(circuit, stated.guard());
    return circuit.build();
  }

  private void addFeed(CircuitBuilder circuit, CircuitInput stated) {
    CircuitInput.Feed feed = stated.feed();
    feed.from().map(made::get).ifPresent(circuit::fedFrom);
    feed.supply().ifPresent(name -> circuit.suppliedBy(supplies.named(name, stated)));
    feed.limit()
        .ifPresent(limit -> circuit.currentLimitedTo(limit, feed.limitedBy().orElse("its source")));
    if (stated.role() == CircuitRole.INTER_BAY_LINK) {
      circuit.segments(supplies.segments());
    }
  }

  private void addLoad(CircuitBuilder circuit, CircuitInput.Load load) {
    load.continuous().ifPresent(circuit::continuousCurrent);
    load.highest().ifPresent(circuit::highestOperatingCurrent);
    load.capacitance().ifPresent(circuit::loadCapacitance);
    circuit.loadCapacitanceTolerance(input.precharge().tolerance());
    if (!load.duty().isEmpty()) {
      circuit.profile(profile(load.duty()));
    }
    if (load.fedBackwards()) {
      circuit.fedBackwards(
          input.faults().capacitorLoop().value(), input.faults().inductance().value());
    }
  }

  private static Profile<ElectricCurrent> profile(List<CircuitInput.DutyStep> steps) {
    ProfileBuilder<ElectricCurrent> profile = Profile.segments(Kind.CURRENT);
    for (CircuitInput.DutyStep step : steps) {
      profile = profile.hold(step.current(), step.time());
    }
    return profile.build();
  }

  private void addRoute(CircuitBuilder circuit, CircuitInput.Route route) {
    route.out().ifPresent(out -> circuit.lengths(out, route.back().orElse(out)));
    route.installation().ifPresent(circuit::installation);
    route.terminalLimit().ifPresent(circuit::terminalTemperatureAtMost);
    route.drop().ifPresent(circuit::voltageDropAtMost);
    route.bend().ifPresent(circuit::bendRadiusAvailable);
    route.leastArea().ifPresent(circuit::areaAtLeast);
    Joint lug =
        input
            .faults()
            .lug()
            .map(ohm -> Joint.of("bolted lug", ohm))
            .orElseGet(() -> Joint.estimatedBoltedLug("bolted lug"));
    circuit.joints(Collections.nCopies(route.joints(), lug));
  }

  private void addGuard(CircuitBuilder circuit, CircuitInput.Guard guard) {
    if (guard.fused()) {
      circuit.fused();
    } else {
      circuit.withoutFuse();
    }
    switch (guard.switching()) {
      case NONE -> {}
      case CONTACTOR -> circuit.switched();
      case PRECHARGED -> {
        circuit
            .precharged()
            .prechargeTimes(input.precharge().within(), input.precharge().timeOut());
        input
            .precharge()
            .repeats()
            .ifPresent(times -> circuit.prechargeRepeats(times.count(), times.period()));
        input.precharge().bleed().ifPresent(ohm -> circuit.bleedResistor(ohm, 0));
      }
    }
    guard.trip().ifPresent(circuit::trip);
    guard.disconnect().ifPresent(circuit::withServiceDisconnect);
  }

  /** Of a role, in the order of the file. */
  static List<Circuit> ofRole(List<Circuit> circuits, CircuitRole role) {
    List<Circuit> found = new ArrayList<>(circuits);
    found.removeIf(circuit -> circuit.role() != role);
    return found;
  }
}
