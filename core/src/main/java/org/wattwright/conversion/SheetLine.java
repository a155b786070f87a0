package org.wattwright.conversion;

import java.util.Objects;

/**
 * One line of a calculation sheet as a reader would quote it.
 *
 * @param place titles of section, part and table, joined by {@code " › "}
 * @param name what the line is about, such as the first cell of a row
 * @param value what it says
 */
public record SheetLine(String place, String name, String value) {
  /**
   * Checks the line.
   *
   * @param place titles of section, part and table
   * @param name what the line is about
   * @param value what it says
   */
  public SheetLine {
    Objects.requireNonNull(place, "place");
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(value, "value");
  }

  /**
   * One line.
   *
   * @return for example {@code Pack › capacity: 360 A·h | data sheet}
   */
  @Override
  public String toString() {
    return place + (name.isEmpty() ? "" : " › " + name) + ": " + value;
  }
}
