package org.wattwright.examples.job;

import java.util.function.Supplier;
import org.wattwright.units.InvalidInputException;

/**
 * The line of a file that an input came from, so that a later error can still say where.
 *
 * <p>Immutable and thread-safe.
 *
 * @param file name of the file, without folder
 * @param line 1 for the first
 */
public record Origin(String file, long line) {
  /**
   * An error in this line.
   *
   * @param message what is wrong and what was expected
   * @return the exception, to be thrown by the caller
   */
  public JobFileException error(String message) {
    return JobFileException.of(this + ": " + message);
  }

  /**
   * Makes something out of this line's input; an invalid value is reported with file and line.
   *
   * @param <T> what is made
   * @param maker makes it, and may throw {@link InvalidInputException}
   * @return what was made
   * @throws JobFileException if the maker rejects a value
   */
  public <T> T locate(Supplier<T> maker) {
    try {
      return maker.get();
    } catch (InvalidInputException e) {
      throw error(String.valueOf(e.getMessage()));
    }
  }

  String column(String heading) {
    return this + ", column " + Quoted.of(heading);
  }

  /**
   * File and line.
   *
   * @return for example {@code modules.csv line 7}
   */
  @Override
  public String toString() {
    return file + " line " + line;
  }
}
