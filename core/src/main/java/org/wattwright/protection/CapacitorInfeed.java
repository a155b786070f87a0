package org.wattwright.protection;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wattwright.units.Kind;

/**
 * What capacitors that feed a fault besides the battery add to what a fuse lets through, in SI.
 *
 * <p>Upper bounds. Until the element has melted the joule integral is that of melting, whoever
 * feeds it; what a pulse brings makes it melt earlier. From then on superposition and Minkowski's
 * inequality: with W of the fuse alone and W_C = (Σ√W_i)² of the capacitors until they are empty, W
 * + W_C is at most (√W + √W_C)². A link that may break the sum of all peaks lets no more of the
 * capacitors' current through than its stated total I²t.
 */
record CapacitorInfeed(double jouleA2S, double peakA, double highestV) {
  static CapacitorInfeed of(List<CapacitorDischarge> capacitors) {
    double root = 0;
    double peakA = 0;
    double highestV = 0;
    for (CapacitorDischarge each : capacitors) {
      root += Math.sqrt(Kind.JOULE_INTEGRAL.siValueOf(each.jouleIntegral()));
      peakA += each.peakA();
      highestV = Math.max(highestV, each.voltageV());
    }
    return new CapacitorInfeed(root * root, peakA, highestV);
  }

  /** Most that passes a fuse that lets an integral of the battery's current through. */
  double throughA2S(FuseData fuse, double circuitV, double aloneA2S) {
    if (jouleA2S == 0) {
      return aloneA2S;
    }
    @Nullable Double statedA2S = fuse.totalA2S(Math.max(circuitV, highestV));
    double ownA2S = statedA2S == null ? jouleA2S : Math.min(jouleA2S, statedA2S);
    double root = Math.sqrt(aloneA2S) + Math.sqrt(ownA2S);
    return root * root;
  }
}
