package org.wattwright.conductor;

import java.io.Serializable;

/**
 * Diameters of a cable in m: conductor, insulation, screen (equal to the insulation where there is
 * none), outside.
 */
record CableGeometry(double conductorM, double insulationM, double screenM, double outerM)
    implements Serializable {

  /**
   * T = ρ_i/(2π)·ln(D_i/d_c) + ρ_s/(2π)·ln(D/D_s), the screen itself without resistance; IEC
   * 60287-2-1.
   */
  double thermalResistanceKmPerW(InsulationMaterial insulation, InsulationMaterial sheath) {
    double inner = insulation.properties().resistivityKmPerW() * Math.log(insulationM / conductorM);
    double outer = sheath.properties().resistivityKmPerW() * Math.log(outerM / screenM);
    return (inner + outer) / (2 * Math.PI);
  }

  /**
   * Share of the insulation's heat that counts with the conductor in a lumped model: p = 1/(2 ln x)
   * − 1/(x² − 1), x = D/d; Van Wormer, IEC 60853-2 (from memory).
   */
  double conductorShareOfInsulationHeat() {
    double ratio = outerM / conductorM;
    return 1 / (2 * Math.log(ratio)) - 1 / (ratio * ratio - 1);
  }

  double insulationAreaM2() {
    double squares =
        insulationM * insulationM - conductorM * conductorM + outerM * outerM - screenM * screenM;
    return Math.PI / 4 * squares;
  }
}
