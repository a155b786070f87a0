package org.wattwright.vehicle;

import java.io.Serializable;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.wattwright.internal.Require;

/**
 * What a set of rules looks at: the ledger and the load cases.
 *
 * <p>Immutable and thread-safe.
 *
 * @param ledger the conversion
 * @param loadCases the load cases to look at, at least one
 */
public record RuleSubject(MassLedger ledger, List<LoadCase> loadCases) implements Serializable {
  /**
   * Copies the list.
   *
   * @param ledger the conversion
   * @param loadCases the load cases to look at, at least one
   * @throws org.wattwright.units.InvalidInputException if there is no load case
   */
  public RuleSubject {
    Objects.requireNonNull(ledger, "ledger");
    loadCases = Require.nonEmpty("RuleSubject.loadCases", loadCases);
  }

  /**
   * The load case of a name.
   *
   * @param name as the rule gives it
   * @return empty if it is not among them
   */
  public Optional<LoadCase> loadCase(String name) {
    return loadCases.stream().filter(c -> c.name().equals(name)).findFirst();
  }
}
