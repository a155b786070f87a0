package org.wattwright.examples.job;

import javax.measure.Quantity;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import org.wattwright.check.Basis;

/**
 * A part that leaves the vehicle or goes in.
 *
 * <p>Immutable and thread-safe.
 *
 * @param origin where it stands
 * @param name its name, unique in the file
 * @param change whether it leaves or goes in
 * @param mass &gt; 0
 * @param place of its centre
 * @param tolerance of mass and place
 * @param carriedBy what carries it
 * @param basis what the data rest on
 * @param source where they come from
 */
public record PartMassInput(
    Origin origin,
    String name,
    Change change,
    Quantity<Mass> mass,
    PlaceInput place,
    Tolerance tolerance,
    CarriedBy carriedBy,
    Basis basis,
    String source) {

  /** Whether a part leaves or goes in. */
  public enum Change {
    /** It was there when the vehicle was weighed. */
    REMOVED("removed"),
    /** It was not. */
    ADDED("added");

    private final String label;

    Change(String label) {
      this.label = label;
    }

    /**
     * The word of the file.
     *
     * @return {@code removed} or {@code added}
     */
    @Override
    public String toString() {
      return label;
    }
  }

  /** What carries a part. */
  public enum CarriedBy {
    /** The body, and with it the springs. */
    SPRINGS("springs"),
    /** The axle itself. */
    AXLE("axle");

    private final String label;

    CarriedBy(String label) {
      this.label = label;
    }

    /**
     * The word of the file.
     *
     * @return {@code springs} or {@code axle}
     */
    @Override
    public String toString() {
      return label;
    }
  }

  /**
   * Half-widths of what is not known exactly.
   *
   * @param mass ≥ 0
   * @param position in every direction, ≥ 0
   */
  public record Tolerance(Quantity<Mass> mass, Quantity<Length> position) {}
}
