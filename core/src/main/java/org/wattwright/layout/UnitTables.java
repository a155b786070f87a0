package org.wattwright.layout;

import org.jspecify.annotations.Nullable;
import org.wattwright.check.Recorder;

/**
 * A pack of one type over the bays. An entry is a count in units: one module, or one of each string
 * where all strings are equal.
 */
final class UnitTables extends BayTables {
  private final int unit;
  private final int units;
  private final long mostMassOfUnit;
  private final int[] rooms;
  private final int[] caps;

  /** Caps without the limit of {@code liftedBay}, if that is not negative. */
  UnitTables(AllocationSpec spec, PackOption option, int liftedBay) {
    super(spec, option);
    this.unit = spec.unit(option);
    this.units = option.moduleCount() / unit;
    this.mostMassOfUnit = Micrograms.of(option.moduleKg()[0] * unit) + 2;
    this.rooms = new int[bays()];
    this.caps = new int[bays()];
    for (int bay = 0; bay < caps.length; bay++) {
      int room = spec.bays().get(bay).roomFor(option.module(0)) / unit;
      rooms[bay] = Math.min(room, units);
      fill(bay, liftedBay);
    }
  }

  private void fill(int bay, int liftedBay) {
    BayInfluence influence = spec().influences().get(bay);
    boolean lifted = bay == liftedBay || liftedBay == NO_LIMITS;
    @Nullable LoadRule limit = lifted ? null : spec().bayRule(bay);
    BayInfluence.Masses masses = new BayInfluence.Masses(option());
    loads[bay] = new BayLoad[rooms[bay] + 1];
    mass[bay] = new long[rooms[bay] + 1];
    for (int count = 0; count <= rooms[bay]; count++) {
      loads[bay][count] = influence.load(masses, new int[] {count * unit}, Recorder.OFF);
      mass[bay][count] = Micrograms.of(loads[bay][count].massKg());
      if (limit == null || count == 0 || limit.isKept(mass[bay][count])) {
        caps[bay] = count;
      }
    }
  }

  /** Units to be shared out. */
  int units() {
    return units;
  }

  /** Most units in a bay. */
  int cap(int bay) {
    return caps[bay];
  }

  /** Most units in all bays together. */
  private int capacity() {
    int sum = 0;
    for (int cap : caps) {
      sum += cap;
    }
    return sum;
  }

  /** What one unit more weighs, rounded up twice over. */
  long mostMassOfUnit() {
    return mostMassOfUnit;
  }

  @Override
  int entries(int bay) {
    return caps[bay] + 1;
  }

  @Override
  int[] modules(int bay, int entry) {
    return new int[] {entry * unit};
  }

  @Override
  int[][] modules(int[] entries) {
    int[] modules = new int[entries.length];
    for (int bay = 0; bay < modules.length; bay++) {
      modules[bay] = entries[bay] * unit;
    }
    return new int[][] {modules};
  }

  @Override
  int modulesWithoutRoom() {
    return Math.max(0, units() - capacity()) * unit;
  }

  @Override
  long size() {
    long[] ways = new long[units() + 1];
    ways[0] = 1;
    for (int cap : caps) {
      ways = Ways.withOneMore(ways, cap);
    }
    return ways[units()];
  }

  @Override
  long mostMass() {
    long most = 0;
    for (int bay = 0; bay < caps.length; bay++) {
      most += mass[bay][caps[bay]];
    }
    return most;
  }

  @Override
  double leastMissed(long[][] value, LoadRule rule, int mostUsed) {
    return LatticeBound.of(this, value, rule, mostUsed);
  }

  @Override
  boolean scan(AllocationScan.Question question, AllocationScan.Visitor visitor, Effort effort) {
    return new AllocationScan(this, question, visitor, effort).run();
  }
}
