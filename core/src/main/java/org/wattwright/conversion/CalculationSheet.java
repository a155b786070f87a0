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

  /**
   * Title and titles of the sections.
   *
   * @return for example {@code bakery van: Cautions, Pack, Checks}
   */
  @Override
  public String toString() {
    return title + ": " + String.join(", ", sections.stream().map(Section::title).toList());
  }
}
