package org.wattwright.examples.job;

import java.util.List;
import org.wattwright.conductor.Cable;
import org.wattwright.protection.Contactor;
import org.wattwright.protection.Fuse;
import org.wattwright.protection.PrechargeResistor;

/**
 * Parts to choose from for the circuits.
 *
 * <p>Immutable and thread-safe.
 *
 * @param cables at least one
 * @param fuses may be empty
 * @param contactors may be empty
 * @param resistors for pre-charge, may be empty
 * @param stated the files that they were read from, as typed
 */
public record CatalogueInput(
    List<Cable> cables,
    List<Fuse> fuses,
    List<Contactor> contactors,
    List<PrechargeResistor> resistors,
    List<StatedTable> stated) {
  /**
   * Copies the lists.
   *
   * @param cables at least one
   * @param fuses may be empty
   * @param contactors may be empty
   * @param resistors for pre-charge, may be empty
   * @param stated the files that they were read from, as typed
   */
  public CatalogueInput {
    cables = List.copyOf(cables);
    fuses = List.copyOf(fuses);
    contactors = List.copyOf(contactors);
    resistors = List.copyOf(resistors);
    stated = List.copyOf(stated);
  }
}
