package org.wattwright.layout;

import org.jspecify.annotations.Nullable;
import org.wattwright.battery.BatteryModule;

/** A module type, and the type of enclosure it goes into if any is stated. */
record Variant(BatteryModule module, @Nullable Enclosure enclosure) {
  int enclosuresFor(int moduleCount) {
    return enclosure == null ? 0 : enclosure.countFor(moduleCount);
  }

  String enclosureName() {
    return enclosure == null ? "" : enclosure.name();
  }
}
