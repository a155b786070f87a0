package org.wattwright.protection;

import static org.wattwright.units.WorkshopUnits.SECOND;

import java.io.Serializable;
import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.Time;
import org.jspecify.annotations.Nullable;
import org.wattwright.internal.Require;
import org.wattwright.units.JouleIntegral;
import org.wattwright.units.Kind;
import org.wattwright.units.Measures;

/**
 * A battery and capacitors that feed one fault together.
 *
 * <p>Exact where each has its own way to a dead short; with a stretch in common each hinders the
 * other, and the sums are upper bounds. Source: superposition; Minkowski's inequality for the joule
 * integral.
 *
 * <p>Immutable and thread-safe.
 */
public final class CombinedFault implements Serializable {
  private static final long serialVersionUID = 1L;

  private final FaultCurrent battery;
  private final List<CapacitorDischarge> capacitors;

  private CombinedFault(FaultCurrent battery, List<CapacitorDischarge> capacitors) {
    this.battery = battery;
    this.capacitors = capacitors;
  }

  /**
   * A battery with capacitors.
   *
   * @param battery its fault current
   * @param capacitors their discharges; may be empty
   * @return both together
   */
  public static CombinedFault of(FaultCurrent battery, List<CapacitorDischarge> capacitors) {
    return new CombinedFault(Objects.requireNonNull(battery, "battery"), List.copyOf(capacitors));
  }

  /**
   * Current into the fault.
   *
   * @param time since it began, ≥ 0 s
   * @return the sum of all, in A
   * @throws org.wattwright.units.InvalidInputException if negative
   */
  public Quantity<ElectricCurrent> at(Quantity<Time> time) {
    double timeS = timeS(time);
    double sumA = battery.currentA(timeS);
    for (CapacitorDischarge capacitor : capacitors) {
      sumA += capacitor.currentA(timeS);
    }
    return Kind.CURRENT.ofSi(sumA);
  }

  /**
   * A current that is not exceeded: the sum of all peaks.
   *
   * @return in A
   */
  public Quantity<ElectricCurrent> peakAtMost() {
    double sumA = battery.prospectiveA();
    for (CapacitorDischarge capacitor : capacitors) {
      sumA += capacitor.peakA();
    }
    return Kind.CURRENT.ofSi(sumA);
  }

  /**
   * A joule integral that is not exceeded: (√W₁ + √W₂ + …)² of the single ones.
   *
   * @param time since the fault began, ≥ 0 s
   * @return in A²s
   * @throws org.wattwright.units.InvalidInputException if negative
   */
  public Quantity<JouleIntegral> jouleIntegralAtMost(Quantity<Time> time) {
    double timeS = timeS(time);
    double sum = Math.sqrt(battery.jouleIntegralA2S(timeS));
    for (CapacitorDischarge capacitor : capacitors) {
      sum += Math.sqrt(capacitor.jouleIntegralA2S(timeS));
    }
    return Kind.JOULE_INTEGRAL.ofSi(sum * sum);
  }

  FaultCurrent battery() {
    return battery;
  }

  CapacitorInfeed infeed() {
    return CapacitorInfeed.of(capacitors);
  }

  private static double timeS(Quantity<Time> time) {
    return Require.quantity("CombinedFault.time", time, SECOND).nonNegative();
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof CombinedFault that
        && battery.equals(that.battery)
        && capacitors.equals(that.capacitors);
  }

  @Override
  public int hashCode() {
    return 31 * battery.hashCode() + capacitors.hashCode();
  }

  /**
   * Battery and capacitors.
   *
   * @return for example {@code 6.29 kA, τ = 312 µs with 1 capacitor, peak at most 15 kA}
   */
  @Override
  public String toString() {
    String many = capacitors.size() == 1 ? " capacitor" : " capacitors";
    return battery
        + " with "
        + capacitors.size()
        + many
        + ", peak at most "
        + Measures.format(peakAtMost(), Kind.CURRENT);
  }
}
