package org.wattwright.conversion;

import org.wattwright.check.Worksheet;

/**
 * The working of a calculation, step by step.
 *
 * @param worksheet the recorded steps
 */
public record Working(Worksheet worksheet) implements Block {
  @Override
  public void accept(BlockWriter writer) {
    writer.working(this);
  }
}
