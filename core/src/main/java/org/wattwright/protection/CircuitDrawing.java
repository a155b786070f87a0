package org.wattwright.protection;

import java.util.ArrayList;
import java.util.List;
import org.wattwright.units.Kind;

/** What plots and the single-line diagram show of one circuit. */
final class CircuitDrawing {
  private final CircuitAssembly parts;

  CircuitDrawing(CircuitAssembly parts) {
    this.parts = parts;
  }

  List<CoverCurve> curves() {
    double toA = parts.of().numbers().highestA();
    List<CoverCurve> curves = new ArrayList<>();
    FuseCase fuse = parts.fuseInCharge();
    if (fuse != null && fuse.line() != null) {
      curves.add(CoverCurve.of("fuse " + fuse.fuse().name(), fuse.line().clearing(), toA));
    }
    curves.add(
        CoverCurve.of("cable " + parts.cable().label(), parts.cable().withstand().curve(), toA));
    SwitchCase contactor = parts.contactor();
    if (contactor != null) {
      String name = contactor.contactor().name();
      List<TimeCurve> withstands = contactor.line().withstands();
      for (int i = 0; i < withstands.size(); i++) {
        String what = i == 0 ? "closed contacts of " + name + ", I²t" : name + " carries, by time";
        curves.add(CoverCurve.of(what, withstands.get(i), toA));
      }
    }
    return curves;
  }

  List<CoverMark> marks() {
    Circuit circuit = parts.of().circuit();
    List<CoverMark> marks = new ArrayList<>();
    circuit
        .highestOperatingCurrent()
        .ifPresent(current -> marks.add(new CoverMark("highest operating current", current)));
    circuit.trips().forEach(trip -> marks.add(new CoverMark("trip", trip.current())));
    SwitchCase contactor = parts.contactor();
    if (contactor != null && contactor.line().breakA() > 0) {
      marks.add(new CoverMark("contactor may break", Kind.CURRENT.ofSi(contactor.line().breakA())));
    }
    parts
        .lowestFaultA()
        .ifPresent(lowA -> marks.add(new CoverMark("lowest fault", Kind.CURRENT.ofSi(lowA))));
    double highestA = parts.of().numbers().highestA();
    marks.add(new CoverMark("highest fault", Kind.CURRENT.ofSi(highestA)));
    return marks;
  }

  List<LineElement> elements() {
    Circuit circuit = parts.of().circuit();
    List<LineElement> elements = new ArrayList<>();
    FuseCase fuse = parts.fuseInCharge();
    if (circuit.isFused() && fuse != null) {
      elements.add(new LineElement(LineElement.Type.FUSE, fuse.fuse().name()));
    }
    circuit
        .serviceDisconnectVoltage()
        .ifPresent(v -> elements.add(new LineElement(LineElement.Type.DISCONNECT, v + " DC")));
    SwitchCase contactor = parts.contactor();
    if (contactor != null) {
      String name = contactor.contactor().name();
      elements.add(new LineElement(LineElement.Type.CONTACTOR, name));
      contactor.precharge().ifPresent(each -> elements.add(precharge(each)));
    }
    elements.add(new LineElement(LineElement.Type.CABLE, parts.cable().label()));
    elements.add(new LineElement(LineElement.Type.LOAD, circuit.name()));
    return elements;
  }

  private static LineElement precharge(PrechargeCase chosen) {
    return new LineElement(LineElement.Type.PRECHARGE, chosen.result().resistor().toString());
  }
}
