package org.wattwright.protection;

import static org.wattwright.units.WorkshopUnits.AMPERE;
import static org.wattwright.units.WorkshopUnits.VOLT;

import java.util.List;
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
  private final double voltageV;
  private final double resistanceOhm;
  private final List<LoopFuse> fuses;

  ChassisFaultLoop(String between, double voltageV, double resistanceOhm, List<LoopFuse> fuses) {
    this.between = between;
    this.voltageV = voltageV;
    this.resistanceOhm = resistanceOhm;
    this.fuses = List.copyOf(fuses);
  }

  /**
   * Voltage of the part of the chain between the two faults.
   *
   * @return in V
   */
  public Quantity<ElectricPotential> voltage() {
    return VOLT.of(voltageV);
  }

  /**
   * Current of two dead faults: that voltage over the resistance of the part and of the bond.
   *
   * @return in A
   */
  public Quantity<ElectricCurrent> current() {
    return AMPERE.of(currentA());
  }

  private double currentA() {
    return voltageV / resistanceOhm;
  }

  /**
   * Fuses in the loop.
   *
   * @return may be empty
   */
  public List<LoopFuse> fuses() {
    return fuses;
  }

  /**
   * {@code isolation.two-faults}: one fuse in the loop clears its current at its voltage.
   *
   * @return the check
   */
  public Check check() {
    CheckBuilder check =
        Check.named("isolation.two-faults", "two faults: " + between)
            .source(Source.commonPractice("a fuse in each loop that two faults can close"))
            .safety();
    String loop = voltage() + ", " + Measures.format(current(), Kind.CURRENT);
    return fuses.stream()
        .filter(fuse -> fuse.clears(currentA(), voltageV))
        .findFirst()
        .map(fuse -> check.note(loop + ", cleared by " + fuse.name()).holds(true))
        .orElseGet(() -> check.note(loop + ", " + whyNot()).holds(false));
  }

  private String whyNot() {
    return fuses.isEmpty()
        ? "no fuse in the loop"
        : "cleared by none of " + String.join(", ", fuses.stream().map(LoopFuse::name).toList());
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
