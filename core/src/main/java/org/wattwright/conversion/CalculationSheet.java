package org.wattwright.conversion;

import java.util.List;

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
    sections = List.copyOf(sections);
  }
}
