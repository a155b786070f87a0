package org.wattwright.layout;

import java.util.Comparator;
import org.wattwright.battery.BatteryModule;

/** One pack to be shared out over the bays: so many of one type in series, so many in parallel. */
record PackOption(BatteryModule module, int series, int parallel) {
  static final Comparator<PackOption> BY_CONTENT =
      Comparator.comparing((PackOption option) -> option.module().name())
          .thenComparing(PackOption::series)
          .thenComparing(PackOption::parallel);

  int moduleCount() {
    return series * parallel;
  }

  @Override
  public String toString() {
    return series + "s" + parallel + "p " + module.name();
  }
}
