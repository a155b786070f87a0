package org.wattwright.protection;

/**
 * A contactor in its circuit as the search sees it, in SI.
 *
 * @param breakA highest current that it may break at the circuit's voltage in every direction that
 *     the circuit has
 * @param openingS longest time from the command to open contacts
 * @param continuousA current that it carries for ever
 * @param carry how long it bears more, to the highest current it bears at all
 */
record SwitchLine(double breakA, double openingS, double continuousA, TimeCurve carry) {
  /** Currents at which something clears within what the contactor bears. */
  CurrentRanges bears(TimeCurve clearing) {
    return CurrentRanges.of(clearing.lowestA(), Math.min(continuousA, clearing.highestA()))
        .or(clearing.notAbove(carry));
  }

  /** Currents that it bears for a time. */
  CurrentRanges bears(double timeS) {
    return CurrentRanges.of(0, continuousA).or(carry.atLeast(timeS));
  }
}
