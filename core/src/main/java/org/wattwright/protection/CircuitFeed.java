package org.wattwright.protection;

import java.io.Serializable;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What feeds a circuit and its faults, in SI.
 *
 * @param limitA current to which the source holds itself; null if it does not
 */
record CircuitFeed(
    @Nullable Circuit upstream,
    @Nullable CircuitSupply supply,
    List<CircuitSupply> segments,
    @Nullable Double limitA,
    @Nullable String limitedBy)
    implements Serializable {
  CircuitFeed {
    segments = List.copyOf(segments);
  }
}
