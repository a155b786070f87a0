package org.wattwright.voltage;

import javax.measure.Quantity;
import javax.measure.quantity.ElectricPotential;
import org.wattwright.internal.Require;
import org.wattwright.units.WorkshopUnits;

/**
 * Voltage class of a direct-current circuit: B is high voltage, with protection against electric
 * shock and trained people.
 *
 * <p>Source: ISO 6469-3, voltage classes; 60 V also in UN R100 and 49 CFR 571.305 S3.
 */
public enum VoltageClass {
  /** Up to and including 60 V DC. */
  A,
  /** Above 60 V and up to and including 1500 V DC. */
  B;

  private static final double A_UP_TO_V = 60;
  private static final double B_UP_TO_V = 1500;

  /**
   * Class of a circuit by the highest voltage that it can reach, not by its nominal voltage.
   *
   * @param highest highest working voltage, 0 V to 1500 V DC
   * @return the class
   * @throws org.wattwright.units.InvalidInputException if outside that range
   */
  public static VoltageClass of(Quantity<ElectricPotential> highest) {
    double highestV =
        Require.quantity("VoltageClass.highest", highest, WorkshopUnits.VOLT).between(0, B_UP_TO_V);
    return highestV <= A_UP_TO_V ? A : B;
  }
}
