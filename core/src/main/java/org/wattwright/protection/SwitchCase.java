package org.wattwright.protection;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.wattwright.check.Check;
import org.wattwright.units.Kind;

/**
 * A contactor in one circuit with the pre-charge that suits it: its verdicts, whatever cable and
 * fuse are.
 */
final class SwitchCase {
  private final Contactor contactor;
  private final @Nullable PrechargeCase precharge;
  private final List<Check> checks;
  private final Verdict verdict;
  private final SwitchLine line;
  private final List<CircuitPart> parts;

  SwitchCase(
      Contactor contactor, @Nullable PrechargeCase precharge, List<Check> checks, double highestV) {
    this.contactor = contactor;
    this.precharge = precharge;
    this.checks = List.copyOf(checks);
    this.verdict = Verdict.of(checks);
    this.line = SwitchLine.of(contactor, Kind.VOLTAGE.ofSi(highestV));
    this.parts =
        precharge == null ? List.of(part(contactor)) : List.of(part(contactor), precharge.asPart());
  }

  /** The contactor and its resistor, as the list of parts has them. */
  List<CircuitPart> asParts() {
    return parts;
  }

  PartCost cost(DesignSpec spec) {
    PartCost cost = PartCost.NOTHING;
    for (CircuitPart part : parts) {
      cost = cost.plus(spec.cost(part));
    }
    return cost;
  }

  private static CircuitPart part(Contactor contactor) {
    return new CircuitPart(
        CircuitPart.Type.CONTACTOR,
        contactor.name(),
        contactor.mass().map(Kind.MASS::siValueOf).orElse(null),
        contactor.price().orElse(null));
  }

  Contactor contactor() {
    return contactor;
  }

  Optional<PrechargeCase> precharge() {
    return Optional.ofNullable(precharge);
  }

  List<Check> checks() {
    return checks;
  }

  Verdict verdict() {
    return verdict;
  }

  SwitchLine line() {
    return line;
  }
}
