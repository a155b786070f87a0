package org.wattwright.vehicle;

import static org.wattwright.units.WorkshopUnits.KILOGRAM;

import java.io.Serializable;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.wattwright.check.Basis;
import org.wattwright.check.Check;
import org.wattwright.check.CheckBuilder;
import org.wattwright.check.Figure;
import org.wattwright.check.Recorder;
import org.wattwright.check.Source;
import org.wattwright.internal.Require;
import org.wattwright.units.InvalidInputException;

/**
 * Between which shares of the mass an axle must stay in a load case, such as at least 30 % on the
 * steering axle when fully laden.
 *
 * <p>Codes {@code rule.share.least} and {@code rule.share.most}; NOT_CHECKED if the load case is
 * not among those looked at. Immutable and thread-safe.
 *
 * @param loadCase name of the load case
 * @param axle front or rear
 * @param least share, 0 to 1
 * @param most share, 0 to 1, ≥ least
 */
public record AxleShareRule(String loadCase, Axle axle, double least, double most)
    implements VehicleRule, Serializable {
  /**
   * Checks the ranges.
   *
   * @param loadCase name of the load case
   * @param axle front or rear
   * @param least share, 0 to 1
   * @param most share, 0 to 1, ≥ least
   * @throws InvalidInputException if a share is outside its range
   */
  public AxleShareRule {
    loadCase = Require.text("AxleShareRule.loadCase", loadCase);
    Objects.requireNonNull(axle, "axle");
    Require.fraction("AxleShareRule.least", least);
    Require.fraction("AxleShareRule.most", most);
    if (!(least <= most)) {
      throw InvalidInputException.of("AxleShareRule.least", "≤ most, " + most, "" + least);
    }
  }

  @Override
  public List<Check> check(RuleSubject subject, Source source, Recorder recorder) {
    Optional<LoadState> state = subject.loadCase(loadCase).map(subject.ledger()::after);
    CheckBuilder low = named("rule.share.least", "least", source);
    CheckBuilder high = named("rule.share.most", "greatest", source);
    if (state.isEmpty()) {
      String missing = "load case '" + loadCase + "'";
      return List.of(low.notChecked(missing), high.notChecked(missing));
    }
    Figure share = Figure.share(state.get().axles().share(axle));
    Basis basis = state.get().basis().and(Basis.DATA_SHEET);
    if (recorder.isOn()) {
      recorder
          .step("s", "share of the " + axle + " axle, " + loadCase)
          .formula("m_a/m_t")
          .with("m_a", Figure.of(state.get().axles().on(axle), KILOGRAM))
          .with("m_t", Figure.of(state.get().total(), KILOGRAM))
          .basis(basis)
          .source(source)
          .gives(share);
    }
    return List.of(
        low.basis(basis).atLeast(share, Figure.share(least)),
        high.basis(basis).atMost(share, Figure.share(most)));
  }

  private CheckBuilder named(String code, String which, Source source) {
    return Check.named(code, which + " share of the " + axle + " axle, " + loadCase)
        .source(source)
        .safety();
  }
}
