package org.wattwright.drive;

import static org.wattwright.internal.MissingFields.present;
import static org.wattwright.units.WorkshopUnits.KILOGRAM_SQUARE_METRE;
import static org.wattwright.units.WorkshopUnits.KILOWATT;
import static org.wattwright.units.WorkshopUnits.NEWTON_METRE;
import static org.wattwright.units.WorkshopUnits.REVOLUTION_PER_MINUTE;
import static org.wattwright.units.WorkshopUnits.VOLT;

import java.io.Serializable;
import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricPotential;
import javax.measure.quantity.Power;
import org.jspecify.annotations.Nullable;
import org.wattwright.check.Basis;
import org.wattwright.internal.LinearTable;
import org.wattwright.internal.MissingFields;
import org.wattwright.internal.Require;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;
import org.wattwright.units.Measure;
import org.wattwright.units.MomentOfInertia;
import org.wattwright.units.RotationalSpeed;
import org.wattwright.units.Torque;
import org.wattwright.voltage.Device;

/** Collects the data of a {@link MotorEnvelope}: peak, highest speed and loss are required. */
public final class MotorEnvelopeBuilder {
  private final String name;
  private @Nullable TorqueCurve peak;
  private @Nullable TorqueCurve continuous;
  private double regenerationNm = Double.POSITIVE_INFINITY;
  private @Nullable Quantity<RotationalSpeed> maximumSpeed;
  private @Nullable MotorLoss loss;
  private @Nullable Quantity<ElectricPotential> ratedVoltage;
  private @Nullable Device inverter;
  private @Nullable Quantity<MomentOfInertia> rotorInertia;
  private Basis basis = Basis.DATA_SHEET;

  MotorEnvelopeBuilder(String name) {
    this.name = name;
  }

  MotorEnvelopeBuilder(Fields fields) {
    name = fields.name;
    peak = fields.peak;
    continuous = fields.continuous;
    regenerationNm = fields.regenerationNm;
    maximumSpeed = fields.maximumSpeed;
    loss = fields.loss;
    ratedVoltage = fields.ratedVoltage;
    inverter = fields.inverter;
    rotorInertia = fields.rotorInertia;
    basis = fields.basis;
  }

  /** What has been collected, in one piece. */
  record Fields(
      String name,
      TorqueCurve peak,
      @Nullable TorqueCurve continuous,
      double regenerationNm,
      Quantity<RotationalSpeed> maximumSpeed,
      MotorLoss loss,
      @Nullable Quantity<ElectricPotential> ratedVoltage,
      @Nullable Device inverter,
      @Nullable Quantity<MomentOfInertia> rotorInertia,
      Basis basis)
      implements Serializable {}

  /**
   * Peak: constant torque, then constant power.
   *
   * @param torque &gt; 0 N·m
   * @param power at the shaft, &gt; 0 kW
   * @return this builder
   * @throws InvalidInputException if an argument is not positive
   */
  public MotorEnvelopeBuilder peak(Quantity<Torque> torque, Quantity<Power> power) {
    peak = curve("peak", torque, power);
    return this;
  }

  /**
   * Peak: a table, with straight lines between and the end values held.
   *
   * @param speeds rising, ≥ 0
   * @param torques as many, ≥ 0 N·m
   * @return this builder
   * @throws InvalidInputException if the table is not of that shape
   */
  public MotorEnvelopeBuilder peak(
      List<Quantity<RotationalSpeed>> speeds, List<Quantity<Torque>> torques) {
    peak = curve("peak", speeds, torques);
    return this;
  }

  /**
   * Continuous: constant torque, then constant power.
   *
   * @param torque &gt; 0 N·m
   * @param power at the shaft, &gt; 0 kW
   * @return this builder
   * @throws InvalidInputException if an argument is not positive
   */
  public MotorEnvelopeBuilder continuous(Quantity<Torque> torque, Quantity<Power> power) {
    continuous = curve("continuous", torque, power);
    return this;
  }

  /**
   * Continuous: a table, with straight lines between and the end values held.
   *
   * @param speeds rising, ≥ 0
   * @param torques as many, ≥ 0 N·m
   * @return this builder
   * @throws InvalidInputException if the table is not of that shape
   */
  public MotorEnvelopeBuilder continuous(
      List<Quantity<RotationalSpeed>> speeds, List<Quantity<Torque>> torques) {
    continuous = curve("continuous", speeds, torques);
    return this;
  }

  private static TorqueCurve curve(String field, Quantity<Torque> torque, Quantity<Power> power) {
    String path = "MotorEnvelope." + field;
    return TorqueCurve.of(
        Require.quantity(path + ".torque", torque, NEWTON_METRE).positive(),
        Require.quantity(path + ".power", power, KILOWATT).positive());
  }

  private static TorqueCurve curve(
      String field, List<Quantity<RotationalSpeed>> speeds, List<Quantity<Torque>> torques) {
    String path = "MotorEnvelope." + field;
    double[] speedsRadPerS =
        speeds.stream()
            .mapToDouble(s -> Require.quantity(path, s, REVOLUTION_PER_MINUTE).nonNegative())
            .toArray();
    double[] torquesNm =
        torques.stream()
            .mapToDouble(t -> Require.quantity(path, t, NEWTON_METRE).nonNegative())
            .toArray();
    return TorqueCurve.of(LinearTable.of(path, speedsRadPerS, torquesNm));
  }

  /**
   * Most torque while generating; the peak curve holds as well.
   *
   * @param torque magnitude, ≥ 0 N·m; 0 means no regeneration
   * @return this builder
   * @throws InvalidInputException if negative
   */
  public MotorEnvelopeBuilder regenerationTorque(Quantity<Torque> torque) {
    regenerationNm =
        Require.quantity("MotorEnvelope.regenerationTorque", torque, NEWTON_METRE).nonNegative();
    return this;
  }

  /**
   * Highest speed.
   *
   * @param speed &gt; 0
   * @return this builder
   * @throws InvalidInputException if not positive
   */
  public MotorEnvelopeBuilder maximumSpeed(Quantity<RotationalSpeed> speed) {
    Require.quantity("MotorEnvelope.maximumSpeed", speed, REVOLUTION_PER_MINUTE).positive();
    maximumSpeed = Measure.from(speed, Kind.ROTATIONAL_SPEED);
    return this;
  }

  /**
   * What motor and inverter lose.
   *
   * @param value the loss
   * @return this builder
   */
  public MotorEnvelopeBuilder loss(MotorLoss value) {
    loss = Objects.requireNonNull(value, "loss");
    return this;
  }

  /**
   * Bus voltage at which the curves hold.
   *
   * @param voltage &gt; 0 V
   * @return this builder
   * @throws InvalidInputException if not positive
   */
  public MotorEnvelopeBuilder ratedVoltage(Quantity<ElectricPotential> voltage) {
    Require.quantity("MotorEnvelope.ratedVoltage", voltage, VOLT).positive();
    ratedVoltage = Measure.from(voltage, Kind.VOLTAGE);
    return this;
  }

  /**
   * The inverter: its window derates the torque, its current and power limit what it takes.
   *
   * @param device the inverter on the traction bus
   * @return this builder
   */
  public MotorEnvelopeBuilder inverter(Device device) {
    inverter = Objects.requireNonNull(device, "inverter");
    return this;
  }

  /**
   * Inertia of the rotor; accelerating it through the gears costs force.
   *
   * @param inertia ≥ 0 kg·m²
   * @return this builder
   * @throws InvalidInputException if negative
   */
  public MotorEnvelopeBuilder rotorInertia(Quantity<MomentOfInertia> inertia) {
    Require.quantity("MotorEnvelope.rotorInertia", inertia, KILOGRAM_SQUARE_METRE).nonNegative();
    rotorInertia = Measure.from(inertia, Kind.MOMENT_OF_INERTIA);
    return this;
  }

  /** The continuous curve, where known, in place of the peak. */
  MotorEnvelopeBuilder peakFromContinuous() {
    peak = continuous == null ? peak : continuous;
    return this;
  }

  /**
   * What the curves rest on; data sheet unless told.
   *
   * @param value the basis
   * @return this builder
   */
  public MotorEnvelopeBuilder basis(Basis value) {
    basis = Objects.requireNonNull(value, "basis");
    return this;
  }

  /**
   * The envelope.
   *
   * @return an immutable envelope
   * @throws InvalidInputException if a required field is missing; all are named at once
   */
  public MotorEnvelope build() {
    new MissingFields("MotorEnvelope")
        .field("peak", peak)
        .field("maximumSpeed", maximumSpeed)
        .field("loss", loss)
        .rejectIfAny();
    return new MotorEnvelope(
        new Fields(
            name,
            present(peak),
            continuous,
            regenerationNm,
            present(maximumSpeed),
            present(loss),
            ratedVoltage,
            inverter,
            rotorInertia,
            basis));
  }
}
