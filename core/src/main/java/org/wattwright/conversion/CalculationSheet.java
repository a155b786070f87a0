package org.wattwright.conversion;

import java.util.List;
import java.util.Objects;

/**
 * A whole calculation sheet.
 *
 * <p>Immutable and thread-safe.
 *
 * @param title what was calculated
 * @param subtitle for whom, and on what
 * @param sections in reading order
 */
public record CalculationSheet(String title, String subtitle, List<Section> sections) {
  /**
   * Copies the list.
   *
   * @param title what was calculated
   * @param subtitle for whom, and on what
   * @param sections in reading order
   */
  public CalculationSheet {
    Objects.requireNonNull(title, "title");
    Objects.requireNonNull(subtitle, "subtitle");
    sections = List.copyOf(sections);
  }
}
