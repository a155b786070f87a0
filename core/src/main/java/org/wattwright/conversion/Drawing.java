package org.wattwright.conversion;

import java.util.Objects;
import org.wattwright.units.InvalidInputException;

/**
 * A figure.
 *
 * @param svg one {@code <svg>} element, ours; it goes into the page as it is
 * @param caption below the figure
 * @param description what the figure shows, for a reader who cannot see it
 */
public record Drawing(String svg, String caption, String description) implements Block {
  /**
   * Checks the drawing.
   *
   * @param svg one {@code <svg>} element without XML declaration
   * @param caption below the figure
   * @param description what the figure shows
   * @throws InvalidInputException if the drawing is something else
   */
  public Drawing {
    Objects.requireNonNull(caption, "caption");
    Objects.requireNonNull(description, "description");
    if (!svg.startsWith("<svg")) {
      throw InvalidInputException.of(
          "Drawing.svg", "one <svg> element", svg.substring(0, Math.min(20, svg.length())));
    }
  }

  /**
   * The caption, without the drawing.
   *
   * @return for example {@code drawing "Voltage windows"}
   */
  @Override
  public String toString() {
    return "drawing \"" + caption + "\"";
  }

  @Override
  public void accept(BlockWriter writer) {
    writer.drawing(this);
  }
}
