package org.wattwright.layout;

import org.wattwright.check.Recorder;
import org.wattwright.check.Step;
import org.wattwright.check.Worksheet;

/**
 * The working of a pack of one module, as part of the working of a larger one: what it calls the
 * pack is the module.
 */
final class OneModule {
  private OneModule() {}

  static void record(Worksheet worksheet, Recorder recorder) {
    for (Step step : worksheet.steps()) {
      recorder.add(
          new Step(
              step.symbol(),
              "one module: " + step.meaning().replace("the pack", "the module"),
              step.formula(),
              step.inputs(),
              step.result(),
              step.basis(),
              step.source()));
    }
  }
}
