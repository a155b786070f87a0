package org.wattwright.layout;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wattwright.check.Recorder;

/** A pack of several types over the bays. An entry is one of the mixes that a bay has room for. */
final class MixTables extends BayTables {
  private final int unit;
  private final MixSpace space;

  /**
   * Mixes of each bay, as numbers of the space, in order of units of the first type, the next ….
   */
  private final int[][] mixes;

  /** Entries of each bay within its mass limit. */
  private final int[][] allowed;

  private long @Nullable [] ways;

  /** Allowed without the limit of {@code liftedBay}, if that is not negative. */
  MixTables(AllocationSpec spec, PackOption option, int liftedBay) {
    super(spec, option);
    this.unit = spec.unit(option);
    this.space = new MixSpace(option, unit);
    this.mixes = new int[bays()][];
    this.allowed = new int[bays()][];
    for (int bay = 0; bay < mixes.length; bay++) {
      mixes[bay] = mixes(spec.bays().get(bay));
      fill(bay, liftedBay);
    }
  }

  private int[] mixes(Bay bay) {
    int[] rooms = option().groups().stream().mapToInt(g -> bay.roomFor(g.module())).toArray();
    List<Integer> found = new ArrayList<>();
    add(found, new RoomShare(rooms), new int[rooms.length], 0);
    return found.stream().mapToInt(Integer::intValue).toArray();
  }

  private void add(List<Integer> found, RoomShare share, int[] modules, int type) {
    if (type == modules.length) {
      int[] units = Arrays.stream(modules).map(count -> count / unit).toArray();
      found.add(space.code(units));
      return;
    }
    for (int count = 0; count <= space.all(type); count++) {
      modules[type] = count * unit;
      if (!share.fits(modules)) {
        break;
      }
      add(found, share, modules, type + 1);
    }
    modules[type] = 0;
  }

  private void fill(int bay, int liftedBay) {
    boolean lifted = bay == liftedBay || liftedBay == NO_LIMITS;
    @Nullable LoadRule limit = lifted ? null : spec().bayRule(bay);
    BayInfluence.Masses masses = new BayInfluence.Masses(option());
    loads[bay] = new BayLoad[mixes[bay].length];
    mass[bay] = new long[mixes[bay].length];
    List<Integer> kept = new ArrayList<>();
    for (int entry = 0; entry < mixes[bay].length; entry++) {
      loads[bay][entry] =
          spec().influences().get(bay).load(masses, modules(bay, entry), Recorder.OFF);
      mass[bay][entry] = Micrograms.of(loads[bay][entry].massKg());
      if (limit == null || entry == 0 || limit.isKept(mass[bay][entry])) {
        kept.add(entry);
      }
    }
    allowed[bay] = kept.stream().mapToInt(Integer::intValue).toArray();
  }

  MixSpace space() {
    return space;
  }

  /** The mix that an entry stands for. */
  int mix(int bay, int entry) {
    return mixes[bay][entry];
  }

  /** Entries of a bay within its mass limit. */
  int[] allowed(int bay) {
    return allowed[bay];
  }

  @Override
  int entries(int bay) {
    return mixes[bay].length;
  }

  @Override
  int[] modules(int bay, int entry) {
    int[] modules = new int[space.types()];
    for (int type = 0; type < modules.length; type++) {
      modules[type] = space.units(mixes[bay][entry], type) * unit;
    }
    return modules;
  }

  /** In how many ways each mix of the space can be put into the bays. */
  private long[] ways() {
    if (ways == null) {
      long[] counted = new long[space.size()];
      counted[0] = 1;
      for (int bay = 0; bay < bays(); bay++) {
        counted = withOneMore(counted, bay);
      }
      ways = counted;
    }
    return ways;
  }

  private long[] withOneMore(long[] before, int bay) {
    long[] more = new long[before.length];
    for (int mix = 0; mix < before.length; mix++) {
      if (before[mix] == 0) {
        continue;
      }
      for (int entry : allowed[bay]) {
        int added = mixes[bay][entry];
        if (space.fit(mix, added)) {
          more[mix + added] = Ways.plus(more[mix + added], before[mix]);
        }
      }
    }
    return more;
  }

  @Override
  int modulesWithoutRoom() {
    int most = 0;
    for (int mix = 0; mix < space.size(); mix++) {
      most = ways()[mix] == 0 ? most : Math.max(most, space.units(mix));
    }
    return option().moduleCount() - most * unit;
  }

  @Override
  long size() {
    return ways()[space.full()];
  }

  @Override
  long mostMass() {
    return Arrays.stream(mass).mapToLong(row -> Arrays.stream(row).max().orElse(0)).sum();
  }

  /** No bound but that of packs for which there is no room. */
  @Override
  double leastMissed(long[][] value, LoadRule rule, int mostUsed) {
    return size() == 0 ? Double.POSITIVE_INFINITY : 0;
  }

  @Override
  boolean scan(AllocationScan.Question question, AllocationScan.Visitor visitor, Effort effort) {
    return size() == 0 || new MixScan(this, question, visitor, effort).run();
  }
}
