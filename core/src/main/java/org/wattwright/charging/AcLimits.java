package org.wattwright.charging;

import java.util.EnumMap;
import java.util.Map;

/** The limits of a current drawn from the mains, in A, and which of them is the least. */
final class AcLimits {
  private final Map<AcLimit, Double> currentsA;

  private AcLimits(Map<AcLimit, Double> currentsA) {
    this.currentsA = currentsA;
  }

  static AcLimits of(AcLimit limit, double currentA) {
    return new AcLimits(new EnumMap<>(Map.of(limit, currentA)));
  }

  AcLimits and(AcLimit limit, double currentA) {
    Map<AcLimit, Double> more = new EnumMap<>(currentsA);
    more.put(limit, currentA);
    return new AcLimits(more);
  }

  Map<AcLimit, Double> asMap() {
    return currentsA;
  }

  boolean has(AcLimit limit) {
    return currentsA.containsKey(limit);
  }

  /** Infinite for a limit that is not there. */
  double currentA(AcLimit limit) {
    return currentsA.getOrDefault(limit, Double.POSITIVE_INFINITY);
  }

  /** Of equal ones the first in the order of the enumeration. */
  AcLimit governing() {
    AcLimit least = AcLimit.CHARGER;
    for (AcLimit limit : AcLimit.values()) {
      double currentA = currentA(limit);
      boolean earlier = limit.compareTo(least) < 0;
      if (currentA < currentA(least) || (earlier && currentA == currentA(least) && has(limit))) {
        least = limit;
      }
    }
    return least;
  }

  double leastA() {
    return currentA(governing());
  }
}
