package org.wattwright.conversion;

/**
 * Running text.
 *
 * @param text plain, any characters
 */
public record Paragraph(String text) implements Block {
  @Override
  public void accept(BlockWriter writer) {
    writer.paragraph(this);
  }
}
