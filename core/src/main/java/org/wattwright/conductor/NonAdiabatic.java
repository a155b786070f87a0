package org.wattwright.conductor;

import java.util.List;
import java.util.Optional;

/** Constants X in √(mm²/s) and Y in mm²/s of IEC 60949, from memory. */
enum NonAdiabatic {
  COPPER_XLPE(ConductorMaterial.COPPER, "XLPE", 0.41, 0.12),
  COPPER_PVC(ConductorMaterial.COPPER, "PVC", 0.29, 0.06),
  ALUMINIUM_XLPE(ConductorMaterial.ALUMINIUM, "XLPE", 0.57, 0.16),
  ALUMINIUM_PVC(ConductorMaterial.ALUMINIUM, "PVC", 0.40, 0.08);

  private static final List<NonAdiabatic> VALUES = List.of(values());

  private final ConductorMaterial material;
  private final String insulation;
  private final double x;
  private final double y;

  NonAdiabatic(ConductorMaterial material, String insulation, double x, double y) {
    this.material = material;
    this.insulation = insulation;
    this.x = x;
    this.y = y;
  }

  static Optional<NonAdiabatic> find(ConductorMaterial material, InsulationMaterial insulation) {
    return VALUES.stream()
        .filter(c -> c.material.equals(material) && c.insulation.equals(insulation.name()))
        .findFirst();
  }

  double x() {
    return x;
  }

  double y() {
    return y;
  }
}
