package org.wattwright.layout;

/**
 * A lower bound of what any allocation of one pack misses a rule by, from number theory alone.
 *
 * <p>With the set of bays in use given, each further module moves the sum by a whole number of
 * steps from one fixed value: v = Σ v_b(1) + (N − |S|)·s + k·g, where s is what one more module
 * adds in one of the bays, and g the greatest common divisor of what it adds elsewhere instead and
 * of what bends the line in which a bay fills. So the sum lies on a lattice, and the point of it
 * nearest to the rule bounds what is missed. Masses and places as people type them, 24.6 kg and
 * 1240 mm, give a coarse lattice; with a lattice of one step the bound is 0, and still true.
 */
final class LatticeBound {
  private final UnitTables tables;
  private final long[][] value;
  private final LoadRule rule;
  private final int mostUsed;
  private double least = Double.POSITIVE_INFINITY;

  private LatticeBound(UnitTables tables, long[][] value, LoadRule rule, int mostUsed) {
    this.tables = tables;
    this.value = value;
    this.rule = rule;
    this.mostUsed = mostUsed;
  }

  /** In kg, or as a share; infinite if the pack has no allocation. */
  static double of(UnitTables tables, long[][] value, LoadRule rule, int mostUsed) {
    LatticeBound bound = new LatticeBound(tables, value, rule, mostUsed);
    bound.grow(0, new Used(0, 0, 0, 0, new Lattice(0, 0, false)));
    return bound.least;
  }

  /** Bays in use: how many, what they hold at most, what one unit in each of them adds. */
  private record Used(int bays, int room, long sum, long mass, Lattice lattice) {}

  /** What one more unit adds somewhere, and the step between that and what it adds elsewhere. */
  private record Lattice(long slope, long step, boolean hasSlope) {
    Lattice with(long[] row) {
      if (row.length < 3) {
        return this;
      }
      long own = row[2] - row[1];
      long grown = hasSlope ? gcd(step, own - slope) : step;
      for (int count = 3; count < row.length && grown != 1; count++) {
        grown = gcd(grown, row[count] - row[1] - (count - 1) * own);
      }
      return new Lattice(hasSlope ? slope : own, grown, true);
    }
  }

  /** All sets of bays, the largest first: their lattice is the finest. */
  private void grow(int bay, Used used) {
    if (least == 0 || used.bays() > Math.min(mostUsed, tables.units())) {
      return;
    }
    if (bay == tables.bays()) {
      finish(used);
      return;
    }
    if (tables.cap(bay) > 0) {
      grow(
          bay + 1,
          new Used(
              used.bays() + 1,
              used.room() + tables.cap(bay),
              used.sum() + value[bay][1],
              used.mass() + tables.mass(bay, 1),
              used.lattice().with(value[bay])));
    }
    grow(bay + 1, used);
  }

  private void finish(Used used) {
    if (used.room() < tables.units()) {
      return;
    }
    int more = tables.units() - used.bays();
    long sum = used.sum() + more * used.lattice().slope();
    long mass = used.mass() + more * tables.mostMassOfUnit();
    least = Math.min(least, rule.leastMissed(sum, used.lattice().step(), mass));
  }

  private static long gcd(long one, long other) {
    long a = Math.abs(one);
    long b = Math.abs(other);
    while (b != 0) {
      long rest = a % b;
      a = b;
      b = rest;
    }
    return a;
  }
}
