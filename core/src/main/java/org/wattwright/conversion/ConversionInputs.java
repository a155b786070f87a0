package org.wattwright.conversion;

import java.util.Map;
import java.util.TreeMap;
import org.wattwright.protection.DesignedCircuit;
import org.wattwright.vehicle.LoadState;

/** The inputs of a conversion by name, each as a canonical text. */
final class ConversionInputs {
  private final Map<String, String> texts = new TreeMap<>();

  private ConversionInputs() {}

  static Fingerprint fingerprint(Conversion conversion) {
    ConversionInputs inputs = new ConversionInputs();
    inputs.addJob(conversion);
    conversion.masses().ifPresent(inputs::addMasses);
    conversion.circuits().ifPresent(inputs::addCircuits);
    conversion
        .motion()
        .ifPresent(motion -> inputs.texts.put("motion", CanonicalText.of(motion.inputs())));
    conversion
        .charging()
        .ifPresent(review -> inputs.texts.put("charge plan", CanonicalText.of(review.plan())));
    conversion
        .lowVoltage()
        .ifPresent(side -> inputs.texts.put("low voltage", CanonicalText.of(side)));
    return Fingerprint.ofParts(inputs.texts);
  }

  private void addJob(Conversion conversion) {
    texts.put("title", conversion.title());
    texts.put("customer", conversion.customer().orElse(""));
    texts.put("vehicle", conversion.vehicle().orElse(""));
    texts.put("pack", CanonicalText.of(conversion.pack()));
    texts.put("devices", CanonicalText.ofUnordered(conversion.devices()));
    texts.put("conditions", CanonicalText.of(conversion.conditions()));
    texts.put("requirements", CanonicalText.ofUnordered(conversion.requirements()));
  }

  private void addMasses(VehicleReview review) {
    texts.put("weighed vehicle", CanonicalText.of(review.ledger().vehicle()));
    texts.put("masses removed", CanonicalText.ofUnordered(review.ledger().removed()));
    texts.put("masses added", CanonicalText.ofUnordered(review.ledger().added()));
    texts.put(
        "load cases",
        CanonicalText.ofUnordered(review.states().stream().map(LoadState::loadCase).toList()));
    texts.put("axle limits", CanonicalText.of(review.limits()));
    texts.put("chassis", CanonicalText.of(review.chassis()));
  }

  private void addCircuits(Circuits circuits) {
    texts.put(
        "circuits",
        CanonicalText.ofUnordered(
            circuits.design().circuits().stream().map(DesignedCircuit::circuit).toList()));
    texts.put(
        "circuit parts",
        CanonicalText.ofUnordered(
            circuits.design().circuits().stream().map(ConversionInputs::parts).toList()));
    texts.put("list of circuits", CanonicalText.ofUnordered(circuits.review().checks()));
    texts.put("isolation", CanonicalText.of(circuits.isolation()));
    texts.put("further checks", CanonicalText.ofUnordered(circuits.furtherChecks()));
  }

  private static Map<String, Object> parts(DesignedCircuit each) {
    return Map.of(
        "circuit", each.circuit().name(),
        "cable", each.cable(),
        "runs", each.parallelRuns(),
        "fuse", each.fuse(),
        "contactor", each.contactor(),
        "resistor", each.precharge().map(result -> result.resistor()));
  }
}
