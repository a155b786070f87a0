package org.wattwright.voltage;

import static org.wattwright.units.WorkshopUnits.MILLIWEBER;
import static org.wattwright.units.WorkshopUnits.REVOLUTION_PER_MINUTE;
import static org.wattwright.units.WorkshopUnits.VOLT;

import java.io.Serializable;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricPotential;
import javax.measure.quantity.MagneticFlux;
import org.wattwright.check.Basis;
import org.wattwright.check.Check;
import org.wattwright.check.CheckBuilder;
import org.wattwright.check.Figure;
import org.wattwright.check.Party;
import org.wattwright.check.Recorder;
import org.wattwright.check.Source;
import org.wattwright.check.Worksheet;
import org.wattwright.internal.Require;
import org.wattwright.units.Kind;
import org.wattwright.units.Measure;
import org.wattwright.units.Measures;
import org.wattwright.units.RotationalSpeed;

/**
 * Voltage that a permanent-magnet motor induces when it is spun with its inverter off.
 *
 * <p>Û_LL = √3·ψ·p·ω: peak between two terminals, ψ the peak flux linkage of one phase, p the pole
 * pairs, ω the mechanical speed. Rectified by the inverter's diodes it meets the traction bus, so a
 * long descent at overspeed must stay below the inverter's absolute maximum. Source: law of
 * induction, sinusoidal flux.
 *
 * <p>Magnets are strongest when cold: give the flux linkage at the coldest motor, or measure there.
 * Diode drops are left out. An induction motor without current induces nothing.
 *
 * <p>Immutable and thread-safe.
 *
 * @param fluxLinkage peak per phase, &gt; 0 Wb
 * @param polePairs ≥ 1
 */
public record BackEmf(Quantity<MagneticFlux> fluxLinkage, int polePairs) implements Serializable {
  private static final double SQRT_2 = Math.sqrt(2);
  private static final double SQRT_3 = Math.sqrt(3);

  /**
   * Checks the range.
   *
   * @param fluxLinkage peak per phase, &gt; 0 Wb
   * @param polePairs ≥ 1
   * @throws org.wattwright.units.InvalidInputException if a value is not positive
   */
  public BackEmf {
    Require.quantity("BackEmf.fluxLinkage", fluxLinkage, MILLIWEBER).positive();
    fluxLinkage = Measure.from(fluxLinkage, Kind.MAGNETIC_FLUX);
    Require.positiveCount("BackEmf.polePairs", polePairs);
  }

  /**
   * A motor's back-EMF.
   *
   * @param fluxLinkage peak per phase, &gt; 0 Wb
   * @param polePairs ≥ 1
   * @return the back-EMF
   * @throws org.wattwright.units.InvalidInputException if a value is not positive
   */
  public static BackEmf of(Quantity<MagneticFlux> fluxLinkage, int polePairs) {
    return new BackEmf(fluxLinkage, polePairs);
  }

  /**
   * From what a meter shows between two motor terminals while the shaft is turned: ψ =
   * U_rms·√2/(√3·p·ω).
   *
   * @param rms effective voltage between two terminals, &gt; 0 V
   * @param speed mechanical, &gt; 0
   * @param polePairs ≥ 1
   * @return the back-EMF
   * @throws org.wattwright.units.InvalidInputException if a value is not positive
   */
  public static BackEmf fromMeasured(
      Quantity<ElectricPotential> rms, Quantity<RotationalSpeed> speed, int polePairs) {
    double rmsV = Require.quantity("BackEmf.rms", rms, VOLT).positive();
    double speedRadPerS =
        Require.quantity("BackEmf.speed", speed, REVOLUTION_PER_MINUTE).positive();
    Require.positiveCount("BackEmf.polePairs", polePairs);
    double fluxWb = rmsV * SQRT_2 / (SQRT_3 * polePairs * speedRadPerS);
    return new BackEmf(Kind.MAGNETIC_FLUX.ofSi(fluxWb), polePairs);
  }

  /**
   * Peak voltage between two terminals at a speed.
   *
   * @param speed mechanical, ≥ 0
   * @return in V
   * @throws org.wattwright.units.InvalidInputException if the speed is negative
   */
  public Quantity<ElectricPotential> peakAt(Quantity<RotationalSpeed> speed) {
    return Kind.VOLTAGE.ofSi(peakV(speed, Recorder.OFF));
  }

  /**
   * Effective voltage between two terminals at a speed: the peak over √2.
   *
   * @param speed mechanical, ≥ 0
   * @return in V
   * @throws org.wattwright.units.InvalidInputException if the speed is negative
   */
  public Quantity<ElectricPotential> rmsAt(Quantity<RotationalSpeed> speed) {
    return Kind.VOLTAGE.ofSi(peakV(speed, Recorder.OFF) / SQRT_2);
  }

  /**
   * Speed at which the peak reaches a voltage: above it the diodes feed a bus of that voltage,
   * whatever the inverter does.
   *
   * @param voltage of the bus, ≥ 0 V
   * @return mechanical speed
   * @throws org.wattwright.units.InvalidInputException if the voltage is negative
   */
  public Quantity<RotationalSpeed> speedAt(Quantity<ElectricPotential> voltage) {
    double voltageV = Require.quantity("voltage", voltage, VOLT).nonNegative();
    return Kind.ROTATIONAL_SPEED.ofSi(voltageV / voltPerRadPerS());
  }

  /**
   * The working of the peak voltage at a speed.
   *
   * @param speed mechanical, ≥ 0
   * @return the steps as computed
   * @throws org.wattwright.units.InvalidInputException if the speed is negative
   */
  public Worksheet worksheet(Quantity<RotationalSpeed> speed) {
    Worksheet.Recording recording = Worksheet.record("Back-EMF at " + speed);
    peakV(speed, recording);
    return recording.toWorksheet();
  }

  /**
   * The back-EMF at overspeed against the absolute maximum of the inverter, with a flux linkage
   * from the data sheet.
   *
   * @param inverter the device that the motor is wired to
   * @param overspeed highest mechanical speed, ≥ 0
   * @return the check; NOT_CHECKED if the absolute maximum is not known
   * @throws org.wattwright.units.InvalidInputException if the speed is negative
   */
  public Check check(Device inverter, Quantity<RotationalSpeed> overspeed) {
    return check(inverter, overspeed, Basis.DATA_SHEET);
  }

  /**
   * The back-EMF at overspeed against the absolute maximum of the inverter.
   *
   * @param inverter the device that the motor is wired to
   * @param overspeed highest mechanical speed, ≥ 0
   * @param basis what the flux linkage rests on; estimated gives at most a caution
   * @return the check; NOT_CHECKED if the absolute maximum is not known
   * @throws org.wattwright.units.InvalidInputException if the speed is negative
   */
  public Check check(Device inverter, Quantity<RotationalSpeed> overspeed, Basis basis) {
    Figure peak = Figure.ofSi(peakV(overspeed, Recorder.OFF), VOLT);
    CheckBuilder check =
        Check.named("voltage.back-emf", "back-EMF at overspeed against " + inverter.name())
            .source(Source.dataSheet(inverter.name()))
            .basis(basis.and(Basis.DATA_SHEET))
            .safety();
    return inverter
        .window()
        .absoluteMaximum()
        .map(limit -> check.note(note(overspeed, limit)).atMost(peak, Figure.of(limit, VOLT)))
        .orElseGet(
            () ->
                check
                    .answeredBy(Party.PARTS_SUPPLIER)
                    .notChecked(peak, inverter.name() + ".absoluteMaximum"));
  }

  private String note(
      Quantity<RotationalSpeed> overspeed, Quantity<ElectricPotential> absoluteMaximum) {
    return "at "
        + overspeed
        + " with the inverter off; the limit is reached at "
        + Measures.format(speedAt(absoluteMaximum), REVOLUTION_PER_MINUTE, 0);
  }

  private double voltPerRadPerS() {
    return SQRT_3 * Kind.MAGNETIC_FLUX.siValueOf(fluxLinkage) * polePairs;
  }

  private double peakV(Quantity<RotationalSpeed> speed, Recorder recorder) {
    double speedRadPerS = Require.quantity("speed", speed, REVOLUTION_PER_MINUTE).nonNegative();
    double peakV = voltPerRadPerS() * speedRadPerS;
    if (recorder.isOn()) {
      recorder
          .step("ω", "mechanical speed")
          .formula("2·π·n")
          .with("n", Figure.of(speed, REVOLUTION_PER_MINUTE))
          .gives(speedRadPerS, Kind.ROTATIONAL_SPEED.siUnit());
      recorder
          .step("U_peak", "peak voltage between two motor terminals, inverter off")
          .formula("√3·ψ·p·ω")
          .with("ψ", Figure.of(fluxLinkage, MILLIWEBER))
          .with("p", Figure.count(polePairs))
          .with("ω", speedRadPerS, Kind.ROTATIONAL_SPEED.siUnit())
          .gives(peakV, VOLT);
    }
    return peakV;
  }

  /**
   * Flux linkage, pole pairs and the voltage at 1000 1/min.
   *
   * @return for example {@code 70.00 mWb, 4 pole pairs: 50.79 V peak at 1000 1/min}
   */
  @Override
  public String toString() {
    return Measures.format(fluxLinkage, MILLIWEBER, 2)
        + ", "
        + polePairs
        + (polePairs == 1 ? " pole pair: " : " pole pairs: ")
        + Measures.format(peakAt(Measures.revolutionsPerMinute(1000)), Kind.VOLTAGE)
        + " peak at 1000 1/min";
  }
}
