package org.wattwright.protection;

import static org.wattwright.units.WorkshopUnits.AMPERE;
import static org.wattwright.units.WorkshopUnits.VOLT;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wattwright.units.Kind;
import org.wattwright.units.Measures;

/** Decides whether a fuse clears a fault, and what passes until then. */
final class ClearingSolver {
  /** From here on arcing adds nothing that counts; common practice. */
  private static final double ARCING_COUNTS_BELOW_S = 0.1;

  /**
   * Beside a bend, relative: a current is taken from a voltage and a resistance, whose rounding
   * must not carry it back over the bend.
   */
  static final double BESIDE = 1e-12;

  private final FuseData data;
  private final double voltageV;
  private final Melting melting;

  ClearingSolver(FuseData data, double voltageV) {
    this.data = data;
    this.voltageV = voltageV;
    this.melting = new Melting(data);
  }

  Clearing solve(FaultCurrent fault) {
    double currentA = fault.prospectiveA();
    Clearing refusal = refusal(fault, currentA);
    if (refusal != null) {
      return refusal;
    }
    return switch (melting.placeForSlowest(currentA)) {
      case BELOW_CURVE ->
          unknown(
              "fuse.preArcingCurve",
              amperes(currentA)
                  + " lies below the slowest curve, which begins at "
                  + amperes(melting.bendsA()[0]));
      case UNKNOWN -> beyond(currentA);
      default -> cleared(fault, currentA);
    };
  }

  /** Currents between two others at which the slowest curve, or what counts as arcing, bends. */
  List<Double> bendsBetween(double lowA, double highA) {
    List<Double> bends = new ArrayList<>();
    for (double bendA : melting.bendsA()) {
      addBothSides(bends, bendA);
    }
    melting.slowestCurrentAtA(ARCING_COUNTS_BELOW_S).ifPresent(a -> addBothSides(bends, a));
    if (data.total() != null) {
      for (int i = 0; i < data.total().table().size(); i++) {
        addBothSides(bends, data.total().table().x(i) * data.total().band());
      }
    }
    bends.removeIf(bendA -> !(bendA > lowA && bendA < highA));
    return bends;
  }

  /** Where one rule ends and the next begins the let-through may jump. */
  private static void addBothSides(List<Double> bends, double bendA) {
    bends.add(bendA);
    bends.add(bendA * (1 - BESIDE));
    bends.add(bendA * (1 + BESIDE));
  }

  /** Why the ratings do not cover the fault; null if they do. */
  private @Nullable Clearing refusal(FaultCurrent fault, double currentA) {
    Clearing refusal = refusalByVoltage();
    if (refusal == null) {
      refusal = refusalByCapacity(currentA);
    }
    if (refusal == null) {
      refusal = refusalByTimeConstant(fault.timeConstantS());
    }
    return refusal != null ? refusal : refusalByRange(currentA);
  }

  private @Nullable Clearing refusalByVoltage() {
    Double ratedV = data.directV();
    if (ratedV == null) {
      return unknown("fuse.directVoltage", "the rated direct voltage is not stated");
    }
    return voltageV <= ratedV
        ? null
        : not("the circuit's " + VOLT.of(voltageV) + " are above its rated " + VOLT.of(ratedV));
  }

  private @Nullable Clearing refusalByCapacity(double currentA) {
    Double capacityA = data.breakingCapacityA();
    if (capacityA == null) {
      return unknown("fuse.breakingCapacity", "the breaking capacity is not stated");
    }
    return currentA <= capacityA
        ? null
        : not(amperes(currentA) + " are above its breaking capacity of " + amperes(capacityA));
  }

  private @Nullable Clearing refusalByTimeConstant(double timeConstantS) {
    Double testedS = data.testTimeConstantS();
    if (testedS == null) {
      return unknown("fuse.testTimeConstant", "the time constant of its test is not stated");
    }
    return timeConstantS <= testedS
        ? null
        : not(seconds(timeConstantS) + " of time constant, but tested at " + seconds(testedS));
  }

  private @Nullable Clearing refusalByRange(double currentA) {
    if (data.breakingRange() == null) {
      return unknown("fuse.breakingRange", "whether it is a full-range link is not stated");
    }
    if (data.breakingRange() == BreakingRange.FULL) {
      return null;
    }
    Double minimumA = data.minimumBreakingA();
    if (minimumA == null) {
      return unknown(
          "fuse.minimumBreakingCurrent", "a partial-range link without its lowest current");
    }
    return currentA >= minimumA
        ? null
        : not(
            amperes(currentA) + " are below its minimum breaking current of " + amperes(minimumA));
  }

  private Clearing beyond(double currentA) {
    if (data.preArcing() == null && data.preArcingA2S() == null) {
      return unknown("fuse.preArcingCurve", "neither curve nor pre-arcing I²t is stated");
    }
    if (data.preArcingA2S() == null) {
      return unknown(
          "fuse.preArcingJouleIntegral", amperes(currentA) + " lies beyond the end of the curve");
    }
    return unknown(
        "fuse.preArcingCurve",
        "the stated I²t holds for times up to 10 ms only, which "
            + amperes(currentA)
            + " does not reach");
  }

  private Clearing cleared(FaultCurrent fault, double currentA) {
    Double totalA2S = totalA2S(currentA);
    if (totalA2S == null) {
      return unknown(
          "fuse.totalJouleIntegral", "neither total curve nor total I²t at " + VOLT.of(voltageV));
    }
    double timeS = fault.timeToReachS(totalA2S);
    Double statedA = data.peakLetThroughA();
    double peakA = statedA == null ? currentA : Math.min(statedA, currentA);
    return new Clearing.Cleared(
        Kind.TIME.ofSi(timeS), Kind.JOULE_INTEGRAL.ofSi(totalA2S), Kind.CURRENT.ofSi(peakA));
  }

  /** Largest I²t until the current is off; null if not stated. */
  private @Nullable Double totalA2S(double currentA) {
    double meltA2S = melting.mostA2S(currentA);
    Double byCurve = totalByCurve(currentA);
    if (byCurve != null) {
      return Math.max(byCurve, meltA2S);
    }
    if (meltA2S / (currentA * currentA) >= ARCING_COUNTS_BELOW_S) {
      return meltA2S;
    }
    Double statedA2S = data.totalA2S(voltageV);
    if (statedA2S == null) {
      return null;
    }
    if (melting.placeForSlowest(currentA) == Melting.Place.ADIABATIC) {
      return Math.max(statedA2S, meltA2S);
    }
    double arcingA2S = data.preArcingA2S() == null ? statedA2S : statedA2S - data.preArcingA2S();
    return meltA2S + arcingA2S;
  }

  private @Nullable Double totalByCurve(double currentA) {
    TimeCurrentCurve curve = data.total();
    if (curve == null || !curve.table().covers(currentA / curve.band())) {
      return null;
    }
    return currentA * currentA * curve.table().at(currentA / curve.band());
  }

  private static Clearing unknown(String field, String reason) {
    return new Clearing.NotKnown(List.of(field), reason);
  }

  private static Clearing not(String reason) {
    return new Clearing.NotCleared(reason);
  }

  private static String amperes(double currentA) {
    return Measures.format(AMPERE.of(currentA), Kind.CURRENT);
  }

  private static String seconds(double timeS) {
    return Measures.format(Kind.TIME.ofSi(timeS), Kind.TIME);
  }
}
