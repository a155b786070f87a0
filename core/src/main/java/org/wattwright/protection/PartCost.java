package org.wattwright.protection;

/**
 * What parts cost by the objective: two sums, the first of which decides, each with the number of
 * parts of which it is unknown; before both the number of choices that could not be checked in all
 * points. Whole numbers, so that the order of adding never matters.
 */
record PartCost(long provisional, long unknownFirst, long first, long unknownSecond, long second)
    implements Comparable<PartCost> {
  static final PartCost NOTHING = new PartCost(0, 0, 0, 0, 0);

  static final PartCost ONE_PROVISIONAL = new PartCost(1, 0, 0, 0, 0);

  PartCost plus(PartCost other) {
    return new PartCost(
        provisional + other.provisional,
        unknownFirst + other.unknownFirst,
        first + other.first,
        unknownSecond + other.unknownSecond,
        second + other.second);
  }

  @Override
  public int compareTo(PartCost other) {
    int byProvisional = Long.compare(provisional, other.provisional);
    if (byProvisional != 0) {
      return byProvisional;
    }
    int byUnknown = Long.compare(unknownFirst, other.unknownFirst);
    if (byUnknown != 0) {
      return byUnknown;
    }
    int byFirst = Long.compare(first, other.first);
    if (byFirst != 0) {
      return byFirst;
    }
    int bySecondUnknown = Long.compare(unknownSecond, other.unknownSecond);
    return bySecondUnknown != 0 ? bySecondUnknown : Long.compare(second, other.second);
  }
}
