package org.wattwright.conductor;

import static org.wattwright.units.WorkshopUnits.AMPERE;

import java.io.Serializable;
import java.util.function.Function;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.Temperature;
import org.wattwright.units.Kind;

/**
 * A current at which the conductor never settles, or only beyond 400 °C at its surface, where the
 * formulas are not claimed: it runs away.
 */
public final class NoSteadyState implements HeatingResult, Serializable {
  private static final long serialVersionUID = 1L;

  private final double currentA;

  NoSteadyState(double currentA) {
    this.currentA = currentA;
  }

  /**
   * The current.
   *
   * @return in A
   */
  public Quantity<ElectricCurrent> current() {
    return AMPERE.of(currentA);
  }

  /**
   * The surface temperature below which there is no steady state.
   *
   * @return absolute
   */
  public Quantity<Temperature> beyond() {
    return Kind.TEMPERATURE.ofSi(SteadyKernel.HIGHEST_K);
  }

  @Override
  public <T> T fold(Function<SteadyState, T> ifSteady, Function<NoSteadyState, T> ifNot) {
    return ifNot.apply(this);
  }

  @Override
  public boolean isSteady() {
    return false;
  }

  /**
   * Current and limit.
   *
   * @return for example {@code no steady temperature below 400 °C at 900 A}
   */
  @Override
  public String toString() {
    return "no steady temperature below " + beyond() + " at " + current();
  }
}
