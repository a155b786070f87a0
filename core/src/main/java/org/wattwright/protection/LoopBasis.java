package org.wattwright.protection;

import java.util.ArrayList;
import java.util.List;
import org.wattwright.check.Basis;

/** What a fault loop rests on: the weakest of its parts, and those that are estimated. */
record LoopBasis(FaultLoop loop) {
  Basis weakest() {
    Basis weakest = loop.openCircuit().basis().and(loop.arc().basis());
    for (FaultLoop.Part<?> part : parts()) {
      weakest = weakest.and(part.value().basis());
    }
    return weakest;
  }

  /** Names as checks print them. */
  List<String> estimates() {
    List<String> names = new ArrayList<>();
    if (loop.openCircuit().basis() == Basis.ESTIMATED) {
      names.add("open-circuit voltage");
    }
    if (loop.arc().basis() == Basis.ESTIMATED) {
      names.add("arc voltage");
    }
    loop.resistances().forEach(part -> addIfEstimated("resistance of ", part, names));
    loop.inductances().forEach(part -> addIfEstimated("inductance of ", part, names));
    return names;
  }

  private List<FaultLoop.Part<?>> parts() {
    List<FaultLoop.Part<?>> parts = new ArrayList<>(loop.resistances());
    parts.addAll(loop.inductances());
    return parts;
  }

  private static void addIfEstimated(String what, FaultLoop.Part<?> part, List<String> names) {
    if (part.value().basis() == Basis.ESTIMATED) {
      names.add(what + part.name());
    }
  }
}
