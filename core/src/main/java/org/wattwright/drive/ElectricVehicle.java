package org.wattwright.drive;

import java.io.Serializable;
import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.Power;
import org.jspecify.annotations.Nullable;
import org.wattwright.battery.CellProperty;
import org.wattwright.battery.Pack;
import org.wattwright.battery.PackState;
import org.wattwright.check.Basis;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;
import org.wattwright.units.StateOfCharge;
import org.wattwright.vehicle.Stance;

/**
 * A vehicle with everything that moves it: motor, driveline, road load and pack, its auxiliaries,
 * the grip of its tyres, its regeneration and the limits set in its controller.
 *
 * <pre>{@code
 * ElectricVehicle van = ElectricVehicle.of(motor, driveline, roadLoad, pack)
 *     .at(PackState.of(percentCharge(95), celsius(15)))
 *     .auxiliaries(watts(300)).traction(Traction.of(stance, Axle.REAR, 0.8)).build();
 * ElectricVehicle winter = van.toBuilder().at(PackState.of(percentCharge(95), celsius(-10)))
 *     .heater(kilowatts(2)).build();
 * ElectricVehicle old = van.toBuilder().pack(pack.aged(Ageing.of(0.8, 1.5))).build();
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 */
public final class ElectricVehicle implements Serializable {
  private static final long serialVersionUID = 1L;

  private final ElectricVehicleBuilder.Fields fields;
  private final transient PackTable packTable;

  ElectricVehicle(ElectricVehicleBuilder.Fields fields, @Nullable PackTable known) {
    this.fields = fields;
    this.packTable =
        known != null
            ? known
            : PackTable.of(fields.pack(), fields.state().temperature(), fields.loadDuration());
  }

  private Object readResolve() {
    return new ElectricVehicle(fields, null);
  }

  /**
   * Starts a vehicle, with a full pack at 20 °C, without auxiliaries, and with all braking by the
   * motor as far as it, the pack and the tyres let it.
   *
   * @param motor the motor with its inverter
   * @param driveline from the motor to the road
   * @param roadLoad what holds it back
   * @param pack the traction pack
   * @return a builder
   */
  public static ElectricVehicleBuilder of(
      MotorEnvelope motor, Driveline driveline, RoadLoad roadLoad, Pack pack) {
    return new ElectricVehicleBuilder(motor, driveline, roadLoad, pack);
  }

  /**
   * A builder that starts from this vehicle, for variants.
   *
   * @return a builder with every field set as here
   */
  public ElectricVehicleBuilder toBuilder() {
    return new ElectricVehicleBuilder(fields, packTable);
  }

  /**
   * The motor.
   *
   * @return the motor with its inverter
   */
  public MotorEnvelope motor() {
    return fields.motor();
  }

  /**
   * The driveline.
   *
   * @return from the motor to the road
   */
  public Driveline driveline() {
    return fields.driveline();
  }

  /**
   * The road load.
   *
   * @return what holds it back
   */
  public RoadLoad roadLoad() {
    return fields.roadLoad();
  }

  /**
   * The pack.
   *
   * @return the traction pack
   */
  public Pack pack() {
    return fields.pack();
  }

  /**
   * State of charge at the start, and temperature of the cells throughout.
   *
   * @return the state
   */
  public PackState state() {
    return fields.state();
  }

  /**
   * Grip of the driven axle.
   *
   * @return empty if not known; grip then limits nothing
   */
  public Optional<Traction> traction() {
    return Optional.ofNullable(fields.traction());
  }

  /**
   * How much of the braking the motor takes.
   *
   * @return the regeneration
   */
  public Regeneration regeneration() {
    return fields.regeneration();
  }

  /**
   * Power of auxiliaries and heater together.
   *
   * @return at the traction bus, in kW
   */
  public Quantity<Power> steadyLoad() {
    return Kind.POWER.ofSi(fields.auxiliaryW() + fields.heaterW());
  }

  /**
   * This vehicle with another state of charge at the start.
   *
   * @param stateOfCharge the state of charge
   * @return a new vehicle
   */
  public ElectricVehicle atCharge(StateOfCharge stateOfCharge) {
    return toBuilder().at(PackState.of(stateOfCharge, state().temperature())).build();
  }

  /**
   * This vehicle with a limit on discharge current.
   *
   * @param current &gt; 0 A
   * @return a new vehicle
   * @throws InvalidInputException if not positive
   */
  public ElectricVehicle withCurrentLimit(Quantity<ElectricCurrent> current) {
    return toBuilder().currentLimit(current).build();
  }

  /**
   * This vehicle with a limit on discharge power at the pack's terminals.
   *
   * @param power &gt; 0 kW
   * @return a new vehicle
   * @throws InvalidInputException if not positive
   */
  public ElectricVehicle withPowerLimit(Quantity<Power> power) {
    return toBuilder().powerLimit(power).build();
  }

  /**
   * This vehicle with another road load, such as on other tyres. The stance stays: with another
   * mass, half-shafts are checked as if the tyres never slipped. Laden is {@link #withLoad}.
   *
   * @param load the road load
   * @return a new vehicle
   */
  public ElectricVehicle withRoadLoad(RoadLoad load) {
    return toBuilder().roadLoad(load).build();
  }

  /**
   * This vehicle laden, or otherwise loaded: its mass and how it stands on its axles together.
   *
   * @param load the road load with the mass
   * @param stance of the same mass; the grip of the tyres stays, if there was any
   * @return a new vehicle
   * @throws InvalidInputException if the masses differ by more than 0.5 %
   */
  public ElectricVehicle withLoad(RoadLoad load, Stance stance) {
    if (!Traction.isOfMass(stance, load.massKg())) {
      throw InvalidInputException.of(
          "ElectricVehicle.stance",
          "the mass of the road load, " + load.mass(),
          stance.mass().toString());
    }
    ElectricVehicleBuilder builder = toBuilder().roadLoad(load);
    traction().ifPresent(grip -> builder.traction(grip.standing(stance)));
    return builder.build();
  }

  /**
   * The weakest basis among motor, driveline, road load and the cells of the pack.
   *
   * @return what every result rests on
   */
  public Basis basis() {
    return fields
        .motor()
        .basis()
        .and(fields.driveline().basis())
        .and(fields.roadLoad().basis())
        .and(fields.pack().basis(CellProperty.RESISTANCE))
        .and(fields.pack().basis(CellProperty.VOLTAGE))
        .and(fields.pack().basis(CellProperty.CAPACITY));
  }

  ElectricVehicleBuilder.Fields fields() {
    return fields;
  }

  PackTable packTable() {
    return packTable;
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof ElectricVehicle that && fields.equals(that.fields);
  }

  @Override
  public int hashCode() {
    return Objects.hash(fields);
  }

  /**
   * Motor, driveline, road load and pack.
   *
   * @return several parts on one line
   */
  @Override
  public String toString() {
    return fields.motor()
        + "; "
        + fields.driveline()
        + "; "
        + fields.roadLoad()
        + "; "
        + fields.pack()
        + ", "
        + fields.state();
  }
}
