package org.wattwright.layout;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wattwright.check.Recorder;
import org.wattwright.units.Kind;

/**
 * One pack over the bays in whole numbers: what each count in each bay adds to each rule. Counts
 * are in units: one module, or one of each string where all strings are equal.
 */
final class BayTables {
  /** Stands for the limit of no bay. */
  static final int NONE_LIFTED = -1;

  /** Stands for those of all bays. */
  static final int NO_LIMITS = -2;

  private final AllocationSpec spec;
  private final PackOption option;
  private final int unit;
  private final BayLoad[][] loads;
  private final int[] rooms;
  private final int[] caps;
  private final long[][] mass;

  /** Caps without the limit of {@code liftedBay}, if that is not negative. */
  BayTables(AllocationSpec spec, PackOption option, int liftedBay) {
    this.spec = spec;
    this.option = option;
    this.unit = spec.unit(option);
    int bays = spec.bays().size();
    this.rooms = new int[bays];
    this.caps = new int[bays];
    this.loads = new BayLoad[bays][];
    this.mass = new long[bays][];
    for (int bay = 0; bay < bays; bay++) {
      int room = spec.bays().get(bay).roomFor(option.module()) / unit;
      rooms[bay] = Math.min(room, units());
      fill(bay, liftedBay);
    }
  }

  private void fill(int bay, int liftedBay) {
    double moduleKg = Kind.MASS.siValueOf(option.module().mass());
    BayInfluence influence = spec.influences().get(bay);
    boolean lifted = bay == liftedBay || liftedBay == NO_LIMITS;
    @Nullable LoadRule limit = lifted ? null : spec.bayRule(bay);
    loads[bay] = new BayLoad[rooms[bay] + 1];
    mass[bay] = new long[rooms[bay] + 1];
    for (int count = 0; count <= rooms[bay]; count++) {
      loads[bay][count] = influence.load(moduleKg, count * unit, Recorder.OFF);
      mass[bay][count] = Micrograms.of(loads[bay][count].massKg());
      if (limit == null || count == 0 || limit.isKept(mass[bay][count])) {
        caps[bay] = count;
      }
    }
  }

  PackOption option() {
    return option;
  }

  int unit() {
    return unit;
  }

  /** Units to be shared out. */
  int units() {
    return option.moduleCount() / unit;
  }

  int bays() {
    return caps.length;
  }

  /** Most units in a bay. */
  int cap(int bay) {
    return caps[bay];
  }

  /** Most units in all bays together. */
  int capacity() {
    int sum = 0;
    for (int cap : caps) {
      sum += cap;
    }
    return sum;
  }

  BayLoad load(int bay, int count) {
    return loads[bay][count];
  }

  /** What each count adds to a rule on all bays. */
  long[][] of(LoadRule rule) {
    long[][] table = new long[caps.length][];
    for (int bay = 0; bay < caps.length; bay++) {
      table[bay] = new long[caps[bay] + 1];
      for (int count = 0; count <= caps[bay]; count++) {
        table[bay][count] = rule.loadOf(loads[bay][count]);
      }
    }
    return table;
  }

  /** What each count adds to a rule on one bay. */
  long[][] of(LoadRule rule, int onlyBay) {
    long[][] table = of(rule);
    for (int bay = 0; bay < caps.length; bay++) {
      table[bay] = bay == onlyBay ? table[bay] : new long[caps[bay] + 1];
    }
    return table;
  }

  List<long[][]> of(List<LoadRule> rules) {
    return rules.stream().map(this::of).toList();
  }

  /** What so many units and the enclosure weigh. */
  long mass(int bay, int count) {
    return mass[bay][count];
  }

  /** What one unit more weighs, rounded up twice over. */
  long mostMassOfUnit() {
    return Micrograms.of(Kind.MASS.siValueOf(option.module().mass()) * unit) + 2;
  }

  long massOf(int[] counts) {
    return sum(mass, counts);
  }

  /** More than any allocation weighs. */
  long mostMass() {
    long most = 0;
    for (int bay = 0; bay < caps.length; bay++) {
      most += mass[bay][caps[bay]];
    }
    return most;
  }

  /** Moment of height, in 10⁻⁹ kg·m; meaningless if a height is not known. */
  long heightOf(int[] counts) {
    long sum = 0;
    for (int bay = 0; bay < counts.length; bay++) {
      sum += Micrograms.of(loads[bay][counts[bay]].heightKgM());
    }
    return sum;
  }

  static long sum(long[][] table, int[] counts) {
    long sum = 0;
    for (int bay = 0; bay < counts.length; bay++) {
      sum += table[bay][counts[bay]];
    }
    return sum;
  }

  /** How many allocations there are, at most {@link Long#MAX_VALUE}. */
  long size() {
    long[] ways = new long[units() + 1];
    ways[0] = 1;
    for (int cap : caps) {
      ways = Ways.withOneMore(ways, cap);
    }
    return ways[units()];
  }
}
