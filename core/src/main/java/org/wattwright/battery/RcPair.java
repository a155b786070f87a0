package org.wattwright.battery;

import java.io.Serializable;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricCapacitance;
import javax.measure.quantity.ElectricResistance;
import javax.measure.quantity.Time;
import org.wattwright.internal.Require;
import org.wattwright.units.Kind;
import org.wattwright.units.Measure;
import org.wattwright.units.Measures;
import org.wattwright.units.WorkshopUnits;

/**
 * Slow polarisation of a cell as a resistance R₁ with a parallel capacitance C₁.
 *
 * <p>Under a current I that starts at rest it adds I·R₁·(1 − e^(−t/τ)) to the voltage lost in R₀,
 * with τ = R₁·C₁. Source: first-order equivalent circuit, for example G. L. Plett, Battery
 * Management Systems, vol. I (2015).
 *
 * <p>Immutable and thread-safe.
 *
 * @param resistance R₁ &gt; 0 Ω
 * @param timeConstant τ &gt; 0 s
 */
public record RcPair(Quantity<ElectricResistance> resistance, Quantity<Time> timeConstant)
    implements Serializable {
  /**
   * Checks the range.
   *
   * @param resistance R₁ &gt; 0 Ω
   * @param timeConstant τ &gt; 0 s
   * @throws org.wattwright.units.InvalidInputException if a value is not positive
   */
  public RcPair {
    resistance = Measure.from(resistance, Kind.RESISTANCE);
    timeConstant = Measure.from(timeConstant, Kind.TIME);
    Require.quantity("RcPair.resistance", resistance, WorkshopUnits.MILLIOHM).positive();
    Require.quantity("RcPair.timeConstant", timeConstant, WorkshopUnits.SECOND).positive();
  }

  /**
   * From resistance and time constant.
   *
   * @param resistance R₁ &gt; 0 Ω
   * @param timeConstant τ &gt; 0 s
   * @return the pair
   */
  public static RcPair of(Quantity<ElectricResistance> resistance, Quantity<Time> timeConstant) {
    return new RcPair(resistance, timeConstant);
  }

  /**
   * From resistance and capacitance.
   *
   * @param resistance R₁ &gt; 0 Ω
   * @param capacitance C₁ &gt; 0 F
   * @return the pair, with τ = R₁·C₁
   */
  public static RcPair ofCapacitance(
      Quantity<ElectricResistance> resistance, Quantity<ElectricCapacitance> capacitance) {
    double resistanceOhm =
        Require.quantity("RcPair.resistance", resistance, WorkshopUnits.MILLIOHM).positive();
    double capacitanceF =
        Require.quantity("RcPair.capacitance", capacitance, WorkshopUnits.FARAD).positive();
    return new RcPair(resistance, Measures.seconds(resistanceOhm * capacitanceF));
  }

  /** R₁·(1 − e^(−t/τ)): what the pair adds to the resistance after a current of this duration. */
  double ohmAfter(double durationS) {
    return -Kind.RESISTANCE.siValueOf(resistance)
        * Math.expm1(-durationS / Kind.TIME.siValueOf(timeConstant));
  }
}
