package org.wattwright.conversion;

import static org.wattwright.units.Measures.format;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.wattwright.check.Check;
import org.wattwright.check.Checks;
import org.wattwright.protection.BlockedCircuit;
import org.wattwright.protection.CircuitDesign;
import org.wattwright.protection.CircuitPart;
import org.wattwright.protection.Contactor;
import org.wattwright.protection.DesignedCircuit;
import org.wattwright.protection.Fuse;
import org.wattwright.units.Kind;
import org.wattwright.units.Price;

/** The section about circuits and their protection. */
final class CircuitSection {
  private static final String TITLE = "Circuits";
  private static final String NONE = "–";

  private CircuitSection() {}

  /** For a conversion without circuits. */
  static Section missing() {
    return Section.of(TITLE)
        .with(
            new Paragraph(
                "No circuits were given: nothing is said about cables, fuses, contactors and"
                    + " isolation."));
  }

  static Section of(Circuits circuits) {
    CircuitDesign design = circuits.design();
    Section section = Section.of(TITLE).with(new Paragraph(answer(design)));
    if (design.circuits().isEmpty()) {
      return section.with(new CheckList(Checks.bySeverity(circuits.review().checks())));
    }
    return section
        .with(
            table(design),
            new Paragraph(
                "Hottest: the conductor in normal operation. Lowest fault: at the"
                    + " far end, battery empty, cold and old, cables and joints hot. Highest: at"
                    + " the battery, full and warm. Cleared in: the longest time that the fuse, or"
                    + " the trip with its contactor, takes for the lowest fault. Governing: the"
                    + " check that rules out the nearest smaller choice."),
            cover(design))
        .with(
            ReviewSection.open("Whether the list of circuits is whole", circuits.review().checks()))
        .withParts(parts(design));
  }

  private static String answer(CircuitDesign design) {
    Optional<BlockedCircuit> blocked = design.blocked();
    if (blocked.isPresent()) {
      return "No parts of the catalogue serve every circuit: " + design.whyNone() + ".";
    }
    return "The smallest parts of the catalogue that pass every check together, proven over "
        + combinations(design)
        + " combinations"
        + design.mass().map(mass -> "; " + format(mass, Kind.MASS) + " in all").orElse("")
        + price(design).map(price -> ", " + price).orElse("")
        + ".";
  }

  /** In full up to a million, then as a power of ten. */
  private static String combinations(CircuitDesign design) {
    String digits = design.combinations().toString();
    return digits.length() <= 7 ? digits : "more than 10^" + (digits.length() - 1);
  }

  private static Optional<String> price(CircuitDesign design) {
    Optional<Price> sum = Optional.empty();
    for (CircuitPart part : design.parts()) {
      if (part.price().isEmpty()) {
        return Optional.empty();
      }
      Price own = part.price().get();
      sum = Optional.of(sum.map(before -> before.plus(own)).orElse(own));
    }
    return sum.map(Price::toString);
  }

  private static DataTable table(CircuitDesign design) {
    DataTable table =
        DataTable.of(
            "One row a circuit",
            "Circuit",
            "Load (highest)",
            "Cable",
            "Fuse",
            "Contactor",
            ">Drop",
            ">Hottest",
            "Lowest, highest fault",
            "Cleared in",
            "Governing check");
    for (DesignedCircuit each : design.circuits()) {
      table = table.row(row(each));
    }
    return table;
  }

  private static String[] row(DesignedCircuit each) {
    return new String[] {
      each.circuit().name(),
      load(each),
      cable(each),
      each.fuse()
          .map(Fuse::name)
          .orElseGet(() -> each.protectingFuse().map(f -> "by " + f.name()).orElse(NONE)),
      each.contactor().map(Contactor::name).orElse(NONE),
      format(each.voltageDrop(), Kind.VOLTAGE),
      format(each.operatingTemperature(), Kind.TEMPERATURE),
      each.lowestFault().map(a -> format(a, Kind.CURRENT) + ", ").orElse("")
          + format(each.highestFault(), Kind.CURRENT),
      each.clearingTime().map(t -> format(t, Kind.TIME)).orElse(NONE),
      governing(each.governing())
    };
  }

  private static String load(DesignedCircuit each) {
    String continuous =
        each.circuit().continuousCurrent().map(a -> format(a, Kind.CURRENT)).orElse(NONE);
    return each.circuit()
        .highestOperatingCurrent()
        .map(a -> format(a, Kind.CURRENT))
        .filter(highest -> !highest.equals(continuous))
        .map(highest -> continuous + " (" + highest + ")")
        .orElse(continuous);
  }

  static String cable(DesignedCircuit each) {
    String size = each.cable().size().name();
    return each.parallelRuns() == 1 ? size : each.parallelRuns() + " × " + size;
  }

  /** The code in words, which is shorter than what the check says. */
  private static String governing(Check check) {
    return check.code().replace(".", ": ").replace('-', ' ');
  }

  private static DataTable cover(CircuitDesign design) {
    DataTable table =
        DataTable.of(
            "What deals with each current, from the highest in operation to the highest fault",
            "Circuit",
            "Bands",
            "Gaps");
    for (DesignedCircuit each : design.circuits()) {
      table =
          table.row(
              each.circuit().name(),
              each.cover().bands().stream().map(Object::toString).collect(Collectors.joining("; ")),
              each.cover().isComplete() ? "none" : each.cover().gaps().size() + "");
    }
    return table;
  }

  private static Section parts(CircuitDesign design) {
    DataTable table = DataTable.of("", "Circuit", "Part", ">Mass", ">Price", "Next best choice");
    for (DesignedCircuit each : design.circuits()) {
      String name = each.circuit().name();
      String next = each.runnerUp().map(CircuitSection::names).orElse(NONE);
      for (CircuitPart part : each.parts()) {
        table =
            table.row(
                name,
                part.name(),
                part.mass().map(m -> format(m, Kind.MASS)).orElse("not known"),
                part.price().map(Price::toString).orElse("not known"),
                next);
        name = "";
        next = "";
      }
    }
    return Section.of("Parts of the circuits").with(table);
  }

  private static String names(DesignedCircuit other) {
    List<String> names = new ArrayList<>(List.of(cable(other)));
    other.fuse().ifPresent(f -> names.add(f.name()));
    other.contactor().ifPresent(k -> names.add(k.name()));
    other.precharge().ifPresent(p -> names.add(p.resistor().name()));
    return String.join(", ", names);
  }

  /** The workings of all circuits, a part for each: cable and faults, then pre-charge. */
  static Section working(Circuits circuits) {
    Section section = Section.of("Working of the circuits");
    for (DesignedCircuit each : circuits.design().circuits()) {
      Section own = Section.of(each.circuit().name()).with(new Working(each.worksheet()));
      if (each.precharge().isPresent()) {
        own = own.with(new Working(each.precharge().get().worksheet()));
      }
      section = section.withParts(own);
    }
    return section;
  }
}
