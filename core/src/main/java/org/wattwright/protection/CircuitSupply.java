package org.wattwright.protection;

import static org.wattwright.units.WorkshopUnits.VOLT;

import java.io.Serializable;
import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricPotential;
import org.jspecify.annotations.Nullable;
import org.wattwright.internal.Require;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;

/**
 * What feeds circuits and their faults: the whole battery, one segment of a split battery, or the
 * low-voltage battery.
 *
 * <p>The faults are those at its terminals, without any cable of the circuits. Immutable and
 * thread-safe.
 */
public final class CircuitSupply implements Serializable {
  private static final long serialVersionUID = 1L;

  private final String name;
  private final double highestV;
  private final FaultRange faults;

  private CircuitSupply(String name, double highestV, FaultRange faults) {
    this.name = name;
    this.highestV = highestV;
    this.faults = faults;
  }

  /**
   * A supply.
   *
   * @param name such as {@code whole battery}
   * @param highestVoltage full and charging, &gt; 0 V and at most 1500 V DC
   * @param faults at its terminals; the lowest with weak cells, cold and aged, and arc voltage
   * @return the supply
   * @throws InvalidInputException if the voltage is outside its range or below that which drives
   *     the lowest fault
   */
  public static CircuitSupply of(
      String name, Quantity<ElectricPotential> highestVoltage, FaultRange faults) {
    double highestV =
        Require.quantity("CircuitSupply.highestVoltage", highestVoltage, VOLT).positiveUpTo(1500);
    Quantity<ElectricPotential> lowest = faults.lowest().drivingVoltage();
    if (!(highestV >= Kind.VOLTAGE.siValueOf(lowest))) {
      throw InvalidInputException.of(
          "CircuitSupply.highestVoltage",
          "≥ the " + lowest + " that drive the lowest fault",
          highestVoltage.toString());
    }
    return new CircuitSupply(Require.text("CircuitSupply.name", name), highestV, faults);
  }

  /**
   * The name.
   *
   * @return as reports print it
   */
  public String name() {
    return name;
  }

  /**
   * Highest voltage.
   *
   * @return in V
   */
  public Quantity<ElectricPotential> highestVoltage() {
    return Kind.VOLTAGE.ofSi(highestV);
  }

  /**
   * Faults at its terminals.
   *
   * @return from lowest to highest
   */
  public FaultRange faults() {
    return faults;
  }

  double highestV() {
    return highestV;
  }

  /** Highest prospective current, with what capacitors add; empty if it is not known. */
  @Nullable Double highestA() {
    return faults.highestCurrent().map(Kind.CURRENT::siValueOf).orElse(null);
  }

  /** These faults with what else is known of those at its terminals. */
  FaultRange between(FaultCurrent highest, FaultCurrent lowest) {
    return new FaultRange(
        highest,
        lowest,
        faults.capacitors(),
        faults.longestTimeConstant().map(Kind.TIME::siValueOf).orElse(null),
        faults.missing());
  }

  CircuitSupply withCapacitors(List<CapacitorDischarge> all) {
    return new CircuitSupply(name, highestV, faults.withCapacitors(all));
  }

  double lowestV() {
    return Kind.VOLTAGE.siValueOf(faults.lowest().drivingVoltage());
  }

  double lowestOhm() {
    return Kind.RESISTANCE.siValueOf(faults.lowest().resistance());
  }

  double lowestHenry() {
    return Kind.INDUCTANCE.siValueOf(faults.lowest().inductance());
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof CircuitSupply that
        && name.equals(that.name)
        && highestV == that.highestV
        && faults.equals(that.faults);
  }

  @Override
  public int hashCode() {
    return Objects.hash(name, highestV, faults);
  }

  /**
   * Name, voltage and faults.
   *
   * @return for example {@code whole battery, 403.2 V, 1.53 kA … 6.29 kA}
   */
  @Override
  public String toString() {
    return name + ", " + highestVoltage() + ", " + faults;
  }
}
