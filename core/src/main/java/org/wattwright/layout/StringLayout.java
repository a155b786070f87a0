package org.wattwright.layout;

import java.util.ArrayList;
import java.util.List;
import org.wattwright.battery.Pack;
import org.wattwright.battery.SeriesString;
import org.wattwright.units.Kind;

/** Lays the strings of an allocation through its bays, along the route of the shortest links. */
final class StringLayout {
  private final AllocationSpec spec;
  private final PackOption option;
  private final int[] order;

  /** Modules of each type in each bay that one string may take there at most. */
  private final int[][] share;

  private final int[][] left;
  private final double ohmPerM;

  private StringLayout(Allocation allocation, double ohmPerM) {
    this.spec = allocation.spec();
    this.option = allocation.tables().option();
    this.left = allocation.modules();
    this.share = allocation.modules();
    this.order = spec.route(option).order(left);
    this.ohmPerM = ohmPerM;
    for (int[] ofType : share) {
      for (int bay = 0; bay < ofType.length && spec.draft().equalStrings; bay++) {
        ofType[bay] /= option.parallel();
      }
    }
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
    SeriesString.Builder string = SeriesString.of(name);
    int[] wanted = option.perString();
    double cableM = 0;
    boolean begun = false;
    for (int i = 0; i < order.length; i++) {
      cableM += begun ? linkM(order[i - 1], order[i]) : 0;
      if (take(string, wanted, order[i])) {
        link(string, cableM);
        cableM = 0;
        begun = true;
      }
    }
    return string.build();
  }

  /** Whether the string has a module in the bay. */
  private boolean take(SeriesString.Builder string, int[] wanted, int bay) {
    boolean any = false;
    for (int type = 0; type < wanted.length; type++) {
      int taken = Math.min(wanted[type], Math.min(share[type][bay], left[type][bay]));
      if (taken > 0) {
        string.group(spec.bays().get(bay).name(), option.module(type), taken);
        wanted[type] -= taken;
        left[type][bay] -= taken;
        any = true;
      }
    }
    return any;
  }

  private double linkM(int from, int to) {
    return spec.links().isStated()
        ? LinkMap.toM(spec.links().between(from, to, spec.draft().contiguous))
        : 0;
  }

  private void link(SeriesString.Builder string, double cableM) {
    if (cableM > 0) {
      string.link(Kind.RESISTANCE.ofSi(cableM * ohmPerM));
    }
  }
}
