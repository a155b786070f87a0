package org.wattwright.drive;

import static org.wattwright.units.WorkshopUnits.AMPERE;
import static org.wattwright.units.WorkshopUnits.KILOWATT;
import static org.wattwright.units.WorkshopUnits.SECOND;
import static org.wattwright.units.WorkshopUnits.WATT;

import java.io.Serializable;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.Power;
import javax.measure.quantity.Time;
import org.jspecify.annotations.Nullable;
import org.wattwright.battery.Pack;
import org.wattwright.battery.PackState;
import org.wattwright.internal.Require;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;
import org.wattwright.units.Measure;
import org.wattwright.units.Measures;
import org.wattwright.units.StateOfCharge;

/** Collects what an {@link ElectricVehicle} has besides its four main parts. */
public final class ElectricVehicleBuilder {
  private MotorEnvelope motor;
  private Driveline driveline;
  private RoadLoad roadLoad;
  private Pack pack;
  private PackState state = PackState.of(StateOfCharge.FULL, Measures.celsius(20));
  private Quantity<Time> loadDuration = Measures.seconds(10);
  private double auxiliaryW;
  private double heaterW;
  private @Nullable Traction traction;
  private Regeneration regeneration = Regeneration.ofShare(1);
  private double currentLimitA = Double.POSITIVE_INFINITY;
  private double powerLimitW = Double.POSITIVE_INFINITY;
  private @Nullable PackTable known;

  ElectricVehicleBuilder(MotorEnvelope motor, Driveline driveline, RoadLoad roadLoad, Pack pack) {
    this.motor = Objects.requireNonNull(motor, "motor");
    this.driveline = Objects.requireNonNull(driveline, "driveline");
    this.roadLoad = Objects.requireNonNull(roadLoad, "roadLoad");
    this.pack = Objects.requireNonNull(pack, "pack");
  }

  ElectricVehicleBuilder(Fields fields, PackTable known) {
    this(fields.motor, fields.driveline, fields.roadLoad, fields.pack);
    this.state = fields.state;
    this.loadDuration = fields.loadDuration;
    this.auxiliaryW = fields.auxiliaryW;
    this.heaterW = fields.heaterW;
    this.traction = fields.traction;
    this.regeneration = fields.regeneration;
    this.currentLimitA = fields.currentLimitA;
    this.powerLimitW = fields.powerLimitW;
    this.known = known;
  }

  /** What has been collected, in one piece. */
  record Fields(
      MotorEnvelope motor,
      Driveline driveline,
      RoadLoad roadLoad,
      Pack pack,
      PackState state,
      Quantity<Time> loadDuration,
      double auxiliaryW,
      double heaterW,
      @Nullable Traction traction,
      Regeneration regeneration,
      double currentLimitA,
      double powerLimitW)
      implements Serializable {}

  /**
   * Another motor.
   *
   * @param value the motor with its inverter
   * @return this builder
   */
  public ElectricVehicleBuilder motor(MotorEnvelope value) {
    motor = Objects.requireNonNull(value, "motor");
    return this;
  }

  /**
   * Another driveline.
   *
   * @param value from the motor to the road
   * @return this builder
   */
  public ElectricVehicleBuilder driveline(Driveline value) {
    driveline = Objects.requireNonNull(value, "driveline");
    return this;
  }

  /**
   * Another road load.
   *
   * @param value what holds it back
   * @return this builder
   */
  public ElectricVehicleBuilder roadLoad(RoadLoad value) {
    roadLoad = Objects.requireNonNull(value, "roadLoad");
    return this;
  }

  /**
   * Another pack, such as the same at an age.
   *
   * @param value the traction pack
   * @return this builder
   */
  public ElectricVehicleBuilder pack(Pack value) {
    pack = Objects.requireNonNull(value, "pack");
    known = null;
    return this;
  }

  /**
   * State of charge at the start, and temperature of the cells throughout.
   *
   * @param value the state
   * @return this builder
   */
  public ElectricVehicleBuilder at(PackState value) {
    if (!value.temperature().equals(state.temperature())) {
      known = null;
    }
    state = Objects.requireNonNull(value, "state");
    return this;
  }

  /**
   * How long a current flows when the pack is asked for its resistance and its limits: 10 s unless
   * told, so that pulse ratings of 10 s and more hold.
   *
   * @param value ≥ 0 s
   * @return this builder
   * @throws InvalidInputException if negative
   */
  public ElectricVehicleBuilder loadDuration(Quantity<Time> value) {
    Require.quantity("ElectricVehicle.loadDuration", value, SECOND).nonNegative();
    loadDuration = Measure.from(value, Kind.TIME);
    known = null;
    return this;
  }

  /**
   * What runs all the time: DC-DC converter with lamps and controls.
   *
   * @param power at the traction bus, ≥ 0 W
   * @return this builder
   * @throws InvalidInputException if negative
   */
  public ElectricVehicleBuilder auxiliaries(Quantity<Power> power) {
    auxiliaryW = Require.quantity("ElectricVehicle.auxiliaries", power, WATT).nonNegative();
    return this;
  }

  /**
   * Cabin heater, counted apart from the auxiliaries.
   *
   * @param power at the traction bus, ≥ 0 W
   * @return this builder
   * @throws InvalidInputException if negative
   */
  public ElectricVehicleBuilder heater(Quantity<Power> power) {
    heaterW = Require.quantity("ElectricVehicle.heater", power, WATT).nonNegative();
    return this;
  }

  /**
   * Grip of the driven axle.
   *
   * @param value the traction
   * @return this builder
   */
  public ElectricVehicleBuilder traction(Traction value) {
    traction = Objects.requireNonNull(value, "traction");
    return this;
  }

  /**
   * How much of the braking the motor takes.
   *
   * @param value the regeneration
   * @return this builder
   */
  public ElectricVehicleBuilder regeneration(Regeneration value) {
    regeneration = Objects.requireNonNull(value, "regeneration");
    return this;
  }

  /**
   * Limit on discharge current at the pack's terminals, as set in the controller.
   *
   * @param current &gt; 0 A
   * @return this builder
   * @throws InvalidInputException if not positive
   */
  public ElectricVehicleBuilder currentLimit(Quantity<ElectricCurrent> current) {
    currentLimitA = Require.quantity("ElectricVehicle.currentLimit", current, AMPERE).positive();
    return this;
  }

  /**
   * Limit on discharge power at the pack's terminals, as set in the controller.
   *
   * @param power &gt; 0 kW
   * @return this builder
   * @throws InvalidInputException if not positive
   */
  public ElectricVehicleBuilder powerLimit(Quantity<Power> power) {
    powerLimitW = Require.quantity("ElectricVehicle.powerLimit", power, KILOWATT).positive();
    return this;
  }

  /**
   * The vehicle.
   *
   * @return an immutable vehicle
   */
  public ElectricVehicle build() {
    return new ElectricVehicle(
        new Fields(
            motor,
            driveline,
            roadLoad,
            pack,
            state,
            loadDuration,
            auxiliaryW,
            heaterW,
            traction,
            regeneration,
            currentLimitA,
            powerLimitW),
        known);
  }
}
