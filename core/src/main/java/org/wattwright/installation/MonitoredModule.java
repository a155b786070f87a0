package org.wattwright.installation;

import java.io.Serializable;
import java.util.Objects;
import org.wattwright.internal.Require;

/**
 * A module as the battery management sees it, with what joins it to the module before.
 *
 * @param name as reports print it
 * @param bay where it sits
 * @param seriesCells cell groups in series, 1 to 1000
 * @param temperatureSensors in it that are to be read, 0 to 1000
 * @param joinBefore between it and the module before in the string
 */
public record MonitoredModule(
    String name, String bay, int seriesCells, int temperatureSensors, MonitorJoin joinBefore)
    implements Serializable {
  /**
   * Checks the ranges.
   *
   * @param name as reports print it
   * @param bay where it sits
   * @param seriesCells 1 to 1000
   * @param temperatureSensors 0 to 1000
   * @param joinBefore between it and the module before
   * @throws org.wattwright.units.InvalidInputException if a text is blank or a count outside its
   *     range
   */
  public MonitoredModule {
    name = Require.text("MonitoredModule.name", name);
    bay = Require.text("MonitoredModule.bay", bay);
    Require.count("MonitoredModule.seriesCells", seriesCells, 1, 1000);
    Require.count("MonitoredModule.temperatureSensors", temperatureSensors, 0, 1000);
    Objects.requireNonNull(joinBefore, "joinBefore");
  }

  /**
   * A module joined by a short bar, with one sensor.
   *
   * @param name as reports print it
   * @param bay where it sits
   * @param seriesCells 1 to 1000
   * @return the module
   * @throws org.wattwright.units.InvalidInputException if a text is blank or the count outside its
   *     range
   */
  public static MonitoredModule of(String name, String bay, int seriesCells) {
    return new MonitoredModule(name, bay, seriesCells, 1, MonitorJoin.SHORT_BAR);
  }

  /**
   * With another number of temperature sensors.
   *
   * @param count 0 to 1000
   * @return a new module
   * @throws org.wattwright.units.InvalidInputException if outside its range
   */
  public MonitoredModule withTemperatureSensors(int count) {
    return new MonitoredModule(name, bay, seriesCells, count, joinBefore);
  }

  /**
   * Joined otherwise to the module before.
   *
   * @param join what lies between
   * @return a new module
   */
  public MonitoredModule behind(MonitorJoin join) {
    return new MonitoredModule(name, bay, seriesCells, temperatureSensors, join);
  }
}
