package org.wattwright.voltage;

import java.io.Serializable;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.StateOfCharge;

/**
 * A band of states of charge.
 *
 * <p>Immutable and thread-safe.
 *
 * @param emptiest lower end
 * @param fullest upper end, not below the lower
 */
public record StateOfChargeBand(StateOfCharge emptiest, StateOfCharge fullest)
    implements Serializable {
  /**
   * Checks the order.
   *
   * @param emptiest lower end
   * @param fullest upper end, not below the lower
   * @throws InvalidInputException if the upper end lies below the lower
   */
  public StateOfChargeBand {
    if (fullest.compareTo(emptiest) < 0) {
      throw InvalidInputException.of(
          "StateOfChargeBand.fullest", "≥ emptiest " + emptiest, fullest.toString());
    }
  }

  /**
   * Width of the band.
   *
   * @return 0 to 1
   */
  public double width() {
    return fullest.fraction() - emptiest.fraction();
  }

  /**
   * Both ends.
   *
   * @return for example {@code 12.4 % … 100 %}
   */
  @Override
  public String toString() {
    return emptiest + " … " + fullest;
  }
}
