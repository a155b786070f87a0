package org.wattwright.conductor;

/**
 * One metre of a heated conductor in SI: resistance, heat path to the surface, loss of the surface.
 *
 * <p>A factor on the current, where neighbours ask for one, raises the current that is compared.
 */
record HeatedConductor(
    double resistanceOhmPerM,
    double coefficientPerK,
    double thermalResistanceKmPerW,
    SteadyKernel kernel,
    double heatCapacityJPerMK) {

  /** A cable with one of its geometries. */
  static HeatedConductor of(Cable cable, CableGeometry geometry, Installation installation) {
    CableData data = cable.data();
    ConductorSize size = cable.size();
    SurfaceLoss loss =
        new CylinderLoss(installation.surroundings(), data.emissivity(), geometry.outerM());
    double insulationJPerMK =
        geometry.conductorShareOfInsulationHeat()
            * geometry.insulationAreaM2()
            * data.insulation().properties().heatCapacityJPerM3K();
    double metalJPerMK = size.areaM2() * size.material().thermal().heatCapacityJPerM3K();
    return new HeatedConductor(
        size.resistanceOhmPerM(),
        size.material().coefficientPerK(),
        geometry.thermalResistanceKmPerW(data.insulation(), data.sheath()),
        new SteadyKernel(loss),
        metalJPerMK + insulationJPerMK);
  }

  /** Surface temperature in K at a current; infinite if there is none within the range. */
  double surfaceK(double currentA) {
    double lossAtReferenceWPerM = currentA * currentA * resistanceOhmPerM;
    double feedbackWPerMK = lossAtReferenceWPerM * coefficientPerK;
    double denominator = 1 - feedbackWPerMK * thermalResistanceKmPerW;
    if (!(denominator > 0)) {
      return Double.POSITIVE_INFINITY;
    }
    double airK = kernel.loss().airK();
    double atAirWPerM =
        lossAtReferenceWPerM + feedbackWPerMK * (airK - ConductorMaterial.REFERENCE_K);
    return kernel.surfaceK(atAirWPerM / denominator, feedbackWPerMK / denominator);
  }

  /** Heat in W/m that a current makes while the surface is at a temperature. */
  double inflowWPerM(double currentA, double surfaceK) {
    double lossAtReferenceWPerM = currentA * currentA * resistanceOhmPerM;
    double feedbackWPerMK = lossAtReferenceWPerM * coefficientPerK;
    return (lossAtReferenceWPerM + feedbackWPerMK * (surfaceK - ConductorMaterial.REFERENCE_K))
        / (1 - feedbackWPerMK * thermalResistanceKmPerW);
  }

  /** Conductor temperature in K at a current; infinite if there is none within the range. */
  double conductorK(double currentA) {
    double surfaceK = surfaceK(currentA);
    return surfaceK < Double.POSITIVE_INFINITY
        ? surfaceK + inflowWPerM(currentA, surfaceK) * thermalResistanceKmPerW
        : surfaceK;
  }

  /** Surface temperature in K while the conductor is held at a temperature. */
  double surfaceAtConductorK(double conductorK) {
    double airK = kernel.loss().airK();
    if (!(thermalResistanceKmPerW > 0) || !(conductorK > airK)) {
      return conductorK;
    }
    return kernel.surfaceK(
        (conductorK - airK) / thermalResistanceKmPerW, -1 / thermalResistanceKmPerW);
  }

  /**
   * Current in A that holds the conductor at a temperature; 0 if the surroundings heat it so far.
   */
  double currentA(double conductorK) {
    double lossWPerM = kernel.loss().lossWPerM(surfaceAtConductorK(conductorK));
    double ratio = 1 + coefficientPerK * (conductorK - ConductorMaterial.REFERENCE_K);
    return lossWPerM > 0 ? Math.sqrt(lossWPerM / (resistanceOhmPerM * ratio)) : 0;
  }

  /**
   * Conductance in W/(m·K) by which one metre holds down a local rise of its temperature: the loss
   * over the rise, less the heat that the rise itself adds.
   */
  double localConductanceWPerMK(double currentA, double conductorK) {
    double surfaceK = surfaceAtConductorK(conductorK);
    double airK = kernel.loss().airK();
    double lossWPerM = kernel.loss().lossWPerM(surfaceK) - kernel.loss().lossWPerM(airK);
    double riseK = Math.max(conductorK - airK, 1);
    return lossWPerM / riseK - currentA * currentA * resistanceOhmPerM * coefficientPerK;
  }
}
