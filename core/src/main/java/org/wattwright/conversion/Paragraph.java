package org.wattwright.conversion;

import java.util.Objects;

/**
 * Running text.
 *
 * @param text plain, any characters
 */
public record Paragraph(String text) implements Block {
  /**
   * Checks the paragraph.
   *
   * @param text plain, any characters
   */
  public Paragraph {
    Objects.requireNonNull(text, "text");
  }

  @Override
  public void accept(BlockWriter writer) {
    writer.paragraph(this);
  }
}
