package org.wattwright.conversion;

import java.util.List;

/**
 * What may hurt somebody, set apart from the rest.
 *
 * @param items plain texts
 */
public record Cautions(List<String> items) implements Block {
  /**
   * Copies the list.
   *
   * @param items plain texts
   */
  public Cautions {
    items = List.copyOf(items);
  }

  @Override
  public void accept(BlockWriter writer) {
    writer.cautions(this);
  }
}
