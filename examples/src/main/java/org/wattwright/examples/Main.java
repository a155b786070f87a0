package org.wattwright.examples;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import org.wattwright.conversion.CalculationSheet;
import org.wattwright.conversion.MarkdownSheet;
import org.wattwright.examples.job.InputFiles;
import org.wattwright.examples.job.JobFileException;
import org.wattwright.examples.job.JobFolder;
import org.wattwright.examples.sheet.SheetFiles;
import org.wattwright.units.InvalidInputException;

/**
 * The main program: reads a job folder, designs, and writes the calculation sheet.
 *
 * <p>Arguments: the job folder (the demonstration unless given), then the folder for the sheet
 * ({@code target/dossier} unless given). The sheet is printed as Markdown and written as {@code
 * index.html} and {@code calculation-sheet.md}. Bad input gives one line on standard error, exit
 * status 1, and leaves the output folder as it was.
 */
public final class Main {
  private static final Path OUTPUT = Path.of("target", "dossier");
  private static final int BAD_INPUT = 1;
  private static final int OUR_FAULT = 2;

  private Main() {}

  /**
   * Runs the program and ends Java with its status if something is wrong.
   *
   * @param args job folder, output folder; both may be left out
   */
  public static void main(String[] args) {
    int status = run(args, utf8(FileDescriptor.out), utf8(FileDescriptor.err));
    if (status != 0) {
      System.exit(status);
    }
  }

  /** The sheet is full of Ω and ²; the console's own encoding may not have them. */
  private static PrintStream utf8(FileDescriptor descriptor) {
    return new PrintStream(new FileOutputStream(descriptor), true, StandardCharsets.UTF_8);
  }

  /**
   * Runs the program.
   *
   * @param args job folder, output folder; both may be left out
   * @param out takes the sheet as Markdown
   * @param err takes one line if something is wrong
   * @return 0, 1 for bad input, 2 for a fault of the program
   */
  static int run(String[] args, PrintStream out, PrintStream err) {
    try {
      design(args, out);
      return 0;
    } catch (JobFileException | InvalidInputException | IOException e) {
      return fail(err, BAD_INPUT, "error: " + describe(e));
    } catch (RuntimeException e) {
      StackTraceElement[] trace = e.getStackTrace();
      String where = trace.length > 0 ? " at " + trace[0] : "";
      return fail(err, OUR_FAULT, "fault of the program, please report: " + e + where);
    }
  }

  private static int fail(PrintStream err, int status, String message) {
    err.println(JobFileException.of(message).getMessage());
    err.flush();
    return status;
  }

  /** A file system error says little more than the name of the file. */
  private static String describe(Exception e) {
    return e instanceof IOException failure
        ? "the sheet cannot be written: " + reason(failure) + ": " + e.getMessage()
        : String.valueOf(e.getMessage());
  }

  private static String reason(IOException e) {
    if (e instanceof FileAlreadyExistsException) {
      return "something else is in its place";
    }
    return e instanceof AccessDeniedException ? "no permission" : e.getClass().getSimpleName();
  }

  private static void design(String[] args, PrintStream out) throws IOException {
    if (args.length > 2) {
      throw JobFileException.of(
          "expected at most a job folder and an output folder, but got "
              + args.length
              + " arguments");
    }
    Path job = args.length > 0 ? path(args[0]) : demonstration();
    Path output = args.length > 1 ? path(args[1]) : OUTPUT;
    CalculationSheet sheet =
        JobSheet.of(JobFolder.read(job)).withInputs(InputFiles.fingerprint(job));
    SheetFiles.write(sheet, output);
    out.print(MarkdownSheet.render(sheet));
    out.flush();
  }

  private static Path path(String argument) {
    try {
      return Path.of(argument);
    } catch (InvalidPathException e) {
      throw JobFileException.of("not a path: " + argument);
    }
  }

  /** From the top folder of the project or from that of the module. */
  private static Path demonstration() {
    Path fromTop = Path.of("examples", "data");
    return Files.isDirectory(fromTop) ? fromTop : Path.of("data");
  }
}
