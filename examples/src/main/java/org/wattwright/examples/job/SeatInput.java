package org.wattwright.examples.job;

/**
 * A seat, a row of seats, or the load space.
 *
 * <p>Immutable and thread-safe.
 *
 * @param origin where it stands
 * @param name its name, unique in the file
 * @param use who or what goes there
 * @param persons how many; 0 for goods
 * @param place seating reference point, or middle of the load
 */
public record SeatInput(Origin origin, String name, Use use, int persons, PlaceInput place) {

  /** Who or what goes there. */
  public enum Use {
    /** The driver; one row. */
    DRIVER("driver"),
    /** Passengers; any number of rows. */
    PASSENGERS("passengers"),
    /** Goods up to the gross mass; one row. */
    GOODS("goods");

    private final String label;

    Use(String label) {
      this.label = label;
    }

    /**
     * The word of the file.
     *
     * @return {@code driver}, {@code passengers} or {@code goods}
     */
    @Override
    public String toString() {
      return label;
    }
  }
}
