package org.wattwright.vehicle;

import static org.wattwright.units.WorkshopUnits.KILOGRAM;

import java.io.Serializable;
import java.util.List;
import java.util.Objects;
import org.wattwright.check.Basis;
import org.wattwright.check.Check;
import org.wattwright.check.Figure;
import org.wattwright.check.Recorder;
import org.wattwright.check.Source;
import org.wattwright.internal.Require;

/**
 * How far the load of an axle at kerb mass may rise by the conversion, as a share of that before.
 *
 * <p>Code {@code rule.load.rise}. Immutable and thread-safe.
 *
 * @param axle front or rear
 * @param largestRise 0.10 for 10 %, ≥ 0
 */
public record AxleLoadRiseRule(Axle axle, double largestRise) implements VehicleRule, Serializable {
  /**
   * Checks the range.
   *
   * @param axle front or rear
   * @param largestRise ≥ 0
   * @throws org.wattwright.units.InvalidInputException if it is negative
   */
  public AxleLoadRiseRule {
    Objects.requireNonNull(axle, "axle");
    Require.nonNegative("AxleLoadRiseRule.largestRise", largestRise);
  }

  @Override
  public List<Check> check(RuleSubject subject, Source source, Recorder recorder) {
    LoadState after = subject.ledger().after(LoadCase.KERB);
    double rise = after.axles().kg(axle) / after.before().axles().kg(axle) - 1;
    Basis basis = after.basis().and(Basis.DATA_SHEET);
    if (recorder.isOn()) {
      recorder
          .step("δm_a", "change of the " + axle + " axle load at kerb mass over that before")
          .formula("m_a/m_a0 - 1")
          .with("m_a", Figure.of(after.axles().on(axle), KILOGRAM))
          .with("m_a0", Figure.of(after.before().axles().on(axle), KILOGRAM))
          .basis(basis)
          .source(source)
          .gives(Figure.share(rise));
    }
    return List.of(
        Check.named("rule.load.rise", "rise of the " + axle + " axle load at kerb mass")
            .source(source)
            .basis(basis)
            .safety()
            .atMost(Figure.share(rise), Figure.share(largestRise)));
  }
}
