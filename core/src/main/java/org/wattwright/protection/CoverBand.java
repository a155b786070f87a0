package org.wattwright.protection;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricCurrent;
import org.wattwright.units.Kind;
import org.wattwright.units.Measures;

/**
 * A stretch of the current axis and what deals with it.
 *
 * @param from lowest current, in A
 * @param to highest current, in A
 * @param by what deals with it
 * @param shortfalls why the fuse does not and why the trip does not; empty unless it is a gap
 */
public record CoverBand(
    Quantity<ElectricCurrent> from,
    Quantity<ElectricCurrent> to,
    By by,
    List<CoverShortfall> shortfalls) {
  /**
   * Copies the list.
   *
   * @param from lowest current, in A
   * @param to highest current, in A
   * @param by what deals with it
   * @param shortfalls why the fuse does not and why the trip does not; empty unless it is a gap
   */
  public CoverBand {
    shortfalls = List.copyOf(shortfalls);
  }

  /** What deals with a current. */
  public enum By {
    /** Cable and contactor bear it for ever. */
    BORNE("borne for ever"),
    /** The fuse clears it in time. */
    FUSE("fuse"),
    /** The trip opens the contactor, or stops the source, in time. */
    TRIP("trip"),
    /** Fuse and trip, each in time. */
    FUSE_AND_TRIP("fuse and trip"),
    /** Nothing: a gap. */
    NOTHING("nothing");

    private final String label;

    By(String label) {
      this.label = label;
    }

    static By of(boolean borne, boolean fuse, boolean trip) {
      if (fuse) {
        return trip ? FUSE_AND_TRIP : FUSE;
      }
      return trip ? TRIP : borne ? BORNE : NOTHING;
    }

    /**
     * The label as reports print it.
     *
     * @return for example {@code fuse and trip}
     */
    @Override
    public String toString() {
      return label;
    }
  }

  /**
   * Whether nothing deals with these currents.
   *
   * @return true for a gap
   */
  public boolean isGap() {
    return by == By.NOTHING;
  }

  /**
   * The currents and what deals with them.
   *
   * @return for example {@code 300 A to 412 A: nothing (no fuse, below the trip)}
   */
  @Override
  public String toString() {
    String why =
        shortfalls.isEmpty()
            ? ""
            : " (" + String.join(", ", shortfalls.stream().map(Object::toString).toList()) + ")";
    return Measures.format(from, Kind.CURRENT)
        + " to "
        + Measures.format(to, Kind.CURRENT)
        + ": "
        + by
        + why;
  }
}
