package org.wattwright.voltage;

import java.util.List;
import java.util.Optional;

/**
 * What a device takes along a straight line of voltage over current, and where that first falls
 * short of what is drawn.
 *
 * <p>With U = a − b·I and a share of the rated power d = p + q·U the shortfall is P·d − I·U = b·I²
 * − (a + P·q·b)·I + P·(p + q·a): a parabola open to the top, so it is negative between its roots.
 */
final class DeratedTake {
  private static final double ROUNDING = 1e-12;

  private final double ratedW;

  /** From the top of the window to its bottom. */
  private final List<Share> shares;

  /** Share of the rated power p + q·U between two voltages. */
  private record Share(double highV, double lowV, double p, double q) {
    static Share between(double highV, double atHigh, double lowV, double atLow) {
      double q = (atHigh - atLow) / (highV - lowV);
      return new Share(highV, lowV, atHigh - q * highV, q);
    }

    boolean isSlope() {
      return q != 0;
    }
  }

  /** Where a device takes no more. */
  record Stop(double currentA, boolean byWindow) {}

  DeratedTake(VoltageWindow window, double ratedW) {
    this.ratedW = ratedW;
    this.shares = window.fullPerformance().map(full -> shares(window, full)).orElse(whole(window));
  }

  private static List<Share> whole(VoltageWindow window) {
    return List.of(new Share(window.operating().highestV(), window.operating().lowestV(), 1, 0));
  }

  private static List<Share> shares(VoltageWindow window, VoltageRange full) {
    double highestV = window.operating().highestV();
    double lowestV = window.operating().lowestV();
    Share middle = new Share(full.highestV(), full.lowestV(), 1, 0);
    List<Share> all = new java.util.ArrayList<>();
    if (highestV > full.highestV()) {
      all.add(Share.between(highestV, 0, full.highestV(), 1));
    }
    all.add(middle);
    if (full.lowestV() > lowestV) {
      all.add(Share.between(full.lowestV(), 1, lowestV, 0));
    }
    return all;
  }

  /** The first current on the line beyond which less is taken than drawn. */
  Optional<Stop> firstStop(AvailablePower.Line line) {
    double highestV = shares.get(0).highV();
    double lowestV = shares.get(shares.size() - 1).lowV();
    if (line.fromV() > highestV * (1 + ROUNDING) || line.fromV() < lowestV) {
      return Optional.of(new Stop(line.fromA(), true));
    }
    if (line.resistanceOhm() == 0) {
      return Optional.empty();
    }
    for (Share share : shares) {
      Optional<Stop> stop = firstStop(line, share);
      if (stop.isPresent()) {
        return stop;
      }
    }
    return line.toV() < lowestV
        ? Optional.of(new Stop(line.currentAtA(lowestV), true))
        : Optional.empty();
  }

  private Optional<Stop> firstStop(AvailablePower.Line line, Share share) {
    double fromA = Math.max(line.fromA(), line.currentAtA(share.highV()));
    double toA = Math.min(line.toA(), line.currentAtA(share.lowV()));
    if (!(fromA <= toA) || Double.isInfinite(ratedW)) {
      return Optional.empty();
    }
    double b = line.resistanceOhm();
    double a = line.fromV() + b * line.fromA();
    double linear = a + ratedW * share.q() * b;
    double constant = ratedW * (share.p() + share.q() * a);
    double square = linear * linear - 4 * b * constant;
    if (!(square > 0)) {
      return Optional.empty();
    }
    double root = Math.sqrt(square);
    double lower = linear > 0 ? 2 * constant / (linear + root) : (linear - root) / (2 * b);
    double upper = (linear + root) / (2 * b);
    boolean fallsShort = lower <= toA && fromA < upper;
    return fallsShort
        ? Optional.of(new Stop(Math.max(lower, fromA), share.isSlope()))
        : Optional.empty();
  }
}
