package org.wattwright.examples.job;

/**
 * Bad input in a job folder; the message is one line that says where, what, and what was expected.
 */
public final class JobFileException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private JobFileException(String message) {
    super(message);
  }

  /**
   * An error to show to the user as it is.
   *
   * @param message where, what, and what was expected; line breaks become spaces
   * @return the exception, to be thrown by the caller
   */
  public static JobFileException of(String message) {
    return new JobFileException(Quoted.oneLine(message));
  }
}
