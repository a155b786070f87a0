package org.wattwright.battery;

import java.io.Serializable;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Temperature;
import org.wattwright.units.Kind;
import org.wattwright.units.Measure;
import org.wattwright.units.StateOfCharge;

/**
 * State in which a battery is asked: state of charge and cell temperature.
 *
 * <p>Immutable and thread-safe.
 *
 * @param stateOfCharge the same for all cells
 * @param temperature absolute cell temperature, the same for all cells
 */
public record PackState(StateOfCharge stateOfCharge, Quantity<Temperature> temperature)
    implements Serializable {
  /**
   * Takes any quantity implementation.
   *
   * @param stateOfCharge the same for all cells
   * @param temperature absolute cell temperature
   * @throws org.wattwright.units.InvalidInputException if the temperature is not absolute
   */
  public PackState {
    Objects.requireNonNull(stateOfCharge, "stateOfCharge");
    temperature = Measure.from(temperature, Kind.TEMPERATURE);
  }

  /**
   * A state.
   *
   * @param stateOfCharge the same for all cells
   * @param temperature absolute cell temperature
   * @return the state
   */
  public static PackState of(StateOfCharge stateOfCharge, Quantity<Temperature> temperature) {
    return new PackState(stateOfCharge, temperature);
  }

  double soc() {
    return stateOfCharge.fraction();
  }

  double temperatureK() {
    return Kind.TEMPERATURE.siValueOf(temperature);
  }

  /**
   * State of charge and temperature.
   *
   * @return for example {@code 20 % at -5 °C}
   */
  @Override
  public String toString() {
    return stateOfCharge + " at " + temperature;
  }
}
