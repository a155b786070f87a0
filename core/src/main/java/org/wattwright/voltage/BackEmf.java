package org.wattwright.voltage;

import java.io.Serializable;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricPotential;
import javax.measure.quantity.MagneticFlux;
import org.wattwright.check.Basis;
import org.wattwright.check.Check;
import org.wattwright.check.CheckBuilder;
import org.wattwright.check.Figure;
import org.wattwright.check.Source;
import org.wattwright.internal.Require;
import org.wattwright.units.Kind;
import org.wattwright.units.Measure;
import org.wattwright.units.RotationalSpeed;
import org.wattwright.units.WorkshopUnits;

/**
 * Voltage that a permanent-magnet motor induces when it is spun with its inverter off.
 *
 * <p>Û_LL = √3·ψ·p·ω: peak between two terminals, ψ the peak flux linkage of one phase, p the pole
 * pairs, ω the mechanical speed. Rectified by the inverter's diodes it meets the traction bus, so a
 * long descent at overspeed must stay below the inverter's absolute maximum. Source: law of
 * induction, sinusoidal flux.
 *
 * <p>Immutable and thread-safe.
 *
 * @param fluxLinkage peak per phase, &gt; 0 Wb
 * @param polePairs ≥ 1
 */
public record BackEmf(Quantity<MagneticFlux> fluxLinkage, int polePairs) implements Serializable {
  /**
   * Checks the range.
   *
   * @param fluxLinkage peak per phase, &gt; 0 Wb
   * @param polePairs ≥ 1
   * @throws org.wattwright.units.InvalidInputException if a value is not positive
   */
  public BackEmf {
    Require.quantity("BackEmf.fluxLinkage", fluxLinkage, WorkshopUnits.MILLIWEBER).positive();
    fluxLinkage = Measure.from(fluxLinkage, Kind.MAGNETIC_FLUX);
    Require.positiveCount("BackEmf.polePairs", polePairs);
  }

  /**
   * A motor's back-EMF.
   *
   * @param fluxLinkage peak per phase, &gt; 0 Wb
   * @param polePairs ≥ 1
   * @return the back-EMF
   */
  public static BackEmf of(Quantity<MagneticFlux> fluxLinkage, int polePairs) {
    return new BackEmf(fluxLinkage, polePairs);
  }

  /**
   * Peak voltage between two terminals at a speed.
   *
   * @param speed mechanical, ≥ 0
   * @return in V
   * @throws org.wattwright.units.InvalidInputException if the speed is negative
   */
  public Quantity<ElectricPotential> peakAt(Quantity<RotationalSpeed> speed) {
    double speedRadPerS =
        Require.quantity("speed", speed, WorkshopUnits.REVOLUTION_PER_MINUTE).nonNegative();
    double fluxWb = Kind.MAGNETIC_FLUX.siValueOf(fluxLinkage);
    return Kind.VOLTAGE.ofSi(Math.sqrt(3) * fluxWb * polePairs * speedRadPerS);
  }

  /**
   * The back-EMF at overspeed against the absolute maximum of the inverter.
   *
   * @param inverter the device that the motor is wired to
   * @param overspeed highest mechanical speed, ≥ 0
   * @return the check; NOT_CHECKED if the absolute maximum is not known
   */
  public Check check(Device inverter, Quantity<RotationalSpeed> overspeed) {
    CheckBuilder check =
        Check.named("voltage.back-emf", "back-EMF at overspeed against " + inverter.name())
            .source(Source.dataSheet(inverter.name()))
            .basis(Basis.DATA_SHEET)
            .safety();
    return inverter
        .window()
        .absoluteMaximum()
        .map(
            limit ->
                check.atMost(
                    Figure.of(peakAt(overspeed), WorkshopUnits.VOLT),
                    Figure.of(limit, WorkshopUnits.VOLT)))
        .orElseGet(() -> check.notChecked(inverter.name() + ".absoluteMaximum"));
  }
}
