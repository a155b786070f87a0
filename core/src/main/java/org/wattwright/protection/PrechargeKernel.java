package org.wattwright.protection;

/**
 * A source behind a resistance charges a capacitance beside a load, all in SI: exact.
 *
 * <p>u∞ = (U/R − I)/(1/R + G), τ = C/(1/R + G), u = u∞ + (u₀ − u∞)·e^(−t/τ).
 */
record PrechargeKernel(
    double sourceV, double resistorOhm, double supplyOhm, double capacitanceF, Load load) {

  /** What the load takes at a voltage u: G·u + I. */
  record Load(double conductanceS, double currentA) {}

  double totalOhm() {
    return resistorOhm + supplyOhm;
  }

  private double conductanceS() {
    return 1 / totalOhm() + load.conductanceS();
  }

  double timeConstantS() {
    return capacitanceF / conductanceS();
  }

  /** A load cannot pull the bus below nothing. */
  double finalV() {
    return Math.max(0, (sourceV / totalOhm() - load.currentA()) / conductanceS());
  }

  /** Time from an empty bus to a voltage; infinite if it is never reached. */
  double timeToS(double busV) {
    double endV = finalV();
    if (busV <= 0) {
      return 0;
    }
    return busV < endV
        ? timeConstantS() * Math.log(endV / (endV - busV))
        : Double.POSITIVE_INFINITY;
  }

  double voltageAtV(double timeS) {
    return finalV() * -Math.expm1(-shareOfTau(timeS));
  }

  private double shareOfTau(double timeS) {
    return timeS > 0 ? timeS / timeConstantS() : 0;
  }

  /** ∫i²dt, i = (U − u)/R = a + b·e^(−t/τ). */
  double jouleIntegralA2S(double timeS) {
    double steadyA = (sourceV - finalV()) / totalOhm();
    double fadingA = finalV() / totalOhm();
    double tauS = timeConstantS();
    double onceGone = -Math.expm1(-shareOfTau(timeS));
    double twiceGone = -Math.expm1(-2 * shareOfTau(timeS));
    return steadyA * steadyA * timeS
        + 2 * steadyA * fadingA * tauS * onceGone
        + fadingA * fadingA * tauS / 2 * twiceGone;
  }

  double resistorEnergyJ(double timeS) {
    return resistorOhm * jouleIntegralA2S(timeS);
  }

  /** U·∫i dt. */
  double sourceEnergyJ(double timeS) {
    double steadyA = (sourceV - finalV()) / totalOhm();
    double fadingA = finalV() / totalOhm();
    double onceGone = -Math.expm1(-shareOfTau(timeS));
    return sourceV * (steadyA * timeS + fadingA * timeConstantS() * onceGone);
  }
}
