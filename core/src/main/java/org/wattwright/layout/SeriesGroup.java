package org.wattwright.layout;

import java.io.Serializable;
import java.util.Objects;
import org.wattwright.battery.BatteryModule;
import org.wattwright.internal.Require;

/**
 * The modules of one type in a series string that may hold several types, wherever they sit.
 *
 * <pre>{@code
 * List<SeriesGroup> string = List.of(SeriesGroup.of(twelveCells, 4), SeriesGroup.of(sixCells, 2));
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 *
 * @param module the type
 * @param count modules of it in series in each string, 1 to 10 000
 */
public record SeriesGroup(BatteryModule module, int count) implements Serializable {
  static final int MOST_MODULES = 10_000;

  /**
   * Checks the count.
   *
   * @param module the type
   * @param count 1 to 10 000
   * @throws org.wattwright.units.InvalidInputException if the count is outside its range
   */
  public SeriesGroup {
    Objects.requireNonNull(module, "module");
    Require.count("SeriesGroup.count of " + module.name(), count, 1, MOST_MODULES);
  }

  /**
   * So many modules of a type.
   *
   * @param module the type
   * @param count in series in each string, 1 to 10 000
   * @return the group
   * @throws org.wattwright.units.InvalidInputException if the count is outside its range
   */
  public static SeriesGroup of(BatteryModule module, int count) {
    return new SeriesGroup(module, count);
  }

  /**
   * Count and type.
   *
   * @return for example {@code 4 × twelve cells}
   */
  @Override
  public String toString() {
    return count + " × " + module.name();
  }
}
