package org.wattwright.examples;

import java.nio.file.Path;
import java.util.Optional;
import org.wattwright.conversion.Conversion;
import org.wattwright.examples.job.JobFileException;
import org.wattwright.examples.job.JobFolder;

/** The conversion of a job folder, for a program that wants more than its calculation sheet. */
public final class JobConversion {
  private JobConversion() {}

  /**
   * Reads a job folder and designs.
   *
   * @param folder the job folder
   * @return the conversion with the pack chosen; empty if no pack meets every requirement
   * @throws JobFileException if a file is missing or wrong
   */
  public static Optional<Conversion> of(Path folder) {
    return Design.of(JobFolder.read(folder)).chosen().map(Design.Chosen::conversion);
  }
}
