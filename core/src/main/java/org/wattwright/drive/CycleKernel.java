package org.wattwright.drive;

import java.util.EnumMap;
import java.util.Map;

/**
 * Drives a vehicle along a trace, step by step between its points, and keeps the books.
 *
 * <p>Within a step acceleration is constant. It is taken in pieces of at most a second that end
 * where the law of power bends: where regeneration begins to fade, and where driving turns into
 * braking. Power is integrated by the two-point rule of Gauss, whose error falls with the fourth
 * power of the step. Where the vehicle cannot give the force that the trace asks for, it gives what
 * it can and falls behind. Not thread-safe; one for each run.
 */
final class CycleKernel {
  private static final double FIRST_NODE = 0.5 - Math.sqrt(3) / 6;
  private static final double SECOND_NODE = 0.5 + Math.sqrt(3) / 6;
  private static final int PREDICTIONS = 3;
  private static final double LONGEST_S = 1;
  private static final double SHORTEST_S = 1e-6;

  private final DriveModel model;
  private final double cosine;
  private final double gradeN;
  private final double auxiliaryW;
  private final double heaterW;
  private final double perCapacity;

  double soc;
  double timeS;
  double distanceM;
  double batteryJ;
  double returnedJ;
  double squareA2s;
  double chargeC;
  double highestA = Double.NEGATIVE_INFINITY;
  double lowestA = Double.POSITIVE_INFINITY;
  private double rollingJ;
  private double airJ;
  private double gradeJ;
  private double kineticJ;
  private double brakesJ;
  private double drivelineJ;
  private double motorJ;
  private double packJ;

  // What the nodes of the step at hand add up to.
  private double stepRolling;
  private double stepAir;
  private double stepKinetic;
  private double stepBrakes;
  private double stepDriveline;
  private double stepMotor;
  private double stepPack;
  private double stepBattery;
  private double stepReturned;
  private double stepSquare;
  private double stepCharge;
  private double nodeA;

  /** Mean current of the last step. */
  double meanA;

  /** Whether the last step gave all the force asked for. */
  boolean followed;

  /** What held the last step back, where it did. */
  DriveLimit heldBackBy = DriveLimit.MOTOR_TORQUE;

  CycleKernel(DriveModel model, ElectricVehicle vehicle, double grade, double soc) {
    double slope = Math.atan(grade);
    this.model = model;
    this.cosine = Math.cos(slope);
    this.gradeN = model.load.gradeN(Math.sin(slope));
    this.auxiliaryW = vehicle.fields().auxiliaryW();
    this.heaterW = vehicle.fields().heaterW();
    this.perCapacity = 1 / model.pack.capacityC();
    this.soc = soc;
  }

  /** From one speed towards another; returns the speed that is reached. */
  double step(double fromMs, double wantedMs, double stepS) {
    double targetMs = Math.min(wantedMs, model.fastestMs());
    int gear = model.gearAt(Math.max(fromMs, targetMs));
    followed = targetMs == wantedMs;
    if (!followed) {
      heldBackBy = DriveLimit.MOTOR_SPEED;
    }
    double accelerationMs2 = (targetMs - fromMs) / stepS;
    double doneS = 0;
    double speedMs = fromMs;
    while (doneS < stepS) {
      double pieceS = pieceS(speedMs, accelerationMs2, stepS - doneS, gear);
      if (!integrate(speedMs, accelerationMs2, pieceS, gear, true)) {
        return heldBack(speedMs, accelerationMs2, stepS - doneS);
      }
      doneS += pieceS;
      speedMs = fromMs + accelerationMs2 * doneS;
    }
    return targetMs;
  }

  /** The time to the next point where the law of power bends, at most a second. */
  private double pieceS(double speedMs, double accelerationMs2, double leftS, int gear) {
    double pieceS = leftS > LONGEST_S * (1 + 1e-9) ? LONGEST_S : leftS;
    if (accelerationMs2 >= 0) {
      return pieceS;
    }
    pieceS = earlier((model.regeneration.fadeFromMs() - speedMs) / accelerationMs2, pieceS);
    pieceS = earlier((model.regeneration.fadeToMs() - speedMs) / accelerationMs2, pieceS);
    double inertiaN = model.inertiaKg[gear] * accelerationMs2;
    double startN = resistanceN(speedMs) + inertiaN;
    double endN = resistanceN(speedMs + accelerationMs2 * pieceS) + inertiaN;
    if (startN * endN < 0) {
      double changeS = pieceS * startN / (startN - endN);
      double thereN = resistanceN(speedMs + accelerationMs2 * changeS) + inertiaN;
      pieceS = earlier(changeS * startN / (startN - thereN), pieceS);
    }
    return pieceS;
  }

  private static double earlier(double bendS, double pieceS) {
    return bendS > SHORTEST_S && bendS < pieceS - SHORTEST_S ? bendS : pieceS;
  }

  /** The rest of a step with what force there is, in pieces of a second at most. */
  private double heldBack(double fromMs, double wantedMs2, double restS) {
    double speedMs = fromMs;
    double doneS = 0;
    while (doneS < restS) {
      double pieceS = Math.min(restS - doneS, LONGEST_S);
      speedMs = weakly(speedMs, wantedMs2, pieceS);
      doneS += pieceS;
    }
    return speedMs;
  }

  private double weakly(double fromMs, double wantedMs2, double stepS) {
    int gear = model.strongestGear(fromMs, soc);
    double givenMs2 = wantedMs2;
    for (int i = 0; i < PREDICTIONS; i++) {
      double middleMs = Math.max(0, fromMs + givenMs2 * stepS / 2);
      double freeN = model.mostN(middleMs, soc, gear) - resistanceN(middleMs);
      givenMs2 = Math.min(wantedMs2, freeN / model.inertiaKg[gear]);
    }
    // Where the force does not even hold it on the slope, the brakes do.
    givenMs2 = Math.max(givenMs2, -fromMs / stepS);
    followed &= givenMs2 >= wantedMs2;
    double reachedMs = fromMs + givenMs2 * stepS;
    heldBackBy = model.limitAt(Math.max(0, (fromMs + reachedMs) / 2), soc, gear);
    integrate(fromMs, givenMs2, stepS, gear, false);
    return reachedMs;
  }

  private double resistanceN(double speedMs) {
    return model.load.rollingN(speedMs, cosine) + model.load.dragN(speedMs) + gradeN;
  }

  /** Adds a step to the books, unless a limit forbids it. */
  private boolean integrate(
      double fromMs, double accelerationMs2, double stepS, int gear, boolean heedLimits) {
    clearStep();
    double firstMs = fromMs + accelerationMs2 * stepS * FIRST_NODE;
    double firstSoc = soc - meanA * FIRST_NODE * stepS * perCapacity;
    if (!node(firstMs, accelerationMs2, firstSoc, gear) && heedLimits) {
      return false;
    }
    double firstA = nodeA;
    double secondMs = fromMs + accelerationMs2 * stepS * SECOND_NODE;
    double secondSoc = soc - firstA * SECOND_NODE * stepS * perCapacity;
    if (!node(secondMs, accelerationMs2, secondSoc, gear) && heedLimits) {
      return false;
    }
    highestA = Math.max(highestA, Math.max(firstA, nodeA));
    lowestA = Math.min(lowestA, Math.min(firstA, nodeA));
    commit(stepS / 2);
    double movedM = (fromMs + accelerationMs2 * stepS / 2) * stepS;
    gradeJ += gradeN * movedM;
    distanceM += movedM;
    timeS += stepS;
    return true;
  }

  private void clearStep() {
    stepRolling = 0;
    stepAir = 0;
    stepKinetic = 0;
    stepBrakes = 0;
    stepDriveline = 0;
    stepMotor = 0;
    stepPack = 0;
    stepBattery = 0;
    stepReturned = 0;
    stepSquare = 0;
    stepCharge = 0;
  }

  private void commit(double weightS) {
    rollingJ += stepRolling * weightS;
    airJ += stepAir * weightS;
    kineticJ += stepKinetic * weightS;
    brakesJ += stepBrakes * weightS;
    drivelineJ += stepDriveline * weightS;
    motorJ += stepMotor * weightS;
    packJ += stepPack * weightS;
    batteryJ += stepBattery * weightS;
    returnedJ += stepReturned * weightS;
    squareA2s += stepSquare * weightS;
    double stepC = stepCharge * weightS;
    chargeC += stepC;
    soc -= stepC * perCapacity;
    meanA = stepCharge / 2;
  }

  /** Power at one moment; false if a limit forbids it. */
  private boolean node(double speedMs, double accelerationMs2, double atSoc, int gear) {
    if (speedMs == 0) {
      return source(model.steadyW, 0, atSoc, gear, 0);
    }
    double rollingN = model.load.rollingN(speedMs, cosine);
    double airN = model.load.dragN(speedMs);
    double inertiaN = model.inertiaKg[gear] * accelerationMs2;
    double forceN = rollingN + airN + gradeN + inertiaN;
    stepRolling += rollingN * speedMs;
    stepAir += airN * speedMs;
    stepKinetic += inertiaN * speedMs;
    double radPerS = speedMs * model.radPerM[gear];
    return forceN >= 0
        ? drive(forceN, speedMs, radPerS, atSoc, gear)
        : brake(-forceN, speedMs, radPerS, atSoc, gear);
  }

  private boolean drive(double forceN, double speedMs, double radPerS, double atSoc, int gear) {
    double torqueNm = forceN / model.newtonsPerNm[gear];
    double shaftW = torqueNm * radPerS;
    double lossW = model.loss.lossW(torqueNm, radPerS);
    stepDriveline += shaftW - forceN * speedMs;
    stepMotor += lossW;
    return source(shaftW + lossW + model.steadyW, torqueNm, atSoc, gear, radPerS)
        && forceN <= model.tractionN * (1 + 1e-9);
  }

  /** Draws driving power from the pack. */
  private boolean source(
      double terminalW, double torqueNm, double atSoc, int gear, double radPerS) {
    double sourceV = model.pack.openCircuitV(atSoc);
    double ohm = model.pack.ohm(atSoc, terminalW >= 0);
    double currentA = DriveModel.currentA(terminalW, sourceV, ohm);
    draw(currentA, sourceV, ohm);
    return model.sourceAllows(terminalW, currentA, atSoc)
        && model.shaftAllows(torqueNm, radPerS, sourceV - currentA * ohm, gear);
  }

  private void draw(double currentA, double sourceV, double ohm) {
    double packW = currentA * currentA * ohm;
    double batteryW = sourceV * currentA;
    stepPack += packW;
    stepBattery += batteryW;
    stepReturned += Math.max(0, packW - batteryW);
    stepSquare += currentA * currentA;
    stepCharge += currentA;
    nodeA = currentA;
  }

  private boolean brake(double forceN, double speedMs, double radPerS, double atSoc, int gear) {
    double wantedN = Math.min(forceN * model.regeneration.share(speedMs), model.brakingN);
    double torqueNm = wantedN * model.brakingNmPerN[gear];
    if (!model.takes(torqueNm, radPerS, atSoc, gear)) {
      torqueNm = model.mostBrakingNm(torqueNm, radPerS, atSoc, gear);
    }
    double motorN = torqueNm / model.brakingNmPerN[gear];
    double shaftW = torqueNm * radPerS;
    double lossW = model.loss.lossW(-torqueNm, radPerS);
    double terminalW = lossW + model.steadyW - shaftW;
    double sourceV = model.pack.openCircuitV(atSoc);
    double ohm = model.pack.ohm(atSoc, terminalW >= 0);
    draw(DriveModel.currentA(terminalW, sourceV, ohm), sourceV, ohm);
    stepBrakes += (forceN - motorN) * speedMs;
    stepDriveline += motorN * speedMs - shaftW;
    stepMotor += lossW;
    // Braking always succeeds: the friction brakes take the rest.
    return true;
  }

  EnergyBalance balance() {
    Map<EnergyPart, Double> partsJ = new EnumMap<>(EnergyPart.class);
    partsJ.put(EnergyPart.ROLLING, rollingJ);
    partsJ.put(EnergyPart.AIR, airJ);
    partsJ.put(EnergyPart.GRADE, gradeJ);
    partsJ.put(EnergyPart.KINETIC, kineticJ);
    partsJ.put(EnergyPart.BRAKES, brakesJ);
    partsJ.put(EnergyPart.DRIVELINE, drivelineJ);
    partsJ.put(EnergyPart.MOTOR, motorJ);
    partsJ.put(EnergyPart.AUXILIARIES, auxiliaryW * timeS);
    partsJ.put(EnergyPart.HEATER, heaterW * timeS);
    partsJ.put(EnergyPart.PACK, packJ);
    return new EnergyBalance(partsJ, batteryJ, returnedJ);
  }
}
