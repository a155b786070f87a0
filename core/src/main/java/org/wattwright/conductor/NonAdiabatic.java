package org.wattwright.conductor;

import java.util.Map;
import java.util.Optional;

/**
 * Constants of IEC 60949, from memory.
 *
 * @param x X in √(mm²/s)
 * @param y Y in mm²/s
 */
record NonAdiabatic(double x, double y) {
  private static final Map<String, NonAdiabatic> CONSTANTS =
      Map.of(
          "copper/XLPE", new NonAdiabatic(0.41, 0.12),
          "copper/PVC", new NonAdiabatic(0.29, 0.06),
          "aluminium/XLPE", new NonAdiabatic(0.57, 0.16),
          "aluminium/PVC", new NonAdiabatic(0.40, 0.08));

  static Optional<NonAdiabatic> find(ConductorMaterial material, InsulationMaterial insulation) {
    return Optional.ofNullable(CONSTANTS.get(material.name() + "/" + insulation.name()));
  }
}
