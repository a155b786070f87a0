package org.wattwright.layout;

import java.util.ArrayList;
import java.util.List;
import org.wattwright.battery.Pack;
import org.wattwright.battery.SeriesString;
import org.wattwright.units.Kind;

/** Lays the strings of an allocation through its bays, along the route of the shortest links. */
final class StringLayout {
  private final Allocation allocation;
  private final int[] order;
  private final int[] left;
  private final double ohmPerM;

  private StringLayout(Allocation allocation, double ohmPerM) {
    this.allocation = allocation;
    this.left = allocation.modules();
    this.order = allocation.spec().route(allocation.tables().option()).order(allocation.modules());
    this.ohmPerM = ohmPerM;
  }

  static Pack pack(Allocation allocation, double ohmPerM) {
    StringLayout layout = new StringLayout(allocation, ohmPerM);
    List<SeriesString> strings = new ArrayList<>();
    for (int i = 1; i <= allocation.parallel(); i++) {
      strings.add(layout.next("string " + i));
    }
    return Pack.of(strings);
  }

  /** Equal strings take their share in each bay; others what is left, bay after bay. */
  private SeriesString next(String name) {
    boolean equal = allocation.spec().draft().equalStrings;
    int[] share = allocation.units();
    SeriesString.Builder string = SeriesString.of(name);
    int wanted = allocation.series();
    int before = -1;
    for (int bay : order) {
      int taken = Math.min(wanted, equal ? share[bay] : left[bay]);
      if (taken == 0) {
        continue;
      }
      string.group(allocation.spec().bays().get(bay).name(), allocation.module(), taken);
      if (before >= 0) {
        link(string, before, bay);
      }
      wanted -= taken;
      left[bay] -= taken;
      before = bay;
    }
    return string.build();
  }

  private void link(SeriesString.Builder string, int from, int to) {
    AllocationSpec spec = allocation.spec();
    if (spec.links().isStated()) {
      long lengthNm = spec.links().between(from, to, spec.draft().contiguous);
      string.link(Kind.RESISTANCE.ofSi(LinkMap.toM(lengthNm) * ohmPerM));
    }
  }
}
