package org.wattwright.protection;

import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.wattwright.conductor.Cable;
import org.wattwright.conductor.ConductorRun;
import org.wattwright.units.Kind;
import org.wattwright.units.WorkshopUnits;

/**
 * The capacitors at the load end of a circuit that empty backwards through its cable into a fault
 * elsewhere, with the least that any cable of the catalogue puts in their way.
 *
 * @param leastOhm cold cable and joints
 * @param leastHenry cables that touch, fast fronts
 */
record LoadCapacitors(Circuit circuit, double highestV, double leastOhm, double leastHenry) {
  /** Coldest cable, in which most flows; common practice. */
  static final double COLD_C = -20;

  private static final double MAGNETIC_CONSTANT_BY_PI = 4e-7;

  /** Of a circuit that lacks no data, over every cable that it may get. */
  static LoadCapacitors of(Circuit circuit, double highestV, List<Cable> cables, int mostRuns) {
    double leastOhm = Double.POSITIVE_INFINITY;
    double leastHenry = Double.POSITIVE_INFINITY;
    for (Cable cable : cables) {
      ConductorRun run = circuit.route().run(cable, mostRuns);
      leastOhm = Math.min(leastOhm, leastOhm(run));
      leastHenry = Math.min(leastHenry, leastHenry(circuit, cable, mostRuns));
    }
    return new LoadCapacitors(circuit, highestV, leastOhm, leastHenry);
  }

  static double leastOhm(ConductorRun run) {
    return Kind.RESISTANCE.siValueOf(
        run.expectedResistanceAt(WorkshopUnits.CELSIUS.of(COLD_C)).low());
  }

  /** μ₀/π·arcosh(D/d) a metre of the shorter way; 0 if a diameter is not known. */
  static double leastHenry(Circuit circuit, Cable cable, int runs) {
    double lengthM = Math.min(lengthM(circuit.length()), lengthM(circuit.returnLength()));
    Quantity<Length> inside = cable.conductorDiameter().orElse(null);
    Quantity<Length> outside = cable.outerDiameter().orElse(null);
    if (inside == null || outside == null) {
      return 0;
    }
    double ratio = Kind.LENGTH.siValueOf(outside) / Kind.LENGTH.siValueOf(inside);
    double arcosh = Math.log(ratio + Math.sqrt((ratio - 1) * (ratio + 1)));
    return MAGNETIC_CONSTANT_BY_PI * arcosh * lengthM / runs;
  }

  private static double lengthM(Optional<Quantity<Length>> length) {
    return length.map(Kind.LENGTH::siValueOf).orElse(0.0);
  }

  static boolean feedsBack(Circuit circuit) {
    return circuit.isFedBackwards() && circuit.bus().highestF() > 0;
  }

  /** Into a fault at the near end of its own circuit, through whichever cable. */
  CapacitorDischarge discharge() {
    return through(leastOhm, leastHenry);
  }

  /** Whether its own way is known, which alone limits it in a fault where it stands. */
  boolean isOwnWayKnown() {
    return circuit.bus().backwardOhm() > 0;
  }

  /** Into a fault where it stands. */
  CapacitorDischarge dischargeAtItsEnd() {
    return through(0, 0);
  }

  /** Into a fault at the near end of a circuit with this cable. */
  CapacitorDischarge through(CableCase cable) {
    boolean isOwn = cable.circuit().equals(circuit);
    return isOwn
        ? through(cable.leastLoopOhm(), cable.leastLoopHenry())
        : through(leastOhm + cable.leastLoopOhm(), leastHenry + cable.leastLoopHenry());
  }

  /**
   * Into a fault in that cable at its far end, where least is in the way; as from the near end if
   * its own way is not known, which a check of its own says.
   */
  CapacitorDischarge atFarEnd(CableCase cable) {
    if (!cable.circuit().equals(circuit)) {
      return discharge();
    }
    return isOwnWayKnown() ? dischargeAtItsEnd() : through(cable);
  }

  private CapacitorDischarge through(double ohm, double henry) {
    return CapacitorDischarge.of(
            circuit.name(),
            Kind.CAPACITANCE.ofSi(circuit.bus().highestF()),
            Kind.VOLTAGE.ofSi(highestV))
        .through(
            Kind.RESISTANCE.ofSi(ohm + circuit.bus().backwardOhm()),
            Kind.INDUCTANCE.ofSi(henry + circuit.bus().backwardHenry()));
  }

  static boolean isAtOrBehind(Circuit circuit, Circuit from) {
    Circuit at = circuit;
    while (at != null && at != from) {
      at = at.upstreamOrNull();
    }
    return at == from;
  }
}
