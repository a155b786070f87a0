package org.wattwright.drive;

import java.io.Serializable;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * What loading changes in a vehicle: its road load, and how it stands on its driven axle.
 *
 * @param load with the mass
 * @param traction of that mass; null if the vehicle's own stays
 */
record Loading(RoadLoad load, @Nullable Traction traction) implements Serializable {
  Loading {
    Objects.requireNonNull(load, "roadLoad");
  }

  static Loading of(ElectricVehicle loaded) {
    return new Loading(loaded.roadLoad(), loaded.traction().orElse(null));
  }

  ElectricVehicle on(ElectricVehicle vehicle) {
    ElectricVehicleBuilder builder = vehicle.toBuilder().roadLoad(load);
    return (traction == null ? builder : builder.traction(traction)).build();
  }
}
