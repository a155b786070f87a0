package org.wattwright.protection;

import static org.wattwright.units.WorkshopUnits.AMPERE;
import static org.wattwright.units.WorkshopUnits.VOLT;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.ElectricPotential;
import org.wattwright.check.Check;
import org.wattwright.check.CheckBuilder;
import org.wattwright.check.Source;
import org.wattwright.units.Kind;
import org.wattwright.units.Measures;

/**
 * Two isolation faults in different boxes: the chassis joins them, and the part of the chain
 * between drives a current through it. Immutable and thread-safe.
 */
public final class ChassisFaultLoop {
  private final String between;
  private final TwoFaultLevel highest;
  private final TwoFaultLevel lowest;
  private final List<Fuse> fuses;

  ChassisFaultLoop(String between, TwoFaultLevel highest, TwoFaultLevel lowest, List<Fuse> fuses) {
    this.between = between;
    this.highest = highest;
    this.lowest = lowest;
    this.fuses = List.copyOf(fuses);
  }

  /**
   * Highest voltage of the part of the chain between the two faults.
   *
   * @return in V
   */
  public Quantity<ElectricPotential> voltage() {
    return VOLT.of(highest.voltageV());
  }

  /**
   * Highest current of two dead faults: the highest voltage over the lowest resistance of the part
   * and of the bond.
   *
   * @return in A
   */
  public Quantity<ElectricCurrent> current() {
    return AMPERE.of(highest.currentA());
  }

  /**
   * Lowest current of two dead faults: cells empty, cold and aged, the bond at its highest.
   *
   * @return in A; empty if the chain does not tell
   */
  public Optional<Quantity<ElectricCurrent>> lowestCurrent() {
    return lowest.isKnown() ? Optional.of(AMPERE.of(lowest.currentA())) : Optional.empty();
  }

  /**
   * Fuses in the loop.
   *
   * @return may be empty
   */
  public List<Fuse> fuses() {
    return fuses;
  }

  /**
   * {@code isolation.two-faults}: one fuse in the loop clears its highest and its lowest current at
   * its voltage.
   *
   * <p>NOT_CHECKED if no fuse is known to, and one lacks a rating that it takes to tell, or the
   * lowest current is not known.
   *
   * @return the check
   */
  public Check check() {
    CheckBuilder check =
        Check.named("isolation.two-faults", "two faults: " + between)
            .source(Source.commonPractice("a fuse in each loop that two faults can close"))
            .safety();
    String loop = Measures.format(voltage(), Kind.VOLTAGE) + ", " + currents();
    List<String> missing = new ArrayList<>();
    for (Fuse fuse : fuses) {
      List<String> unknown = unknownOf(fuse);
      if (unknown.isEmpty() && clears(fuse)) {
        return check.note(loop + ", cleared by " + fuse.name()).holds(true);
      }
      missing.addAll(unknown);
    }
    if (!fuses.isEmpty() && !lowest.isKnown()) {
      missing.add("chain.lowestVoltage");
      missing.add("chain.highestResistance");
    }
    return missing.isEmpty()
        ? check.note(loop + ", " + whyNot()).holds(false)
        : check.note(loop).notChecked(missing.toArray(String[]::new));
  }

  private String currents() {
    return lowestCurrent().map(each -> Measures.format(each, Kind.CURRENT) + " … ").orElse("")
        + Measures.format(current(), Kind.CURRENT);
  }

  private static List<String> unknownOf(Fuse fuse) {
    List<String> unknown = new ArrayList<>();
    if (fuse.directVoltage().isEmpty()) {
      unknown.add(fuse.name() + ".directVoltage");
    }
    if (fuse.breakingCapacity().isEmpty()) {
      unknown.add(fuse.name() + ".breakingCapacity");
    }
    if (Double.isNaN(lowestClearedA(fuse))) {
      boolean full = fuse.breakingRange().equals(Optional.of(BreakingRange.FULL));
      unknown.add(fuse.name() + (full ? ".preArcingCurve" : ".minimumBreakingCurrent"));
    }
    return unknown;
  }

  private boolean clears(Fuse fuse) {
    double ratedV = fuse.directVoltage().map(Kind.VOLTAGE::siValueOf).orElse(0.0);
    double capacityA = fuse.breakingCapacity().map(Kind.CURRENT::siValueOf).orElse(0.0);
    return highest.voltageV() <= ratedV
        && highest.currentA() <= capacityA
        && lowest.currentA() >= lowestClearedA(fuse);
  }

  /** A partial-range link from its minimum breaking current; a full-range one once it melts. */
  private static double lowestClearedA(Fuse fuse) {
    double melts =
        fuse.preArcingCurve()
            .map(curve -> Kind.CURRENT.siValueOf(curve.lowestCurrent()))
            .orElse(Double.NaN);
    boolean full = fuse.breakingRange().equals(Optional.of(BreakingRange.FULL));
    return full
        ? melts
        : fuse.minimumBreakingCurrent().map(Kind.CURRENT::siValueOf).orElse(Double.NaN);
  }

  private String whyNot() {
    return fuses.isEmpty()
        ? "no fuse in the loop"
        : "cleared by none of " + String.join(", ", fuses.stream().map(Fuse::name).toList());
  }

  /**
   * The two points.
   *
   * @return for example {@code front plus (front box) – rear minus (rear box)}
   */
  @Override
  public String toString() {
    return between;
  }
}
