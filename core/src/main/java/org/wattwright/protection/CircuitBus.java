package org.wattwright.protection;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricPotential;
import org.jspecify.annotations.Nullable;
import org.wattwright.check.Given;
import org.wattwright.units.Kind;

/**
 * The capacitors at the load end of a circuit, and what empties or loads them.
 *
 * @param capacitanceF null if not known
 * @param tolerance share by which it may be more or less
 * @param backward null where they do not empty backwards
 * @param loads that run during pre-charge
 * @param bleed resistor that empties them; null without one
 */
record CircuitBus(
    @Nullable Double capacitanceF,
    Given<Double> tolerance,
    @Nullable Backward backward,
    List<PrechargeLoad> loads,
    @Nullable Bleed bleed)
    implements Serializable {
  static final CircuitBus EMPTY =
      new CircuitBus(null, Circuit.USUAL_CAPACITANCE_TOLERANCE, null, List.of(), null);

  /**
   * The capacitors empty backwards into a fault.
   *
   * @param ohm in their own way; 0 if not told
   * @param henry of the same way; 0 if not told
   */
  record Backward(double ohm, double henry) implements Serializable {}

  /** A resistor across the capacitors and its tolerance. */
  record Bleed(double ohm, double tolerance) implements Serializable {}

  CircuitBus {
    loads = List.copyOf(loads);
  }

  CircuitBus withCapacitance(double farad) {
    return new CircuitBus(farad, tolerance, backward, loads, bleed);
  }

  CircuitBus withTolerance(Given<Double> share) {
    return new CircuitBus(capacitanceF, share, backward, loads, bleed);
  }

  CircuitBus fedBackwards(double ohm, double henry) {
    return new CircuitBus(capacitanceF, tolerance, new Backward(ohm, henry), loads, bleed);
  }

  boolean isFedBackwards() {
    return backward != null;
  }

  /** In the way of capacitors that empty backwards; 0 if not told. */
  double backwardOhm() {
    return backward == null ? 0 : backward.ohm();
  }

  double backwardHenry() {
    return backward == null ? 0 : backward.henry();
  }

  CircuitBus withLoad(PrechargeLoad load) {
    List<PrechargeLoad> all = new ArrayList<>(loads);
    all.add(load);
    return new CircuitBus(capacitanceF, tolerance, backward, all, bleed);
  }

  CircuitBus withBleed(Bleed resistor) {
    return new CircuitBus(capacitanceF, tolerance, backward, loads, resistor);
  }

  /** At the upper tolerance; 0 if there is none or it is not known. */
  double highestF() {
    return capacitanceF == null ? 0 : capacitanceF * (1 + tolerance.value());
  }

  /** All that runs during pre-charge; the bleed resistor at its lowest resistance takes part. */
  List<PrechargeLoad> runningLoads() {
    if (bleed == null) {
      return loads;
    }
    List<PrechargeLoad> all = new ArrayList<>(loads);
    double leastOhm = bleed.ohm() * (1 - bleed.tolerance());
    all.add(PrechargeLoad.resistance("bleed resistor", Kind.RESISTANCE.ofSi(leastOhm)));
    return all;
  }

  /** How it empties at the upper tolerances; empty without bleed resistor or capacitance. */
  Optional<BusDischarge> discharge(Quantity<ElectricPotential> from) {
    if (bleed == null || !(highestF() > 0)) {
      return Optional.empty();
    }
    double mostOhm = bleed.ohm() * (1 + bleed.tolerance());
    return Optional.of(
        new BusDischarge(Kind.CAPACITANCE.ofSi(highestF()), from, Kind.RESISTANCE.ofSi(mostOhm)));
  }
}
