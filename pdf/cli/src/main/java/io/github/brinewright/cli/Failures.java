package io.github.brinewright.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import picocli.CommandLine;

/** What went wrong at the edge of the program, in words. */
final class Failures {
  private Failures() {}

  /** Says what ended a command, and returns its exit code. */
  static int report(Throwable failure, PrintWriter err) {
    err.println("brinewright: " + inWords(failure));
    return failure instanceof UsageException
        ? CommandLine.ExitCode.USAGE
        : CommandLine.ExitCode.SOFTWARE;
  }

  /**
   * What is wrong and what to do; never a bare path, or the name of a class alone. What happened in
   * a fault of the program is kept in a temporary file.
   */
  static String inWords(Throwable failure) {
    return inWords(failure, () -> Files.createTempFile("brinewright-fault-", ".txt"));
  }

  /** Where what happened is kept. */
  interface Kept {
    Path file() throws IOException;
  }

  static String inWords(Throwable failure, Kept kept) {
    if (failure instanceof UncheckedIOException wrapped) {
      return inWords(wrapped.getCause(), kept);
    }
    if (failure instanceof FileSystemException file) {
      return file.getFile() + ": " + ofFile(file);
    }
    if (failure instanceof IOException) {
      return "reading or writing failed: " + failure.getMessage();
    }
    if (failure instanceof InvalidPathException path) {
      return "\""
          + path.getInput()
          + "\" cannot be the name of a file in the character set of this machine;"
          + " set LANG=C.UTF-8 or another that is UTF-8";
    }
    if (failure instanceof OutOfMemoryError || failure instanceof StackOverflowError) {
      return "this needs more memory than the "
          + Runtime.getRuntime().maxMemory() / 1_000_000
          + " MB that the program was given; give it more, as in java -Xmx2g -jar …, or see whether"
          + " the file is damaged";
    }
    boolean worded =
        failure instanceof UsageException || failure instanceof IllegalArgumentException;
    String said = failure.getMessage();
    return worded && said != null ? said : ofProgram(failure, kept);
  }

  private static String ofFile(FileSystemException file) {
    if (file instanceof NoSuchFileException) {
      return "there is no such file or folder";
    }
    if (file instanceof AccessDeniedException) {
      return "it may not be read or written with the rights that you have here";
    }
    if (file instanceof FileAlreadyExistsException) {
      return "it is there already, and no folder";
    }
    return file.getReason() == null ? "reading or writing failed" : file.getReason();
  }

  /** A fault of the program itself; what happened is kept in a file for whoever mends it. */
  private static String ofProgram(Throwable failure, Kept kept) {
    StringWriter trace = new StringWriter();
    failure.printStackTrace(new PrintWriter(trace, true));
    String fault = "this is a fault of the program, not of what you gave it; what happened ";
    try {
      Path file = kept.file();
      Files.writeString(file, trace.toString());
      return fault + "stands in " + file;
    } catch (IOException unwritable) {
      return fault + "could not be written to a file (" + unwritable.getMessage() + ")";
    }
  }
}
