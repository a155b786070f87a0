package org.wattwright.drive;

import static org.wattwright.units.WorkshopUnits.NEWTON_METRE;
import static org.wattwright.units.WorkshopUnits.REVOLUTION_PER_MINUTE;
import static org.wattwright.units.WorkshopUnits.VOLT;

import java.io.Serializable;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricPotential;
import javax.measure.quantity.Power;
import org.jspecify.annotations.Nullable;
import org.wattwright.check.Basis;
import org.wattwright.internal.Require;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;
import org.wattwright.units.Measures;
import org.wattwright.units.MomentOfInertia;
import org.wattwright.units.RotationalSpeed;
import org.wattwright.units.Torque;
import org.wattwright.voltage.Device;

/**
 * What a motor with its inverter gives at the shaft: peak and continuous torque against speed,
 * losses, and what a lower bus voltage leaves of it.
 *
 * <p>Constant torque up to the base speed ω_b = P/T and constant power above it, or a table of
 * torques. The curve holds at the rated voltage. Below it the base speed falls in proportion and
 * with it the power above base speed: T(ω, U) = T(ω·U_rated/U), as the induced voltage grows with
 * speed; a higher voltage gives no more. If the inverter's window is known, torque is multiplied by
 * its derating at that voltage as well. Source: induced voltage proportional to speed and flux, any
 * text on electrical drives.
 *
 * <pre>{@code
 * MotorEnvelope motor = MotorEnvelope.of("drive unit")
 *     .peak(newtonMetres(160), kilowatts(50)).continuous(newtonMetres(80), kilowatts(25))
 *     .maximumSpeed(revolutionsPerMinute(9000)).ratedVoltage(volts(110))
 *     .loss(MotorLoss.constantEfficiency(0.88)).build();
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 */
public final class MotorEnvelope implements Serializable {
  private static final long serialVersionUID = 1L;

  private final MotorEnvelopeBuilder.Fields fields;
  private final double maximumRadPerS;
  private final double ratedV;
  private final @Nullable DeratingTable derating;

  MotorEnvelope(MotorEnvelopeBuilder.Fields fields) {
    this.fields = fields;
    this.maximumRadPerS = Kind.ROTATIONAL_SPEED.siValueOf(fields.maximumSpeed());
    this.ratedV = fields.ratedVoltage() == null ? 0 : Kind.VOLTAGE.siValueOf(fields.ratedVoltage());
    this.derating = fields.inverter() == null ? null : DeratingTable.of(fields.inverter().window());
  }

  /**
   * Starts an envelope.
   *
   * @param name as reports print it
   * @return a builder
   * @throws InvalidInputException if the name is blank
   */
  public static MotorEnvelopeBuilder of(String name) {
    return new MotorEnvelopeBuilder(Require.text("MotorEnvelope.name", name));
  }

  /**
   * A builder that starts from this envelope.
   *
   * @return a builder with every field set as here
   */
  public MotorEnvelopeBuilder toBuilder() {
    return new MotorEnvelopeBuilder(fields);
  }

  /**
   * Name as reports print it.
   *
   * @return the name
   */
  public String name() {
    return fields.name();
  }

  /**
   * Highest speed.
   *
   * @return in the unit as given
   */
  public Quantity<RotationalSpeed> maximumSpeed() {
    return fields.maximumSpeed();
  }

  /**
   * What motor and inverter lose.
   *
   * @return the loss
   */
  public MotorLoss loss() {
    return fields.loss();
  }

  /**
   * The inverter on the traction bus.
   *
   * @return empty if not known
   */
  public Optional<Device> inverter() {
    return Optional.ofNullable(fields.inverter());
  }

  /**
   * Voltage at which the curve holds.
   *
   * @return empty if not known: the curve then holds at every voltage
   */
  public Optional<Quantity<ElectricPotential>> ratedVoltage() {
    return Optional.ofNullable(fields.ratedVoltage());
  }

  /**
   * Inertia of the rotor.
   *
   * @return empty if not known
   */
  public Optional<Quantity<MomentOfInertia>> rotorInertia() {
    return Optional.ofNullable(fields.rotorInertia());
  }

  /**
   * What the curve rests on.
   *
   * @return data sheet unless told
   */
  public Basis basis() {
    return fields.basis();
  }

  /**
   * Whether a continuous curve is known.
   *
   * @return false if only the peak is
   */
  public boolean hasContinuous() {
    return fields.continuous() != null;
  }

  /**
   * Peak torque at a speed, at the rated voltage or above.
   *
   * @param speed ≥ 0
   * @return in N·m; 0 above the highest speed
   * @throws InvalidInputException if the speed is negative
   */
  public Quantity<Torque> peakTorqueAt(Quantity<RotationalSpeed> speed) {
    return NEWTON_METRE.of(peakNm(radPerS(speed), Double.POSITIVE_INFINITY));
  }

  /**
   * Peak torque at a speed and a bus voltage.
   *
   * @param speed ≥ 0
   * @param voltage at the inverter, &gt; 0 V
   * @return in N·m
   * @throws InvalidInputException if an argument is outside its range
   */
  public Quantity<Torque> peakTorqueAt(
      Quantity<RotationalSpeed> speed, Quantity<ElectricPotential> voltage) {
    double voltageV = Require.quantity("MotorEnvelope.voltage", voltage, VOLT).positive();
    return NEWTON_METRE.of(peakNm(radPerS(speed), voltageV));
  }

  /**
   * Continuous torque at a speed, at the rated voltage or above.
   *
   * @param speed ≥ 0
   * @return empty if the continuous curve is not known
   * @throws InvalidInputException if the speed is negative
   */
  public Optional<Quantity<Torque>> continuousTorqueAt(Quantity<RotationalSpeed> speed) {
    double speedRadPerS = radPerS(speed);
    return hasContinuous()
        ? Optional.of(NEWTON_METRE.of(continuousNm(speedRadPerS, Double.POSITIVE_INFINITY)))
        : Optional.empty();
  }

  /**
   * Peak shaft power at a speed, at the rated voltage or above: T·ω.
   *
   * @param speed ≥ 0
   * @return in kW
   * @throws InvalidInputException if the speed is negative
   */
  public Quantity<Power> peakPowerAt(Quantity<RotationalSpeed> speed) {
    double speedRadPerS = radPerS(speed);
    return Kind.POWER.ofSi(peakNm(speedRadPerS, Double.POSITIVE_INFINITY) * speedRadPerS);
  }

  /**
   * Speed at which constant power takes over from constant torque, at the rated voltage.
   *
   * @return P/T; empty if the peak is a table
   */
  public Optional<Quantity<RotationalSpeed>> baseSpeed() {
    return fields.peak().table() == null
        ? Optional.of(rpm(fields.peak().powerW() / fields.peak().torqueNm()))
        : Optional.empty();
  }

  /**
   * Base speed at a bus voltage: ω_b·U/U_rated, at most ω_b.
   *
   * @param voltage &gt; 0 V
   * @return empty if the peak is a table or the rated voltage is not known
   * @throws InvalidInputException if the voltage is not positive
   */
  public Optional<Quantity<RotationalSpeed>> baseSpeedAt(Quantity<ElectricPotential> voltage) {
    double voltageV = Require.quantity("MotorEnvelope.voltage", voltage, VOLT).positive();
    if (ratedV == 0) {
      return Optional.empty();
    }
    double share = Math.min(1, voltageV / ratedV);
    return baseSpeed().map(base -> rpm(Kind.ROTATIONAL_SPEED.siValueOf(base) * share));
  }

  /**
   * Highest speed over base speed: the range of field weakening.
   *
   * @return number, ≥ 0; empty if the peak is a table
   */
  public Optional<Double> speedRatio() {
    return baseSpeed().map(base -> maximumRadPerS / Kind.ROTATIONAL_SPEED.siValueOf(base));
  }

  private static Quantity<RotationalSpeed> rpm(double radPerS) {
    return Kind.ROTATIONAL_SPEED.ofSi(radPerS);
  }

  private static double radPerS(Quantity<RotationalSpeed> speed) {
    return Require.quantity("MotorEnvelope.speed", speed, REVOLUTION_PER_MINUTE).nonNegative();
  }

  double maximumRadPerS() {
    return maximumRadPerS;
  }

  double rotorKgM2() {
    return fields.rotorInertia() == null
        ? 0
        : Kind.MOMENT_OF_INERTIA.siValueOf(fields.rotorInertia());
  }

  double peakNm(double speedRadPerS, double voltageV) {
    return curveNm(fields.peak(), speedRadPerS, voltageV);
  }

  double regenerationNm(double speedRadPerS, double voltageV) {
    return Math.min(fields.regenerationNm(), peakNm(speedRadPerS, voltageV));
  }

  /** The peak where no continuous curve is known. */
  double continuousNm(double speedRadPerS, double voltageV) {
    TorqueCurve curve = fields.continuous() == null ? fields.peak() : fields.continuous();
    return curveNm(curve, speedRadPerS, voltageV);
  }

  private double curveNm(TorqueCurve curve, double speedRadPerS, double voltageV) {
    // Rounding must not refuse the very speed that the limit itself names.
    if (speedRadPerS > maximumRadPerS * (1 + 1e-12)) {
      return 0;
    }
    double asIfRadPerS = voltageV < ratedV ? speedRadPerS * ratedV / voltageV : speedRadPerS;
    double torqueNm = curve.atNm(asIfRadPerS);
    if (derating == null || voltageV == Double.POSITIVE_INFINITY) {
      return torqueNm;
    }
    return torqueNm * derating.at(voltageV);
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof MotorEnvelope that && fields.equals(that.fields);
  }

  @Override
  public int hashCode() {
    return fields.hashCode();
  }

  /**
   * Name, peak torque and highest speed.
   *
   * @return for example {@code drive unit: peak 160 N·m, 50 kW, to 9000 1/min, efficiency 0.88}
   */
  @Override
  public String toString() {
    String power =
        fields.peak().table() == null
            ? ", " + Measures.format(Kind.POWER.ofSi(fields.peak().powerW()), Kind.POWER)
            : "";
    String torque = Measures.format(NEWTON_METRE.of(fields.peak().torqueNm()), Kind.TORQUE);
    String text = fields.name() + ": peak " + torque + power + ", to " + fields.maximumSpeed();
    return text + ", " + fields.loss();
  }
}
