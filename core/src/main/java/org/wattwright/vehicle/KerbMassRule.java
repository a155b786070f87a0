package org.wattwright.vehicle;

import static org.wattwright.units.WorkshopUnits.KILOGRAM;

import java.io.Serializable;
import java.util.List;
import org.wattwright.check.Basis;
import org.wattwright.check.Check;
import org.wattwright.check.Figure;
import org.wattwright.check.Recorder;
import org.wattwright.check.Source;
import org.wattwright.internal.Require;
import org.wattwright.units.Kind;

/**
 * How far the kerb mass may rise or fall by the conversion, as shares of that before.
 *
 * <p>Codes {@code rule.mass.rise} and {@code rule.mass.fall}. Immutable and thread-safe.
 *
 * @param largestRise 0.08 for 8 %, ≥ 0
 * @param largestFall 0.20 for 20 %, 0 to 1
 */
public record KerbMassRule(double largestRise, double largestFall)
    implements VehicleRule, Serializable {
  /**
   * Checks the ranges.
   *
   * @param largestRise ≥ 0
   * @param largestFall 0 to 1
   * @throws org.wattwright.units.InvalidInputException if a share is outside its range
   */
  public KerbMassRule {
    Require.nonNegative("KerbMassRule.largestRise", largestRise);
    Require.fraction("KerbMassRule.largestFall", largestFall);
  }

  @Override
  public List<Check> check(RuleSubject subject, Source source, Recorder recorder) {
    LoadState after = subject.ledger().after(LoadCase.KERB);
    double beforeKg = Kind.MASS.siValueOf(after.before().total());
    double change = Kind.MASS.siValueOf(after.total()) / beforeKg - 1;
    Basis basis = after.basis().and(Basis.DATA_SHEET);
    if (recorder.isOn()) {
      recorder
          .step("δm", "change of the kerb mass over that before")
          .formula("m_t/m_t0 - 1")
          .with("m_t", Figure.of(after.total(), KILOGRAM))
          .with("m_t0", beforeKg, KILOGRAM)
          .basis(basis)
          .source(source)
          .gives(Figure.share(change));
    }
    return List.of(
        Check.named("rule.mass.rise", "rise of the kerb mass")
            .source(source)
            .basis(basis)
            .atMost(Figure.share(change), Figure.share(largestRise)),
        Check.named("rule.mass.fall", "fall of the kerb mass")
            .source(source)
            .basis(basis)
            .atMost(Figure.share(-change), Figure.share(largestFall)));
  }
}
