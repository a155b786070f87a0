package org.wattwright.conversion;

import java.util.Objects;

/**
 * A line that both revisions of a sheet have, and that says something else.
 *
 * @param place titles of section, part and table, joined by {@code " › "}
 * @param name what the line is about
 * @param before what it said
 * @param after what it says now
 */
public record LineChange(String place, String name, String before, String after) {
  /**
   * Checks the change.
   *
   * @param place titles of section, part and table
   * @param name what the line is about
   * @param before what it said
   * @param after what it says now
   */
  public LineChange {
    Objects.requireNonNull(place, "place");
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(before, "before");
    Objects.requireNonNull(after, "after");
  }

  /**
   * One line.
   *
   * @return for example {@code Pack › capacity: 360 A·h → 420 A·h}
   */
  @Override
  public String toString() {
    return place + (name.isEmpty() ? "" : " › " + name) + ": " + before + " → " + after;
  }
}
