package org.wattwright.protection;

import java.util.List;

/** What {@link TreeSearch} asks of the circuits; circuits and fuses are indices. */
interface CircuitChoices {
  /**
   * Parts that serve a circuit, with nothing left out that could be part of a cheapest tree.
   *
   * @param circuit which one
   * @param fuseInCharge fuse nearer to the source that protects it if it has none; NONE without one
   */
  List<PartsOption> options(int circuit, int fuseInCharge);

  /** Whether the fuse of a circuit clears every fault on it before the one nearer to the source. */
  boolean isSelective(int circuit, int fuseNearerToSource, int ownFuse);
}
