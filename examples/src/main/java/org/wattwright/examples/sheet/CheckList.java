package org.wattwright.examples.sheet;

import java.util.List;
import org.wattwright.check.Check;

/**
 * Checks with their verdicts.
 *
 * @param checks in the order to print
 */
public record CheckList(List<Check> checks) implements Block {
  /**
   * Copies the list.
   *
   * @param checks in the order to print
   */
  public CheckList {
    checks = List.copyOf(checks);
  }

  @Override
  public void accept(BlockWriter writer) {
    writer.checkList(this);
  }
}
