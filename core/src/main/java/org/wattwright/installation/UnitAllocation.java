package org.wattwright.installation;

import java.util.ArrayList;
import java.util.List;

/** Goes along the string and fills one unit after the other. */
final class UnitAllocation {
  private final MonitorUnitType type;
  private final boolean bearsPack;
  private final List<MeasuringUnit> units = new ArrayList<>();
  private final List<MeasuringUnit.Slice> open = new ArrayList<>();

  UnitAllocation(MonitorUnitType type, double packV) {
    this.type = type;
    this.bearsPack = type.bears(packV);
  }

  List<MeasuringUnit> allocate(List<MonitoredModule> string) {
    for (MonitoredModule module : string) {
      if (!open.isEmpty() && !mayFollow(module)) {
        close();
      }
      add(module);
    }
    close();
    return units;
  }

  private boolean mayFollow(MonitoredModule module) {
    String bay = open.get(0).module().bay();
    boolean unbroken = bearsPack || !module.joinBefore().mayOpen();
    return bay.equals(module.bay()) && unbroken && fits(module);
  }

  private boolean fits(MonitoredModule module) {
    int cells = open.stream().mapToInt(MeasuringUnit.Slice::cells).sum();
    int sensors = open.stream().mapToInt(MeasuringUnit.Slice::temperatureSensors).sum();
    return cells + module.seriesCells() <= type.channels()
        && sensors + module.temperatureSensors() <= type.temperatureInputs();
  }

  /** A module of more cells than channels fills units of its own, its sensors on the first. */
  private void add(MonitoredModule module) {
    int left = module.seriesCells();
    int sensors = module.temperatureSensors();
    while (left > type.channels()) {
      open.add(new MeasuringUnit.Slice(module, type.channels(), sensors));
      close();
      left -= type.channels();
      sensors = 0;
    }
    open.add(new MeasuringUnit.Slice(module, left, sensors));
  }

  private void close() {
    String bay = open.get(0).module().bay();
    long before = units.stream().filter(unit -> unit.bay().equals(bay)).count();
    String number = before == 0 ? "" : " " + (before + 1);
    String mainBay = units.isEmpty() ? bay : units.get(0).bay();
    String name = (bay.equals(mainBay) ? "main unit" : "remote unit " + bay) + number;
    units.add(new MeasuringUnit(name, bay, open));
    open.clear();
  }
}
