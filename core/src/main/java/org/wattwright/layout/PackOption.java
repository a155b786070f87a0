package org.wattwright.layout;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import org.wattwright.battery.BatteryModule;
import org.wattwright.units.Kind;

/**
 * One pack to be shared out over the bays: what each string holds in series, and so many strings in
 * parallel. Groups by mass of the module, heaviest first, then by name.
 */
record PackOption(List<SeriesGroup> groups, int parallel) {
  /** Heaviest module first: the order in which a bay fills. */
  private static final Comparator<SeriesGroup> HEAVIEST_FIRST =
      Comparator.comparingDouble((SeriesGroup group) -> -Kind.MASS.siValueOf(group.module().mass()))
          .thenComparing(group -> group.module().name());

  static final Comparator<PackOption> BY_CONTENT =
      Comparator.comparing(PackOption::groups, PackOption::compareGroups)
          .thenComparing(PackOption::parallel);

  PackOption {
    groups =
        groups.size() == 1 ? List.copyOf(groups) : groups.stream().sorted(HEAVIEST_FIRST).toList();
  }

  /** A pack of one type. */
  PackOption(BatteryModule module, int series, int parallel) {
    this(List.of(new SeriesGroup(module, series)), parallel);
  }

  private static int compareGroups(List<SeriesGroup> one, List<SeriesGroup> other) {
    for (int i = 0; i < Math.min(one.size(), other.size()); i++) {
      int order = one.get(i).module().name().compareTo(other.get(i).module().name());
      order = order != 0 ? order : Integer.compare(one.get(i).count(), other.get(i).count());
      if (order != 0) {
        return order;
      }
    }
    return Integer.compare(one.size(), other.size());
  }

  boolean isMixed() {
    return groups.size() > 1;
  }

  int types() {
    return groups.size();
  }

  BatteryModule module(int type) {
    return groups.get(type).module();
  }

  /** Modules in series in each string, of all types. */
  int series() {
    int sum = 0;
    for (SeriesGroup group : groups) {
      sum += group.count();
    }
    return sum;
  }

  int moduleCount() {
    return series() * parallel;
  }

  /** Mass of one module of each type, in kg. */
  double[] moduleKg() {
    return groups.stream().mapToDouble(g -> Kind.MASS.siValueOf(g.module().mass())).toArray();
  }

  /** Modules of each type in each string. */
  int[] perString() {
    return groups.stream().mapToInt(SeriesGroup::count).toArray();
  }

  @Override
  public String toString() {
    if (!isMixed()) {
      return series() + "s" + parallel + "p " + module(0).name();
    }
    String string = groups.stream().map(SeriesGroup::toString).collect(Collectors.joining(" + "));
    return series() + "s" + parallel + "p (" + string + ")";
  }
}
