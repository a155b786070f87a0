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

  /** Weights of both nodes up to the second one, of the method of Gauss of order four. */
  private static final double FIRST_SHARE = 0.25 + Math.sqrt(3) / 6;

  private static final double OWN_SHARE = 0.25;
  private static final int PREDICTIONS = 3;
  private static final double LONGEST_S = 1;
  private static final double SHORTEST_S = 1e-6;

  private final DriveModel model;
  private final double rolling0N;
  private final double rolling1Ns;
  private final double rolling2Ns2;
  private final double dragNs2;
  private final double windMs;
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

  /** Reciprocal of the voltage at the terminals at the last node: turns power into current. */
  private double perVolt;

  /** From the start of the step to the node, and what power has drawn up to it, as J. */
  private double nodeS;

  private double drawnJ;
  private double firstW;
  private double nodeV;

  /** Mean current of the last step. */
  double meanA;

  /** Whether the last step gave all the force asked for. */
  boolean followed;

  /** What held the last step back, where it did. */
  DriveLimit heldBackBy = DriveLimit.MOTOR_TORQUE;

  CycleKernel(DriveModel model, ElectricVehicle vehicle, double grade, double soc) {
    double slope = Math.atan(grade);
    this.model = model;
    double[] rolling = model.load.rollingPolynomial(Math.cos(slope));
    this.rolling0N = rolling[0];
    this.rolling1Ns = rolling[1];
    this.rolling2Ns2 = rolling[2];
    this.dragNs2 = model.load.dragNs2PerM2();
    this.windMs = model.load.windMs();
    this.gradeN = model.load.gradeN(Math.sin(slope));
    this.auxiliaryW = vehicle.fields().auxiliaryW();
    this.heaterW = vehicle.fields().heaterW();
    this.perCapacity = 1 / model.pack.capacityC();
    this.soc = soc;
    this.perVolt = 1 / model.pack.openCircuitV(soc);
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
    pieceS = before(model.regeneration.fadeFromMs(), speedMs, accelerationMs2, pieceS);
    pieceS = before(model.regeneration.fadeToMs(), speedMs, accelerationMs2, pieceS);
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

  private static double before(
      double bendMs, double speedMs, double accelerationMs2, double pieceS) {
    if (bendMs >= speedMs || bendMs <= speedMs + accelerationMs2 * pieceS) {
      return pieceS;
    }
    return earlier((bendMs - speedMs) / accelerationMs2, pieceS);
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
    return rollingN(speedMs) + airN(speedMs) + gradeN;
  }

  private double rollingN(double speedMs) {
    return rolling0N + (rolling1Ns + rolling2Ns2 * speedMs) * speedMs;
  }

  private double airN(double speedMs) {
    double airMs = speedMs + windMs;
    return dragNs2 * airMs * Math.abs(airMs);
  }

  /** Adds a step to the books, unless a limit forbids it. */
  private boolean integrate(
      double fromMs, double accelerationMs2, double stepS, int gear, boolean heedLimits) {
    clearStep();
    double firstMs = fromMs + accelerationMs2 * stepS * FIRST_NODE;
    nodeS = FIRST_NODE * stepS;
    drawnJ = 0;
    if (!node(firstMs, accelerationMs2, gear) && heedLimits) {
      return false;
    }
    double firstA = nodeA;
    double secondMs = fromMs + accelerationMs2 * stepS * SECOND_NODE;
    nodeS = OWN_SHARE * stepS;
    drawnJ = FIRST_SHARE * stepS * firstW;
    if (!node(secondMs, accelerationMs2, gear) && heedLimits) {
      return false;
    }
    extremes(firstA);
    extremes(nodeA);
    commit(stepS / 2);
    double movedM = (fromMs + accelerationMs2 * stepS / 2) * stepS;
    gradeJ += gradeN * movedM;
    distanceM += movedM;
    timeS += stepS;
    return true;
  }

  private void extremes(double currentA) {
    if (currentA > highestA) {
      highestA = currentA;
    }
    if (currentA < lowestA) {
      lowestA = currentA;
    }
  }

  /**
   * State of charge at the node, by the powers up to it and the voltage of the last node: the two
   * nodes do not wait for one another. The error is that of the voltage, a few per cent of the
   * charge of one step.
   */
  private double nodeSoc(double terminalW) {
    firstW = terminalW;
    return soc - (drawnJ + nodeS * terminalW) * perVolt * perCapacity;
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
    perVolt = 1 / nodeV;
  }

  /** Power at one moment; false if a limit forbids it. */
  private boolean node(double speedMs, double accelerationMs2, int gear) {
    if (speedMs == 0) {
      return source(model.steadyW, 0, gear, 0);
    }
    double rollingN = rollingN(speedMs);
    double airN = airN(speedMs);
    double inertiaN = model.inertiaKg[gear] * accelerationMs2;
    double forceN = rollingN + airN + gradeN + inertiaN;
    stepRolling += rollingN * speedMs;
    stepAir += airN * speedMs;
    stepKinetic += inertiaN * speedMs;
    double radPerS = speedMs * model.radPerM[gear];
    return forceN >= 0
        ? drive(forceN, speedMs, radPerS, gear)
        : brake(-forceN, speedMs, radPerS, gear);
  }

  private boolean drive(double forceN, double speedMs, double radPerS, int gear) {
    double torqueNm = forceN / model.newtonsPerNm[gear];
    double shaftW = torqueNm * radPerS;
    double lossW = model.loss.lossW(torqueNm, radPerS);
    stepDriveline += shaftW - forceN * speedMs;
    stepMotor += lossW;
    return source(shaftW + lossW + model.steadyW, torqueNm, gear, radPerS)
        && forceN <= model.tractionN * (1 + 1e-9);
  }

  /** Draws driving power from the pack. */
  private boolean source(double terminalW, double torqueNm, int gear, double radPerS) {
    double place = PackTable.place(nodeSoc(terminalW));
    double sourceV = model.pack.openCircuitAtPlace(place);
    double ohm = model.pack.ohmAtPlace(place, terminalW >= 0);
    double currentA = DriveModel.currentA(terminalW, sourceV, ohm);
    draw(currentA, sourceV, ohm);
    return model.sourceAllowsAt(terminalW, currentA, place)
        && model.shaftAllows(torqueNm, radPerS, sourceV - currentA * ohm, gear);
  }

  private void draw(double currentA, double sourceV, double ohm) {
    double packW = currentA * currentA * ohm;
    double batteryW = sourceV * currentA;
    stepPack += packW;
    stepBattery += batteryW;
    if (packW > batteryW) {
      stepReturned += packW - batteryW;
    }
    stepSquare += currentA * currentA;
    stepCharge += currentA;
    nodeA = currentA;
    nodeV = sourceV - currentA * ohm;
  }

  private boolean brake(double forceN, double speedMs, double radPerS, int gear) {
    double wantedN = Math.min(forceN * model.regeneration.share(speedMs), model.brakingN);
    double torqueNm = wantedN * model.brakingNmPerN[gear];
    double lossW = model.loss.lossW(-torqueNm, radPerS);
    double terminalW = lossW + model.steadyW - torqueNm * radPerS;
    double atSoc = nodeSoc(terminalW);
    double place = PackTable.place(atSoc);
    double sourceV = model.pack.openCircuitAtPlace(place);
    double ohm = model.pack.ohmAtPlace(place, terminalW >= 0);
    double currentA = DriveModel.currentA(terminalW, sourceV, ohm);
    if (!model.packTakes(torqueNm, currentA, place)
        || !model.shaftTakes(torqueNm, radPerS, sourceV - currentA * ohm, gear)) {
      torqueNm = model.mostBrakingNm(torqueNm, radPerS, atSoc, gear);
      lossW = model.loss.lossW(-torqueNm, radPerS);
      terminalW = lossW + model.steadyW - torqueNm * radPerS;
      firstW = terminalW;
      ohm = model.pack.ohmAtPlace(place, terminalW >= 0);
      currentA = DriveModel.currentA(terminalW, sourceV, ohm);
    }
    draw(currentA, sourceV, ohm);
    double motorN = torqueNm / model.brakingNmPerN[gear];
    double shaftW = torqueNm * radPerS;
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
