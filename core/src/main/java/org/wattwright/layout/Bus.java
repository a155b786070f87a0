package org.wattwright.layout;

import java.util.IdentityHashMap;
import java.util.List;
import java.util.Objects;
import org.wattwright.battery.BatteryModule;
import org.wattwright.voltage.Device;
import org.wattwright.voltage.OperatingConditions;

/** The traction bus of a search: its devices, the conditions, and each module's voltages there. */
final class Bus {
  private final List<Device> devices;
  private final OperatingConditions conditions;
  private final IdentityHashMap<BatteryModule, ModuleVoltages> voltages = new IdentityHashMap<>();

  Bus(List<Device> devices, OperatingConditions conditions, List<BatteryModule> modules) {
    this.devices = devices;
    this.conditions = conditions;
    modules.forEach(module -> voltages.put(module, ModuleVoltages.of(module, conditions)));
  }

  List<Device> devices() {
    return devices;
  }

  OperatingConditions conditions() {
    return conditions;
  }

  ModuleVoltages voltagesOf(BatteryModule module) {
    return Objects.requireNonNull(voltages.get(module), "module of another search");
  }
}
