package org.wattwright.installation;

import java.io.Serializable;
import java.util.List;
import org.wattwright.internal.Require;

/**
 * A unit of a plan with the cells it measures, in one unbroken row of taps.
 *
 * @param name main, or remote with the bay
 * @param bay where it sits
 * @param slices of modules, in the order of the string
 */
public record MeasuringUnit(String name, String bay, List<Slice> slices) implements Serializable {
  /**
   * The cells of one module that one unit measures.
   *
   * @param module which
   * @param cells how many of them, from where the unit before stopped
   * @param temperatureSensors read with them
   */
  public record Slice(MonitoredModule module, int cells, int temperatureSensors)
      implements Serializable {}

  /**
   * Rejects blanks and an empty unit.
   *
   * @param name main, or remote with the bay
   * @param bay where it sits
   * @param slices at least one
   * @throws org.wattwright.units.InvalidInputException if a text is blank or the list empty
   */
  public MeasuringUnit {
    name = Require.text("MeasuringUnit.name", name);
    bay = Require.text("MeasuringUnit.bay", bay);
    slices = Require.nonEmpty("MeasuringUnit.slices", slices);
  }

  /**
   * Cells that it measures.
   *
   * @return at least 1
   */
  public int cells() {
    return slices.stream().mapToInt(Slice::cells).sum();
  }

  /**
   * Sense wires: one more than cells.
   *
   * @return at least 2
   */
  public int taps() {
    return cells() + 1;
  }

  /**
   * Temperature sensors that it has to read.
   *
   * @return ≥ 0
   */
  public int temperatureSensors() {
    return slices.stream().mapToInt(Slice::temperatureSensors).sum();
  }

  /**
   * What joins modules between taps of this unit.
   *
   * @return in order; empty for one module
   */
  public List<MonitorJoin> joins() {
    return slices.stream().skip(1).map(slice -> slice.module().joinBefore()).toList();
  }
}
