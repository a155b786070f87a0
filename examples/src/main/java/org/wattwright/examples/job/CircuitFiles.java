package org.wattwright.examples.job;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.wattwright.check.Basis;
import org.wattwright.conductor.Arrangement;
import org.wattwright.conductor.Installation;
import org.wattwright.protection.CircuitRole;
import org.wattwright.protection.OvercurrentTrip;
import org.wattwright.units.Kind;

/** Reads {@code circuits.csv} and {@code duty.csv}. */
final class CircuitFiles {
  private static final int MOST_JOINTS = 100;
  private static final int MOST_CABLES = 30;

  private CircuitFiles() {}

  private record Step(Origin origin, String circuit, CircuitInput.DutyStep step) {}

  static List<CircuitInput> read(Path folder) {
    List<Step> steps = CsvTable.read(folder.resolve("duty.csv")).map(CircuitFiles::step);
    Map<String, List<CircuitInput.DutyStep>> duty = new HashMap<>();
    for (Step step : steps) {
      duty.computeIfAbsent(step.circuit(), name -> new java.util.ArrayList<>()).add(step.step());
    }
    List<CircuitInput> circuits =
        CsvTable.read(folder.resolve("circuits.csv")).map(row -> circuit(row, duty));
    Map<String, CircuitInput> byName =
        Named.unique(circuits, CircuitInput::name, CircuitInput::origin);
    steps.forEach(step -> Named.find("circuit", byName, step.circuit(), step.origin()));
    requireOrder(circuits);
    return circuits;
  }

  private static void requireOrder(List<CircuitInput> circuits) {
    Set<String> before = new java.util.LinkedHashSet<>();
    for (CircuitInput circuit : circuits) {
      Optional<String> from = circuit.feed().from();
      if (from.isPresent() && !before.contains(from.get())) {
        throw circuit
            .origin()
            .error(
                "no circuit before it is named "
                    + Quoted.of(from.get())
                    + "; before it are "
                    + before.stream().collect(Collectors.joining(", ")));
      }
      before.add(circuit.name());
    }
  }

  private static Step step(CsvRow row) {
    return new Step(
        row.origin(),
        row.field("circuit").text(),
        new CircuitInput.DutyStep(
            row.field("time").positive(Kind.TIME), row.field("current").quantity(Kind.CURRENT)));
  }

  private static CircuitInput circuit(CsvRow row, Map<String, List<CircuitInput.DutyStep>> duty) {
    String name = row.field("name").text();
    return new CircuitInput(
        row.origin(),
        name,
        row.field("role").choice(CircuitRole.class),
        new CircuitInput.Feed(
            row.optional("fed from").map(Field::text),
            row.optional("supply").map(Field::text),
            row.optional("current limit").map(f -> f.positive(Kind.CURRENT)),
            row.optional("limited by").map(Field::text)),
        load(row, duty.getOrDefault(name, List.of())),
        route(row),
        guard(row),
        row.field("basis").choice(Basis.class),
        row.optional("source").map(Field::text).orElse(""));
  }

  private static CircuitInput.Load load(CsvRow row, List<CircuitInput.DutyStep> duty) {
    return new CircuitInput.Load(
        row.optional("continuous current").map(f -> f.positive(Kind.CURRENT)),
        row.optional("highest current").map(f -> f.positive(Kind.CURRENT)),
        duty,
        row.optional("load capacitance").map(f -> f.nonNegative(Kind.CAPACITANCE)),
        row.optional("fed backwards").map(CircuitFiles::isYes).orElse(false));
  }

  private static boolean isYes(Field field) {
    return field.choice(YesNo.class) == YesNo.YES;
  }

  private static CircuitInput.Route route(CsvRow row) {
    return new CircuitInput.Route(
        row.optional("length out").map(f -> f.positive(Kind.LENGTH)),
        row.optional("length back").map(f -> f.nonNegative(Kind.LENGTH)),
        row.optional("air").map(f -> installation(row, f)),
        row.optional("terminal limit").map(f -> f.quantity(Kind.TEMPERATURE)),
        row.optional("voltage drop").map(f -> f.positive(Kind.VOLTAGE)),
        row.optional("bend radius").map(f -> f.positive(Kind.LENGTH)),
        row.optional("least area").map(f -> f.positive(Kind.AREA)),
        row.optional("bolted joints").map(f -> f.count(0, MOST_JOINTS)).orElse(0));
  }

  private static Installation installation(CsvRow row, Field air) {
    Arrangement laid =
        row.optional("laid").map(f -> f.choice(Arrangement.class)).orElse(Arrangement.SINGLE);
    int cables = row.optional("cables side by side").map(f -> f.count(1, MOST_CABLES)).orElse(1);
    return row.origin()
        .locate(
            () -> {
              Installation free = Installation.freeAir(air.quantity(Kind.TEMPERATURE));
              return laid == Arrangement.SINGLE ? free : free.arranged(laid, cables);
            });
  }

  private static CircuitInput.Guard guard(CsvRow row) {
    return new CircuitInput.Guard(
        row.field("fused").choice(YesNo.class) == YesNo.YES,
        row.field("switching").choice(CircuitInput.Switching.class),
        row.optional("trip current").map(f -> trip(row, f)),
        row.optional("disconnect voltage").map(f -> f.positive(Kind.VOLTAGE)));
  }

  private static OvercurrentTrip trip(CsvRow row, Field current) {
    return row.origin()
        .locate(
            () ->
                OvercurrentTrip.at(
                    current.positive(Kind.CURRENT),
                    row.field("trip delay").positive(Kind.TIME),
                    row.field("tripped by").text()));
  }
}
