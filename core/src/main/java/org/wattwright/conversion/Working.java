package org.wattwright.conversion;

import java.util.Objects;
import org.wattwright.check.Worksheet;

/**
 * The working of a calculation, step by step.
 *
 * @param worksheet the recorded steps
 */
public record Working(Worksheet worksheet) implements Block {
  /**
   * Checks the working.
   *
   * @param worksheet the recorded steps
   */
  public Working {
    Objects.requireNonNull(worksheet, "worksheet");
  }

  @Override
  public void accept(BlockWriter writer) {
    writer.working(this);
  }
}
