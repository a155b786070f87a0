package org.wattwright.protection;

/** Discharge of a capacitor through R and L in series, on plain doubles in SI; L &gt; 0. */
final class SeriesDamping {
  /** Nodes and weights of the Gauss-Legendre rule of five points on −1 … 1. */
  private static final double[][] GAUSS = {
    {0, 0.5688888888888889},
    {-0.5384693101056831, 0.47862867049936647},
    {0.5384693101056831, 0.47862867049936647},
    {-0.906179845938664, 0.23692688505618908},
    {0.906179845938664, 0.23692688505618908}
  };

  private static final int PIECES = 4;

  private final double voltageV;
  private final double resistanceOhm;
  private final double inductanceH;
  private final double capacitanceF;
  private final double alphaPerS;

  /** α² − ω₀². */
  private final double excessPerS2;

  SeriesDamping(double voltageV, double resistanceOhm, double inductanceH, double capacitanceF) {
    this.voltageV = voltageV;
    this.resistanceOhm = resistanceOhm;
    this.inductanceH = inductanceH;
    this.capacitanceF = capacitanceF;
    this.alphaPerS = resistanceOhm / (2 * inductanceH);
    this.excessPerS2 = alphaPerS * alphaPerS - 1 / (inductanceH * capacitanceF);
  }

  double currentA(double timeS) {
    return voltageV / inductanceH * dampedSine(timeS);
  }

  /** e^(−αt)·sin(ω_d·t)/ω_d, or with sinh and β, or t·e^(−αt) between them. */
  private double dampedSine(double timeS) {
    if (excessPerS2 < 0) {
      double omega = Math.sqrt(-excessPerS2);
      return Math.exp(-alphaPerS * timeS) * Math.sin(omega * timeS) / omega;
    }
    if (excessPerS2 == 0) {
      return timeS * Math.exp(-alphaPerS * timeS);
    }
    double beta = Math.sqrt(excessPerS2);
    return Math.exp(-slowPerS() * timeS) * -Math.expm1(-2 * beta * timeS) / (2 * beta);
  }

  /** α − β without the difference of near-equal numbers: 1/(LC·(α + β)). */
  private double slowPerS() {
    return 1 / (inductanceH * capacitanceF * (alphaPerS + Math.sqrt(excessPerS2)));
  }

  /** Where di/dt = 0: tan(ω_d·t) = ω_d/α, or tanh(β·t) = β/α, or t = 1/α. */
  double peakS() {
    if (excessPerS2 < 0) {
      double omega = Math.sqrt(-excessPerS2);
      return Math.atan2(omega, alphaPerS) / omega;
    }
    if (excessPerS2 == 0) {
      return 1 / alphaPerS;
    }
    double beta = Math.sqrt(excessPerS2);
    return Math.log1p(2 * beta / slowPerS()) / (2 * beta);
  }

  double jouleIntegralA2S(double timeS) {
    // Early on nearly all energy is still there: its difference would lose digits.
    double early = timeS * Math.max(alphaPerS, 1 / Math.sqrt(inductanceH * capacitanceF));
    return early < 1 ? summedA2S(timeS) : byEnergyA2S(timeS);
  }

  private double summedA2S(double timeS) {
    double halfS = timeS / PIECES / 2;
    double sum = 0;
    for (int piece = 0; piece < PIECES; piece++) {
      for (double[] node : GAUSS) {
        double currentA = currentA(halfS * (2 * piece + 1 + node[0]));
        sum += node[1] * currentA * currentA;
      }
    }
    return sum * halfS;
  }

  private double byEnergyA2S(double timeS) {
    double currentA = currentA(timeS);
    double leftV = voltageAtV(timeS);
    double spentJ =
        capacitanceF * (voltageV - leftV) * (voltageV + leftV) / 2
            - inductanceH * currentA * currentA / 2;
    return spentJ / resistanceOhm;
  }

  /** u = U·(e^(−αt)·cos(ω_d·t) + α·dampedSine), with cosh and β if overdamped. */
  private double voltageAtV(double timeS) {
    double cosine;
    if (excessPerS2 < 0) {
      cosine = Math.exp(-alphaPerS * timeS) * Math.cos(Math.sqrt(-excessPerS2) * timeS);
    } else if (excessPerS2 == 0) {
      cosine = Math.exp(-alphaPerS * timeS);
    } else {
      double fast = alphaPerS + Math.sqrt(excessPerS2);
      cosine = (Math.exp(-slowPerS() * timeS) + Math.exp(-fast * timeS)) / 2;
    }
    return voltageV * (cosine + alphaPerS * dampedSine(timeS));
  }
}
