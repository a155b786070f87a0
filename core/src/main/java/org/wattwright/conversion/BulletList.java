package org.wattwright.conversion;

import java.util.List;

/**
 * A list without order.
 *
 * @param items plain texts
 */
public record BulletList(List<String> items) implements Block {
  /**
   * Copies the list.
   *
   * @param items plain texts
   */
  public BulletList {
    items = List.copyOf(items);
  }

  @Override
  public void accept(BlockWriter writer) {
    writer.bulletList(this);
  }
}
