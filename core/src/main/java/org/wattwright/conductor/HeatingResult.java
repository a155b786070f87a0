package org.wattwright.conductor;

import java.util.function.Function;
import javax.measure.Quantity;
import javax.measure.quantity.Temperature;

/**
 * What a steady current does to a conductor: it settles at a temperature, or it does not settle
 * within the range of the formulas.
 */
public sealed interface HeatingResult permits SteadyState, NoSteadyState {
  /**
   * One value from either case.
   *
   * @param <T> type of the value
   * @param ifSteady of a temperature that holds
   * @param ifNot where none holds
   * @return the value
   */
  <T> T fold(Function<SteadyState, T> ifSteady, Function<NoSteadyState, T> ifNot);

  /**
   * Whether a steady temperature exists.
   *
   * @return true if it does
   */
  boolean isSteady();

  /**
   * The steady state.
   *
   * @return the steady state
   * @throws IllegalStateException if there is none
   */
  default SteadyState orElseThrow() {
    return fold(
        steady -> steady,
        not -> {
          throw new IllegalStateException(not.toString());
        });
  }

  /**
   * The conductor's temperature.
   *
   * @return absolute
   * @throws IllegalStateException if there is no steady state
   */
  default Quantity<Temperature> conductorTemperature() {
    return orElseThrow().conductor();
  }
}
