package org.wattwright.examples.sheet;

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
   * @throws IllegalArgumentException if the drawing is something else
   */
  public Drawing {
    if (!svg.startsWith("<svg")) {
      throw new IllegalArgumentException("Drawing.svg must be one <svg> element");
    }
  }

  @Override
  public void accept(BlockWriter writer) {
    writer.drawing(this);
  }
}
