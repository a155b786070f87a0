package org.wattwright.conductor;

import static org.wattwright.units.WorkshopUnits.AMPERE;
import static org.wattwright.units.WorkshopUnits.AMPERE_SQUARED_SECOND;
import static org.wattwright.units.WorkshopUnits.SECOND;

import java.io.Serializable;
import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.Time;
import org.jspecify.annotations.Nullable;
import org.wattwright.internal.Require;
import org.wattwright.units.JouleIntegral;
import org.wattwright.units.Kind;

/**
 * What a short circuit asks of a conductor: a joule integral, or a current and a time.
 *
 * <p>Below 0.1 s give the total I²t that the protective device lets through, not current and time
 * (IEC 60364-4-43, 434.5.2). Immutable and thread-safe.
 */
public final class FaultDuty implements Serializable {
  private static final long serialVersionUID = 1L;

  /** Shorter faults are given as I²t; IEC 60364-4-43, 434.5.2. */
  private static final double SHORTEST_BY_CURRENT_S = 0.1;

  private final double jouleIntegralA2S;
  private final @Nullable Double currentA;
  private final @Nullable Double durationS;

  private FaultDuty(double integralA2S, @Nullable Double currentA, @Nullable Double durationS) {
    this.jouleIntegralA2S = integralA2S;
    this.currentA = currentA;
    this.durationS = durationS;
  }

  /**
   * A steady fault current for a time.
   *
   * @param current ≥ 0 A
   * @param duration &gt; 0 s
   * @return the duty, I²·t
   * @throws org.wattwright.units.InvalidInputException if an argument is outside its range
   */
  public static FaultDuty of(Quantity<ElectricCurrent> current, Quantity<Time> duration) {
    double currentA = Require.quantity("FaultDuty.current", current, AMPERE).nonNegative();
    double durationS = Require.quantity("FaultDuty.duration", duration, SECOND).positive();
    return new FaultDuty(currentA * currentA * durationS, currentA, durationS);
  }

  /**
   * A joule integral, such as a fuse's total I²t.
   *
   * @param integral ≥ 0 A²s
   * @return the duty
   * @throws org.wattwright.units.InvalidInputException if negative
   */
  public static FaultDuty of(Quantity<JouleIntegral> integral) {
    String field = "FaultDuty.jouleIntegral";
    return new FaultDuty(
        Require.quantity(field, integral, AMPERE_SQUARED_SECOND).nonNegative(), null, null);
  }

  /**
   * The joule integral.
   *
   * @return I²t in A²s
   */
  public Quantity<JouleIntegral> jouleIntegral() {
    return Kind.JOULE_INTEGRAL.ofSi(jouleIntegralA2S);
  }

  /**
   * The fault current.
   *
   * @return in A; empty if only the joule integral was given
   */
  public Optional<Quantity<ElectricCurrent>> current() {
    return Optional.ofNullable(currentA).map(Kind.CURRENT::ofSi);
  }

  /**
   * How long the fault lasts.
   *
   * @return in s; empty if only the joule integral was given
   */
  public Optional<Quantity<Time>> duration() {
    return Optional.ofNullable(durationS).map(Kind.TIME::ofSi);
  }

  double jouleIntegralA2S() {
    return jouleIntegralA2S;
  }

  /** What a reader of the check must know about the range of the adiabatic formula. */
  String remark() {
    if (durationS == null) {
      return "";
    }
    if (durationS < SHORTEST_BY_CURRENT_S) {
      return "below 0.1 s the total I²t that the protection lets through counts";
    }
    return durationS > ShortCircuit.LONGEST_ADIABATIC_S
        ? "beyond 5 s heat is lost: the adiabatic answer is on the safe side"
        : "";
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof FaultDuty that
        && jouleIntegralA2S == that.jouleIntegralA2S
        && Objects.equals(currentA, that.currentA)
        && Objects.equals(durationS, that.durationS);
  }

  @Override
  public int hashCode() {
    return Objects.hash(jouleIntegralA2S, currentA, durationS);
  }

  /**
   * Current and time, or the joule integral.
   *
   * @return for example {@code 6000 A for 0.02 s}
   */
  @Override
  public String toString() {
    return currentA != null && durationS != null
        ? AMPERE.of(currentA) + " for " + SECOND.of(durationS)
        : jouleIntegral().toString();
  }
}
