package org.wattwright.examples;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.wattwright.battery.Pack;
import org.wattwright.battery.SeriesString;
import org.wattwright.conversion.Drawing;
import org.wattwright.examples.plot.LineSymbol;
import org.wattwright.examples.plot.SingleLinePlot;
import org.wattwright.protection.CircuitDesign;
import org.wattwright.protection.CircuitRole;
import org.wattwright.protection.DesignedCircuit;
import org.wattwright.protection.LineElement;

/** The single-line diagram of the circuits: strings above, the main circuit, branches below. */
final class SingleLine {
  private final CircuitDesign design;
  private final List<DesignedCircuit> links;

  private SingleLine(CircuitDesign design) {
    this.design = design;
    this.links = new ArrayList<>(ofRole(CircuitRole.INTER_BAY_LINK));
  }

  static Drawing of(Pack pack, CircuitDesign design) {
    return new SingleLine(design).drawing(pack);
  }

  private List<DesignedCircuit> ofRole(CircuitRole role) {
    return design.circuits().stream().filter(each -> each.circuit().role() == role).toList();
  }

  private Drawing drawing(Pack pack) {
    SingleLinePlot plot = SingleLinePlot.empty();
    List<DesignedCircuit> strings = ofRole(CircuitRole.STRING);
    for (int i = 0; i < pack.strings().size(); i++) {
      SeriesString string = pack.strings().get(i);
      Optional<DesignedCircuit> own =
          i < strings.size() ? Optional.of(strings.get(i)) : Optional.empty();
      plot = plot.source(new SingleLinePlot.Column(string.name(), source(string, own)));
    }
    for (DesignedCircuit main : ofRole(CircuitRole.TRACTION_MAIN)) {
      plot = plot.main(new SingleLinePlot.Column(main.circuit().name(), box(main)));
      plot = plot.branch(new SingleLinePlot.Column("drive", drive(main)));
    }
    for (DesignedCircuit branch : design.circuits()) {
      if (branch.circuit().role().isFedByTractionBattery()
          && branch.circuit().upstream().isPresent()) {
        plot = plot.branch(new SingleLinePlot.Column(branch.circuit().name(), branch(branch)));
      }
    }
    for (DesignedCircuit low : ofRole(CircuitRole.LOW_VOLTAGE_FEED)) {
      List<SingleLinePlot.Element> elements = new ArrayList<>();
      elements.add(element(LineSymbol.BATTERY, "low voltage"));
      elements.addAll(elements(low));
      elements.add(element(LineSymbol.LOAD, ""));
      plot = plot.apart(new SingleLinePlot.Column(low.circuit().name(), elements));
    }
    return new Drawing(
        plot.svg("single-line"),
        "Single-line diagram",
        "Symbols of IEC 60617. Above, the strings of the pack with the fuse among their modules;"
            + " between the buses the main fuse and the contactor with its pre-charge; below, the"
            + " branches. Sense wires are not drawn.");
  }

  private List<SingleLinePlot.Element> source(SeriesString string, Optional<DesignedCircuit> own) {
    List<SingleLinePlot.Element> elements = new ArrayList<>();
    for (int i = 0; i < string.groups().size(); i++) {
      SeriesString.Group group = string.groups().get(i);
      elements.add(element(LineSymbol.BATTERY, group.count() + " × " + group.bay()));
      if (i + 1 < string.groups().size() && !links.isEmpty()) {
        elements.addAll(elements(links.remove(0)));
      }
    }
    own.ifPresent(circuit -> elements.addAll(elements(circuit)));
    return elements;
  }

  /** Without the cable, which lies behind the second bus. */
  private static List<SingleLinePlot.Element> box(DesignedCircuit main) {
    return elements(main).stream().filter(e -> e.symbol() != LineSymbol.CABLE).toList();
  }

  private List<SingleLinePlot.Element> drive(DesignedCircuit main) {
    List<SingleLinePlot.Element> elements = new ArrayList<>();
    elements.add(cable(main));
    elements.add(element(LineSymbol.INVERTER, "inverter"));
    for (DesignedCircuit phases : ofRole(CircuitRole.MOTOR_PHASE)) {
      elements.addAll(elements(phases));
    }
    elements.add(element(LineSymbol.MOTOR, "motor"));
    return elements;
  }

  private List<SingleLinePlot.Element> branch(DesignedCircuit branch) {
    List<SingleLinePlot.Element> elements = new ArrayList<>(elements(branch));
    switch (branch.circuit().role()) {
      case CHARGER -> {
        elements.add(element(LineSymbol.CHARGER, ""));
        ofRole(CircuitRole.AC_INLET).forEach(inlet -> elements.addAll(elements(inlet)));
        elements.add(element(LineSymbol.INLET, "inlet, AC"));
      }
      case DCDC_INPUT -> {
        elements.add(element(LineSymbol.DC_CONVERTER, ""));
        ofRole(CircuitRole.DCDC_OUTPUT).forEach(out -> elements.addAll(reversed(elements(out))));
        elements.add(element(LineSymbol.BATTERY, "low voltage"));
      }
      case HEATER -> elements.add(element(LineSymbol.HEATER, ""));
      default -> elements.add(element(LineSymbol.LOAD, ""));
    }
    return elements;
  }

  /** The fuse sits at the battery, which is the far end as drawn. */
  private static List<SingleLinePlot.Element> reversed(List<SingleLinePlot.Element> elements) {
    List<SingleLinePlot.Element> other = new ArrayList<>(elements);
    java.util.Collections.reverse(other);
    return other;
  }

  private static SingleLinePlot.Element element(LineSymbol symbol, String label) {
    return new SingleLinePlot.Element(symbol, label);
  }

  private static SingleLinePlot.Element cable(DesignedCircuit each) {
    String size = each.cable().size().name();
    return element(
        LineSymbol.CABLE, each.parallelRuns() == 1 ? size : each.parallelRuns() + " × " + size);
  }

  private static List<SingleLinePlot.Element> elements(DesignedCircuit each) {
    List<SingleLinePlot.Element> elements = new ArrayList<>();
    boolean precharged = each.precharge().isPresent();
    for (LineElement element : each.elements()) {
      switch (element.type()) {
        case FUSE -> elements.add(element(LineSymbol.FUSE, element.label()));
        case DISCONNECT -> elements.add(element(LineSymbol.DISCONNECTOR, element.label()));
        case CONTACTOR ->
            elements.add(
                precharged
                    ? element(
                        LineSymbol.PRECHARGED_CONTACTOR,
                        "contactor "
                            + element.label()
                            + ", "
                            + each.precharge().orElseThrow().resistor().name())
                    : element(LineSymbol.CONTACTOR, "contactor " + element.label()));
        case CABLE -> elements.add(cable(each));
        case PRECHARGE, LOAD -> {}
      }
    }
    return elements;
  }
}
