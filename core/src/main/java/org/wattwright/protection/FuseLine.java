package org.wattwright.protection;

/**
 * A fuse as the search sees it, in SI.
 *
 * @param clearing longest clearing time against prospective current, as far as it is known
 * @param minimumBreakingA least current that it may break
 * @param breakingA highest current that it may break
 */
record FuseLine(TimeCurve clearing, double minimumBreakingA, double breakingA) {
  /** Currents of which the curve says something and that the fuse may break. */
  CurrentRanges breaks() {
    return CurrentRanges.of(
        Math.max(clearing.lowestA(), minimumBreakingA), Math.min(clearing.highestA(), breakingA));
  }
}
