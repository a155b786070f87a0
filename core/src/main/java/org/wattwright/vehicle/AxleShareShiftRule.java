package org.wattwright.vehicle;

import java.io.Serializable;
import java.util.List;
import org.wattwright.check.Basis;
import org.wattwright.check.Check;
import org.wattwright.check.Figure;
import org.wattwright.check.Recorder;
import org.wattwright.check.Source;
import org.wattwright.internal.Require;

/**
 * How far the front share of the kerb mass may move by the conversion, either way.
 *
 * <p>Code {@code rule.share.shift}. Immutable and thread-safe.
 *
 * @param largestShift in shares of the mass, 0.05 for five percentage points, 0 to 1
 */
public record AxleShareShiftRule(double largestShift) implements VehicleRule, Serializable {
  /**
   * Checks the range.
   *
   * @param largestShift 0 to 1
   * @throws org.wattwright.units.InvalidInputException if it is outside its range
   */
  public AxleShareShiftRule {
    Require.fraction("AxleShareShiftRule.largestShift", largestShift);
  }

  @Override
  public List<Check> check(RuleSubject subject, Source source, Recorder recorder) {
    LoadState after = subject.ledger().after(LoadCase.KERB);
    double shift = Math.abs(after.frontShare() - after.before().frontShare());
    Basis basis = after.basis().and(Basis.DATA_SHEET);
    if (recorder.isOn()) {
      recorder
          .step("Δs", "shift of the front share of the kerb mass")
          .formula("|s_f - s_f0|")
          .with("s_f", Figure.share(after.frontShare()))
          .with("s_f0", Figure.share(after.before().frontShare()))
          .basis(basis)
          .source(source)
          .gives(Figure.share(shift));
    }
    return List.of(
        Check.named("rule.share.shift", "shift of the front share of the kerb mass")
            .source(source)
            .basis(basis)
            .atMost(Figure.share(shift), Figure.share(largestShift)));
  }
}
