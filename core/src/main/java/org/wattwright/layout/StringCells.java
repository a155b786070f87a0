package org.wattwright.layout;

import java.util.Comparator;
import java.util.Optional;
import org.wattwright.battery.BatteryModule;
import org.wattwright.check.Check;
import org.wattwright.check.Source;
import org.wattwright.units.Kind;
import org.wattwright.units.Measures;

/**
 * Whether the types of module in a string are of the same cells, as many in parallel: the same
 * current passes through all, so that the smallest is full and empty first.
 */
final class StringCells {
  private static final Source SOURCE =
      Source.commonPractice("one kind of cell in series, monitored as one string");

  private StringCells() {}

  /** Empty for a pack of one type. */
  static Optional<Check> check(PackOption option) {
    if (!option.isMixed()) {
      return Optional.empty();
    }
    BatteryModule smallest =
        option.groups().stream()
            .map(SeriesGroup::module)
            .min(Comparator.comparingDouble(module -> Kind.CHARGE.siValueOf(module.capacity())))
            .orElseThrow();
    String note =
        "usable capacity of a string is that of "
            + smallest.name()
            + ": "
            + Measures.format(smallest.capacity(), Kind.CHARGE);
    return Optional.of(
        Check.named("layout.string-cells", "same cells, as many in parallel, in each string")
            .source(SOURCE)
            .safety()
            .note(note)
            .recommends(isAlike(option)));
  }

  private static boolean isAlike(PackOption option) {
    BatteryModule first = option.module(0);
    return option.groups().stream()
        .map(SeriesGroup::module)
        .allMatch(
            module -> module.cell().equals(first.cell()) && module.parallel() == first.parallel());
  }
}
