package org.wattwright.protection;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wattwright.check.Check;
import org.wattwright.units.Kind;

/**
 * A fuse in one circuit: its verdicts, whatever the cable, and how it clears. Not thread-safe: the
 * curve is worked out when first asked for.
 */
final class FuseCase {
  private final Fuse fuse;
  private final double highestV;
  private final List<CapacitorDischarge> capacitors;
  private final List<Check> checks;
  private final Verdict verdict;
  private final CircuitPart part;
  private @Nullable FuseLine line;

  FuseCase(Fuse fuse, double highestV, List<CapacitorDischarge> capacitors, List<Check> checks) {
    this.fuse = fuse;
    this.highestV = highestV;
    this.capacitors = List.copyOf(capacitors);
    this.checks = List.copyOf(checks);
    this.verdict = Verdict.of(checks);
    this.part = part(fuse);
  }

  static CircuitPart part(Fuse fuse) {
    return new CircuitPart(
        CircuitPart.Type.FUSE,
        fuse.name(),
        fuse.mass().map(Kind.MASS::siValueOf).orElse(null),
        fuse.price().orElse(null));
  }

  Fuse fuse() {
    return fuse;
  }

  List<Check> checks() {
    return checks;
  }

  Verdict verdict() {
    return verdict;
  }

  CircuitPart asPart() {
    return part;
  }

  /** How it clears; null if nothing is known of it. */
  @Nullable FuseLine line() {
    if (line == null) {
      line = FuseLine.of(fuse, highestV, CapacitorInfeed.of(capacitors));
    }
    return line;
  }

  /** What it does with the highest fault, capacitors included. */
  Clearing clearing(FaultCurrent fault) {
    return fuse.clearing(CombinedFault.of(fault, capacitors), Kind.VOLTAGE.ofSi(highestV));
  }
}
