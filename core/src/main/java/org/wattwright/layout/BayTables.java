package org.wattwright.layout;

import java.util.List;
import org.wattwright.check.Recorder;

/**
 * One pack over the bays in whole numbers: what each entry of each bay adds to each rule. An entry
 * stands for what a bay holds; entry 0 is the empty bay.
 */
abstract class BayTables {
  /** Stands for the limit of no bay. */
  static final int NONE_LIFTED = -1;

  /** Stands for those of all bays. */
  static final int NO_LIMITS = -2;

  private final AllocationSpec spec;
  private final PackOption option;
  final BayLoad[][] loads;
  final long[][] mass;

  BayTables(AllocationSpec spec, PackOption option) {
    this.spec = spec;
    this.option = option;
    this.loads = new BayLoad[spec.bays().size()][];
    this.mass = new long[loads.length][];
  }

  /** Without the mass limit of {@code liftedBay}, if that is not negative. */
  static BayTables of(AllocationSpec spec, PackOption option, int liftedBay) {
    return option.isMixed()
        ? new MixTables(spec, option, liftedBay)
        : new UnitTables(spec, option, liftedBay);
  }

  /** Number of entries of a bay, those above its mass limit last or left out of scans. */
  abstract int entries(int bay);

  /** Modules of each type that an entry stands for. */
  abstract int[] modules(int bay, int entry);

  /** Modules of the pack that no bay has room for, at least; 0 if all fit. */
  abstract int modulesWithoutRoom();

  /** How many allocations there are, at most {@link Long#MAX_VALUE}. */
  abstract long size();

  /** More than any allocation weighs. */
  abstract long mostMass();

  /** What no allocation can miss a rule by less than; infinite if there is none. */
  abstract double leastMissed(long[][] value, LoadRule rule, int mostUsed);

  /** Shows a visitor every allocation of interest; false if stopped before the end. */
  abstract boolean scan(
      AllocationScan.Question question, AllocationScan.Visitor visitor, Effort effort);

  AllocationSpec spec() {
    return spec;
  }

  PackOption option() {
    return option;
  }

  int bays() {
    return loads.length;
  }

  BayLoad load(int bay, int entry) {
    return loads[bay][entry];
  }

  /** The working of what an entry adds. */
  BayLoad load(int bay, int entry, Recorder recorder) {
    BayInfluence.Masses masses = new BayInfluence.Masses(option);
    return spec.influences().get(bay).load(masses, modules(bay, entry), recorder);
  }

  /** Modules of each type in each bay. */
  int[][] modules(int[] entries) {
    int[][] modules = new int[option.types()][entries.length];
    for (int bay = 0; bay < entries.length; bay++) {
      int[] here = modules(bay, entries[bay]);
      for (int type = 0; type < here.length; type++) {
        modules[type][bay] = here[type];
      }
    }
    return modules;
  }

  /** What each entry adds to a rule on all bays. */
  long[][] of(LoadRule rule) {
    long[][] table = new long[bays()][];
    for (int bay = 0; bay < table.length; bay++) {
      table[bay] = new long[entries(bay)];
      for (int entry = 0; entry < table[bay].length; entry++) {
        table[bay][entry] = rule.loadOf(loads[bay][entry]);
      }
    }
    return table;
  }

  /** What each entry adds to a rule on one bay. */
  long[][] of(LoadRule rule, int onlyBay) {
    long[][] table = of(rule);
    for (int bay = 0; bay < table.length; bay++) {
      table[bay] = bay == onlyBay ? table[bay] : new long[entries(bay)];
    }
    return table;
  }

  List<long[][]> of(List<LoadRule> rules) {
    return rules.stream().map(this::of).toList();
  }

  /** What an entry weighs, enclosure included. */
  long mass(int bay, int entry) {
    return mass[bay][entry];
  }

  long massOf(int[] entries) {
    return sum(mass, entries);
  }

  /** Moment of height, in 10⁻⁹ kg·m; meaningless if a height is not known. */
  long heightOf(int[] entries) {
    long sum = 0;
    for (int bay = 0; bay < entries.length; bay++) {
      sum += Micrograms.of(loads[bay][entries[bay]].heightKgM());
    }
    return sum;
  }

  static long sum(long[][] table, int[] entries) {
    long sum = 0;
    for (int bay = 0; bay < entries.length; bay++) {
      sum += table[bay][entries[bay]];
    }
    return sum;
  }
}
