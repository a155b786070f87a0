package org.wattwright.check;

/**
 * Takes down the steps of a calculation while it runs, or nothing at all.
 *
 * <p>A kernel is written once: it asks {@link #isOn()} before it describes its steps, so that a
 * search runs it with {@link #OFF} at no cost and replays the winner with a {@link
 * Worksheet.Recording}. Describe in a method of its own: the kernel stays small, and the question
 * disappears when it is compiled.
 *
 * <pre>{@code
 * double currentA = 2 * powerW / (u0V + Math.sqrt(u0V * u0V - 4 * resistanceOhm * powerW));
 * if (recorder.isOn()) {
 *   describe(recorder, currentA);
 * }
 * return currentA;
 * }</pre>
 */
public interface Recorder {
  /** Records nothing. */
  Recorder OFF =
      new Recorder() {
        @Override
        public boolean isOn() {
          return false;
        }

        @Override
        public void add(Step step) {
          throw new IllegalStateException("recorder is off: ask isOn() first");
        }
      };

  /**
   * Whether steps are wanted.
   *
   * @return false if nothing is recorded
   */
  boolean isOn();

  /**
   * Takes down a step.
   *
   * @param step the step
   * @throws IllegalStateException if this recorder is off
   */
  void add(Step step);

  /**
   * Starts to describe a step; call only when {@link #isOn()}.
   *
   * @param symbol symbol of the result
   * @param meaning what the result is, in words
   * @return a builder that ends with {@link StepBuilder#gives}
   */
  default StepBuilder step(String symbol, String meaning) {
    return new StepBuilder(this, symbol, meaning);
  }
}
