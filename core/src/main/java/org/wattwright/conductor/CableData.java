package org.wattwright.conductor;

import java.io.Serializable;
import org.jspecify.annotations.Nullable;
import org.wattwright.units.Price;

/** Fields of a cable in SI; null where the catalogue does not say. */
record CableData(
    String name,
    ConductorSize size,
    InsulationMaterial insulation,
    InsulationMaterial sheath,
    @Nullable Double conductorM,
    @Nullable Double insulationM,
    @Nullable Double screenM,
    @Nullable Double outerM,
    double limitK,
    double shortCircuitK,
    double emissivity,
    @Nullable Double massKgPerM,
    @Nullable Double voltageV,
    @Nullable Double bendM,
    @Nullable Price pricePerMetre)
    implements Serializable {

  CableData withMass(double kgPerM) {
    return new CableData(
        name,
        size,
        insulation,
        sheath,
        conductorM,
        insulationM,
        screenM,
        outerM,
        limitK,
        shortCircuitK,
        emissivity,
        kgPerM,
        voltageV,
        bendM,
        pricePerMetre);
  }
}
