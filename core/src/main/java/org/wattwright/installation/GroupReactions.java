package org.wattwright.installation;

import java.io.Serializable;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Force;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;

/**
 * How a group of fixings and the face under it hold a load.
 *
 * <p>Immutable and thread-safe.
 *
 * @param fixings one reaction for each fixing, in their order
 * @param corners pressure of the base on the face, as forces at the corners of its footprint in the
 *     order low u low v, high u low v, high u high v, low u high v
 */
public record GroupReactions(List<FixingReaction> fixings, List<Quantity<Force>> corners)
    implements Serializable {
  /**
   * Copies the lists.
   *
   * @param fixings one reaction for each fixing
   * @param corners four forces
   */
  public GroupReactions {
    fixings = List.copyOf(fixings);
    corners = List.copyOf(corners);
  }

  /**
   * The reaction of one fixing.
   *
   * @param name its name
   * @return the reaction
   * @throws InvalidInputException if there is none of this name
   */
  public FixingReaction of(String name) {
    return fixings.stream()
        .filter(each -> each.fixing().equals(name))
        .findFirst()
        .orElseThrow(() -> InvalidInputException.of("GroupReactions.fixing", "one of them", name));
  }

  /**
   * Highest resultant shear of any fixing.
   *
   * @return in N
   */
  public Quantity<Force> highestShear() {
    return Kind.FORCE.ofSi(fixings.stream().mapToDouble(FixingReaction::shearN).max().orElse(0));
  }

  /**
   * Highest tension of any fixing.
   *
   * @return in N
   */
  public Quantity<Force> highestTension() {
    return Kind.FORCE.ofSi(fixings.stream().mapToDouble(FixingReaction::tensionN).max().orElse(0));
  }
}
