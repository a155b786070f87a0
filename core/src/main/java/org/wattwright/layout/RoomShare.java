package org.wattwright.layout;

/**
 * How types of module share the room of a bay: Σ nₜ/roomₜ ≤ 1. Without fractions: Σ nₜ·Π roomᵤ (u ≠
 * t) ≤ Π room; with at most four types of at most 10 000 each it cannot overflow.
 */
final class RoomShare {
  static final int MOST_TYPES = 4;

  private final int[] rooms;
  private final long whole;
  private final long[] shareOfOne;

  /** Room for each type if it has the bay to itself; 0 if the bay takes none. */
  RoomShare(int[] rooms) {
    this.rooms = rooms.clone();
    long product = 1;
    for (int room : rooms) {
      product *= Math.max(1, room);
    }
    whole = product;
    shareOfOne = new long[rooms.length];
    for (int type = 0; type < rooms.length; type++) {
      shareOfOne[type] = whole / Math.max(1, rooms[type]);
    }
  }

  int roomOf(int type) {
    return rooms[type];
  }

  boolean fits(int[] counts) {
    long share = 0;
    for (int type = 0; type < counts.length; type++) {
      if (counts[type] > rooms[type]) {
        return false;
      }
      share += counts[type] * shareOfOne[type];
    }
    return share <= whole;
  }
}
