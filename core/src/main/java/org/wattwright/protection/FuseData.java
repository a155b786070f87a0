package org.wattwright.protection;

import java.io.Serializable;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wattwright.check.Basis;
import org.wattwright.check.Source;
import org.wattwright.units.Price;

/** Fields of a fuse in SI; null where the data sheet does not say. */
record FuseData(
    String name,
    double ratedA,
    @Nullable Double directV,
    @Nullable Double alternatingV,
    @Nullable Double testTimeConstantS,
    @Nullable Double breakingCapacityA,
    @Nullable BreakingRange breakingRange,
    @Nullable Double minimumBreakingA,
    @Nullable TimeCurrentCurve preArcing,
    @Nullable TimeCurrentCurve total,
    @Nullable Double preArcingA2S,
    List<TotalIntegral> totals,
    @Nullable Double peakLetThroughA,
    Derating derating,
    Trade trade)
    implements Serializable {

  /** Total I²t of the next voltage above the circuit's; null if none is as high. */
  @Nullable Double totalA2S(double circuitV) {
    for (TotalIntegral each : totals) {
      if (each.voltageV() >= circuitV) {
        return each.integralA2S();
      }
    }
    return null;
  }

  /** Total I²t up to a voltage. */
  record TotalIntegral(double voltageV, double integralA2S) implements Serializable {}

  /** What lowers or raises the continuous current. */
  record Derating(
      @Nullable AmbientDerating ambient, double cooling, double load, @Nullable Double cyclic)
      implements Serializable {}

  /** What the parts list wants to know, and what all of it rests on. */
  record Trade(
      @Nullable Double massKg,
      @Nullable Price price,
      @Nullable Double lossW,
      Basis basis,
      Source source)
      implements Serializable {}
}
