package org.wattwright.protection;

/** Why a fuse or a trip does not deal with a current. */
public enum CoverShortfall {
  /** The circuit has no fuse. */
  NO_FUSE("no fuse"),
  /** Nothing is known of the fuse at this current. */
  OUTSIDE_FUSE_CURVE("outside the fuse's curve"),
  /** The fuse may not break so little current. */
  BELOW_MINIMUM_BREAKING("below the fuse's minimum breaking current"),
  /** The fuse may not break so much current. */
  ABOVE_BREAKING_CAPACITY("above the fuse's breaking capacity"),
  /** The cable is too hot before the fuse has cleared. */
  FUSE_SLOWER_THAN_CABLE("fuse slower than the cable bears"),
  /** The contactor is overloaded before the fuse has cleared. */
  FUSE_SLOWER_THAN_CONTACTOR("fuse slower than the contactor bears"),
  /** The trip opens the contactor, above what it may break, before the fuse has cleared. */
  CONTACTOR_OPENS_FIRST("contactor opens first, above what it may break"),
  /** No setting opens the circuit. */
  NO_TRIP("no trip"),
  /** The setting does not answer yet. */
  BELOW_TRIP("below the trip"),
  /** The contactor may not break so much current at this voltage and direction. */
  ABOVE_CONTACTOR_BREAK("above what the contactor may break"),
  /** The cable is too hot before the trip has opened. */
  TRIP_SLOWER_THAN_CABLE("trip slower than the cable bears"),
  /** The contactor is overloaded before the trip has opened it. */
  TRIP_SLOWER_THAN_CONTACTOR("trip slower than the contactor bears");

  private final String label;

  CoverShortfall(String label) {
    this.label = label;
  }

  /**
   * The label as reports print it.
   *
   * @return for example {@code fuse slower than the cable bears}
   */
  @Override
  public String toString() {
    return label;
  }
}
