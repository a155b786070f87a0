package org.wattwright.layout;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** The best few allocations of a run, best first. Not thread-safe. */
final class BestLeaves {
  private final LeafOrder order;
  private final int room;
  private final List<Leaf> leaves = new ArrayList<>();

  BestLeaves(LeafOrder order, int room) {
    this.order = order;
    this.room = room;
  }

  boolean isFull() {
    return leaves.size() == room;
  }

  boolean isEmpty() {
    return leaves.isEmpty();
  }

  List<Leaf> leaves() {
    return List.copyOf(leaves);
  }

  Leaf first() {
    return leaves.get(0);
  }

  /** Deviation that must not be exceeded to get in, while deviation decides first. */
  double worstDeviation() {
    return isFull() ? leaves.get(room - 1).deviation() : Double.POSITIVE_INFINITY;
  }

  /** Bays that an allocation may use to get in, where nothing but that can decide any more. */
  int mostUsed() {
    if (!isFull() || leaves.get(room - 1).deviation() > Math.max(0, order.threshold())) {
      return Integer.MAX_VALUE;
    }
    return leaves.get(room - 1).enclosures();
  }

  /** Whether nothing can be nearer: the list is full of allocations without deviation. */
  boolean isExact() {
    return isFull() && leaves.get(room - 1).deviation() == 0;
  }

  /** Whether an allocation cannot get in, whatever its links and its height. */
  boolean isBehind(double deviation, int enclosures) {
    return isFull() && order.isBehind(leaves.get(room - 1), deviation, enclosures);
  }

  void offer(Leaf leaf) {
    int place = Collections.binarySearch(leaves, leaf, order);
    if (place >= 0 || -place - 1 == room) {
      return;
    }
    leaves.add(-place - 1, leaf);
    if (leaves.size() > room) {
      leaves.remove(room);
    }
  }
}
