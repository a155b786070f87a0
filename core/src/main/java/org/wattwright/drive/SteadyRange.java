package org.wattwright.drive;

import static org.wattwright.units.WorkshopUnits.KILOMETRE;
import static org.wattwright.units.WorkshopUnits.KILOMETRE_PER_HOUR;
import static org.wattwright.units.WorkshopUnits.KILOWATT;
import static org.wattwright.units.WorkshopUnits.NEWTON;
import static org.wattwright.units.WorkshopUnits.WATT_HOUR_PER_KILOMETRE;

import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Speed;
import org.wattwright.check.Worksheet;
import org.wattwright.internal.Require;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;
import org.wattwright.units.Measures;
import org.wattwright.units.StateOfCharge;

/**
 * How far a vehicle goes at a steady speed on the level: s = v·∫Q/I ds.
 *
 * <p>Resistance and limits of the pack are those for any length of time, the torque of the motor is
 * its continuous one where known. A speed that can no longer be held ends the range.
 *
 * <p>Immutable and thread-safe.
 */
public final class SteadyRange {
  /** Long after every polarisation and every pulse rating. */
  private static final double FOR_EVER_S = 1e9;

  private static final double NODE = Math.sqrt(3) / 6;

  private final ElectricVehicle vehicle;
  private final DriveModel model;

  private SteadyRange(ElectricVehicle vehicle) {
    this.vehicle = vehicle;
    ElectricVehicle steady = vehicle.toBuilder().loadDuration(Measures.seconds(FOR_EVER_S)).build();
    this.model = DriveModel.continuous(steady);
  }

  /**
   * Steady ranges of a vehicle, from its state of charge at its temperature.
   *
   * @param vehicle the vehicle
   * @return its ranges
   */
  public static SteadyRange of(ElectricVehicle vehicle) {
    return new SteadyRange(Objects.requireNonNull(vehicle, "vehicle"));
  }

  /**
   * Range at one speed.
   *
   * @param speed &gt; 0
   * @param reserve state of charge that stays in the pack, below that at the start
   * @return power, consumption, range, and what ended it; 0 km where the speed cannot be held at
   *     all
   * @throws InvalidInputException if an argument is outside its range
   */
  public SteadyRangePoint at(Quantity<Speed> speed, StateOfCharge reserve) {
    double speedMs = Require.quantity("SteadyRange.speed", speed, KILOMETRE_PER_HOUR).positive();
    double from = vehicle.state().stateOfCharge().fraction();
    if (!(reserve.fraction() < from)) {
      throw InvalidInputException.of(
          "SteadyRange.reserve", "< " + vehicle.state().stateOfCharge(), reserve.toString());
    }
    double forceN = forceN(speedMs);
    double terminalW = terminalW(speedMs, forceN);
    double timeS = 0;
    double upper = from;
    RangeEnd end = RangeEnd.RESERVE;
    while (upper > reserve.fraction()) {
      double lower = Math.max(reserve.fraction(), nextBelow(upper));
      if (!holds(speedMs, forceN, lower)) {
        end = RangeEnd.LEFT_BEHIND;
        break;
      }
      timeS += timeS(terminalW, upper, lower);
      upper = lower;
    }
    return new SteadyRangePoint(
        speed,
        Kind.POWER.ofSi(terminalW),
        Kind.ENERGY_PER_DISTANCE.ofSi(terminalW / speedMs),
        KILOMETRE.of(speedMs * timeS / 1000),
        end);
  }

  /** The next point of the table below a state of charge. */
  private static double nextBelow(double soc) {
    double steps = soc * PackTable.INTERVALS;
    return (Math.ceil(steps - 1e-9) - 1) / PackTable.INTERVALS;
  }

  private double forceN(double speedMs) {
    return model.load.rollingN(speedMs, 1) + model.load.dragN(speedMs);
  }

  private double terminalW(double speedMs, double forceN) {
    int gear = model.gearAt(speedMs);
    double torqueNm = forceN / model.newtonsPerNm[gear];
    return model.terminalW(torqueNm, speedMs * model.radPerM[gear]);
  }

  private boolean holds(double speedMs, double forceN, double soc) {
    return speedMs <= model.fastestMs()
        && model.mostN(speedMs, soc, model.gearAt(speedMs)) >= forceN;
  }

  private double timeS(double terminalW, double upper, double lower) {
    double middle = (upper + lower) / 2;
    double width = upper - lower;
    double sum = 0;
    for (int side = -1; side <= 1; side += 2) {
      double soc = middle + side * NODE * width;
      double currentA =
          DriveModel.currentA(terminalW, model.pack.openCircuitV(soc), model.pack.ohm(soc, true));
      sum += model.pack.capacityC() * width / 2 / currentA;
    }
    return sum;
  }

  /**
   * Range at several speeds.
   *
   * @param speeds each &gt; 0
   * @param reserve state of charge that stays in the pack
   * @return one point each, in the order given
   * @throws InvalidInputException as for {@link #at}
   */
  public List<SteadyRangePoint> curve(List<Quantity<Speed>> speeds, StateOfCharge reserve) {
    return speeds.stream().map(speed -> at(speed, reserve)).toList();
  }

  /**
   * The working of the consumption at one speed.
   *
   * @param speed &gt; 0
   * @return road load, power, consumption
   * @throws InvalidInputException if not positive
   */
  public Worksheet worksheet(Quantity<Speed> speed) {
    double speedMs = Require.quantity("SteadyRange.speed", speed, KILOMETRE_PER_HOUR).positive();
    double forceN = forceN(speedMs);
    int gear = model.gearAt(speedMs);
    double torqueNm = forceN / model.newtonsPerNm[gear];
    double radPerS = speedMs * model.radPerM[gear];
    double terminalW = terminalW(speedMs, forceN);
    Worksheet.Recording recording = Worksheet.record("Consumption at steady " + speed);
    vehicle.roadLoad().worksheet(speed, 0).steps().forEach(recording::add);
    recording
        .step("P_shaft", "power at the motor shaft")
        .formula("R·v/η")
        .with("R", forceN, NEWTON)
        .with("v", speedMs, KILOMETRE_PER_HOUR)
        .with(
            "η", org.wattwright.check.Figure.number(model.newtonsPerNm[gear] / model.radPerM[gear]))
        .basis(vehicle.basis())
        .gives(torqueNm * radPerS, KILOWATT);
    recording
        .step("P", "power at the terminals")
        .formula("P_shaft + P_loss + P_aux")
        .with("P_shaft", torqueNm * radPerS, KILOWATT)
        .with("P_loss", model.loss.lossW(torqueNm, radPerS), KILOWATT)
        .with("P_aux", model.steadyW, KILOWATT)
        .basis(vehicle.basis())
        .gives(terminalW, KILOWATT);
    recording
        .step("e", "consumption")
        .formula("P/v")
        .with("P", terminalW, KILOWATT)
        .with("v", speedMs, KILOMETRE_PER_HOUR)
        .basis(vehicle.basis())
        .gives(terminalW / speedMs, WATT_HOUR_PER_KILOMETRE);
    return recording.toWorksheet();
  }

  /**
   * The vehicle.
   *
   * @return one line
   */
  @Override
  public String toString() {
    return "steady ranges of " + vehicle;
  }
}
