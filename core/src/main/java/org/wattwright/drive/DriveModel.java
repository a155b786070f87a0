package org.wattwright.drive;

import javax.measure.Quantity;
import org.wattwright.units.Kind;
import org.wattwright.voltage.Device;

/**
 * A vehicle as plain numbers: from force and speed at the road to current in the pack, and the most
 * force that all limits leave. Torques and currents are positive while driving.
 */
final class DriveModel {
  /** Rounding must not refuse the very load that a limit itself names. */
  private static final double ROUNDING = 1 + 1e-9;

  private static final int HALVINGS = 60;

  final RoadLoad load;
  final MotorEnvelope motor;
  final MotorLoss loss;
  final PackTable pack;
  final Regeneration regeneration;
  final double steadyW;
  final double[] radPerM;
  final double[] newtonsPerNm;
  final double[] brakingNmPerN;
  final double[] gearNm;
  final double[] inertiaKg;
  final double tractionN;
  final double brakingN;
  private final double shiftUpRadPerS;
  private final double inverterA;
  private final double inverterW;
  private final double currentLimitA;
  private final double powerLimitW;

  private DriveModel(ElectricVehicle vehicle, PackTable pack, boolean continuous) {
    ElectricVehicleBuilder.Fields fields = vehicle.fields();
    this.load = fields.roadLoad();
    this.motor = continuous ? continuous(fields.motor()) : fields.motor();
    this.loss = motor.loss();
    this.pack = pack;
    this.regeneration = fields.regeneration();
    this.steadyW = fields.auxiliaryW() + fields.heaterW();
    int gears = fields.driveline().gears().size();
    this.radPerM = new double[gears];
    this.newtonsPerNm = new double[gears];
    this.brakingNmPerN = new double[gears];
    this.gearNm = new double[gears];
    this.inertiaKg = new double[gears];
    fillGears(fields.driveline());
    this.shiftUpRadPerS = Math.min(fields.driveline().shiftUpRadPerS(), motor.maximumRadPerS());
    Traction grip = fields.traction();
    this.tractionN = grip == null ? Double.POSITIVE_INFINITY : load.massKg() * grip.drivingMs2();
    double gripN =
        grip == null ? Double.POSITIVE_INFINITY : load.massKg() * grip.brakingMs2(load.gravity());
    this.brakingN = Math.min(gripN, regeneration.mostN());
    this.inverterA = motor.inverter().flatMap(Device::maximumCurrent).map(this::ampere).orElse(INF);
    this.inverterW =
        motor.inverter().flatMap(Device::maximumPower).map(Kind.POWER::siValueOf).orElse(INF);
    this.currentLimitA = fields.currentLimitA();
    this.powerLimitW = fields.powerLimitW();
  }

  private static final double INF = Double.POSITIVE_INFINITY;

  private double ampere(Quantity<javax.measure.quantity.ElectricCurrent> current) {
    return Kind.CURRENT.siValueOf(current);
  }

  static DriveModel of(ElectricVehicle vehicle) {
    return new DriveModel(vehicle, vehicle.packTable(), false);
  }

  static DriveModel of(ElectricVehicle vehicle, PackTable pack) {
    return new DriveModel(vehicle, pack, false);
  }

  /** With the continuous torque of the motor in place of its peak. */
  static DriveModel continuous(ElectricVehicle vehicle) {
    return new DriveModel(vehicle, vehicle.packTable(), true);
  }

  private static MotorEnvelope continuous(MotorEnvelope motor) {
    return motor.toBuilder().peakFromContinuous().build();
  }

  private void fillGears(Driveline driveline) {
    for (int i = 0; i < radPerM.length; i++) {
      Gear gear = driveline.gears().get(i);
      double efficiency = driveline.overallEfficiency(gear);
      radPerM[i] = driveline.radPerMetre(gear);
      newtonsPerNm[i] = driveline.newtonsPerNm(gear);
      brakingNmPerN[i] = efficiency / radPerM[i];
      gearNm[i] = gear.limitNm();
      inertiaKg[i] = load.inertiaKg() + motor.rotorKgM2() * radPerM[i] * radPerM[i];
    }
  }

  /** Gear of normal driving: the shortest below the speed at which the driver shifts up. */
  int gearAt(double speedMs) {
    int last = radPerM.length - 1;
    for (int i = 0; i < last; i++) {
      if (speedMs * radPerM[i] <= shiftUpRadPerS) {
        return i;
      }
    }
    return last;
  }

  /** Road speed at the highest motor speed in the longest gear. */
  double fastestMs() {
    return motor.maximumRadPerS() / radPerM[radPerM.length - 1];
  }

  /** Power at the terminals with a torque at the shaft. */
  double terminalW(double torqueNm, double radPerS) {
    return torqueNm * radPerS + loss.lossW(torqueNm, radPerS) + steadyW;
  }

  /** Current at a terminal power; not a number beyond the most that the source can give. */
  static double currentA(double terminalW, double sourceV, double ohm) {
    return 2 * terminalW / (sourceV + Math.sqrt(sourceV * sourceV - 4 * ohm * terminalW));
  }

  /** Whether the source side gives this power for driving. */
  boolean sourceAllows(double terminalW, double currentA, double soc) {
    return currentA <= currentLimitA * ROUNDING
        && currentA <= inverterA * ROUNDING
        && terminalW <= powerLimitW * ROUNDING
        && terminalW - steadyW <= inverterW * ROUNDING
        && currentA <= pack.limitA(soc, true) * ROUNDING;
  }

  /** Whether motor and gear give this torque for driving. */
  boolean shaftAllows(double torqueNm, double radPerS, double voltageV, int gear) {
    return torqueNm <= motor.peakNm(radPerS, voltageV) * ROUNDING
        && torqueNm <= gearNm[gear] * ROUNDING;
  }

  private boolean allows(double torqueNm, double radPerS, double soc, int gear) {
    double terminalW = terminalW(torqueNm, radPerS);
    double sourceV = pack.openCircuitV(soc);
    double ohm = pack.ohm(soc, terminalW >= 0);
    double currentA = currentA(terminalW, sourceV, ohm);
    return sourceAllows(terminalW, currentA, soc)
        && shaftAllows(torqueNm, radPerS, sourceV - currentA * ohm, gear);
  }

  /** Most torque of the motor for driving; 0 if even none is too much. */
  double mostNm(double radPerS, double soc, int gear) {
    double high = Math.min(motor.peakNm(radPerS, INF), gearNm[gear]);
    if (allows(high, radPerS, soc, gear)) {
      return high;
    }
    double low = 0;
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (low + high) / 2;
      if (allows(middle, radPerS, soc, gear)) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return low;
  }

  /** Most force at the road in one gear. */
  double mostN(double speedMs, double soc, int gear) {
    double forceN = mostNm(speedMs * radPerM[gear], soc, gear) * newtonsPerNm[gear];
    return Math.min(forceN, tractionN);
  }

  /** The gear with the most force. */
  int strongestGear(double speedMs, double soc) {
    int best = 0;
    double bestN = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < radPerM.length; i++) {
      double forceN = mostN(speedMs, soc, i);
      if (forceN > bestN) {
        bestN = forceN;
        best = i;
      }
    }
    return best;
  }

  /** What a slightly greater force would run into. */
  DriveLimit limitAt(double speedMs, double soc, int gear) {
    double radPerS = speedMs * radPerM[gear];
    if (radPerS * ROUNDING >= motor.maximumRadPerS()) {
      return DriveLimit.MOTOR_SPEED;
    }
    double torqueNm = mostNm(radPerS, soc, gear);
    if (torqueNm * newtonsPerNm[gear] > tractionN) {
      return DriveLimit.ADHESION;
    }
    double moreNm = torqueNm + Math.max(1e-6, torqueNm * 1e-6);
    return limitOf(moreNm, radPerS, soc, gear);
  }

  private DriveLimit limitOf(double torqueNm, double radPerS, double soc, int gear) {
    double terminalW = terminalW(torqueNm, radPerS);
    double ohm = pack.ohm(soc, terminalW >= 0);
    double currentA = currentA(terminalW, pack.openCircuitV(soc), ohm);
    if (currentA > currentLimitA) {
      return DriveLimit.CURRENT_LIMIT;
    }
    if (terminalW > powerLimitW) {
      return DriveLimit.POWER_LIMIT;
    }
    if (currentA > inverterA || terminalW - steadyW > inverterW) {
      return DriveLimit.INVERTER;
    }
    if (!(currentA <= pack.limitA(soc, true))) {
      return DriveLimit.PACK;
    }
    return torqueNm > gearNm[gear] ? DriveLimit.GEAR_TORQUE : DriveLimit.MOTOR_TORQUE;
  }

  /** Whether motor, gear and pack take this braking torque (a magnitude). */
  boolean takes(double torqueNm, double radPerS, double soc, int gear) {
    double terminalW = terminalW(-torqueNm, radPerS);
    double sourceV = pack.openCircuitV(soc);
    double ohm = pack.ohm(soc, terminalW >= 0);
    double currentA = currentA(terminalW, sourceV, ohm);
    return (torqueNm == 0 || currentA >= -pack.limitA(soc, false) * ROUNDING)
        && torqueNm <= gearNm[gear] * ROUNDING
        && torqueNm <= motor.regenerationNm(radPerS, sourceV - currentA * ohm) * ROUNDING;
  }

  /** Most braking torque up to one that is too much. */
  double mostBrakingNm(double tooMuchNm, double radPerS, double soc, int gear) {
    double low = 0;
    double high = tooMuchNm;
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (low + high) / 2;
      if (takes(middle, radPerS, soc, gear)) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return low;
  }
}
