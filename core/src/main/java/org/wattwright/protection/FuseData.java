package org.wattwright.protection;

import java.io.Serializable;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wattwright.check.Basis;
import org.wattwright.check.Source;
import org.wattwright.units.Price;

/** Fields of a fuse in SI; null where the data sheet does not say. */
record FuseData(Ratings ratings, Melt melt, Derating derating, Trade trade)
    implements Serializable {
  /** Name and current, and what it may interrupt. */
  record Ratings(String name, double ratedA, Voltages voltages, Breaking breaking)
      implements Serializable {}

  /** Rated voltages and the time constant of the test. */
  record Voltages(
      @Nullable Double directV, @Nullable Double alternatingV, @Nullable Double testTimeConstantS)
      implements Serializable {}

  /** From which current to which it interrupts. */
  record Breaking(
      @Nullable Double capacityA, @Nullable BreakingRange range, @Nullable Double minimumA)
      implements Serializable {}

  /** When it melts, and what it lets through. */
  record Melt(
      Curves curves,
      @Nullable Double preArcingA2S,
      List<TotalIntegral> totals,
      @Nullable Double peakLetThroughA)
      implements Serializable {}

  /** Times against current, until it has melted and until the current is off. */
  record Curves(@Nullable TimeCurrentCurve preArcing, @Nullable TimeCurrentCurve total)
      implements Serializable {}

  /** Total I²t up to a voltage. */
  record TotalIntegral(double voltageV, double integralA2S) implements Serializable {}

  /** What lowers or raises the continuous current. */
  record Derating(
      @Nullable AmbientDerating ambient, double cooling, double load, @Nullable Double cyclic)
      implements Serializable {}

  /** What the parts list wants to know, and what all of it rests on. */
  record Trade(
      @Nullable Double massKg, @Nullable Price price, @Nullable Double lossW, Origin origin)
      implements Serializable {
    Basis basis() {
      return origin.basis();
    }

    Source source() {
      return origin.source();
    }
  }

  /** What the data rest on. */
  record Origin(Basis basis, Source source) implements Serializable {}

  String name() {
    return ratings.name();
  }

  double ratedA() {
    return ratings.ratedA();
  }

  @Nullable Double directV() {
    return ratings.voltages().directV();
  }

  @Nullable Double alternatingV() {
    return ratings.voltages().alternatingV();
  }

  @Nullable Double testTimeConstantS() {
    return ratings.voltages().testTimeConstantS();
  }

  @Nullable Double breakingCapacityA() {
    return ratings.breaking().capacityA();
  }

  @Nullable BreakingRange breakingRange() {
    return ratings.breaking().range();
  }

  @Nullable Double minimumBreakingA() {
    return ratings.breaking().minimumA();
  }

  @Nullable TimeCurrentCurve preArcing() {
    return melt.curves().preArcing();
  }

  @Nullable TimeCurrentCurve total() {
    return melt.curves().total();
  }

  @Nullable Double preArcingA2S() {
    return melt.preArcingA2S();
  }

  List<TotalIntegral> totals() {
    return melt.totals();
  }

  @Nullable Double peakLetThroughA() {
    return melt.peakLetThroughA();
  }

  /** Total I²t of the next voltage above the circuit's; null if none is as high. */
  @Nullable Double totalA2S(double circuitV) {
    for (TotalIntegral each : totals()) {
      if (each.voltageV() >= circuitV) {
        return each.integralA2S();
      }
    }
    return null;
  }
}
