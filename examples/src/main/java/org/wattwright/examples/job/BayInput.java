package org.wattwright.examples.job;

import java.util.Map;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import org.wattwright.check.Basis;

/**
 * A bay for battery modules.
 *
 * <p>Immutable and thread-safe.
 *
 * @param origin where it stands
 * @param name its name, unique in the job
 * @param keptFree whether no module may go there
 * @param massLimit of modules and enclosure; empty if not stated
 * @param enclosureTare mass of the enclosure, counted only if it is used; ≥ 0
 * @param first place of the first module
 * @param next place of the second; each further one as far on again
 * @param room most modules by name of the type; a type not named does not fit
 * @param links length of the cable to another bay by its name
 * @param basis what the data rest on
 * @param source where they come from
 */
public record BayInput(
    Origin origin,
    String name,
    boolean keptFree,
    Optional<Quantity<Mass>> massLimit,
    Quantity<Mass> enclosureTare,
    PlaceInput first,
    PlaceInput next,
    Map<String, Integer> room,
    Map<String, Quantity<Length>> links,
    Basis basis,
    String source) {
  /**
   * Copies the maps.
   *
   * @param origin where it stands
   * @param name its name
   * @param keptFree whether no module may go there
   * @param massLimit of modules and enclosure
   * @param enclosureTare mass of the enclosure
   * @param first place of the first module
   * @param next place of the second
   * @param room most modules by name of the type
   * @param links length of the cable to another bay
   * @param basis what the data rest on
   * @param source where they come from
   */
  public BayInput {
    room = Map.copyOf(room);
    links = Map.copyOf(links);
  }

  /**
   * Room for a type of module.
   *
   * @param module name of the type
   * @return most modules of it; 0 in a bay that is kept free
   */
  public int roomFor(String module) {
    return keptFree ? 0 : room.getOrDefault(module, 0);
  }
}
